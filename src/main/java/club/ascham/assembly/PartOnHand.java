package club.ascham.assembly;

import club.ascham.id.RigId;
import club.ascham.rig.Obstacle;
import club.ascham.rig.Part;
import club.ascham.standing.State;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;

/**
 * A part with the facts that decide whether it can be fitted today.
 *
 * @param fittedTo null: loose
 * @param fittedToName the code on the body of that rig
 * @param outOfUse since when it is withdrawn or retired, and why; null: it is neither
 * @param dueBack when the loan it is on is due; null: not on loan
 * @param inspectionDue the last day before a blocking inspection is overdue; null: none planned
 * @param keptWith the rig that it lives with as a spare; null: none
 */
record PartOnHand(
    Part part,
    State state,
    RigId fittedTo,
    String fittedToName,
    OutOfUse outOfUse,
    LocalDate dueBack,
    LocalDate inspectionDue,
    RigId keptWith) {
  private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.UK);

  /** Since when a part is withdrawn or retired, and why. */
  record OutOfUse(LocalDate since, String why) {}

  /**
   * What keeps this part from being fitted to a rig.
   *
   * @param field the answer that named it
   * @param rig where it is to go; null: a new one
   */
  Optional<Obstacle> refusal(String field, RigId rig) {
    if (fittedTo != null && fittedTo.equals(rig)) {
      return Optional.empty();
    }
    Optional<Obstacle> away = away(field);
    return away.isPresent() ? away : loose(field);
  }

  /** Why it can't be in anyone's hand for use: it is retired, out of use, or on loan. */
  Optional<Obstacle> away(String field) {
    String code = part.code();
    return switch (state) {
      case RETIRED ->
          refused(
              field,
              code + " was retired on " + day(outOfUse.since()) + ": " + outOfUse.why() + ".",
              "Choose another. If it was found again, enter that on its page.");
      case WITHDRAWN ->
          refused(
              field,
              code
                  + " is withdrawn since "
                  + day(outOfUse.since())
                  + ": "
                  + bare(outOfUse.why())
                  + ".",
              "It can be fitted once someone with the permit has released it.");
      case ON_LOAN ->
          refused(
              field,
              code + " is on loan" + whereFitted() + ", due back on " + day(dueBack) + ".",
              "Receive it first.");
      case IN_THE_WORKSHOP, TO_BE_CHECKED, READY -> Optional.empty();
    };
  }

  private Optional<Obstacle> loose(String field) {
    if (fittedTo != null) {
      return refused(
          field,
          part.code() + " is fitted to the rig of " + fittedToName + ".",
          "Take it off there first, or choose another.");
    }
    if (state == State.TO_BE_CHECKED) {
      return refused(
          field,
          part.code() + " is overdue for an inspection since " + day(inspectionDue) + ".",
          "Do the inspection first; it stands on the upkeep list.");
    }
    return Optional.empty();
  }

  private String whereFitted() {
    return fittedTo == null ? "" : " with the rig of " + fittedToName;
  }

  private static Optional<Obstacle> refused(String field, String reason, String remedy) {
    return Optional.of(new Obstacle(field, reason, remedy));
  }

  private static String day(LocalDate day) {
    return DAY.format(day);
  }

  /** Reasons are typed with a full stop or without. */
  private static String bare(String sentence) {
    return sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
  }

  /** The word under which an enum's name was kept. */
  static String said(String name) {
    return name == null ? null : name.toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
