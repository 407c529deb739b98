package club.ascham.drawing;

import static club.ascham.drawing.SideView.number;

import club.ascham.bow.Band;
import club.ascham.bow.BracePoint;
import club.ascham.bow.Build;
import club.ascham.bow.FingerWeight;
import club.ascham.bow.Gauge;
import club.ascham.bow.Hand;
import club.ascham.bow.RigSpec;
import club.ascham.bow.SetUpFigures;
import club.ascham.bow.Targets;
import club.ascham.drawing.RigDrawing.Callout;
import club.ascham.drawing.RigDrawing.Detail;
import club.ascham.drawing.RigDrawing.Scale;
import club.ascham.units.Length;
import club.ascham.units.LengthText;
import club.ascham.verdict.Reading;
import java.util.List;

/** Lays out the drawing of one rig: the bow on one side, its figures stacked on the other. */
final class Draughtsman {
  private static final int WIDTH = 360;
  private static final double PIXELS_PER_INCH = 8.2;
  private static final double MARGIN = 26;
  private static final double STRING_FROM_EDGE = 88;
  private static final double WORDS_FROM_STRING = 20;
  private static final double SCALE_WIDTH = 190;
  private static final double DETAIL_RADIUS = 42;

  /** Pixels to each millimetre in the enlarged nocking point. */
  private static final double DETAIL_PER_MM = 2.2;

  /** A strung bow stands about so much shorter than its bow length, as its string is. */
  private static final double STRUNG_SHORTER_IN = 3;

  private static final Block FIGURE = new Block(22, 20);
  private static final Block FIGURE_WITH_SCALE = new Block(22, 60);
  private static final Block DETAIL = new Block(DETAIL_RADIUS + 4, DETAIL_RADIUS + 4);

  private final RigSpec rig;
  private final Targets targets;
  private final Reading shown;
  private final Length nocking;
  private final SetUpFigures setUp;
  private final int bowIn;
  private final boolean targetLeft;
  private final BowOutline outline;
  private final SideView view;

  /** How far a figure's words reach above and below their line. */
  private record Block(double above, double below) {}

  Draughtsman(RigSpec rig, Targets targets, Reading shown, Length nocking, SetUpFigures setUp) {
    this.rig = rig;
    this.targets = targets;
    this.shown = shown;
    this.nocking = nocking;
    this.setUp = setUp;
    this.bowIn = rig.bowLengthIn().orElse(66);
    this.targetLeft = rig.hand() != Hand.LEFT;
    this.outline = outline();
    this.view =
        new SideView(
            targetLeft ? STRING_FROM_EDGE : WIDTH - STRING_FROM_EDGE,
            MARGIN + outline.stringIn() / 2 * PIXELS_PER_INCH,
            PIXELS_PER_INCH,
            targetLeft);
  }

  RigDrawing draw() {
    double half = outline.halfRiserIn();
    double arrowY = view.y(BowOutline.ARROW_ALONG);
    double height = 2 * MARGIN + outline.stringIn() * PIXELS_PER_INCH;
    double[] wished = {
      view.y(half) - 8,
      (view.y(half) + arrowY) / 2,
      view.y(braceAlong()) + 12,
      view.y(-half) - 4,
      view.y(-half) + 76
    };
    double[] at =
        stacked(
            wished,
            new Block[] {FIGURE, DETAIL, FIGURE_WITH_SCALE, FIGURE, FIGURE_WITH_SCALE},
            height - 8);
    return new RigDrawing(
        WIDTH,
        (int) Math.ceil(height),
        title(),
        description(),
        outline.strokes(view),
        "M"
            + number(view.x(-0.8))
            + " "
            + number(arrowY)
            + "H"
            + number(view.x(outline.braceIn() + 3)),
        List.of(
            distance(half, outline.upperIn(), at[0], "upper tiller distance", shown.tillerUpper()),
            judged(
                dimension(braceAlong(), outline.braceIn()),
                leader(braceAlong(), at[2]),
                at[2],
                braceNote(),
                braceGauge()),
            distance(-half, outline.lowerIn(), at[3], "lower tiller distance", shown.tillerLower()),
            judged("", "", at[4], "tiller: upper less lower", tillerGauge())),
        detail(arrowY, at[1]));
  }

  private BowOutline outline() {
    Band band = targets.brace().inner();
    double likely = band != null ? band.middle().inches() : bowIn / 8.0;
    // To the button or to the throat is nearly as far: one outline serves both.
    double brace = inchesOr(shown.brace(), likely);
    boolean onePiece = rig.build() == Build.ONE_PIECE;
    double riser = onePiece ? FingerWeight.stiffMiddleIn(bowIn) : rig.riser().lengthIn();
    double upper = inchesOr(shown.tillerUpper(), brace - 1);
    double lower = inchesOr(shown.tillerLower(), brace - 1.1);
    double draw = onePiece ? rig.onePiece().markedAtIn() : rig.limbs().markedAtIn();
    return new BowOutline(
        rig.build(),
        riser,
        bowIn - STRUNG_SHORTER_IN,
        brace,
        upper,
        lower,
        BowShape.of(
            new BowShape.Wish(
                bowIn, riser, brace, upper, lower, draw - FingerWeight.AMO_BEYOND_PIVOT_IN)));
  }

  private static double inchesOr(Length measured, double otherwise) {
    return measured != null ? measured.inches() : otherwise;
  }

  /** Pushes blocks apart downwards until none overlaps, then back up where they ran off below. */
  private static double[] stacked(double[] wished, Block[] blocks, double lowest) {
    double[] at = wished.clone();
    double free = 8;
    for (int i = 0; i < at.length; i++) {
      at[i] = Math.max(at[i], free + blocks[i].above());
      free = at[i] + blocks[i].below();
    }
    double below = lowest;
    for (int i = at.length - 1; i >= 0; i--) {
      at[i] = Math.min(at[i], below - blocks[i].below());
      below = at[i] - blocks[i].above();
    }
    return at;
  }

  // ---- figures beside the bow

  private double braceAlong() {
    return shown.from() == BracePoint.BUTTON ? BowOutline.ARROW_ALONG : 0;
  }

  private String braceNote() {
    return shown.from() == BracePoint.BUTTON ? "brace, to the button" : "brace, to the throat";
  }

  private Callout distance(double along, double outIn, double y, String note, Length figure) {
    String words = figure == null ? "" : LengthText.both(figure);
    return callout(dimension(along, outIn), leader(along, y), y, words, note, "", null);
  }

  private Callout judged(String dimension, String leader, double y, String note, Gauge gauge) {
    double left = targetLeft ? wordsX() : wordsX() - SCALE_WIDTH;
    double top = y + 26;
    String band = gauge.innerText() != null ? gauge.innerText() : orNone(gauge.outerText());
    Scale scale =
        new Scale(
            bar(left, gauge.outerFrom(), gauge.outerTo(), top + 2, 4),
            bar(left, gauge.innerFrom(), gauge.innerTo(), top, 8),
            gauge.setUp() == null
                ? ""
                : "M%s %sv15".formatted(number(at(left, gauge.setUp())), number(top - 3)),
            gauge.reading() == null
                ? ""
                : "M%s %sl5 -9h-10z".formatted(number(at(left, gauge.reading())), number(top + 1)),
            band,
            number(top + 26));
    return callout(
        dimension, leader, y, orNone(gauge.readingText()), note, orNone(gauge.sign()), scale);
  }

  private Callout callout(
      String dimension,
      String leader,
      double y,
      String words,
      String note,
      String sign,
      Scale scale) {
    return new Callout(
        dimension,
        leader,
        number(wordsX()),
        number(y - 6),
        number(y + 15),
        anchor(),
        words,
        note,
        sign,
        scale);
  }

  private static String bar(double left, Double from, Double to, double top, double thick) {
    return from == null
        ? ""
        : "M%s %sH%sv%sH%sz"
            .formatted(
                number(at(left, from)),
                number(top),
                number(at(left, to)),
                number(thick),
                number(at(left, from)));
  }

  private static double at(double left, double percent) {
    return left + percent / 100 * SCALE_WIDTH;
  }

  private static String orNone(String text) {
    return text == null ? "" : text;
  }

  private double wordsX() {
    return targetLeft
        ? STRING_FROM_EDGE + WORDS_FROM_STRING
        : WIDTH - STRING_FROM_EDGE - WORDS_FROM_STRING;
  }

  private String anchor() {
    return targetLeft ? "start" : "end";
  }

  private String dimension(double along, double outIn) {
    String y = number(view.y(along));
    double arrow = targetLeft ? 5 : -5;
    return "M"
        + number(view.x(outIn))
        + " "
        + y
        + "H"
        + number(view.x(0))
        + head(view.x(outIn), view.y(along), arrow)
        + head(view.x(0), view.y(along), -arrow);
  }

  private static String head(double x, double y, double arrow) {
    return "M%s %sL%s %sL%s %s"
        .formatted(
            number(x + arrow),
            number(y - 3.5),
            number(x),
            number(y),
            number(x + arrow),
            number(y + 3.5));
  }

  /** From the string a little way on, over to the words' line, and under the words. */
  private String leader(double along, double y) {
    double away = targetLeft ? 1 : -1;
    return "M%s %sh%sL%s %sh%s"
        .formatted(
            number(view.x(0)),
            number(view.y(along)),
            number(away * 10),
            number(wordsX() - away * 6),
            number(y),
            number(away * 160));
  }

  // ---- the nocking point

  private Detail detail(double spotY, double y) {
    double away = targetLeft ? 1 : -1;
    double r = DETAIL_RADIUS;
    double x = wordsX() + away * r;
    double spotX = view.x(0);
    double far = Math.hypot(x - spotX, y - spotY);
    double dx = (x - spotX) / far;
    double dy = (y - spotY) / far;
    double square = y + r * 0.45;
    double window = targets.nocking().inner().high().mm() * DETAIL_PER_MM;
    String sign = nocking == null ? null : Gauge.sign(targets.nocking(), nocking);
    return new Detail(
        number(x),
        number(y),
        number(r),
        number(spotX),
        number(spotY),
        "M%s %sL%s %s"
            .formatted(
                number(spotX + dx * 5),
                number(spotY + dy * 5),
                number(x - dx * r),
                number(y - dy * r)),
        "M%s %sV%s".formatted(number(x), number(y - r), number(y + r)),
        "M%s %sH%s".formatted(number(x - r * 0.85), number(square), number(x + r * 0.85)),
        "M%s %sh8v%sh-8z".formatted(number(x + 11), number(square), number(-window)),
        nocking == null
            ? ""
            // The locator's underside stands at the height that is measured.
            : "M%s %sh12v-6h-12z"
                .formatted(number(x - 6), number(square - nocking.mm() * DETAIL_PER_MM)),
        number(x + away * (r + 8)),
        number(y - 2),
        number(y + 15),
        anchor(),
        nocking == null ? "" : LengthText.both(nocking),
        orNone(sign));
  }

  // ---- words

  private Gauge braceGauge() {
    return Gauge.of(
        "Brace", targets.brace(), setUp == null ? null : setUp.brace(), shown.brace(), false);
  }

  private Gauge tillerGauge() {
    Length known = Reading.of(setUp).tiller();
    return Gauge.of("Tiller", targets.tiller(), known, shown.tiller(), true);
  }

  private String title() {
    String hand =
        rig.hand() == null ? "" : rig.hand() == Hand.LEFT ? "left-handed " : "right-handed ";
    String build =
        switch (rig.build()) {
          case ADJUSTABLE -> "recurve";
          case SCREW_IN -> "screw-in recurve";
          case ONE_PIECE -> "one-piece";
        };
    return "A " + hand + build + " bow of " + bowIn + " in, strung, seen from the side";
  }

  private String description() {
    return sentence(capital(braceNote()), braceGauge())
        + " Upper tiller distance "
        + said(shown.tillerUpper())
        + ", lower "
        + said(shown.tillerLower())
        + ". "
        + sentence("Tiller", tillerGauge())
        + " Nocking point "
        + (nocking == null ? "not measured." : said(nocking) + " above square.");
  }

  private static String said(Length figure) {
    return figure == null ? "not measured" : LengthText.both(figure);
  }

  private static String sentence(String what, Gauge gauge) {
    String band = gauge.innerText() != null ? gauge.innerText() : gauge.outerText();
    return what
        + " "
        + (gauge.readingText() == null ? "not measured" : gauge.readingText())
        + (band == null ? "." : ", should be " + band + ".");
  }

  private static String capital(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }
}
