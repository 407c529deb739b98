package club.ascham.plan;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A part that may have to be replaced within some days.
 *
 * @param dueOn the day on which it is due to be replaced by then, as use goes; null: it is not
 * @param failing the probability that it fails within those days, given that it has lasted until
 *     now
 */
public record AboutTo(Part part, LocalDate dueOn, double failing) {

  /** Those due first, by their day; then the others, the likeliest to fail first. */
  public static List<AboutTo> within(int days, Fleet fleet, Assumptions assumed) {
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

  private static AboutTo of(int p, int days, Fleet fleet, Numbers numbers) {
    double due =
        IntStream.range(numbers.firstRoutine[p], numbers.firstRoutine[p + 1])
            .filter(r -> numbers.routine[r].replaces())
            .mapToDouble(r -> numbers.firstDue(r, 1))
            .min()
            .orElse(Double.POSITIVE_INFINITY);
    double failing =
        numbers.scale[p] == 0
            ? 0
            : -Math.expm1(
                numbers.hazardSoFar[p]
                    - Math.pow((numbers.age[p] + days) / numbers.scale[p], numbers.shape[p]));
    return new AboutTo(
        fleet.parts().get(p),
        due <= days ? fleet.today().plusDays((long) Math.floor(due)) : null,
        failing);
  }
}
