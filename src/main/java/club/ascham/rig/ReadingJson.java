package club.ascham.rig;

import club.ascham.form.Words;
import club.ascham.units.Length;
import club.ascham.units.LengthText;
import club.ascham.verdict.Reading;
import com.fasterxml.jackson.annotation.JsonInclude;

/** What was measured of a strung bow, as it stands in JSON beside the rest. */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record ReadingJson(String brace, String braceFrom, String tillerUpper, String tillerLower) {
  /**
   * @param reading null: nothing was measured
   */
  public static ReadingJson of(Reading reading) {
    return reading == null
        ? null
        : new ReadingJson(
            exact(reading.brace()),
            reading.from() == null ? null : Words.of(reading.from()),
            exact(reading.tillerUpper()),
            exact(reading.tillerLower()));
  }

  /** Null where there is none. */
  static String exact(Length length) {
    return length == null ? null : LengthText.exact(length);
  }
}
