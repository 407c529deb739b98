package club.ascham.check;

import club.ascham.bow.BracePoint;
import club.ascham.units.Length;
import club.ascham.verdict.Reading;
import java.util.Optional;

/**
 * The three readings of a check beside the texts they were typed as.
 *
 * @param brace null: not measured (likewise upper and lower)
 * @param from the point brace was measured from
 */
record Measured(
    Length brace,
    String braceTyped,
    BracePoint from,
    Length upper,
    String upperTyped,
    Length lower,
    String lowerTyped) {

  /** All three together; empty while one is missing. */
  Optional<Reading> reading() {
    return brace == null || from == null || upper == null || lower == null
        ? Optional.empty()
        : Optional.of(new Reading(brace, from, upper, lower));
  }
}
