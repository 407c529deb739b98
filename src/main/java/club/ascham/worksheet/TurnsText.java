package club.ascham.worksheet;

import java.util.Map;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Turns of a bolt as people write them: {@code 2 1/4}, {@code 2¼}, {@code 2.25}, {@code 2,25}. */
final class TurnsText {
  private static final Pattern WRITTEN =
      Pattern.compile("(?:(\\d{1,2})(?:[.,](\\d{1,3}))?)?\\s*(?:(\\d)/(\\d)|([¼½¾⅛⅜⅝⅞]))?");
  private static final Map<String, Double> SIGNS =
      Map.of("⅛", .125, "¼", .25, "⅜", .375, "½", .5, "⅝", .625, "¾", .75, "⅞", .875);

  private TurnsText() {}

  /** Empty when it can't be read. */
  static OptionalDouble read(String text) {
    Matcher m = WRITTEN.matcher(text.strip());
    if (text.isBlank() || !m.matches()) {
      return OptionalDouble.empty();
    }
    boolean decimal = m.group(2) != null;
    boolean fraction = m.group(3) != null || m.group(5) != null;
    if (decimal && fraction || "0".equals(m.group(4))) {
      return OptionalDouble.empty();
    }
    double turns = m.group(1) == null ? 0 : Double.parseDouble(m.group(1));
    if (decimal) {
      turns += Double.parseDouble("0." + m.group(2));
    }
    if (m.group(3) != null) {
      turns += Double.parseDouble(m.group(3)) / Double.parseDouble(m.group(4));
    }
    if (m.group(5) != null) {
      turns += SIGNS.get(m.group(5));
    }
    return OptionalDouble.of(turns);
  }

  /** In eighths where it is whole eighths, else as a decimal number. */
  static String of(double turns) {
    double eighths = turns * 8;
    if (eighths != Math.rint(eighths)) {
      return Double.toString(turns);
    }
    int whole = (int) turns;
    int part = (int) Math.rint((turns - whole) * 8);
    String fraction =
        part == 0 ? "" : part % 4 == 0 ? "1/2" : part % 2 == 0 ? part / 2 + "/4" : part + "/8";
    if (part == 0) {
      return Integer.toString(whole);
    }
    return whole == 0 ? fraction : whole + " " + fraction;
  }
}
