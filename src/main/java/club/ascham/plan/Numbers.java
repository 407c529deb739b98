package club.ascham.plan;

import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * A fleet under some assumptions as plain arrays, made once and only read from then on: one place
 * for each part, the routines of all parts one after another.
 */
final class Numbers {
  private static final int DAYS_A_WEEK = Calendar.DAYS_A_WEEK;

  final Calendar calendar;
  final List<String> alike;
  final int rigs;
  final int[] outForDays;
  final int minutesAWeek;

  // by part
  final int parts;
  final int[] rig;
  final int[] kind;
  final int[] group;
  final double[] age;
  final double[] loansADay;
  final double[] shotsADay;
  final double[] shape;
  final double[] scale;
  final double[] hazardSoFar;
  final int[] firstRoutine;

  // by routine
  final int routines;
  final int[] partOf;
  final Routine[] routine;
  final int[] slack;

  /** The distinct slacks in weeks, smallest first; {@link #slack} is a place among them. */
  final int[] slackWeeks;

  // by kind
  final long[] price;

  /** What a failure costs beside the part: its evening, and what it takes along. */
  final long[] besidePart;

  final int[] leadDays;
  final int[] fitMinutes;

  final int[] spares;

  Numbers(PlannedFleet fleet, Assumptions assumed) {
    calendar = new Calendar(fleet.today());
    rigs = fleet.rigs().size();
    outForDays = fleet.rigs().stream().mapToInt(PlannedFleet.Rig::outForDays).toArray();
    minutesAWeek = (int) Math.round(assumed.hoursAWeek() * 60);
    alike = fleet.parts().stream().map(PlannedPart::alike).distinct().sorted().toList();
    spares = alike.stream().mapToInt(word -> fleet.spares().getOrDefault(word, 0)).toArray();

    parts = fleet.parts().size();
    rig = new int[parts];
    kind = new int[parts];
    group = new int[parts];
    age = new double[parts];
    loansADay = new double[parts];
    shotsADay = new double[parts];
    shape = new double[parts];
    scale = new double[parts];
    hazardSoFar = new double[parts];
    firstRoutine = new int[parts + 1];
    routines = fleet.parts().stream().mapToInt(part -> part.routines().size()).sum();
    partOf = new int[routines];
    routine = new Routine[routines];
    slack = new int[routines];
    slackWeeks =
        fleet.parts().stream()
            .flatMap(part -> part.routines().stream())
            .map(r -> r.slackDays() / DAYS_A_WEEK)
            .collect(Collectors.toCollection(TreeSet::new))
            .stream()
            .mapToInt(Integer::intValue)
            .toArray();
    double moreLoans = rigs == 0 ? 0 : assumed.coursesATerm() * assumed.course().loansADay() / rigs;
    int next = 0;
    for (int p = 0; p < parts; p++) {
      PlannedPart part = fleet.parts().get(p);
      rig[p] = part.rig();
      kind[p] = part.kind().ordinal();
      group[p] = alike.indexOf(part.alike());
      age[p] = part.ageDays();
      boolean fitted = part.rig() >= 0;
      loansADay[p] = part.loansADay() + (fitted ? moreLoans : 0);
      shotsADay[p] =
          part.shotsADay() + (fitted ? moreLoans * assumed.course().shotsAnEvening() : 0);
      if (part.life() != null) {
        shape[p] = part.life().shape();
        scale[p] = part.life().scaleDays() * wearOf(part, shotsADay[p]);
        hazardSoFar[p] = Math.pow(part.ageDays() / scale[p], shape[p]);
      }
      firstRoutine[p] = next;
      for (Routine each : part.routines()) {
        partOf[next] = p;
        routine[next] = assumed.asAssumed(each);
        slack[next] = Arrays.binarySearch(slackWeeks, each.slackDays() / DAYS_A_WEEK);
        next++;
      }
    }
    firstRoutine[parts] = next;

    Kind[] kinds = Kind.values();
    price = new long[kinds.length];
    besidePart = new long[kinds.length];
    leadDays = new int[kinds.length];
    fitMinutes = new int[kinds.length];
    for (Kind each : kinds) {
      Terms terms = fleet.terms().get(each);
      price[each.ordinal()] =
          Math.round(terms.priceMinor() * assumed.priceFactors().getOrDefault(each, 1.0));
      besidePart[each.ordinal()] = Math.round(price[each.ordinal()] * (terms.failureTimes() - 1));
      leadDays[each.ordinal()] = terms.leadDays();
      fitMinutes[each.ordinal()] = terms.minutes();
    }
  }

  /** Who shoots more wears out sooner, in proportion: a life in days is a life in shots. */
  private static double wearOf(PlannedPart part, double shotsADay) {
    return part.shotsADay() > 0 && shotsADay > 0 ? part.shotsADay() / shotsADay : 1;
  }

  /**
   * When a routine is next due.
   *
   * @param fromDay when it was last done, or its part was new
   * @param usage factor on loans and shots
   * @return a day of the plan; infinite: never again
   */
  double dueAfter(int r, double fromDay, double usage) {
    Routine each = routine[r];
    return due(r, fromDay, each.everyDays(), each.everyLoans(), each.everyShots(), usage);
  }

  double firstDue(int r, double usage) {
    Routine each = routine[r];
    return due(r, 0, each.dueInDays(), each.loansLeft(), each.shotsLeft(), usage);
  }

  private double due(int r, double from, Integer days, Integer loans, Integer shots, double usage) {
    int part = partOf[r];
    double due = Double.POSITIVE_INFINITY;
    if (days != null) {
      due = from + days;
    }
    if (loans != null) {
      due = Math.min(due, from + lasts(loans, loansADay[part] * usage));
    }
    if (shots != null) {
      due = Math.min(due, from + lasts(shots, shotsADay[part] * usage));
    }
    return due;
  }

  /** Days until so many are reached; what is reached already is so whatever the use. */
  private static double lasts(int left, double aDay) {
    return left == 0 ? 0 : left / aDay;
  }
}
