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
    return of(riser.lengthIn(), limbs.size(), limbs.bowLengthIn());
  }

  /** The same from the three figures alone; {@code size} and {@code makersIn} may be null. */
  public static OptionalInt of(int riserIn, LimbSize size, Integer makersIn) {
    if (makersIn != null) {
      return OptionalInt.of(makersIn);
    }
    if (size == null) {
      return OptionalInt.empty();
    }
    int onMedium = riserIn + 43;
    return OptionalInt.of(
        switch (size) {
          case SHORT -> onMedium - 2;
          case MEDIUM -> onMedium;
          case LONG -> onMedium + 2;
        });
  }
}
