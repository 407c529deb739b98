package club.ascham.verdict;

import club.ascham.units.Length;
import java.util.Optional;

/**
 * How far the two tiller distances have moved beyond what the change of brace explains. They are
 * measured where the limbs leave the riser, which does not move: as the string comes nearer or goes
 * farther, both change by what brace changes.
 *
 * <p>Beyond {@link #LOOK_FIRST} the bow is looked at first; beyond {@link #OUT_OF_PLACE} on one
 * side, or after someone has looked, its limbs are withdrawn. Both alike is sooner a misread brace,
 * and is looked at first. After bolts were turned, what was measured then is what is compared.
 *
 * @param upper as it is now, less as it was, less the change of brace (likewise {@code lower})
 * @param alike both moved the same way and as far: sooner the brace was read wrongly
 * @param byBrace the change of brace
 * @param scatter up to which a move is none
 */
record DistancesMoved(Length upper, Length lower, boolean alike, Length byBrace, Length scatter) {
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
    return Optional.of(new DistancesMoved(upper, lower, alike, byBrace, bow.scatter()));
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

  /** The same, so that it agrees with the figures side by side: who moved, and who did not. */
  Remark said() {
    boolean isUpper = upper.abs().compareTo(lower.abs()) >= 0;
    Side side = isUpper ? Side.UPPER : Side.LOWER;
    Length moved = (isUpper ? upper : lower).plus(byBrace);
    if (!alike) {
      return stayed(moved)
          ? Remark.of(Saying.ONE_NOT_FOLLOWED, byBrace, side)
          : Remark.of(Saying.ONE_MOVED, side, most());
    }
    if (stayed(moved)) {
      return Remark.of(Saying.BRACE_NOT_FOLLOWED, byBrace);
    }
    return stayed(byBrace)
        ? Remark.of(Saying.BOTH_MOVED, moved)
        : Remark.of(Saying.ALL_MOVED, byBrace, moved);
  }

  private boolean stayed(Length moved) {
    return moved.abs().compareTo(scatter) <= 0;
  }
}
