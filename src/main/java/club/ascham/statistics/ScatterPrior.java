package club.ascham.statistics;

import club.ascham.mechanics.Domain;
import club.ascham.mechanics.ReadingScatter;
import java.util.Map;

/**
 * What is believed of a club's scatter before its own readings speak, as if so many degrees of
 * freedom of readings had been seen already.
 *
 * @param repeatability standard deviation of one person's repeat
 * @param repeats degrees of freedom that it counts for
 * @param between standard deviation of the readers' offsets
 * @param readers degrees of freedom that it counts for
 */
public record ScatterPrior(double repeatability, double repeats, double between, double readers) {
  /** Judged: some thirty pairs of readings outvote the prior, and a dozen readers. */
  private static final double REPEATS = 20;

  private static final double READERS = 8;

  /**
   * Judged: eye and square differ as much from day to day as they do from one person to another.
   */
  private static final double BETWEEN_MM = ReadingScatter.EYE_MM * Math.sqrt(0.5);

  /** No prior at all: what the readings say. */
  static final ScatterPrior NONE = new ScatterPrior(0, 0, 0, 0);

  public ScatterPrior {
    Domain.within("repeatability", repeatability, 0, 1e9);
    Domain.within("repeats", repeats, 0, 1e9);
    Domain.within("between", between, 0, 1e9);
    Domain.within("readers", readers, 0, 1e9);
  }

  /** Of brace, read in steps of {@code stepMm}. */
  public static ScatterPrior brace(double stepMm) {
    return whole(ReadingScatter.braceMm(stepMm));
  }

  /** Of tiller, two distances read in steps of {@code stepMm}. */
  public static ScatterPrior tiller(double stepMm) {
    return whole(ReadingScatter.tillerMm(stepMm));
  }

  private static ScatterPrior whole(double reproducibilityMm) {
    double repeatability =
        Math.sqrt(reproducibilityMm * reproducibilityMm - BETWEEN_MM * BETWEEN_MM);
    return new ScatterPrior(repeatability, REPEATS, BETWEEN_MM, READERS);
  }

  /** The scatter of a club that has no readings yet. */
  public Scatter scatter() {
    return new Scatter(repeatability, between, Map.of());
  }
}
