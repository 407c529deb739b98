package club.ascham.verdict;

import club.ascham.bow.BracePoint;
import club.ascham.bow.Build;
import club.ascham.mechanics.OwnRecord;
import club.ascham.mechanics.TwistLimits;
import club.ascham.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** Verdicts of bows, readings and reports that a seed lays out, of every kind there is. */
public final class RandomVerdicts {
  private final Random random;

  private RandomVerdicts(long seed) {
    random = new Random(seed);
  }

  /** Empty where questions come first. */
  public static Optional<Verdict> of(long seed) {
    return new RandomVerdicts(seed).verdict() instanceof Verdict verdict
        ? Optional.of(verdict)
        : Optional.empty();
  }

  private Judgement verdict() {
    OnRecord bow = bow();
    Judge judge = new Judge(new BenchAdvice(TwistLimits.IN_PRINT, OwnRecord.NONE));
    boolean permit = random.nextBoolean();
    boolean second = one(4);
    Reading reading = reading(bow, second ? 8 : 20);
    Seen seen =
        new Seen(
            one(12) ? null : reading,
            signs(),
            new Reported(one(20), one(6)),
            one(15) ? List.of("S-0147-X is not on it", "there is L-0147-J") : List.of(),
            new Seen.Assured(one(4), one(2), false),
            one(8)
                ? List.of(new Seen.Unanswered("a bang,\n “like a shot” | and more", one(3)))
                : List.of());
    if (!second || seen.reading() == null) {
      return judge.verdict(bow, seen, permit);
    }
    boolean adjusts = bow.rig().tillerAdjusts();
    return judge.afterAdjustment(
        bow,
        new WorkDone(
            one(3) ? null : random.nextInt(20) - 10,
            adjusts && one(2) ? new Turns(eighths(), eighths()) : Turns.NONE,
            reading(bow, 8)),
        seen,
        permit);
  }

  private OnRecord bow() {
    Build build = Build.values()[random.nextInt(Build.values().length)];
    OnRecord usual =
        build == Build.ADJUSTABLE
            ? SeenBows.adjustable(turns(), turns(), turns())
            : SeenBows.of(build);
    return new OnRecord(
        one(4) ? usual.rig().withTwists(one(2) ? null : random.nextInt(60)) : usual.rig(),
        usual.setUp(),
        usual.targets(),
        one(2) ? Judge.READERS_SCATTER : Length.ofMm(2 + random.nextDouble() * 3),
        null,
        one(5),
        one(8) ? "it is overdue" : null,
        one(12) ? List.of("The limbs are withdrawn: “cracked”.") : List.of());
  }

  private Reading reading(OnRecord bow, double spread) {
    double brace = off(spread);
    return new Reading(
        bow.setUp().brace().plus(Length.ofMm(brace)),
        BracePoint.GRIP_THROAT,
        bow.setUp().tillerUpper().plus(Length.ofMm((one(5) ? 0 : brace) + off(spread / 2))),
        bow.setUp().tillerLower().plus(Length.ofMm((one(5) ? 0 : brace) + off(spread / 2))));
  }

  private List<Sign> signs() {
    List<Sign> signs = new ArrayList<>(SeenBows.signs());
    Signs.all().stream()
        .filter(known -> one(known.gravity() == Gravity.STOP ? 200 : 20))
        .map(KnownSign::seen)
        .forEach(signs::add);
    return signs;
  }

  private double off(double spread) {
    return one(3) ? 0 : random.nextGaussian() * spread / 2;
  }

  private Double turns() {
    return one(3) ? null : (Double) (random.nextInt(24) / 4.0);
  }

  private double eighths() {
    return (random.nextInt(5) - 2) / 8.0;
  }

  private boolean one(int in) {
    return random.nextInt(in) == 0;
  }
}
