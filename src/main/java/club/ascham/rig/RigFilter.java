package club.ascham.rig;

import club.ascham.bow.Hand;
import club.ascham.form.Typed;
import club.ascham.form.Words;
import club.ascham.standing.State;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;

/**
 * Which rigs a list shows, and in which order; null: whatever it is.
 *
 * @param fromLb least marked weight in lbf; {@code toLb} the most
 */
public record RigFilter(
    State state, Hand hand, Integer bowLengthIn, Integer fromLb, Integer toLb, Sort sort)
    implements Predicate<RigRow> {

  /** The orders a list can have. */
  public enum Sort {
    CODE(Comparator.comparing(row -> row.card().name())),
    BOW_LENGTH(Comparator.comparingInt(row -> row.bowLengthIn().orElse(0))),
    WEIGHT(Comparator.comparingDouble(RigRow::markedLb)),
    STATE(Comparator.<RigRow, State>comparing(RigRow::state).reversed());

    private final Comparator<RigRow> order;

    Sort(Comparator<RigRow> order) {
      this.order = order;
    }
  }

  static RigFilter parse(Typed typed) {
    Sort sort = typed.word("sort", Sort.class);
    return new RigFilter(
        typed.word("state", State.class),
        typed.word("hand", Hand.class),
        typed.whole("bowLength", 40, 80),
        typed.whole("fromLb", 0, 80),
        typed.whole("toLb", 0, 80),
        sort == null ? Sort.CODE : sort);
  }

  /** The rows that are meant, in order; rigs alike in it stand by their codes. */
  public List<RigRow> of(List<RigRow> rigs) {
    return rigs.stream().filter(this).sorted(sort.order.thenComparing(Sort.CODE.order)).toList();
  }

  @Override
  public boolean test(RigRow row) {
    return (state == null || row.state() == state)
        && (hand == null || row.hand() == null || row.hand() == hand)
        && (bowLengthIn == null
            || (row.bowLengthIn().isPresent() && row.bowLengthIn().getAsInt() == bowLengthIn))
        && (fromLb == null || row.markedLb() >= fromLb)
        && (toLb == null || row.markedLb() <= toLb);
  }

  public boolean isEverything() {
    return state == null && hand == null && bowLengthIn == null && fromLb == null && toLb == null;
  }

  /**
   * What is shown, in words: {@code ready · left‑handed · 66 in}, with a hyphen that never breaks.
   */
  public String said() {
    List<String> words = new ArrayList<>();
    if (state != null) {
      words.add(state.said());
    }
    if (hand != null) {
      words.add(Words.said(hand) + "\u2011handed");
    }
    if (bowLengthIn != null) {
      words.add(bowLengthIn + " in");
    }
    if (fromLb != null) {
      words.add("from " + fromLb + " lb");
    }
    if (toLb != null) {
      words.add("up to " + toLb + " lb");
    }
    return String.join(" · ", words);
  }

  /** The same rigs in another order, or another page of them, as an address. */
  String address(Sort by, int page) {
    StringBuilder address = new StringBuilder("/rigs?sort=").append(Words.of(by));
    add(address, "state", Words.of(state));
    add(address, "hand", Words.of(hand));
    add(address, "bowLength", bowLengthIn);
    add(address, "fromLb", fromLb);
    add(address, "toLb", toLb);
    if (page > 1) {
      add(address, "page", page);
    }
    return address.toString();
  }

  private static void add(StringBuilder address, String name, Object value) {
    if (value != null && !value.toString().isEmpty()) {
      address.append('&').append(name).append('=').append(value);
    }
  }
}
