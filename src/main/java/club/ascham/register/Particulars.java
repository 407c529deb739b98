package club.ascham.register;

import club.ascham.bow.Hand;
import club.ascham.bow.LimbsSpec;
import club.ascham.bow.OnePieceSpec;
import club.ascham.bow.RiserSpec;
import club.ascham.bow.StringSpec;
import club.ascham.bow.StringerSpec;
import club.ascham.units.Length;
import java.time.LocalDate;

/**
 * What is recorded of an item because of its kind: what the trade's rules look at, and what they do
 * not.
 */
public sealed interface Particulars {

  /**
   * A riser.
   *
   * @param threadPitch of the limb bolts; null: unknown
   * @param massG null: not weighed
   */
  record OfRiser(RiserSpec spec, Length threadPitch, Integer massG) implements Particulars {}

  /** A pair of limbs; a serial is null where a limb bears none. */
  record OfLimbs(LimbsSpec spec, String serialUpper, String serialLower) implements Particulars {}

  /**
   * A one-piece bow.
   *
   * @param massG null: not weighed
   */
  record OfBow(OnePieceSpec spec, Integer massG) implements Particulars {}

  /**
   * A string.
   *
   * @param firstUsed null: unused or unknown
   */
  record OfString(StringSpec spec, LocalDate firstUsed) implements Particulars {}

  /** A stringer. */
  record OfStringer(StringerSpec spec) implements Particulars {}

  /**
   * One of the smaller things of a kit.
   *
   * @param hand null: either, or no matter
   * @param size as marked; null: one size
   * @param arrowLength for arrows only
   * @param spine for arrows only; null: unknown
   * @param arrowMassGr for arrows only: one whole arrow in grains, the lightest; null: not weighed
   * @param arrowCount for arrows only
   * @param pool whether arrows are given out by count rather than as one set
   */
  record OfKitItem(
      Hand hand,
      String size,
      Length arrowLength,
      Integer spine,
      Double arrowMassGr,
      Integer arrowCount,
      boolean pool)
      implements Particulars {}
}
