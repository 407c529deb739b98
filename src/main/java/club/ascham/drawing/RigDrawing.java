package club.ascham.drawing;

import club.ascham.bow.RigSpec;
import club.ascham.bow.SetUpFigures;
import club.ascham.bow.Targets;
import club.ascham.units.Length;
import club.ascham.verdict.Reading;
import java.util.List;

/**
 * A rig drawn from the side, strung, with brace, both tiller distances and the nocking point
 * dimensioned against their bands. It is seen from the side that the arrow lies on, so that a
 * left-handed bow is the mirror of a right-handed one. All places are in pixels of the drawing.
 *
 * @param title what it shows, for whoever can't see it; {@code description} gives every figure
 * @param arrowLine square to the string through the arrow rest
 */
public record RigDrawing(
    int width,
    int height,
    String title,
    String description,
    List<BowOutline.Stroke> strokes,
    String arrowLine,
    List<Callout> callouts,
    Detail nocking) {

  /**
   * A figure beside the bow; a path or text that does not apply is empty.
   *
   * @param dimension the dimension line on the bow with its arrow heads
   * @param leader from the dimension to the words, and under them
   * @param x where the words begin, or end where {@code anchor} is {@code end}
   * @param words the figure; {@code note} what it is
   * @param sign how it lies among its bands
   * @param scale null: it has no bands of its own
   */
  record Callout(
      String dimension,
      String leader,
      String x,
      String wordsY,
      String noteY,
      String anchor,
      String words,
      String note,
      String sign,
      Scale scale) {}

  /**
   * Bands, the tick of the set-up figure and the reading as paths; what is unknown is empty.
   *
   * @param words the band to aim for, else the outer one
   */
  record Scale(
      String outer, String inner, String setUp, String reading, String words, String wordsY) {}

  /**
   * The nocking point enlarged: the string, square to it the line of the rest, and the locator.
   *
   * @param spotX the middle of the small circle on the bow; {@code leader} joins the two
   * @param window the published window beside the string, from square upwards
   * @param locator empty: not measured
   */
  record Detail(
      String x,
      String y,
      String radius,
      String spotX,
      String spotY,
      String leader,
      String string,
      String square,
      String window,
      String locator,
      String wordsX,
      String wordsY,
      String noteY,
      String anchor,
      String words,
      String sign) {}

  /**
   * The drawing of a rig.
   *
   * @param shown the figures to draw; those not measured are drawn where the targets would have
   *     them, and carry no figure
   * @param nocking null: not measured
   * @param setUp marked on the scales; null: none
   */
  public static RigDrawing of(
      RigSpec rig, Targets targets, Reading shown, Length nocking, SetUpFigures setUp) {
    return new Draughtsman(rig, targets, shown, nocking, setUp).draw();
  }
}
