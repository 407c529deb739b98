package club.ascham.rig;

import club.ascham.bow.BracePoint;
import club.ascham.bow.Gauge;
import club.ascham.bow.SetUpFigures;
import club.ascham.units.LengthText;
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
    SetUpFigures setUp = card.setUp();
    Gauge brace =
        Gauge.of(
            "Brace",
            card.targets().brace(),
            setUp == null ? null : setUp.brace(),
            last == null ? null : last.brace(),
            false);
    Gauge tiller =
        Gauge.of(
            "Tiller",
            card.targets().tiller(),
            setUp == null ? null : setUp.tiller(),
            last == null ? null : last.tiller(),
            true);
    Gauge nocking =
        Gauge.of(
            "Nocking point",
            card.targets().nocking(),
            setUp == null ? null : setUp.nocking(),
            null,
            false);
    return List.of(
        reading("Brace height" + from(setUp), brace, card.targets().brace().basis()),
        distance(
            "Upper distance",
            setUp == null ? null : LengthText.both(setUp.tillerUpper()),
            last == null ? null : LengthText.both(last.tillerUpper())),
        distance(
            "Lower distance",
            setUp == null ? null : LengthText.both(setUp.tillerLower()),
            last == null ? null : LengthText.both(last.tillerLower())),
        reading("Tiller", tiller, card.targets().tiller().basis()),
        reading("Nocking point, above square", nocking, card.targets().nocking().basis()));
  }

  private static String from(SetUpFigures setUp) {
    if (setUp == null) {
      return "";
    }
    return setUp.braceFrom() == BracePoint.BUTTON ? ", to the button" : ", to the throat";
  }

  private static MeasuredRow distance(String what, String setUp, String last) {
    return new MeasuredRow(what, setUp, last, null, null, null);
  }

  private static MeasuredRow reading(String what, Gauge gauge, String basis) {
    String band = gauge.innerText() != null ? gauge.innerText() : gauge.outerText();
    return new MeasuredRow(what, gauge.setUpText(), gauge.readingText(), gauge.sign(), band, basis);
  }
}
