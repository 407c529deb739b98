package club.ascham.bow;

import club.ascham.units.Length;
import java.util.List;

/** Small bows for the tests of the trade's rules. */
final class Bows {
  private Bows() {}

  static RiserSpec adjustableRiser(int lengthIn) {
    return adjustableRiser(lengthIn, Hand.RIGHT, "ILF");
  }

  static RiserSpec adjustableRiser(int lengthIn, Hand hand, String fitting) {
    return new RiserSpec(Build.ADJUSTABLE, hand, lengthIn, fitting, null, null, false);
  }

  static RiserSpec screwInRiser(int lengthIn) {
    return new RiserSpec(Build.SCREW_IN, Hand.RIGHT, lengthIn, null, "Reedling", null, false);
  }

  static LimbsSpec slotInLimbs(LimbSize size, double markedLb) {
    return slotInLimbs(size, markedLb, "ILF", Known.UNKNOWN, null);
  }

  static LimbsSpec slotInLimbs(
      LimbSize size, double markedLb, String fitting, Known hmpeTips, Band makerBrace) {
    return new LimbsSpec(
        Build.ADJUSTABLE, size, null, fitting, null, markedLb, 28, 25, hmpeTips, makerBrace);
  }

  static LimbsSpec screwInLimbs(int bowLengthIn, double markedLb) {
    return new LimbsSpec(
        Build.SCREW_IN,
        null,
        bowLengthIn,
        null,
        "Reedling",
        markedLb,
        28,
        null,
        Known.UNKNOWN,
        null);
  }

  static StringSpec polyesterString(int forBowIn) {
    return string(forBowIn, null, StringMaterial.POLYESTER);
  }

  static StringSpec string(int forBowIn, Length measured, StringMaterial material) {
    return new StringSpec(forBowIn, measured, material, 12, null, null);
  }

  /** 25 in riser, medium limbs: 68 in, right-handed, with its string. */
  static RigSpec adjustableRig(double markedLb, Style style) {
    return rig(
        adjustableRiser(25), slotInLimbs(LimbSize.MEDIUM, markedLb), polyesterString(68), style);
  }

  /** Medium slot-in limbs marked on a 25 in riser, on another, with what a bow scale showed. */
  static RigSpec weighedRig(int riserIn, double markedLb, List<ScaleReading> weighed) {
    LimbsSpec limbs =
        new LimbsSpec(
            Build.ADJUSTABLE,
            LimbSize.MEDIUM,
            null,
            "ILF",
            null,
            markedLb,
            28,
            25,
            Known.UNKNOWN,
            null,
            weighed);
    return rig(adjustableRiser(riserIn), limbs, polyesterString(riserIn + 43), Style.SPLIT_FINGER);
  }

  static RigSpec screwInRig(int bowLengthIn, double markedLb) {
    return rig(
        screwInRiser(21),
        screwInLimbs(bowLengthIn, markedLb),
        polyesterString(bowLengthIn),
        Style.SPLIT_FINGER);
  }

  static RigSpec rig(RiserSpec riser, LimbsSpec limbs, StringSpec string, Style style) {
    return new RigSpec(riser, limbs, null, string, style);
  }

  static RigSpec onePieceRig(int bowLengthIn, double markedLb) {
    OnePieceSpec bow = new OnePieceSpec(null, bowLengthIn, markedLb, 24, Known.UNKNOWN, null);
    return new RigSpec(null, null, bow, polyesterString(bowLengthIn), Style.SPLIT_FINGER);
  }

  static SetUpFigures setUp(double braceMm, double upperMm, double lowerMm) {
    return new SetUpFigures(
        Length.ofMm(braceMm),
        BracePoint.GRIP_THROAT,
        Length.ofMm(upperMm),
        Length.ofMm(lowerMm),
        Length.ofMm(5),
        true,
        null,
        null,
        null);
  }
}
