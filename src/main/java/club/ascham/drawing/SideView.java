package club.ascham.drawing;

import java.util.Locale;

/**
 * A place on the paper for points of a strung bow seen from the side. A point is given in inches:
 * {@code along} the string from its middle, positive towards the upper tip, and {@code out} from
 * the string towards the target. Between that and the paper stand a scale, and a mirror for the
 * other hand.
 *
 * @param stringX where the string stands, in pixels
 * @param middleY where the string's middle stands, in pixels
 * @param pixelsPerInch the scale, the same in both directions
 * @param targetLeft whether the target lies to the left, as for a right-handed bow seen from the
 *     side that the arrow lies on
 */
public record SideView(double stringX, double middleY, double pixelsPerInch, boolean targetLeft) {

  /** A point of the bow in inches. */
  record Point(double along, double out) {
    Point plus(double moreAlong, double moreOut) {
      return new Point(along + moreAlong, out + moreOut);
    }

    Point between(Point other, double share) {
      return new Point(along + share * (other.along - along), out + share * (other.out - out));
    }
  }

  double x(double out) {
    return stringX + (targetLeft ? -out : out) * pixelsPerInch;
  }

  double y(double along) {
    return middleY - along * pixelsPerInch;
  }

  /** The pen put down at a point. */
  String move(Point to) {
    return "M" + at(to);
  }

  String line(Point to) {
    return "L" + at(to);
  }

  /** A cubic curve to a point by way of its two handles. */
  String curve(Point handle, Point otherHandle, Point to) {
    return "C" + at(handle) + " " + at(otherHandle) + " " + at(to);
  }

  /** A smooth curve on through all the points, from the first one, where the pen is. */
  String through(Point... points) {
    StringBuilder path = new StringBuilder();
    for (int i = 0; i + 1 < points.length; i++) {
      Point before = points[Math.max(0, i - 1)];
      Point from = points[i];
      Point to = points[i + 1];
      Point after = points[Math.min(points.length - 1, i + 2)];
      path.append(
          curve(
              from.plus((to.along() - before.along()) / 6, (to.out() - before.out()) / 6),
              to.plus((from.along() - after.along()) / 6, (from.out() - after.out()) / 6),
              to));
    }
    return path.toString();
  }

  private String at(Point point) {
    return number(x(point.out())) + " " + number(y(point.along()));
  }

  /** A coordinate as short as a tenth of a pixel needs. */
  public static String number(double pixels) {
    String text = String.format(Locale.ROOT, "%.1f", pixels);
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }
}
