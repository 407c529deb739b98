package club.ascham.learnt;

import club.ascham.id.ItemId;
import club.ascham.id.RigId;
import club.ascham.verdict.Reading;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What was done to the rigs that some parts were ever fitted to, as far as one can learn from it.
 *
 * @param work in the order in which it happened
 * @param measured the checks before and after that work, and the checks that correct any
 * @param bowLengthsIn of pairs of body and limbs, where it is known
 */
record History(
    List<Work> work,
    List<Measured> measured,
    List<Fitting> fittings,
    List<SetUp> setUps,
    Map<Bow, Integer> bowLengthsIn) {
  /** Stands for a check that is not kept yet. */
  private static final long BEING_JUDGED = Long.MAX_VALUE;

  boolean isBeingJudged(Long check) {
    return check != null && check == BEING_JUDGED;
  }

  /** Of a bow on which nothing was done since it was set up. */
  static History untouched(List<SetUp> setUps) {
    return new History(List.of(), List.of(), List.of(), setUps, Map.of());
  }

  /**
   * An adjustment.
   *
   * @param before the check before it; null: none (likewise {@code after})
   * @param twistsAdded null: not counted, or none
   * @param upperIn null: not counted, or none (likewise {@code lowerIn})
   * @param twistsAsked whether twists had been advised, and {@code boltsAsked} bolts
   */
  record Work(
      long id,
      RigId rig,
      Instant at,
      Long before,
      Long after,
      Integer twistsAdded,
      Double upperIn,
      Double lowerIn,
      boolean twistsAsked,
      boolean boltsAsked) {

    /** Twists may have gone in or out that nobody counted. */
    boolean twistsUncounted() {
      return twistsAdded == null && twistsAsked;
    }

    boolean boltsUncounted() {
      return upperIn == null && lowerIn == null && boltsAsked;
    }

    Work measuredBy(long check) {
      return new Work(
          id, rig, at, before, check, twistsAdded, upperIn, lowerIn, twistsAsked, boltsAsked);
    }

    /** Whether this was begun before {@code next} was, and not measured between the two. */
    boolean unmeasuredBefore(Work next) {
      return after == null && before != null && before.equals(next.before());
    }

    /** Both as one, measured as {@code next} was. */
    Work and(Work next) {
      return new Work(
          id,
          rig,
          at,
          before,
          next.after(),
          twistsAdded == null && next.twistsAdded() == null ? null : twists() + next.twists(),
          upperIn == null && next.upperIn() == null ? null : upper() + next.upper(),
          lowerIn == null && next.lowerIn() == null ? null : lower() + next.lower(),
          twistsAsked,
          boltsAsked);
    }

    int twists() {
      return twistsAdded == null ? 0 : twistsAdded;
    }

    double upper() {
      return upperIn == null ? 0 : upperIn;
    }

    double lower() {
      return lowerIn == null ? 0 : lowerIn;
    }
  }

  /**
   * The readings of a check.
   *
   * @param corrects the check that was typed wrongly; null: none
   */
  record Measured(long id, Long corrects, Instant at, Reading reading) {
    /** A correction tells what was read when the check was made that it corrects. */
    Measured takenAt(Instant then) {
      return new Measured(id, corrects, then, reading);
    }
  }

  /** Where a part is fitted. */
  enum Place {
    BODY,
    LIMBS,
    STRING
  }

  /**
   * @param until null: still
   */
  record Fitting(RigId rig, ItemId item, Place place, Instant from, Instant until) {
    boolean at(Instant moment) {
      return !from.isAfter(moment) && (until == null || until.isAfter(moment));
    }
  }

  /**
   * A finished set-up; what was not counted is null.
   *
   * @param string the one that was fitted then
   * @param twists in the string it was done with; where none were counted then, those that the
   *     register has of the string that is fitted now
   */
  record SetUp(
      RigId rig,
      Instant finishedAt,
      ItemId string,
      Integer twists,
      Double turnsUpper,
      Double turnsLower) {}

  /**
   * @param limbs null: a one-piece bow
   */
  record Bow(ItemId body, ItemId limbs) {}

  /** The parts of a rig at one moment; null: none fitted. */
  record Parts(ItemId body, ItemId limbs, ItemId string) {
    Bow bow() {
      return new Bow(body, limbs);
    }
  }

  /** The same with a second measurement that is being judged, and not yet kept. */
  History with(SecondMeasurement second) {
    long id = BEING_JUDGED;
    List<Work> all =
        work.stream()
            .map(one -> one.id() == second.adjustment() ? one.measuredBy(id) : one)
            .toList();
    List<Measured> readings = new ArrayList<>(measured);
    readings.add(new Measured(id, null, second.at(), second.reading()));
    return new History(all, readings, fittings, setUps, bowLengthsIn);
  }

  /** The work on one rig; what was done in two goes between two readings is one piece. */
  List<Work> workOn(RigId rig) {
    List<Work> pieces = new ArrayList<>();
    for (Work next : work) {
      if (!next.rig().equals(rig)) {
        continue;
      }
      int last = pieces.size() - 1;
      if (last >= 0 && pieces.get(last).unmeasuredBefore(next)) {
        pieces.set(last, pieces.get(last).and(next));
      } else {
        pieces.add(next);
      }
    }
    return pieces;
  }

  Parts parts(RigId rig, Instant at) {
    return new Parts(
        part(rig, Place.BODY, at), part(rig, Place.LIMBS, at), part(rig, Place.STRING, at));
  }

  private ItemId part(RigId rig, Place place, Instant at) {
    return fittings.stream()
        .filter(fitting -> fitting.rig().equals(rig) && fitting.place() == place && fitting.at(at))
        .map(Fitting::item)
        .findFirst()
        .orElse(null);
  }

  /** The readings of this check, as they were corrected; empty where none were taken. */
  Optional<Measured> reading(Long check) {
    if (check == null) {
      return Optional.empty();
    }
    long counts = check;
    Optional<Measured> correction = correction(counts);
    while (correction.isPresent()) {
      counts = correction.get().id();
      correction = correction(counts);
    }
    Instant at = one(check).map(Measured::at).orElse(null);
    return one(counts)
        .filter(one -> one.reading() != null && one.reading().isWhole())
        .map(one -> one.takenAt(at));
  }

  private Optional<Measured> one(long check) {
    return measured.stream().filter(one -> one.id() == check).findFirst();
  }

  private Optional<Measured> correction(long check) {
    return measured.stream()
        .filter(one -> one.corrects() != null && one.corrects() == check && one.id() > check)
        .reduce((one, later) -> later);
  }

  /** The set-up of this rig that was finished last by then. */
  Optional<SetUp> setUp(RigId rig, Instant by) {
    return setUps.stream()
        .filter(one -> one.rig().equals(rig) && !one.finishedAt().isAfter(by))
        .max(Comparator.comparing(SetUp::finishedAt));
  }
}
