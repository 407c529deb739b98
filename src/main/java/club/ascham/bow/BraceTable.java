package club.ascham.bow;

import java.util.Map;
import java.util.Optional;

/**
 * A published table of brace heights by bow length, measured from the throat of the grip. The
 * tables disagree, so a club puts one in force; a maker's own range beats every one of them.
 */
public enum BraceTable {
  /** Bands in inches, two bow lengths to a band. */
  TRADE_OUTREACH_2020(
      "“How to adjust brace height”, Archery Trade Association, 29 July 2020: bands in inches for"
          + " bows of 62 to 72 in.",
      Map.of(
          62, Band.ofInches(7.5, 8.5),
          64, Band.ofInches(7.5, 8.5),
          66, Band.ofInches(8, 9),
          68, Band.ofInches(8, 9),
          70, Band.ofInches(8.75, 9.5),
          72, Band.ofInches(8.75, 9.5))),
  /** The centimetres as printed: the page's inches stand an eighth lower and contradict them. */
  BRITISH_DEALER(
      "“Bracing height adjustments”, a British dealer's page, undated: the centimetre column for"
          + " bows of 64 to 70 in; the page's own inches stand 1/8 in lower.",
      Map.of(
          64, Band.ofMm(210, 216),
          66, Band.ofMm(213, 219),
          68, Band.ofMm(216, 222),
          70, Band.ofMm(217, 225))),
  /** Rises by a whole centimetre with every two inches of bow. */
  FRENCH_FEDERATION_2008(
      "French federation (FFTA), 2008, as “Réglage du band”, La Flèche Gasconne, undated, quotes"
          + " it: given for a 25 in riser, bows of 54 and of 64 to 70 in.",
      Map.of(
          54, Band.ofMm(180, 190),
          64, Band.ofMm(200, 210),
          66, Band.ofMm(210, 220),
          68, Band.ofMm(220, 230),
          70, Band.ofMm(230, 240))),
  /** The widest bands; the centimetres as printed, where the inches differ by rounding. */
  FRENCH_CLUB(
      "“Réglage classique”, archery club of Bazancourt, undated: the centimetre column for bows of"
          + " 64 to 70 in.",
      Map.of(
          64, Band.ofMm(195, 230),
          66, Band.ofMm(205, 235),
          68, Band.ofMm(210, 240),
          70, Band.ofMm(215, 250)));

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
}
