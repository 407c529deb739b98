package club.ascham.recall;

import club.ascham.id.ItemId;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.standing.State;
import club.ascham.units.ItemCode;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * An item that a recall names, and where it is.
 *
 * @param serials its serial, and those of both limbs; null: none is recorded
 * @param withdrawnWhy null: it is not withdrawn
 * @param toldWhy open recalls that reached it when it was out of use before; null: none
 * @param rig the rig it is fitted to; null: none (likewise rigBareCode)
 * @param loan null: it is not lent (likewise backBy)
 * @param leader of the session that it is out with; null: it is with a borrower, or not lent
 */
public record Recalled(
    ItemId id,
    String bareCode,
    String kind,
    String maker,
    String model,
    String batch,
    String serials,
    State state,
    String withdrawnWhy,
    String toldWhy,
    RigId rig,
    String rigBareCode,
    LoanId loan,
    LocalDate backBy,
    String leader) {

  /** How the reason of each recall begins. */
  static final String RECALL = "Recalled: ";

  public String code() {
    return new ItemCode(bareCode).display();
  }

  /** Its field in the form that withdraws. */
  public String field() {
    return "item-" + id.value();
  }

  public String page() {
    return "/items/" + code();
  }

  public String rigCode() {
    return rigBareCode == null ? null : new ItemCode(rigBareCode).display();
  }

  /** The name of the small drawing of its kind. */
  public String mark() {
    return kind.equals("BOW") ? "one-piece" : kind.toLowerCase(Locale.ROOT);
  }

  /** Maker, model, batch and serials, as far as known. */
  public String said() {
    return Stream.of(
            Stream.of(maker, model).filter(Objects::nonNull).collect(Collectors.joining(" ")),
            batch == null ? "" : "batch " + batch,
            serials == null ? "" : "serial " + serials)
        .filter(part -> !part.isEmpty())
        .collect(Collectors.joining(", "));
  }

  /** Whether it is neither withdrawn nor retired. */
  public boolean isInUse() {
    return state != State.RETIRED && withdrawnWhy == null;
  }

  /** Whether a recall stands against it already; another may all the same. */
  public boolean isRecalled() {
    return toldWhy != null || withdrawnWhy != null && withdrawnWhy.startsWith(RECALL);
  }
}
