package club.ascham.loan;

import club.ascham.concern.Against;
import club.ascham.form.Refusal;
import club.ascham.form.Typed;
import club.ascham.id.ItemId;
import club.ascham.id.LoanId;
import club.ascham.register.ItemKind;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * What goes out beside the bows of a session: a kit’s rules, but for those that take one archer,
 * since several share it.
 */
@ApplicationScoped
public class KitBeside {
  private final KitStock stock;
  private final LoanLines lines;
  private final ClubTime time;

  KitBeside(KitStock stock, LoanLines lines, ClubTime time) {
    this.stock = stock;
    this.lines = lines;
    this.time = time;
  }

  /**
   * One thing to tick.
   *
   * @param pool whether it is given out by count
   */
  public record Choice(
      String code, String label, boolean pool, Against against, boolean chosen, Typed typed) {
    public String field() {
      return ItemAsked.field(code);
    }

    public String countField() {
      return field() + ".count";
    }

    /** What is wrong with it; null: nothing. */
    public String error() {
      return typed.messageAt(field());
    }
  }

  /** The ready things of one kind. */
  public record Shelf(ItemKind kind, List<Choice> choices) {
    public String plural() {
      return Character.toUpperCase(kind.plural().charAt(0)) + kind.plural().substring(1);
    }

    public boolean open() {
      return choices.stream().anyMatch(one -> one.chosen() || one.error() != null);
    }
  }

  /** Everything that is ready to go beside a bow today, by kind; nothing is chosen beforehand. */
  public List<Shelf> shelves(Typed typed) {
    Map<ItemKind, List<Choice>> byKind = new TreeMap<>();
    for (Offered one : stock.ready(time.today())) {
      Lendable item = one.item();
      if (!item.pool() || item.left() > 0) {
        byKind
            .computeIfAbsent(item.kind(), kind -> new ArrayList<>())
            .add(
                new Choice(
                    item.code(),
                    item.about(),
                    item.pool(),
                    one.against(),
                    typed.has(ItemAsked.field(item.code())),
                    typed));
      }
    }
    return byKind.entrySet().stream().map(e -> new Shelf(e.getKey(), e.getValue())).toList();
  }

  /**
   * Whether these may go.
   *
   * @param refusals what stands in the way, each at its field; what is only spoken against asks for
   *     a reason
   * @param spokenAgainst empty: nothing is
   */
  public record Judged(List<Refusal> refusals, String spokenAgainst) {}

  public Judged judge(List<ItemAsked> asked, String overrideWhy) {
    Map<String, Offered> found = stock.coded(asked, time.today());
    ItemRules.Receiver several = new ItemRules.Receiver(null, null, null, null, time.now());
    return new Judged(
        ItemRules.refusals(asked, found, several, overrideWhy),
        asked.stream()
            .map(one -> found.get(one.code().bare()))
            .filter(Objects::nonNull)
            .map(Offered::spokenAgainst)
            .filter(said -> !said.isEmpty())
            .collect(Collectors.joining(" ")));
  }

  /** Lends what was judged, inside the use case that lends the bows; answers what went. */
  public List<ItemId> lend(LoanId loan, List<ItemAsked> asked, Instant at) {
    Map<String, Offered> found = stock.coded(asked, time.today());
    List<ItemId> out = new ArrayList<>();
    for (ItemAsked one : asked) {
      Lendable item = found.get(one.code().bare()).item();
      lines.lend(loan, item.id(), null, at, item.pool() ? one.count() : null);
      out.add(item.id());
    }
    return out;
  }
}
