package club.ascham.bow;

import club.ascham.units.Length;
import java.util.Map;
import java.util.Optional;

/**
 * A published table of brace heights by bow length, measured from the throat of the grip. The
 * tables disagree, so a club puts one in force; a maker's own range beats every one of them.
 */
public enum BraceTable {
  /** Bands in inches, two bow lengths to a band. */
  TRADE_OUTREACH_2020(
      "\"How to adjust brace height\", archery360.com, 29 July 2020 (read in a stored copy): bands"
          + " in inches for bows of 62 to 72 in.",
      Map.of(
          62, inches(7.5, 8.5),
          64, inches(7.5, 8.5),
          66, inches(8, 9),
          68, inches(8, 9),
          70, inches(8.75, 9.5),
          72, inches(8.75, 9.5))),
  /** The centimetres as printed: the page's inches stand an eighth lower and contradict them. */
  BRITISH_DEALER(
      "\"Bracing height adjustments\", greygoosearchery.co.uk, undated (read in a stored copy): the"
          + " centimetre column for bows of 64 to 70 in; the page's own inches stand 1/8 in lower.",
      Map.of(
          64, centimetres(21.0, 21.6),
          66, centimetres(21.3, 21.9),
          68, centimetres(21.6, 22.2),
          70, centimetres(21.7, 22.5))),
  /** Rises by a whole centimetre with every two inches of bow. */
  FRENCH_FEDERATION_2008(
      "French federation (FFTA), 2008, as quoted by laflechegasconne.fr, \"réglage arc\" (read in a"
          + " stored copy): given for a 25 in riser, bows of 54 and of 64 to 70 in.",
      Map.of(
          54, centimetres(18, 19),
          64, centimetres(20, 21),
          66, centimetres(21, 22),
          68, centimetres(22, 23),
          70, centimetres(23, 24))),
  /** The widest bands; the centimetres as printed, where the inches differ by rounding. */
  FRENCH_CLUB(
      "\"Réglage classique\", arcbazancourt.netne.net, undated (read in a stored copy): the"
          + " centimetre column for bows of 64 to 70 in.",
      Map.of(
          64, centimetres(19.5, 23),
          66, centimetres(20.5, 23.5),
          68, centimetres(21, 24),
          70, centimetres(21.5, 25)));

  private final String source;
  private final Map<Integer, Band> byBowLengthIn;

  BraceTable(String source, Map<Integer, Band> byBowLengthIn) {
    this.source = source;
    this.byBowLengthIn = byBowLengthIn;
  }

  /** Where the table was published, as a sentence to show beside its bands. */
  public String source() {
    return source;
  }

  /** The table's band for a bow of so many inches; empty for a length that it does not list. */
  public Optional<Band> band(int bowLengthIn) {
    return Optional.ofNullable(byBowLengthIn.get(bowLengthIn));
  }

  private static Band inches(double low, double high) {
    return new Band(Length.ofInches(low), Length.ofInches(high));
  }

  private static Band centimetres(double low, double high) {
    return new Band(Length.ofMm(low * 10), Length.ofMm(high * 10));
  }
}
