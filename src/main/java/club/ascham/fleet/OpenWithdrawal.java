package club.ascham.fleet;

import club.ascham.units.ItemCode;
import java.time.Instant;

/**
 * A part taken out of use that nobody has released.
 *
 * @param onLoan whether someone still has it
 */
public record OpenWithdrawal(
    ItemCode code,
    String kind,
    String maker,
    String model,
    Instant since,
    String why,
    boolean onLoan) {

  public String name() {
    return Naming.of(maker, model, kind);
  }

  public String href() {
    return "/items/" + code.display();
  }

  public String kindWord() {
    return Naming.word(kind);
  }
}
