package club.ascham.fleet;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;

/**
 * What the record says of twelve months.
 *
 * @param kits lent, and sessions held
 * @param shots that the bows are thought to have fired
 * @param condition month by month, of twice as long
 */
public record AnnualReport(
    LocalDate from,
    LocalDate to,
    int kits,
    int sessions,
    long shots,
    List<Month> condition,
    List<WorkDone> work,
    List<Come> come,
    List<Gone> gone,
    int withdrawn,
    int released) {

  /**
   * Checks and looks of a month.
   *
   * @param unfit to be adjusted first, or withdrawn
   */
  public record Month(LocalDate from, int fit, int unfit) {
    private static final DateTimeFormatter MONTH =
        DateTimeFormatter.ofPattern("MMM yyyy", Locale.UK);

    public String said() {
      return MONTH.format(from);
    }

    public String share() {
      return fit + unfit == 0 ? "" : Math.round(100.0 * fit / (fit + unfit)) + " %";
    }
  }

  /** A kind of work, how often it was done and how often it failed. */
  public record WorkDone(String said, int done, int failed) {}

  /** What was bought of a kind, in money where the price is known. */
  public record Come(String kind, int count, String paid) {}

  /** What left, and why. */
  public record Gone(String why, int count) {}

  public int checks() {
    return condition.stream()
        .filter(month -> !month.from().isBefore(from))
        .mapToInt(month -> month.fit() + month.unfit())
        .sum();
  }
}
