package club.ascham.fleet;

import club.ascham.bow.Hand;
import club.ascham.concern.Against;
import club.ascham.concern.Beside;
import club.ascham.concern.Concern;
import club.ascham.concern.Matter;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.standing.State;
import club.ascham.units.ItemCode;
import java.time.Instant;
import java.time.LocalDate;

/**
 * An assembled rig as the fleet counts it.
 *
 * @param code on its body, else on whatever is fitted; null: nothing is
 * @param name maker and model of the part that the code is on
 * @param hand null: made for either, or not known while a riser is missing
 * @param hasBody whether a riser or a one-piece bow is fitted
 * @param bowLengthIn null: not known while parts are missing (likewise the marked weight)
 * @param loan null where it is not on loan (likewise the day it is due)
 * @param hinders what keeps it from the course; null: nothing, or its loan
 * @param against what stands against it today
 * @param since when it last came back or was checked; null: never
 */
public record FleetRig(
    RigId id,
    ItemCode code,
    String name,
    Hand hand,
    boolean hasBody,
    Integer bowLengthIn,
    Double markedLb,
    State state,
    LoanId loan,
    LocalDate dueOn,
    Waiting waiting,
    Instant since,
    Fielding fielding,
    Concern hinders,
    Against against) {

  public String title() {
    return code == null ? "rig " + id.value() : code.display();
  }

  /** {@code right, 66 in, 20 lb}: what a person picks a bow by. */
  public String traits() {
    return Trait.HAND.saidOf(this)
        + (bowLengthIn == null ? "" : ", " + bowLengthIn + " in")
        + (markedLb == null ? "" : ", " + pounds() + " lb");
  }

  public String href() {
    return "/rigs/" + id.value();
  }

  public String handSaid() {
    return Trait.HAND.saidOf(this);
  }

  /** What weighs most beside its state; null: nothing. */
  public Beside beside() {
    return against.beside(state);
  }

  /** What of its set-up is to be done; null: nothing. */
  public Concern toSetUp() {
    return against.all().stream()
        .filter(one -> one.matter() == Matter.NOT_SET_UP)
        .findFirst()
        .orElse(null);
  }

  public String fieldingSaid() {
    return fielding.said();
  }

  /** Whole pounds without a decimal. */
  public String pounds() {
    return markedLb == Math.rint(markedLb)
        ? String.valueOf(markedLb.longValue())
        : markedLb.toString();
  }
}
