package club.ascham.units;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A unit that a bow is measured in, with the ways people write it. */
public enum LengthUnit {
  INCH("in", "inches", 2_540_000, List.of("in", "in.", "\"", "″", "”", "''", "inch", "inches")),
  MILLIMETRE(
      "mm",
      "millimetres",
      100_000,
      List.of("mm", "mm.", "millimetre", "millimetres", "millimeter", "millimeters")),
  CENTIMETRE(
      "cm",
      "centimetres",
      1_000_000,
      List.of("cm", "cm.", "centimetre", "centimetres", "centimeter", "centimeters"));

  private final String symbol;
  private final String plural;
  private final long lengthUnits;
  private final List<String> spellings;

  LengthUnit(String symbol, String plural, long lengthUnits, List<String> spellings) {
    this.symbol = symbol;
    this.plural = plural;
    this.lengthUnits = lengthUnits;
    this.spellings = spellings;
  }

  /** The unit written so, in upper or lower case; empty when it is none of ours. */
  public static Optional<LengthUnit> spelled(String text) {
    String wanted = text.strip().toLowerCase(Locale.ROOT);
    for (LengthUnit unit : values()) {
      if (unit.spellings.contains(wanted)) {
        return Optional.of(unit);
      }
    }
    return Optional.empty();
  }

  public String symbol() {
    return symbol;
  }

  /** The unit's name for a sentence: {@code inches}. */
  public String plural() {
    return plural;
  }

  /**
   * So many of this unit, to the nearest hundred-thousandth of a millimetre (only odd 64ths of an
   * inch and more than four decimals of an inch ever round), half away from zero.
   */
  Length of(BigDecimal amount) {
    return new Length(
        amount
            .multiply(BigDecimal.valueOf(lengthUnits))
            .setScale(0, RoundingMode.HALF_UP)
            .longValueExact());
  }
}
