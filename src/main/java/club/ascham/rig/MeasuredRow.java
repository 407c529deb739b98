package club.ascham.rig;

import club.ascham.bow.BracePoint;
import club.ascham.bow.Gauge;
import club.ascham.bow.SetUpFigures;
import club.ascham.units.Length;
import club.ascham.units.LengthText;
import club.ascham.verdict.Reading;
import java.util.List;

/** A quantity of a rig with its set-up figure and the last reading, in words. */
record MeasuredRow(String what, String setUp, String last, String sign, String band, String basis) {
  /**
   * @param last the last check since the set-up; null: none yet
   */
  static List<MeasuredRow> of(RigCard card, RigRecords.Checked last) {
    if (card.targets() == null) {
      return List.of();
    }
    Reading setUp = Reading.of(card.setUp());
    Reading now = last == null ? Reading.NOTHING : last.reading();
    Gauge brace = Gauge.of("Brace", card.targets().brace(), setUp.brace(), now.brace(), false);
    Gauge tiller = Gauge.of("Tiller", card.targets().tiller(), setUp.tiller(), now.tiller(), true);
    Length height = card.setUp() == null ? null : card.setUp().nocking();
    Gauge nocking = Gauge.of("Nocking point", card.targets().nocking(), height, null, false);
    return List.of(
        reading("Brace height" + from(card.setUp()), brace, card.targets().brace().basis()),
        distance("Upper distance", setUp.tillerUpper(), now.tillerUpper()),
        distance("Lower distance", setUp.tillerLower(), now.tillerLower()),
        reading("Tiller", tiller, card.targets().tiller().basis()),
        reading("Nocking point, above square", nocking, card.targets().nocking().basis()));
  }

  private static String from(SetUpFigures setUp) {
    if (setUp == null) {
      return "";
    }
    return setUp.braceFrom() == BracePoint.BUTTON ? ", to the button" : ", to the throat";
  }

  private static MeasuredRow distance(String what, Length setUp, Length last) {
    return new MeasuredRow(what, both(setUp), both(last), null, null, null);
  }

  private static String both(Length length) {
    return length == null ? null : LengthText.both(length);
  }

  private static MeasuredRow reading(String what, Gauge gauge, String basis) {
    String band = gauge.innerText() != null ? gauge.innerText() : gauge.outerText();
    return new MeasuredRow(what, gauge.setUpText(), gauge.readingText(), gauge.sign(), band, basis);
  }
}
