package club.ascham.fleet;

import club.ascham.concern.Against;
import club.ascham.concern.Concern;
import club.ascham.concern.Matter;
import java.time.LocalDate;
import java.util.Comparator;

/**
 * Whether a rig can be counted on for a course that begins on a given day, and what hinders it, the
 * least first: of several, the greatest counts.
 */
public enum Fielding {
  /** In the room, and nothing will keep it in on that day. */
  AS_IT_IS("ready and staying so", Chance.AS_IT_IS),
  CHECK_FIRST("in the room, to be checked", Chance.AFTER_WORK),
  /** On loan and due back before that day, then to be checked. */
  BACK_BY_THEN("due back by then, then to be checked", Chance.AFTER_WORK),
  /** Its string is, or will be by then, further beyond its time than the club lets pass. */
  STRING_FIRST("a new string first", Chance.AFTER_WORK),
  /** An inspection that blocks its issue is overdue, or will be by then. */
  INSPECT_FIRST("an inspection first", Chance.AFTER_WORK),
  /** Somebody told of something, and nobody has answered yet. */
  ANSWER_FIRST("something told of it, to be answered first", Chance.AFTER_WORK),
  /** On loan until that day or longer. */
  OUT_BEYOND("on loan beyond that day", Chance.NOT),
  /** On loan and late already: nobody can say when it comes. */
  LATE("on loan and late already", Chance.NOT),
  IN_THE_WORKSHOP("in the workshop", Chance.NOT),
  NOT_PASSED("an inspection not passed", Chance.NOT),
  WITHDRAWN("withdrawn", Chance.NOT);

  private final String said;
  private final Chance chance;

  Fielding(String said, Chance chance) {
    this.said = said;
    this.chance = chance;
  }

  /**
   * Why it can be counted on, or not.
   *
   * @param by what hinders it; null: nothing, or its loan
   */
  public record Reason(Fielding fielding, Concern by) {}

  /**
   * @param dueOn when its loan ends; null where it is not on loan
   * @param then what stands against it on the day of the course, as far as is known now
   * @param courseDay the first evening of the course, after today
   */
  public static Reason of(LocalDate dueOn, Against then, LocalDate today, LocalDate courseDay) {
    Reason loan = new Reason(onLoan(dueOn, today, courseDay), null);
    return then.all().stream()
        .filter(one -> one.blocks() || one.matter() == Matter.REPORTED)
        .map(one -> new Reason(of(one), one))
        .max(Comparator.comparing(Reason::fielding))
        .filter(reason -> reason.fielding().compareTo(loan.fielding()) > 0)
        .orElse(loan);
  }

  private static Fielding of(Concern concern) {
    return switch (concern.matter()) {
      case RETIRED, WITHDRAWN -> WITHDRAWN;
      case INSPECTION_FAILED -> NOT_PASSED;
      case REPORTED -> ANSWER_FIRST;
      case OVERDUE, ASKED, CHANGING ->
          concern.work() != null && !concern.work().isInspection() ? STRING_FIRST : INSPECT_FIRST;
      case NOT_SET_UP -> IN_THE_WORKSHOP;
      case NOT_CHECKED -> CHECK_FIRST;
      case WATCHED, WEIGHING_DUE, ARROWS_NOT_WEIGHED, ARROWS_MISSING -> AS_IT_IS;
    };
  }

  private static Fielding onLoan(LocalDate dueOn, LocalDate today, LocalDate courseDay) {
    if (dueOn == null) {
      return AS_IT_IS;
    }
    if (!dueOn.isBefore(courseDay)) {
      return OUT_BEYOND;
    }
    return dueOn.isBefore(today) ? LATE : BACK_BY_THEN;
  }

  Chance chance() {
    return chance;
  }

  String said() {
    return said;
  }

  /** What a committee may count on. */
  enum Chance {
    AS_IT_IS,
    AFTER_WORK,
    NOT
  }
}
