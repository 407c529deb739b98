package club.ascham.upkeep;

import club.ascham.id.ItemId;
import club.ascham.id.RigId;
import club.ascham.standing.State;
import club.ascham.units.ItemCode;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A piece of work in a list, with the item it is for.
 *
 * @param rig the rig that the item is fitted to; null: none (likewise rigBareCode)
 * @param backBy the day its loan is due; null: it is not lent
 */
public record DueRow(
    ItemId item,
    String bareCode,
    String kind,
    String maker,
    String model,
    Work work,
    LocalDate dueOn,
    int soonDays,
    boolean blocks,
    boolean asked,
    String because,
    State state,
    RigId rig,
    String rigBareCode,
    LocalDate backBy) {

  public Due due() {
    return new Due(work, dueOn, soonDays, blocks, asked, because);
  }

  /** The item's code as on the label. */
  public String code() {
    return new ItemCode(bareCode).display();
  }

  /** The code of the body of its rig; null: it is fitted to none, or is that body. */
  public String rigCode() {
    return rigBareCode == null || rigBareCode.equals(bareCode)
        ? null
        : new ItemCode(rigBareCode).display();
  }

  /** Maker and model where known, else the kind. */
  public String name() {
    String name = Stream.of(maker, model).filter(Objects::nonNull).collect(Collectors.joining(" "));
    return name.isEmpty() ? kindSaid() : name;
  }

  public String kindSaid() {
    return kind.equals("BOW") ? "one-piece bow" : kind.toLowerCase(Locale.ROOT);
  }

  /** The name of the small drawing of its kind. */
  public String mark() {
    return kind.equals("BOW") ? "one-piece" : kind.toLowerCase(Locale.ROOT);
  }

  /** Where the item's own page is. */
  public String itemPage() {
    return "/items/" + code();
  }

  /** Where the work is done. */
  public String page() {
    return "/upkeep/" + code() + "/" + work.word();
  }
}
