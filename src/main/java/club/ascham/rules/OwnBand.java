package club.ascham.rules;

import club.ascham.bow.Band;
import club.ascham.bow.Compatibility;
import club.ascham.form.Typed;
import club.ascham.units.Length;
import club.ascham.units.LengthText;
import club.ascham.units.LengthUnit;
import club.ascham.units.Plausible;
import java.util.Optional;

/** The club's own band of brace heights for one bow length, where no table speaks. */
public record OwnBand(int bowLengthIn, Length low, Length high, String source) {
  private static final int LONGEST_SOURCE = 500;

  /** Reads {@code bowLengthIn}, {@code low}, {@code high} and {@code source}. */
  static Optional<OwnBand> parse(Typed typed, LengthUnit unit) {
    Integer bow =
        typed.whole("bowLengthIn", Compatibility.SHORTEST_BOW_IN, Compatibility.LONGEST_BOW_IN);
    if (bow == null) {
      typed.fault("bowLengthIn", "The bow's length in inches, please.");
    }
    Length low = typed.length("low", unit, Plausible.BRACE);
    Length high = typed.length("high", unit, Plausible.BRACE);
    if (low == null) {
      typed.fault("low", "The lowest brace height that is right, please.");
    }
    if (high == null) {
      typed.fault("high", "The highest, please.");
    }
    if (low != null && high != null && low.compareTo(high) > 0) {
      typed.fault("high", "The highest lies below the lowest.");
    }
    String source =
        typed.source("source", LONGEST_SOURCE, "Where does it come from: the maker, or whose eye?");
    return typed.sound() ? Optional.of(new OwnBand(bow, low, high, source)) : Optional.empty();
  }

  public Band band() {
    return new Band(low, high);
  }

  /** In inches and millimetres: {@code 7 1/2 to 8 1/2 in · 191 to 216 mm}. */
  public String said() {
    return said(band());
  }

  static String said(Band band) {
    String[] low = LengthText.both(band.low()).split(" · ");
    String[] high = LengthText.both(band.high()).split(" · ");
    return low[0].replace(" in", "")
        + " to "
        + high[0]
        + " · "
        + low[1].replace(" mm", "")
        + " to "
        + high[1];
  }
}
