package club.ascham.drawing;

import static club.ascham.drawing.SideView.number;

import club.ascham.bow.FingerWeight;
import club.ascham.bow.RigSpec;
import club.ascham.bow.SetUpFigures;
import club.ascham.bow.WeightOnFingers;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * How hard one rig pulls at each draw, and the energy it then holds: drawn, and the same numbers as
 * rows. Draws are AMO draws; the energy is the area under the likeliest curve, in foot-pounds. A
 * child's bow is told no further than its limbs were marked at. Coordinates are pixels of a paper
 * {@link #WIDTH} by {@link #HEIGHT}.
 *
 * @param markedAtIn the draw that stands out: that of the mark, as far as this bow is told
 * @param at that draw's row
 * @param range the band that the force may well lie in
 * @param curve the likeliest force
 * @param readings what a bow scale showed, each a dot
 * @param description what the drawing shows, in words
 */
public record DrawForce(
    WeightOnFingers weight,
    double markedAtIn,
    Row at,
    List<Row> rows,
    String range,
    String curve,
    String energy,
    List<Dot> readings,
    List<Tick> across,
    List<Tick> up,
    String description) {
  static final int WIDTH = 320;
  static final int HEIGHT = 236;

  private static final int LEFT = 34;
  private static final int RIGHT = 312;
  private static final int TOP = 12;
  private static final int BOTTOM = 196;

  private static final int FIRST_ROW_IN = 18;
  private static final int LAST_IN = 32;
  private static final double STEP_IN = 0.25;
  private static final int TICK_IN = 4;

  /** One draw. */
  public record Row(int drawIn, double lb, double lowLb, double highLb, double energyFtLb) {
    public String pounds() {
      return said(lb);
    }

    public String range() {
      return said(lowLb) + " to " + said(highLb);
    }

    public String energy() {
      return said(energyFtLb);
    }
  }

  /** A reading of the bow scale. */
  record Dot(String x, String y) {}

  /** A word on an axis, at its place along it. */
  record Tick(String place, String said) {}

  /**
   * @param setUp null: not set up yet, a usual brace is assumed
   */
  public static DrawForce of(RigSpec rig, SetUpFigures setUp) {
    double zeroIn = FingerWeight.zeroIn(FingerWeight.brace(rig, setUp));
    if (!(rig.markedAtIn() > zeroIn)) {
      return null;
    }
    double lastIn = Math.max(rig.drawnToIn(LAST_IN), Math.ceil(zeroIn) + 1);
    double markedAtIn = Math.min(rig.markedAtIn(), lastIn);
    List<double[]> points = new ArrayList<>();
    List<Row> rows = new ArrayList<>();
    points.add(new double[] {zeroIn, 0, 0, 0, 0});
    for (double draw = Math.floor(zeroIn / STEP_IN + 1.5) * STEP_IN;
        draw <= lastIn;
        draw += STEP_IN) {
      WeightOnFingers weight = FingerWeight.of(rig, setUp, draw);
      double[] last = points.get(points.size() - 1);
      double energy = last[4] + (last[1] + weight.lb()) / 2 * (draw - last[0]) / 12;
      points.add(new double[] {draw, weight.lb(), weight.lowLb(), weight.highLb(), energy});
      if (draw == Math.rint(draw) && draw >= FIRST_ROW_IN) {
        rows.add(new Row((int) draw, weight.lb(), weight.lowLb(), weight.highLb(), energy));
      }
    }
    Paper paper = new Paper(points.get(points.size() - 1)[3]);
    int marked = (int) Math.rint(markedAtIn);
    Row at = rows.stream().filter(row -> row.drawIn() == marked).findFirst().orElse(null);
    return new DrawForce(
        FingerWeight.of(rig, setUp, markedAtIn),
        markedAtIn,
        at,
        List.copyOf(rows),
        paper.band(points),
        paper.line(points, lastIn),
        paper.line(points, markedAtIn)
            + "L%s %sL%s %sZ"
                .formatted(
                    number(paper.x(markedAtIn)),
                    number(BOTTOM),
                    number(paper.x(zeroIn)),
                    number(BOTTOM)),
        (rig.onePiece() != null ? rig.onePiece().weighed() : rig.limbs().weighed())
            .stream()
                .filter(reading -> reading.drawIn() <= LAST_IN && reading.forceLb() <= paper.most)
                .map(r -> new Dot(number(paper.x(r.drawIn())), number(paper.y(r.forceLb()))))
                .toList(),
        paper.across(),
        paper.up(),
        description(rows));
  }

  private static String description(List<Row> rows) {
    StringBuilder said = new StringBuilder("Force on the fingers against AMO draw");
    for (Row row : rows) {
      if (row.drawIn() % TICK_IN == 0) {
        said.append("; ").append(row.pounds()).append(" lb at ").append(row.drawIn()).append(" in");
      }
    }
    return said.append('.').toString();
  }

  /** Draws from 8 in and forces from nothing onto the paper. */
  private static final class Paper {
    private static final int FROM_IN = 8;

    private final double most;
    private final int step;

    Paper(double highestLb) {
      this.step = highestLb > 40 ? 20 : highestLb > 16 ? 10 : 5;
      this.most = Math.ceil(highestLb / (step / 2.0)) * step / 2.0;
    }

    double x(double drawIn) {
      return LEFT + (RIGHT - LEFT) * (drawIn - FROM_IN) / (LAST_IN - FROM_IN);
    }

    double y(double lb) {
      return BOTTOM - (BOTTOM - TOP) * lb / most;
    }

    String line(List<double[]> points, double toIn) {
      StringBuilder path = new StringBuilder();
      for (double[] point : points) {
        if (point[0] <= toIn) {
          append(path, point[0], point[1]);
        }
      }
      return path.toString();
    }

    String band(List<double[]> points) {
      StringBuilder path = new StringBuilder();
      points.forEach(point -> append(path, point[0], point[3]));
      for (int i = points.size() - 1; i >= 0; i--) {
        append(path, points.get(i)[0], points.get(i)[2]);
      }
      return path.append('Z').toString();
    }

    private void append(StringBuilder path, double drawIn, double lb) {
      path.append(path.isEmpty() ? 'M' : 'L')
          .append(number(x(drawIn)))
          .append(' ')
          .append(number(y(lb)));
    }

    List<Tick> across() {
      List<Tick> ticks = new ArrayList<>();
      for (int draw = FROM_IN + TICK_IN; draw < LAST_IN; draw += TICK_IN) {
        ticks.add(new Tick(number(x(draw)), Integer.toString(draw)));
      }
      return ticks;
    }

    List<Tick> up() {
      List<Tick> ticks = new ArrayList<>();
      for (int lb = step; lb <= most; lb += step) {
        ticks.add(new Tick(number(y(lb)), Integer.toString(lb)));
      }
      return ticks;
    }
  }

  private static String said(double number) {
    return String.format(Locale.ROOT, number < 10 ? "%.1f" : "%.0f", number);
  }

  public String pounds() {
    return said(weight.lb());
  }

  public String between() {
    return said(weight.lowLb()) + " to " + said(weight.highLb());
  }

  public String markedAt() {
    return String.format(Locale.ROOT, "%.1f", markedAtIn).replace(".0", "");
  }

  /** What it rests on, in few words. */
  public String restsOn() {
    return switch (weight.readings()) {
      case 0 -> "on the mark alone";
      case 1 -> "on the mark and one reading of the bow scale";
      default -> "on the mark and " + weight.readings() + " readings of the bow scale";
    };
  }

  public int width() {
    return WIDTH;
  }

  public int height() {
    return HEIGHT;
  }

  public int left() {
    return LEFT;
  }

  public int right() {
    return RIGHT;
  }

  public int bottom() {
    return BOTTOM;
  }

  public int top() {
    return TOP;
  }
}
