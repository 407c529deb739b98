package club.ascham.statistics;

import club.ascham.statistics.Cause.Likely;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Whether one bow is really changing, from what was measured on it since it was last adjusted or a
 * part of it was changed.
 *
 * <p>To use it: {@code Drift.of(measured, braceScatter, tillerScatter, bolts)}. The first {@link
 * Measured} is the set-up figure (or the first check after the change); hand in what came after it,
 * in any order. Start anew with each logged adjustment and each change of a part, and where someone
 * looked after a <i>changing</i> and found nothing. The scatters are the club's: {@link
 * Readers#learnt} with {@link ScatterPrior#brace} and {@link ScatterPrior#tiller}.
 *
 * <p>From the second reading to the seventh the change from the first is judged against k
 * sqrt(s_R^2 + s_base^2), from the eighth on EWMA and CUSUM of the residuals ({@link Course}).
 * Brace and tiller are two looks at one bow, so each may be wrong in one reading of 400, and a
 * check in one of 200.
 *
 * @param readings checks that measured something: looks do not count
 * @param since when the change seems to have begun; null where the bow is steady
 * @param causes likeliest first; empty where the bow is steady or nothing fits
 * @param brace null: never measured (likewise {@code tiller})
 */
public record Drift(
    Answer answer, int readings, Instant since, List<Likely> causes, Judged brace, Judged tiller) {

  /** Readings in which nothing may be seen before the charts begin. */
  public static final int CHARTS_FROM = Course.CHARTED;

  /**
   * Checks, 9 times in 10, after which a sudden fall of 5 mm is found; measured with the scatter
   * that a club begins with, and people who take turns.
   */
  public static final int CHECKS_FOR_A_FALL = 3;

  /** Checks a fortnight apart, 9 times in 10, after which a fall of 2 mm a month is found. */
  public static final int CHECKS_FOR_CREEP = 6;

  /** This share of a limit, as 1.96 is of 2.807, is not nothing any more. */
  private static final double UNSURE_FROM = 0.7;

  /** When the first reading was taken that the others are held against; null: there is none. */
  public Instant begun() {
    Judged any = brace == null ? tiller : brace;
    return any == null ? null : any.chart().points().get(0).at();
  }

  /** Never more than three. */
  public enum Answer {
    /** Nothing beyond what readers scatter. */
    STEADY,
    /** Less than two readings, or one that lies further out than most: measure again. */
    UNSURE,
    /** More than the scatter explains. */
    CHANGING
  }

  /**
   * What one check measured; both null is a look, which counts as nothing seen.
   *
   * @param reader null: not known any more
   * @param tillerMm upper less lower distance
   */
  public record Measured(Instant at, String reader, Double braceMm, Double tillerMm) {}

  /**
   * One quantity at the newest reading of it.
   *
   * @param change from the first reading in mm, readers' offsets reckoned in
   * @param allowed what such a change may be
   * @param charted whether EWMA and CUSUM judge; before that the change does
   * @param ewma share of its limit: 1 is at the limit (likewise {@code cusum})
   */
  public record Judged(
      double change,
      double allowed,
      boolean charted,
      double ewma,
      double cusum,
      Answer answer,
      DriftChart chart) {}

  /**
   * @param measured since the last adjustment; the oldest is the set-up figure
   * @param bolts whether limb bolts set the tiller of this bow
   */
  public static Drift of(
      List<Measured> measured, Scatter braceScatter, Scatter tillerScatter, boolean bolts) {
    List<Measured> readings =
        measured.stream()
            .filter(check -> check.braceMm() != null || check.tillerMm() != null)
            .sorted(Comparator.comparing(Measured::at))
            .toList();
    double k = Scatter.k(Scatter.FALSE_ALARMS / 2);
    Course brace = Course.of(reads(readings, Measured::braceMm), braceScatter, k);
    Course tiller = Course.of(reads(readings, Measured::tillerMm), tillerScatter, k);
    Judged ofBrace = judged(brace, braceScatter);
    Judged ofTiller = judged(tiller, tillerScatter);
    Answer answer = worse(brace, tiller);
    if (answer == Answer.STEADY || Math.max(brace.steps().size(), tiller.steps().size()) < 2) {
      return new Drift(answer, readings.size(), null, List.of(), ofBrace, ofTiller);
    }
    Course louder = share(brace) >= share(tiller) ? brace : tiller;
    Instant since = louder.steps().get(louder.changedFrom()).read().at();
    List<Likely> causes =
        Cause.ranked(brace.shift(since, braceScatter), tiller.shift(since, tillerScatter), bolts);
    return new Drift(answer, readings.size(), since, causes, ofBrace, ofTiller);
  }

  private static List<Course.Read> reads(
      List<Measured> readings, Function<Measured, Double> quantity) {
    List<Course.Read> reads = new ArrayList<>();
    for (Measured reading : readings) {
      Double mm = quantity.apply(reading);
      if (mm != null) {
        reads.add(new Course.Read(reading.at(), reading.reader(), mm));
      }
    }
    return reads;
  }

  private static Judged judged(Course course, Scatter scatter) {
    if (course.isEmpty()) {
      return null;
    }
    Course.Step last = course.last();
    return new Judged(
        last.change(),
        last.allowed(),
        last.isCharted(),
        last.ewmaShare(),
        last.cusumShare(),
        answer(course),
        DriftChart.of(course, scatter));
  }

  private static Answer answer(Course course) {
    double share = share(course);
    if (share > 1) {
      return Answer.CHANGING;
    }
    return course.steps().size() < 2 || share >= UNSURE_FROM ? Answer.UNSURE : Answer.STEADY;
  }

  private static double share(Course course) {
    return course.isEmpty() ? 0 : course.last().share();
  }

  /** A quantity that was measured once says nothing yet. */
  private static Answer worse(Course brace, Course tiller) {
    return Stream.of(brace, tiller)
        .filter(course -> course.steps().size() > 1)
        .map(Drift::answer)
        .max(Comparator.naturalOrder())
        .orElse(Answer.UNSURE);
  }
}
