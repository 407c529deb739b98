package club.ascham.life;

import club.ascham.statistics.Service;
import club.ascham.units.ItemCode;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import java.util.Optional;

/**
 * One part's time in use.
 *
 * @param group what it is compared with: a string's material, a riser's or limbs' build
 * @param since the day of first use, purchase or entry, as the rules of upkeep count
 * @param watched the day from which the record knows of it; not before {@code since}
 * @param until the day it failed or left, today where it is in use
 * @param loans it went out on, as far as the record knows (likewise {@code shots})
 */
record PartLife(
    String bareCode,
    String group,
    LocalDate since,
    LocalDate watched,
    LocalDate until,
    End end,
    long loans,
    long shots) {

  /** What a life is counted in. */
  enum Measure {
    DAYS("days"),
    LOANS("loans"),
    SHOTS("shots");

    private final String said;

    Measure(String said) {
      this.said = said;
    }

    String said() {
      return said;
    }
  }

  /** A material or build as people say it: {@code screw in}, {@code HMPE}. */
  static String groupSaid(String constant) {
    return constant.length() <= 4 ? constant : constant.toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  boolean failed() {
    return end == End.FAILED;
  }

  long days() {
    return ChronoUnit.DAYS.between(since, until);
  }

  String code() {
    return new ItemCode(bareCode).display();
  }

  double age(Measure measure) {
    return switch (measure) {
      case DAYS -> days();
      case LOANS -> loans;
      case SHOTS -> shots;
    };
  }

  /**
   * Its time as the statistics take it; empty where it tells nothing: not watched for a day, or
   * counted in loans or shots and older than the record, which does not know those before.
   */
  Optional<Service> service(Measure measure) {
    double until = age(measure);
    if (measure == Measure.DAYS) {
      double entered = ChronoUnit.DAYS.between(since, watched);
      return until > entered
          ? Optional.of(new Service(entered, until, failed()))
          : Optional.empty();
    }
    return until > 0 && since.equals(watched)
        ? Optional.of(new Service(0, until, failed()))
        : Optional.empty();
  }
}
