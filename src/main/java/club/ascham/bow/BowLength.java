package club.ascham.bow;

import java.util.OptionalInt;

/** The length of the bow that a riser and a pair of limbs make. */
public final class BowLength {
  private BowLength() {}

  /**
   * Bow length in inches: the maker's figure where there is one, else from riser length and limb
   * size (25 in with medium limbs is 68 in; two inches of riser, or one limb size, are two inches
   * of bow). Empty where neither is known.
   */
  public static OptionalInt of(RiserSpec riser, LimbsSpec limbs) {
    if (limbs.bowLengthIn() != null) {
      return OptionalInt.of(limbs.bowLengthIn());
    }
    if (limbs.size() == null) {
      return OptionalInt.empty();
    }
    int onMedium = riser.lengthIn() + 43;
    return OptionalInt.of(
        switch (limbs.size()) {
          case SHORT -> onMedium - 2;
          case MEDIUM -> onMedium;
          case LONG -> onMedium + 2;
        });
  }
}
