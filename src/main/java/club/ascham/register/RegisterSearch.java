package club.ascham.register;

import club.ascham.bow.Compatibility;
import club.ascham.bow.Hand;
import club.ascham.form.Typed;
import club.ascham.form.Words;
import club.ascham.standing.State;
import io.quarkus.qute.TemplateData;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * What a person looks for in the register, as it stands in the address.
 *
 * @param words each must occur in the item's code, names, marks or notes
 * @param kind null: every kind
 * @param state null: whatever is in use
 * @param retiredToo whether retired items are shown among the others
 * @param hand null: either
 * @param bowIn the length in inches of a bow that the item can be used on; null: any
 * @param page from 1
 */
@TemplateData
public record RegisterSearch(
    List<String> words,
    ItemKind kind,
    State state,
    boolean retiredToo,
    Hand hand,
    Integer bowIn,
    Sort sort,
    boolean backwards,
    int page) {
  private static final int MOST_WORDS = 6;

  /** What the list is ordered by. */
  @TemplateData
  public enum Sort {
    CODE,
    MAKER,
    STATE,
    BOUGHT;

    public String word() {
      return Words.of(this);
    }
  }

  /** Reads the address; what can't be read is said at its field and left out of the search. */
  static RegisterSearch read(Typed typed) {
    List<String> words =
        typed.has("words")
            ? List.of(typed.value("words").split("\\s+")).stream().limit(MOST_WORDS).toList()
            : List.of();
    String state = typed.value("state");
    boolean retiredToo = state.equals("any");
    State only = retiredToo ? null : typed.word("state", State.class);
    String sort = typed.value("sort");
    boolean backwards = sort.startsWith("-");
    Sort by =
        Typed.nothing().with("sort", backwards ? sort.substring(1) : sort).word("sort", Sort.class);
    Integer page = typed.whole("page", 1, 100_000);
    return new RegisterSearch(
        words,
        typed.word("kind", ItemKind.class),
        only,
        retiredToo,
        typed.word("hand", Hand.class),
        typed.whole("bowIn", Compatibility.SHORTEST_BOW_IN, Compatibility.LONGEST_BOW_IN),
        by == null ? Sort.CODE : by,
        backwards,
        page == null ? 1 : page);
  }

  /** The address of this search. */
  public String address() {
    Map<String, String> parts = new LinkedHashMap<>();
    parts.put("words", String.join(" ", words));
    parts.put("kind", kind == null ? "" : kind.word());
    parts.put("state", retiredToo ? "any" : state == null ? "" : state.word());
    parts.put("hand", Words.of(hand));
    parts.put("bowIn", bowIn == null ? "" : bowIn.toString());
    parts.put("sort", sort == Sort.CODE && !backwards ? "" : (backwards ? "-" : "") + sort.word());
    parts.put("page", page == 1 ? "" : Integer.toString(page));
    String query =
        parts.entrySet().stream()
            .filter(part -> !part.getValue().isEmpty())
            .map(
                part ->
                    part.getKey()
                        + "="
                        + URLEncoder.encode(part.getValue(), StandardCharsets.UTF_8))
            .collect(Collectors.joining("&"));
    return query.isEmpty() ? "/register" : "/register?" + query;
  }

  public String firstPage() {
    return at(1).address();
  }

  public String earlier() {
    return at(page - 1).address();
  }

  public String later() {
    return at(page + 1).address();
  }

  private RegisterSearch at(int otherPage) {
    return new RegisterSearch(
        words, kind, state, retiredToo, hand, bowIn, sort, backwards, otherPage);
  }

  /** The same for another kind of item; null: every kind. */
  public RegisterSearch of(ItemKind otherKind) {
    return new RegisterSearch(words, otherKind, state, retiredToo, hand, bowIn, sort, backwards, 1);
  }

  /** Ordered by this; a second press turns the order round. */
  public RegisterSearch by(Sort other) {
    return new RegisterSearch(
        words, kind, state, retiredToo, hand, bowIn, other, other == sort && !backwards, 1);
  }

  /** The value of {@code aria-sort} at the head of a column; null: not ordered by it. */
  public String ariaSort(Sort column) {
    return column != sort ? null : backwards ? "descending" : "ascending";
  }

  /** What it is narrowed by, in words; empty where by nothing. */
  public String said() {
    List<String> said = new ArrayList<>();
    if (!words.isEmpty()) {
      said.add("“" + String.join(" ", words) + "”");
    }
    if (kind != null) {
      said.add(kind.plural());
    }
    if (state != null) {
      said.add(state.said());
    }
    if (retiredToo) {
      said.add("retired ones too");
    }
    if (hand != null) {
      said.add(Words.said(hand) + "-handed");
    }
    if (bowIn != null) {
      said.add("for a bow of " + bowIn + " in");
    }
    return String.join(" · ", said);
  }
}
