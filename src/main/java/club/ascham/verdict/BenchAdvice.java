package club.ascham.verdict;

import club.ascham.bow.RigSpec;
import club.ascham.bow.SetUpFigures;
import club.ascham.bow.StringSpec;
import club.ascham.mechanics.BoltReckoning;
import club.ascham.mechanics.OutOfDomain;
import club.ascham.mechanics.OwnRecord;
import club.ascham.mechanics.TwistLimits;
import club.ascham.mechanics.TwistReckoning;
import club.ascham.mechanics.TwistResponse;
import club.ascham.mechanics.TwistedString;
import club.ascham.units.Length;
import club.ascham.verdict.TwistAdvice.Reach;
import java.util.Optional;

/**
 * Advice from the mechanics and from what this bow's own adjustments showed; where its string is
 * not known well enough, from the trade's rule of thumb.
 *
 * @param limits the twists that this club takes as sound
 * @param record what was tried on this bow
 */
public record BenchAdvice(TwistLimits limits, OwnRecord record) implements Advice {
  /** Shorter by this than its bow length, near enough for its geometry: 3 in, the AMO's rule. */
  private static final double STRING_BELOW_BOW_MM = 76.2;

  /** A tiller beyond it is no bolt's doing. */
  private static final Length LARGEST_TILLER = Length.ofMm(60);

  @Override
  public TwistAdvice twists(RigSpec rig, Length braceNow, Length aim) {
    TwistReckoning twists =
        TwistReckoning.of(response(rig).orElseThrow(), braceNow.mm(), aim.mm(), limits);
    return new TwistAdvice(
        twists.turns(),
        twists.low(),
        twists.high(),
        twists.room(),
        twists.chance(),
        Reach.valueOf(twists.reach().name()),
        twists.otherStringMm() == null ? null : Length.ofMm(twists.otherStringMm()),
        Length.ofMm(twists.expectedMm()),
        Length.ofMm(twists.lowMm()),
        Length.ofMm(twists.highMm()),
        twists.restsOn(),
        twists.basis());
  }

  /** What a twist does to this rig's brace; empty without a string. */
  public Optional<TwistResponse> response(RigSpec rig) {
    StringSpec string = rig.string();
    if (string == null) {
      return Optional.empty();
    }
    Double bowLengthIn =
        rig.bowLengthIn().isPresent() ? (double) rig.bowLengthIn().getAsInt() : null;
    return Optional.of(
        TwistReckoning.response(bowLengthIn, bundle(string).orElse(null), string.twists(), record));
  }

  /** Empty where strands or their thickness are unknown, or are those of no bowstring. */
  private static Optional<TwistedString> bundle(StringSpec string) {
    if (string.strands() == null || string.strandDiameter() == null) {
      return Optional.empty();
    }
    double untwistedMm =
        string.measured() != null
            ? string.measured().mm()
            : string.forBowIn() * 25.4 - STRING_BELOW_BOW_MM;
    try {
      return Optional.of(
          new TwistedString(untwistedMm, string.strands(), string.strandDiameter().mm()));
    } catch (OutOfDomain noBowstring) {
      return Optional.empty();
    }
  }

  @Override
  public BoltAdvice bolts(RigSpec rig, SetUpFigures setUp, Length tillerNow, Length aim) {
    if (!rig.tillerAdjusts()) {
      throw new IllegalArgumentException("no bolt sets the tiller of this bow");
    }
    if (tillerNow.abs().compareTo(LARGEST_TILLER) > 0) {
      return new BoltAdvice(
          Turns.NONE,
          Turns.NONE,
          tillerNow,
          tillerNow,
          tillerNow,
          "so large a tiller is no bolt's doing",
          "So large a tiller is no bolt's doing: find out why first.");
    }
    Double most = rig.riser().maxTurnsOut();
    BoltReckoning bolts =
        BoltReckoning.of(
            tillerNow.mm(),
            aim.mm(),
            atMost(setUp.turnsUpper(), most),
            atMost(setUp.turnsLower(), most),
            most,
            record);
    return new BoltAdvice(
        new Turns(bolts.upper(), bolts.lower()),
        new Turns(bolts.firstUpper(), bolts.firstLower()),
        Length.ofMm(bolts.expectedMm()),
        Length.ofMm(bolts.lowMm()),
        Length.ofMm(bolts.highMm()),
        bolts.restsOn(),
        bolts.basis());
  }

  /** A bolt that stands out too far has room to go in, and none to go out. */
  private static Double atMost(Double turnsOut, Double most) {
    return turnsOut == null || most == null ? turnsOut : Double.valueOf(Math.min(turnsOut, most));
  }
}
