package club.ascham.learnt;

import club.ascham.id.RigId;
import club.ascham.learnt.History.Measured;
import club.ascham.learnt.History.Parts;
import club.ascham.learnt.History.SetUp;
import club.ascham.learnt.History.Work;
import club.ascham.mechanics.OwnRecord;
import club.ascham.mechanics.ReadingScatter;
import club.ascham.mechanics.Run;
import club.ascham.verdict.Reading;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Decides from the fitting intervals which adjustments tell of a bow as it is now.
 *
 * <ul>
 *   <li>What twists do belongs to the string, by its bundle, and to the length of the bow, by the
 *       angle at which limbs and string meet: it goes along to another bow of the same length, and
 *       a new string starts anew.
 *   <li>What bolts do belongs to riser and limbs together, by pitch and lever of the one and the
 *       stiffness of the other: when either changes, it is dropped.
 * </ul>
 *
 * <p>An adjustment counts when the same parts were fitted at both readings and between them.
 *
 * <p>Nothing is kept of it: it follows from checks, adjustments and fittings, so that a corrected
 * check corrects it.
 */
final class Carried {
  private final History history;
  private final Parts now;
  private final List<Run> counted = new ArrayList<>();
  private final List<Run> added = new ArrayList<>();
  private final List<Run> bolts = new ArrayList<>();

  private Carried(History history, Parts now) {
    this.history = history;
    this.now = now;
  }

  /**
   * @param now the parts that are fitted to {@code rig}
   */
  static Learnt of(History history, RigId rig, Parts now) {
    Carried carried = new Carried(history, now);
    history.work().stream().map(Work::rig).distinct().forEach(carried::readRig);
    return new Learnt(
        new OwnRecord(carried.counted, carried.added, carried.bolts),
        carried.twists(rig, Instant.MAX),
        carried.turns(rig, true),
        carried.turns(rig, false),
        carried.sinceBolts(rig));
  }

  private void readRig(RigId rig) {
    Series twists = new Series();
    Series turns = new Series();
    Work last = null;
    for (Work work : history.workOn(rig)) {
      boolean goesOn = last != null && Objects.equals(last.after(), work.before());
      if (!goesOn) {
        close(twists, turns);
      }
      add(work, twists, turns);
      last = work;
    }
    close(twists, turns);
  }

  private void add(Work work, Series twists, Series turns) {
    Measured before = history.reading(work.before()).orElse(null);
    Measured after = history.reading(work.after()).orElse(null);
    Parts parts = before == null || after == null ? null : sameParts(work, before, after);
    boolean twistsTell =
        parts != null
            && parts.string() != null
            && parts.string().equals(now.string())
            && sameLength(parts)
            && before.reading().from() == after.reading().from()
            && !work.twistsUncounted();
    boolean boltsTell =
        parts != null
            && parts.limbs() != null
            && parts.bow().equals(now.bow())
            && !work.boltsUncounted();
    if (twistsTell) {
      if (twists.last == null) {
        Integer count = twists(work.rig(), work.at());
        twists.start(before, count == null ? 0 : count, count != null, brace(before.reading()));
      }
      twists.move(after, work.twists(), brace(after.reading()));
    } else {
      closeTwists(twists);
    }
    if (boltsTell) {
      if (turns.last == null) {
        turns.start(before, 0, true, tiller(before.reading()));
      }
      turns.move(after, work.upper() - work.lower(), tiller(after.reading()));
    } else {
      closeTurns(turns);
    }
  }

  private static Run.Point brace(Reading of) {
    return new Run.Point(0, of.brace().mm(), ReadingScatter.braceMm(of.brace().readingStep().mm()));
  }

  private static Run.Point tiller(Reading of) {
    return new Run.Point(
        0, of.tiller().mm(), ReadingScatter.tillerMm(of.tillerUpper().readingStep().mm()));
  }

  /** The parts of the bow from the first reading to the second; null where they changed. */
  private Parts sameParts(Work work, Measured before, Measured after) {
    Parts parts = history.parts(work.rig(), before.at());
    return parts.equals(history.parts(work.rig(), work.at()))
            && parts.equals(history.parts(work.rig(), after.at()))
        ? parts
        : null;
  }

  private boolean sameLength(Parts parts) {
    Integer length = history.bowLengthsIn().get(parts.bow());
    return parts.bow().equals(now.bow())
        || (length != null && length.equals(history.bowLengthsIn().get(now.bow())));
  }

  private void close(Series twists, Series turns) {
    closeTwists(twists);
    closeTurns(turns);
  }

  private void closeTwists(Series twists) {
    Run run = new Run(twists.points);
    if (run.moves() > 0) {
      if (twists.counted) {
        counted.add(run);
      }
      double first = run.points().get(0).at();
      added.add(run.against(at -> at - first));
    }
    twists.end();
  }

  private void closeTurns(Series turns) {
    Run run = new Run(turns.points);
    if (run.moves() > 0) {
      bolts.add(run);
    }
    turns.end();
  }

  /** Twists in the string of this rig just before a moment; null where nobody can tell. */
  private Integer twists(RigId rig, Instant before) {
    SetUp setUp = history.setUp(rig, before).orElse(null);
    if (setUp == null || !Objects.equals(setUp.string(), now.string())) {
      return null;
    }
    Integer twists = setUp.twists();
    for (Work work : history.work()) {
      if (since(work, setUp) && work.at().isBefore(before)) {
        if (twists == null || work.twistsUncounted()) {
          return null;
        }
        twists = Math.max(0, twists + work.twists());
      }
    }
    return twists;
  }

  /** Turns that a bolt stands out now; null where nobody can tell. */
  private Double turns(RigId rig, boolean upper) {
    SetUp setUp = history.setUp(rig, Instant.MAX).orElse(null);
    if (setUp == null) {
      return null;
    }
    Double out = upper ? setUp.turnsUpper() : setUp.turnsLower();
    for (Work work : history.work()) {
      if (since(work, setUp)) {
        if (out == null || work.boltsUncounted()) {
          return null;
        }
        out = Math.max(0, out - (upper ? work.upper() : work.lower()));
      }
    }
    return out;
  }

  /** The readings after the last bolt work since the set-up; what is being judged now is none. */
  private Reading sinceBolts(RigId rig) {
    SetUp setUp = history.setUp(rig, Instant.MAX).orElse(null);
    Reading last = null;
    for (Work work : history.workOn(rig)) {
      boolean turned = work.upper() != 0 || work.lower() != 0 || work.boltsUncounted();
      if (setUp != null && since(work, setUp) && turned && !history.isBeingJudged(work.after())) {
        last = history.reading(work.after()).map(Measured::reading).orElse(last);
      }
    }
    return last;
  }

  private static boolean since(Work work, SetUp setUp) {
    return work.rig().equals(setUp.rig()) && !work.at().isBefore(setUp.finishedAt());
  }

  /** A run that is being read. */
  private static final class Series {
    private final List<Run.Point> points = new ArrayList<>();
    private Measured last;
    private double at;
    private boolean counted;

    void start(Measured first, double from, boolean isCounted, Run.Point point) {
      at = from;
      counted = isCounted;
      put(first, point);
    }

    void move(Measured next, double by, Run.Point point) {
      at += by;
      put(next, point);
    }

    private void put(Measured reading, Run.Point point) {
      last = reading;
      points.add(new Run.Point(at, point.mm(), point.sdMm()));
    }

    void end() {
      points.clear();
      last = null;
    }
  }
}
