package club.ascham.planning;

import club.ascham.form.Typed;
import club.ascham.form.Words;
import club.ascham.plan.Assumptions;
import club.ascham.plan.Kind;
import club.ascham.rules.PlanRules;
import club.ascham.upkeep.Work;
import java.util.Map;
import java.util.Optional;
import java.util.StringJoiner;

/**
 * What someone would like to know the effect of.
 *
 * @param courses a term beyond those on record
 * @param dearer null: nothing costs more (or less)
 * @param work null: every interval stays (likewise days)
 * @param hours a week; null: as the rules say
 * @param seed of chance
 */
public record WhatIf(
    int courses, Kind dearer, int percent, Work work, Integer days, Double hours, int seed) {
  static final int REPLICATIONS = 1000;
  private static final int SEED = 1;

  /** As things stand. */
  public static final WhatIf NOTHING = new WhatIf(0, null, 0, null, null, null, SEED);

  static Optional<WhatIf> parse(Typed typed) {
    Integer courses = typed.whole("courses", 0, 20);
    Kind dearer = typed.word("dearer", Kind.class);
    Integer percent = typed.whole("percent", -90, 400);
    if (percent != null && percent != 0 && dearer == null && !typed.has("dearer")) {
      typed.fault("dearer", "What costs more?");
    }
    if (dearer != null && percent == null) {
      typed.fault("percent", "By how much?");
    }
    Work work = typed.word("work", Work.class);
    Integer days = typed.whole("days", 1, 4000);
    if (days != null && work == null && !typed.has("work")) {
      typed.fault("work", "Which work is done at another interval?");
    }
    if (work != null && days == null) {
      typed.fault("days", "After how many days?");
    }
    Double hours = typed.decimal("hours", 0, 200);
    Integer seed = typed.whole("seed", 0, 999_999_999);
    return typed.sound()
        ? Optional.of(
            new WhatIf(
                courses == null ? 0 : courses,
                dearer,
                percent == null ? 0 : percent,
                work,
                days,
                hours,
                seed == null ? SEED : seed))
        : Optional.empty();
  }

  /** The same chance with nothing changed: what it is compared with. */
  WhatIf base() {
    return new WhatIf(0, null, 0, null, null, null, seed);
  }

  /** The same with other hours. */
  public WhatIf with(double hoursAWeek) {
    return new WhatIf(courses, dearer, percent, work, days, hoursAWeek, seed);
  }

  public boolean changesNothing() {
    return equals(base());
  }

  Assumptions assumed(PlanRules.Basis basis, int shotsAnEvening) {
    return new Assumptions(
        seed,
        REPLICATIONS,
        hours == null ? basis.hoursAWeek() : hours,
        courses,
        new Assumptions.Course(
            basis.termsAYear(), basis.archersACourse(), basis.eveningsACourse(), shotsAnEvening),
        basis.usageSpreadPercent() / 100.0,
        dearer == null ? Map.of() : Map.of(dearer, 1 + percent / 100.0),
        work == null ? Map.of() : Map.of(work.word(), days));
  }

  /** In words: {@code one more course a term, string 25 % dearer}. */
  public String said() {
    StringJoiner said = new StringJoiner("; ");
    if (courses > 0) {
      said.add(courses == 1 ? "one more course a term" : courses + " more courses a term");
    }
    if (dearer != null) {
      said.add(
          "a %s %d %% %s"
              .formatted(
                  PlanRules.kindSaid(dearer),
                  Math.abs(percent),
                  percent < 0 ? "cheaper" : "dearer"));
    }
    if (work != null) {
      said.add(work.said() + " every " + days + " days");
    }
    if (hours != null) {
      said.add(Amounts.hoursAWeek(hours) + " hours a week");
    }
    return said.length() == 0 ? "as things stand" : said.toString();
  }

  /** What stands in the address. */
  public String query() {
    StringJoiner query = new StringJoiner("&", "?", "");
    query.setEmptyValue("");
    if (courses > 0) {
      query.add("courses=" + courses);
    }
    if (dearer != null) {
      query.add("dearer=" + Words.of(dearer)).add("percent=" + percent);
    }
    if (work != null) {
      query.add("work=" + work.word()).add("days=" + days);
    }
    if (hours != null) {
      query.add("hours=" + Amounts.hoursAWeek(hours));
    }
    if (seed != SEED) {
      query.add("seed=" + seed);
    }
    return query.toString();
  }
}
