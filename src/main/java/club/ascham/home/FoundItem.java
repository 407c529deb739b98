package club.ascham.home;

import club.ascham.id.ItemId;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.standing.State;
import club.ascham.units.ItemCode;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * An item that the code box found.
 *
 * @param loan what it is out on; null: it is in the room
 * @param rig what it is fitted to; null: nothing
 * @param rigState null where it is not fitted
 * @param rigNeedsCheck whether its rig was received or checked since it was last put back
 */
public record FoundItem(
    ItemCode code,
    String kind,
    String maker,
    String model,
    String serial,
    State state,
    LoanId loan,
    RigId rig,
    State rigState,
    boolean rigNeedsCheck,
    ItemId id) {

  public String name() {
    String name = Stream.of(maker, model).filter(Objects::nonNull).collect(Collectors.joining(" "));
    return name.isEmpty() ? kindWord() : name;
  }

  public String kindWord() {
    return kind.equals("BOW") ? "one-piece" : kind.toLowerCase(Locale.ROOT);
  }

  /** A part that is sound itself waits, or is out of use, with its rig. */
  public State stateShown() {
    return state == State.READY && rigState != null ? rigState : state;
  }
}
