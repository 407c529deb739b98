package club.ascham.units;

import java.math.BigDecimal;

/**
 * A length as it stands on paper: a number and perhaps a unit, not yet asked whether it is sane.
 */
sealed interface WrittenLength {

  /**
   * A number that could be read, exactly.
   *
   * @param fraction whether it was written with a fraction bar
   * @param unitTyped whether the unit was written; otherwise {@code unit} was assumed
   */
  record Figure(BigDecimal amount, boolean fraction, LengthUnit unit, boolean unitTyped)
      implements WrittenLength {
    Length length() {
      return unit.of(amount);
    }
  }

  /** Why it could not be read, to stand after {@code can't be read as a length:}. */
  record Fault(String reason) implements WrittenLength {}
}
