package club.ascham.verdict;

import club.ascham.bow.Band;
import club.ascham.bow.BracePoint;
import club.ascham.bow.Build;
import club.ascham.bow.Hand;
import club.ascham.bow.Known;
import club.ascham.bow.LimbSize;
import club.ascham.bow.LimbsSpec;
import club.ascham.bow.OnePieceSpec;
import club.ascham.bow.RigSpec;
import club.ascham.bow.RiserSpec;
import club.ascham.bow.SetUpFigures;
import club.ascham.bow.StringMaterial;
import club.ascham.bow.StringSpec;
import club.ascham.bow.Style;
import club.ascham.bow.Target;
import club.ascham.bow.Targets;
import club.ascham.units.Length;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** Bows on record, and what was seen of them, for the tests of the verdict. */
final class SeenBows {
  static final Target BRACE_68 =
      new Target(Band.ofInches(8.5, 8.75), Band.ofInches(8.1, 9.15), "a guide, 68 in");
  static final Target SPLIT_FINGER = new Target(Band.ofMm(0, 6), Band.ofMm(-4, 10), "split finger");
  static final Target FIXED = new Target(null, Band.ofMm(0, 10), "fixed");

  private SeenBows() {}

  /** 68 in, brace 220 mm, tiller +4 mm (182 and 178), split finger, maker's turns unknown. */
  static OnRecord adjustable() {
    return adjustable(null, null, null);
  }

  static OnRecord adjustable(Double maxTurnsOut, Double turnsUpper, Double turnsLower) {
    return SeenBows.onRecord(
        adjustableRig(maxTurnsOut, 40),
        setUp(220, 182, 178, turnsUpper, turnsLower, null),
        new Targets(BRACE_68, SPLIT_FINGER, nocking()));
  }

  /** 62 in, brace 195 mm, tiller +4 mm, no band to aim for but the set-up figure and 10 mm. */
  static OnRecord screwIn() {
    return fixed(
        new RigSpec(
            new RiserSpec(Build.SCREW_IN, Hand.RIGHT, 21, null, "Reedling", null, false),
            new LimbsSpec(Build.SCREW_IN, null, 62, null, "Reedling", 18, 28, null, Known.NO, null),
            null,
            string(62, 30),
            Style.SPLIT_FINGER));
  }

  static OnRecord onePiece() {
    return fixed(
        new RigSpec(
            null,
            null,
            new OnePieceSpec(null, 54, 14, 24, Known.NO, null),
            string(54, 30),
            Style.SPLIT_FINGER));
  }

  private static OnRecord fixed(RigSpec rig) {
    return SeenBows.onRecord(
        rig,
        setUp(195, 162, 158, null, null, null),
        new Targets(
            new Target(null, Band.around(Length.ofMm(195), Length.ofMm(10)), "set-up figure"),
            FIXED,
            nocking()));
  }

  static OnRecord of(Build build) {
    return switch (build) {
      case ADJUSTABLE -> adjustable();
      case SCREW_IN -> screwIn();
      case ONE_PIECE -> onePiece();
    };
  }

  static RigSpec adjustableRig(Double maxTurnsOut, Integer twists) {
    return new RigSpec(
        new RiserSpec(Build.ADJUSTABLE, Hand.RIGHT, 25, "ILF", null, maxTurnsOut, false),
        new LimbsSpec(
            Build.ADJUSTABLE, LimbSize.MEDIUM, null, "ILF", null, 28, 28, 25, Known.YES, null),
        null,
        string(68, twists),
        Style.SPLIT_FINGER);
  }

  static StringSpec string(int forBowIn, Integer twists) {
    return new StringSpec(forBowIn, null, StringMaterial.POLYESTER, 12, null, twists);
  }

  static SetUpFigures setUp(
      double braceMm,
      double upperMm,
      double lowerMm,
      Double turnsUpper,
      Double turnsLower,
      Integer twists) {
    return new SetUpFigures(
        Length.ofMm(braceMm),
        BracePoint.GRIP_THROAT,
        Length.ofMm(upperMm),
        Length.ofMm(lowerMm),
        Length.ofMm(5),
        true,
        turnsUpper,
        turnsLower,
        twists);
  }

  private static Target nocking() {
    return new Target(Band.ofInches(0, 0.5), null, "window");
  }

  static Reading reading(double braceMm, double upperMm, double lowerMm) {
    return new Reading(
        Length.ofMm(braceMm), BracePoint.GRIP_THROAT, Length.ofMm(upperMm), Length.ofMm(lowerMm));
  }

  /**
   * The same where both distances changed by what brace changed from the set-up, as they do: given
   * as they would be at the set-up's brace.
   */
  static Reading following(OnRecord bow, double braceMm, double upperMm, double lowerMm) {
    double byBrace = braceMm - bow.setUp().brace().mm();
    return reading(braceMm, upperMm + byBrace, lowerMm + byBrace);
  }

  /** The reading that equals the set-up figures. */
  static Reading asSetUp(OnRecord bow) {
    SetUpFigures setUp = bow.setUp();
    return new Reading(setUp.brace(), setUp.braceFrom(), setUp.tillerUpper(), setUp.tillerLower());
  }

  /** Measured so, every part answered fine, limbs not looked at again. */
  static Seen seen(Reading reading, Sign... extra) {
    return SeenBows.seen(reading, signs(extra), Reported.NOTHING, List.of(), false);
  }

  /** The same once someone has looked that limbs and loops are seated. */
  static Seen seated(Reading reading) {
    return SeenBows.seen(reading, signs(), Reported.NOTHING, List.of(), true);
  }

  static List<Sign> signs(Sign... extra) {
    List<Sign> signs = new ArrayList<>();
    for (BowPart part : BowPart.values()) {
      signs.add(new Sign(part, Gravity.FINE, "fine"));
    }
    signs.addAll(Arrays.asList(extra));
    return signs;
  }

  /** The steps as they are read at the bench, cautions and all. */
  static String said(Verdict.AdjustFirst verdict) {
    return verdict.steps().stream()
        .map(step -> step.words() + step.caution().map(" "::concat).orElse(""))
        .collect(Collectors.joining("\n"));
  }

  /** Of a bow of which nothing was told. */
  static Seen seen(
      Reading reading,
      List<Sign> signs,
      Reported reported,
      List<String> missing,
      boolean limbsSeated) {
    return seen(reading, signs, reported, missing, limbsSeated, List.of());
  }

  /** Of a bow that nothing else is said of than whether its limbs are seated. */
  static Seen seen(
      Reading reading,
      List<Sign> signs,
      Reported reported,
      List<String> missing,
      boolean limbsSeated,
      List<Seen.Unanswered> unanswered) {
    return seen(
        reading, signs, reported, missing, new Seen.Assured(limbsSeated, false, false), unanswered);
  }

  static Seen seen(
      Reading reading,
      List<Sign> signs,
      Reported reported,
      List<String> missing,
      Seen.Assured assured,
      List<Seen.Unanswered> unanswered) {
    return new Seen(reading, signs, reported, missing, assured, unanswered);
  }

  /** Of a club whose readers are not known yet, and a bow that nothing else is known of. */
  static OnRecord onRecord(RigSpec rig, SetUpFigures setUp, Targets targets) {
    return onRecord(rig, setUp, targets, Judge.READERS_SCATTER, null, false, null);
  }

  /** Of a bow that nothing dangerous stands against. */
  static OnRecord onRecord(
      RigSpec rig,
      SetUpFigures setUp,
      Targets targets,
      Length scatter,
      Reading sinceBolts,
      boolean changing,
      String noTwists) {
    return onRecord(rig, setUp, targets, scatter, sinceBolts, changing, noTwists, List.of());
  }

  static OnRecord onRecord(
      RigSpec rig,
      SetUpFigures setUp,
      Targets targets,
      Length scatter,
      Reading sinceBolts,
      boolean changing,
      String noTwists,
      List<String> dangers) {
    return new OnRecord(rig, setUp, targets, scatter, sinceBolts, changing, noTwists, dangers);
  }
}
