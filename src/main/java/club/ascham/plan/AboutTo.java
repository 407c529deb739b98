package club.ascham.plan;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A part that may have to be replaced within some days.
 *
 * @param dueOn the day on which it is due to be replaced by then, as use goes; null: it is not
 * @param by what makes it due then; null: it is not
 * @param failing the probability that it fails within those days, given that it has lasted until
 *     now
 */
public record AboutTo(PlannedPart part, LocalDate dueOn, Due by, double failing) {

  /** What makes a part due: the count that is reached first, such as 4000 shots. */
  public record Due(By by, int every) {}

  /** What is counted. */
  public enum By {
    DAYS,
    LOANS,
    SHOTS
  }

  /** Those due first, by their day; then the others, the likeliest to fail first. */
  public static List<AboutTo> within(int days, PlannedFleet fleet, Assumptions assumed) {
    Numbers numbers = new Numbers(fleet, assumed);
    return IntStream.range(0, numbers.parts)
        .mapToObj(p -> of(p, days, fleet, numbers))
        .filter(part -> part.dueOn() != null || part.failing() > 0)
        .sorted(
            Comparator.comparing(
                    AboutTo::dueOn, Comparator.nullsLast(Comparator.<LocalDate>naturalOrder()))
                .thenComparing(Comparator.comparingDouble(AboutTo::failing).reversed())
                .thenComparing(about -> about.part().code()))
        .toList();
  }

  private static AboutTo of(int p, int days, PlannedFleet fleet, Numbers numbers) {
    double due = Double.POSITIVE_INFINITY;
    Due by = null;
    for (int r = numbers.firstRoutine[p]; r < numbers.firstRoutine[p + 1]; r++) {
      if (numbers.routine[r].replaces() && numbers.firstDue(r, 1) < due) {
        due = numbers.firstDue(r, 1);
        by = by(numbers, r, due);
      }
    }
    double failing =
        numbers.scale[p] == 0
            ? 0
            : -Math.expm1(
                numbers.hazardSoFar[p]
                    - Math.pow((numbers.age[p] + days) / numbers.scale[p], numbers.shape[p]));
    boolean within = due <= days;
    return new AboutTo(
        fleet.parts().get(p),
        within ? fleet.today().plusDays((long) Math.floor(due)) : null,
        within ? by : null,
        failing);
  }

  /** A count that is reached, else the one that will be first. */
  private static Due by(Numbers numbers, int r, double due) {
    Routine routine = numbers.routine[r];
    int part = numbers.partOf[r];
    if (reached(routine.shotsLeft(), numbers.shotsADay[part], due)) {
      return new Due(By.SHOTS, routine.everyShots());
    }
    return reached(routine.loansLeft(), numbers.loansADay[part], due)
        ? new Due(By.LOANS, routine.everyLoans())
        : new Due(By.DAYS, routine.everyDays());
  }

  private static boolean reached(Integer left, double aDay, double due) {
    return left != null && (left == 0 || left / aDay <= due);
  }
}
