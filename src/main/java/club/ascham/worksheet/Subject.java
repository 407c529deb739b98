package club.ascham.worksheet;

import club.ascham.bow.Build;
import club.ascham.id.ItemId;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.standing.State;
import club.ascham.time.ClubTime;
import club.ascham.units.ItemCode;
import club.ascham.upkeep.Work;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * An item that work is to be done on.
 *
 * @param maker null: not known (likewise model)
 * @param build null: it has none
 * @param maxTurnsOut the maker's limit for its limb bolts; null: not recorded
 * @param boughtOn null: not known
 * @param rig the rig that it is fitted to; null: none (likewise rigBareCode)
 * @param loan null: it is not lent (likewise backBy)
 * @param turnsUpper the set-up's turns out of the upper bolt; null: not counted (likewise lower)
 */
public record Subject(
    ItemId id,
    String bareCode,
    String kind,
    String maker,
    String model,
    Build build,
    Double maxTurnsOut,
    LocalDate boughtOn,
    LocalDate registeredOn,
    boolean withdrawn,
    State state,
    RigId rig,
    String rigBareCode,
    LoanId loan,
    LocalDate backBy,
    Double turnsUpper,
    Double turnsLower) {

  /** The code as on the label. */
  public String code() {
    return new ItemCode(bareCode).display();
  }

  /** Where the item's own page is. */
  public String page() {
    return "/items/" + code();
  }

  /** The code of the body of its rig; null: it is fitted to none. */
  public String rigCode() {
    return rigBareCode == null ? null : new ItemCode(rigBareCode).display();
  }

  /** Maker and model where known, else its kind. */
  public String name() {
    String name = Stream.of(maker, model).filter(Objects::nonNull).collect(Collectors.joining(" "));
    return name.isEmpty() ? kindSaid() : name;
  }

  public String kindSaid() {
    return kind.equals("BOW") ? "one-piece bow" : kind.toLowerCase(Locale.ROOT);
  }

  /**
   * Why nothing can have been done to it in the club on this day, in a sentence; empty where the
   * club had it by then, as far as the record knows. Paper that is typed in late may well lie
   * before what was typed in already.
   */
  Optional<String> notYetHere(LocalDate day) {
    LocalDate known = boughtOn == null ? registeredOn : boughtOn;
    if (!day.isBefore(known)) {
      return Optional.empty();
    }
    return Optional.of(
        boughtOn != null
            ? "It was only bought on " + ClubTime.said(boughtOn) + "."
            : "It only came on the register on "
                + ClubTime.said(registeredOn)
                + ". If the club had it before, enter on its page when it was bought; then this day"
                + " can be given.");
  }

  public boolean isRetired() {
    return state == State.RETIRED;
  }

  /** The name of the small drawing of its kind. */
  public String mark() {
    return kind.equals("BOW") ? "one-piece" : kind.toLowerCase(Locale.ROOT);
  }

  /** The set-up's turns of both bolts in words; null: not counted. */
  public String setUpTurns() {
    return turnsUpper == null || turnsLower == null
        ? null
        : TurnsText.of(turnsUpper) + " upper, " + TurnsText.of(turnsLower) + " lower";
  }

  /** The list for an inspection of it. */
  InspectionList list(Work work) {
    return InspectionList.of(work, build, maxTurnsOut);
  }
}
