package club.ascham.verdict;

import club.ascham.units.Length;
import java.util.Optional;

/**
 * How far the two tiller distances have moved beyond what the change of brace explains. They are
 * measured where the limbs leave the riser, which does not move: as the string comes nearer or goes
 * farther, both change by what brace changes.
 *
 * @param upper as it is now, less as it was, less the change of brace (likewise {@code lower})
 * @param alike both moved the same way and as far: sooner the brace was read wrongly
 */
record DistancesMoved(Length upper, Length lower, boolean alike) {
  /** Beyond it, on one side, a limb may be out of its seat or the wrong way up: judged. */
  static final Length LOOK_FIRST = Length.ofMm(6);

  /** Beyond it the limbs are looked at before the bow is strung again: judged. */
  static final Length OUT_OF_PLACE = Length.ofMm(12);

  /** Empty where brace was measured from another point than before. */
  static Optional<DistancesMoved> of(OnRecord bow, Reading now) {
    Reading before = bow.distancesFrom();
    if (now.from() != before.from()) {
      return Optional.empty();
    }
    Length byBrace = now.brace().minus(before.brace());
    Length upper = now.tillerUpper().minus(before.tillerUpper()).minus(byBrace);
    Length lower = now.tillerLower().minus(before.tillerLower()).minus(byBrace);
    boolean alike =
        upper.minus(lower).abs().compareTo(bow.scatter()) <= 0
            && Long.signum(upper.units()) == Long.signum(lower.units());
    return Optional.of(new DistancesMoved(upper, lower, alike));
  }

  /** Limbs and loops are looked at before anything is twisted or turned. */
  boolean asksForALook() {
    return most().compareTo(LOOK_FIRST) > 0;
  }

  /**
   * The limbs are looked at before the bow is strung again.
   *
   * @param seated someone has looked already, and it stands
   */
  boolean withdraws(boolean seated) {
    return asksForALook() && (seated || (!alike && most().compareTo(OUT_OF_PLACE) > 0));
  }

  private Length most() {
    return upper.abs().compareTo(lower.abs()) >= 0 ? upper.abs() : lower.abs();
  }

  /** The same in words, of the distances that moved. */
  String said() {
    if (alike) {
      return "Both tiller distances have moved by "
          + Evidence.about(most())
          + " that the change of brace does not explain: was brace measured from the same point?";
    }
    boolean isUpper = upper.abs().compareTo(lower.abs()) >= 0;
    return "The "
        + (isUpper ? "upper" : "lower")
        + " tiller distance has moved by "
        + Evidence.about(most())
        + " that neither the change of brace nor a bolt explains: a limb may not be seated.";
  }
}
