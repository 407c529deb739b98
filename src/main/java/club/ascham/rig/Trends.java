package club.ascham.rig;

import club.ascham.bow.BracePoint;
import club.ascham.drawing.Trend;
import club.ascham.drift.DriftWords;
import club.ascham.drift.Drifts;
import club.ascham.rig.RigRecords.Checked;
import club.ascham.statistics.Drift;
import club.ascham.time.ClubTime;
import club.ascham.units.Length;
import club.ascham.verdict.Reading;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * How a rig's readings go, drawn and in a sentence.
 *
 * <p>Readings that jump are a seat or a slip before they are wear: so beside a verdict that looks
 * first, or withdraws, no cause of its own is named. Beside <em>fit</em> the sentence owns to the
 * change.
 */
@ApplicationScoped
public class Trends {
  private static final int SHOWN = 10;

  private final RigRecords records;
  private final Drifts drifts;
  private final ClubTime time;

  Trends(RigRecords records, Drifts drifts, ClubTime time) {
    this.records = records;
    this.drifts = drifts;
    this.time = time;
  }

  /**
   * @param drawing null: fewer than two readings
   * @param sentence whether it changes; null: not set up, so that nothing says what from
   * @param line the same in one line, where it changes; null: it does not
   * @param answer null: not set up
   */
  public record Shown(Trend drawing, String sentence, String line, Drift.Answer answer) {
    private static final Shown NOTHING = new Shown(null, null, null, null);

    private Shown saying(String other) {
      return new Shown(drawing, other, line, answer);
    }

    /** The sign beside the sentence; null where it is none yet. */
    public String sign() {
      return switch (answer) {
        case STEADY -> "fine";
        case UNSURE -> null;
        case CHANGING -> "note";
      };
    }
  }

  public Shown of(RigCard card) {
    if (card.targets() == null) {
      return Shown.NOTHING;
    }
    Drift drift = drift(card, null);
    List<Checked> checks = records.measured(card.id(), SHOWN);
    Shown shown = shown(drift, Trend.of(readings(card, checks), against(card, drift)));
    return drift != null && !checks.isEmpty() && checks.get(0).looksFirst()
        ? shown.saying(DriftWords.asItsCheckSays(drift, this::day))
        : shown;
  }

  /**
   * As it would be with what someone has typed and not saved yet, measured now: of that quantity
   * alone.
   *
   * @param brace null: it is tiller
   */
  public Shown with(RigCard card, Length brace, Length tiller) {
    Instant now = time.now();
    Drift drift =
        drift(
            card,
            new Drift.Measured(
                now, null, brace == null ? null : brace.mm(), tiller == null ? null : tiller.mm()));
    List<Trend.Reading> readings = readings(card, records.measured(card.id(), SHOWN));
    readings.add(new Trend.Reading(now, brace, tiller));
    Trend.Against against = against(card, drift);
    return shown(
        drift,
        brace != null ? Trend.ofBrace(readings, against) : Trend.ofTiller(readings, against));
  }

  private Shown shown(Drift drift, Trend drawing) {
    return drift == null
        ? new Shown(drawing, null, null, null)
        : new Shown(
            drawing,
            DriftWords.of(drift, this::day),
            DriftWords.line(drift, this::day),
            drift.answer());
  }

  private String day(Instant moment) {
    LocalDate day = time.dayOf(moment);
    return day.equals(time.today()) ? null : ClubTime.said(day);
  }

  private Drift drift(RigCard card, Drift.Measured typed) {
    return card.setUpId() == null || card.spec().isEmpty()
        ? null
        : drifts.of(card.setUpId(), card.spec().get().tillerAdjusts(), typed);
  }

  private Trend.Against against(RigCard card, Drift drift) {
    return new Trend.Against(records.adjustments(card.id()), card.targets(), card.setUp(), drift);
  }

  /** Brace to the button and brace to the throat are two quantities: no line joins them. */
  private static List<Trend.Reading> readings(RigCard card, List<Checked> checks) {
    BracePoint from =
        card.setUp() != null
            ? card.setUp().braceFrom()
            : checks.isEmpty() ? null : checks.get(0).reading().from();
    List<Trend.Reading> readings = new ArrayList<>();
    for (Checked check : checks) {
      Reading one = check.reading();
      if (one.from() == from) {
        readings.add(0, new Trend.Reading(check.happenedAt(), one.brace(), one.tiller()));
      }
    }
    return readings;
  }
}
