package club.ascham.fleet;

import club.ascham.form.Words;
import club.ascham.standing.State;
import java.time.LocalDate;

/** Whether a rig can be counted on for a course that begins on a given day, and what hinders it. */
public enum Fielding {
  /** Ready, and nothing falls due before then that would stop it. */
  AS_IT_IS,
  /** Ready now, but an inspection that blocks its issue falls due before then. */
  INSPECT_FIRST,
  /** In the room, waiting for a check, or for an inspection that is overdue. */
  CHECK_FIRST,
  /** On loan and due back before that day, then to be checked. */
  BACK_BY_THEN,
  /** On loan until that day or longer. */
  OUT_BEYOND,
  /** On loan and late already: nobody can say when it comes. */
  LATE,
  IN_THE_WORKSHOP,
  WITHDRAWN;

  /**
   * @param dueOn when its loan ends; null where it is not on loan
   * @param blockedFrom the last day on which no blocking inspection is overdue; null: none planned
   * @param courseDay the first evening of the course, after today
   */
  public static Fielding of(
      State state, LocalDate dueOn, LocalDate blockedFrom, LocalDate today, LocalDate courseDay) {
    return switch (state) {
      case READY ->
          blockedFrom != null && blockedFrom.isBefore(courseDay) ? INSPECT_FIRST : AS_IT_IS;
      case TO_BE_CHECKED -> CHECK_FIRST;
      case ON_LOAN -> onLoan(dueOn, today, courseDay);
      case IN_THE_WORKSHOP -> IN_THE_WORKSHOP;
      case WITHDRAWN, RETIRED -> WITHDRAWN;
    };
  }

  private static Fielding onLoan(LocalDate dueOn, LocalDate today, LocalDate courseDay) {
    if (dueOn == null || !dueOn.isBefore(courseDay)) {
      return OUT_BEYOND;
    }
    return dueOn.isBefore(today) ? LATE : BACK_BY_THEN;
  }

  Chance chance() {
    return switch (this) {
      case AS_IT_IS -> Chance.AS_IT_IS;
      case INSPECT_FIRST, CHECK_FIRST, BACK_BY_THEN -> Chance.AFTER_WORK;
      case OUT_BEYOND, LATE, IN_THE_WORKSHOP, WITHDRAWN -> Chance.NOT;
    };
  }

  String said() {
    return switch (this) {
      case AS_IT_IS -> "ready and staying so";
      case INSPECT_FIRST -> "ready, but an inspection falls due first";
      case CHECK_FIRST -> "in the room, to be checked";
      case BACK_BY_THEN -> "due back by then, then to be checked";
      case OUT_BEYOND -> "on loan beyond that day";
      case LATE -> "on loan and late already";
      case IN_THE_WORKSHOP, WITHDRAWN -> Words.said(this);
    };
  }

  /** What a committee may count on. */
  enum Chance {
    AS_IT_IS,
    AFTER_WORK,
    NOT
  }
}
