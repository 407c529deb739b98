package club.ascham.drift;

import club.ascham.statistics.Readers;
import club.ascham.statistics.Scatter;
import club.ascham.statistics.ScatterPrior;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import club.ascham.units.Length;
import club.ascham.verdict.Reading;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;

/**
 * How far this club's readings lie from what is there. Reckoned once a day, from the readings that
 * were there then: every check asks for it, and one reading more or less does not move it.
 *
 * <p>A verdict that changed with the tenth decimal of somebody else's reading would be hard to
 * explain.
 */
@ApplicationScoped
public class ClubScatter {
  /** The coarser of the scales in use, until the readings themselves speak: 1/16 in. */
  private static final double STEP_MM = 1.5875;

  private static final int READINGS = 4_000;

  /** So many standard deviations to either side hold nine in ten. */
  static final double LIKELY = 1.645;

  private final Rows rows;
  private final ClubTime time;
  private volatile Known known;

  ClubScatter(Rows rows, ClubTime time) {
    this.rows = rows;
    this.time = time;
  }

  /**
   * @param day the club's day on which it was reckoned
   * @param readings what it was reckoned from
   * @param change how far two readings of one bow by two people may lie apart before it counts as
   *     changed; the larger of brace and tiller, which hardly differ
   */
  public record Known(LocalDate day, int readings, Scatter brace, Scatter tiller, Length change) {}

  private record Read(String bow, String reader, Reading reading) {
    Readers.Reading of(Function<Reading, Length> quantity) {
      return new Readers.Reading(bow, reader, quantity.apply(reading).mm());
    }
  }

  public Known today() {
    Known now = known;
    if (now == null || !now.day().equals(time.today())) {
      now = reckoned(time.today());
      known = now;
    }
    return now;
  }

  static double change(Scatter of) {
    return of.allowedChange(of.reproducibility(), Scatter.FALSE_ALARMS / 2);
  }

  private Known reckoned(LocalDate day) {
    List<Read> reads = reads();
    Scatter brace =
        Readers.learnt(
            reads.stream().map(read -> read.of(Reading::brace)).toList(),
            ScatterPrior.brace(STEP_MM));
    Scatter tiller =
        Readers.learnt(
            reads.stream().map(read -> read.of(Reading::tiller)).toList(),
            ScatterPrior.tiller(STEP_MM));
    return new Known(
        day, reads.size(), brace, tiller, Length.ofMm(Math.max(change(brace), change(tiller))));
  }

  /** One bow within one month between two adjustments counts as one thing: it hardly drifts. */
  private List<Read> reads() {
    return rows.list(
        Read.class,
        """
        SELECT c.set_up_id || ' ' || substr(c.happened_at, 1, 7) || ' ' ||
               (SELECT count(*) FROM adjustment a
                 WHERE a.rig_id = c.rig_id AND a.happened_at <= c.happened_at) AS bow,
               c.checked_by AS reader, c.brace, c.brace_from AS reading_from, c.tiller_upper, c.tiller_lower
          FROM bow_check c JOIN set_up u ON u.id = c.set_up_id AND u.brace_from = c.brace_from
         WHERE c.brace IS NOT NULL AND c.tiller_upper IS NOT NULL AND c.tiller_lower IS NOT NULL
           AND NOT EXISTS (SELECT 1 FROM bow_check n WHERE n.corrects_id = c.id)
         ORDER BY c.happened_at DESC, c.id DESC LIMIT ?1""",
        READINGS);
  }
}
