package club.ascham.fleet;

import club.ascham.units.ItemCode;
import java.time.LocalDate;
import java.util.Locale;

/**
 * Upkeep of one item that is due, or will be by a given day.
 *
 * @param because what the day follows from
 * @param forBowIn the bow length that a string is made for; null for anything else
 * @param onLoan whether someone has it
 * @param asked whether somebody asked for it; else a rule makes it due
 */
public record DueNow(
    ItemCode code,
    String kind,
    String maker,
    String model,
    String work,
    LocalDate dueOn,
    String because,
    Integer forBowIn,
    boolean onLoan,
    boolean asked) {

  public String name() {
    return Naming.of(maker, model, kind);
  }

  /** {@code bolt inspection}. */
  public String workSaid() {
    return work.toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** Its name for the drawing and in JSON. */
  public String kindWord() {
    return Naming.word(kind);
  }

  public String itemHref() {
    return "/items/" + code.display();
  }

  /** Where the work is recorded. */
  public String href() {
    return "/upkeep/" + code.display() + "/" + Naming.word(work);
  }
}
