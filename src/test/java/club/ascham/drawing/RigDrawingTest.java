package club.ascham.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.bow.Band;
import club.ascham.bow.BracePoint;
import club.ascham.bow.BraceTable;
import club.ascham.bow.Build;
import club.ascham.bow.Hand;
import club.ascham.bow.Known;
import club.ascham.bow.LimbSize;
import club.ascham.bow.LimbsSpec;
import club.ascham.bow.OnePieceSpec;
import club.ascham.bow.RigSpec;
import club.ascham.bow.RiserSpec;
import club.ascham.bow.Style;
import club.ascham.bow.Targets;
import club.ascham.drawing.RigDrawing.Callout;
import club.ascham.units.Length;
import club.ascham.verdict.Reading;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RigDrawingTest {
  private static final Pattern DIMENSION = Pattern.compile("^M([\\d.]+) ([\\d.]+)H([\\d.]+)");
  private static final Pattern NUMBERS = Pattern.compile("-?\\d+(?:\\.\\d+)?");
  private static final double PIXELS_PER_INCH = 8.2;

  private static RigSpec adjustable(Hand hand, LimbSize size) {
    return new RigSpec(
        new RiserSpec(Build.ADJUSTABLE, hand, 25, "ILF", null, 4.0, true),
        new LimbsSpec(Build.ADJUSTABLE, size, null, "ILF", null, 22, 28, 25, Known.YES, null),
        null,
        null,
        Style.SPLIT_FINGER);
  }

  private static RigSpec junior(int bowLengthIn) {
    return new RigSpec(
        null,
        null,
        new OnePieceSpec(null, bowLengthIn, 10, 24, Known.NO, Band.ofMm(146, 171)),
        null,
        Style.SPLIT_FINGER);
  }

  private static Reading measured(double braceMm, double upperMm, double lowerMm) {
    return new Reading(
        Length.ofMm(braceMm), BracePoint.GRIP_THROAT, Length.ofMm(upperMm), Length.ofMm(lowerMm));
  }

  private static RigDrawing drawing(RigSpec rig, Reading shown) {
    return RigDrawing.of(
        rig,
        Targets.of(rig, BraceTable.TRADE_OUTREACH_2020, null, null),
        shown,
        shown.brace() == null ? null : Length.ofMm(4),
        null);
  }

  private static double lengthIn(Callout callout) {
    MatchResult line = DIMENSION.matcher(callout.dimension()).results().findFirst().orElseThrow();
    return Math.abs(Double.parseDouble(line.group(1)) - Double.parseDouble(line.group(3)))
        / PIXELS_PER_INCH;
  }

  @Test
  void braceAndBothTillerDistances_areDrawnToOneScale() {
    RigDrawing drawing =
        drawing(adjustable(Hand.RIGHT, LimbSize.MEDIUM), measured(215.9, 190.5, 184.15));

    assertEquals(7.5, lengthIn(drawing.callouts().get(0)), 0.02);
    assertEquals(8.5, lengthIn(drawing.callouts().get(1)), 0.02);
    assertEquals(7.25, lengthIn(drawing.callouts().get(2)), 0.02);
  }

  @Test
  void aLeftHandedBow_isTheMirrorOfARightHandedOne() {
    Reading shown = measured(215, 190, 186);
    RigDrawing right = drawing(adjustable(Hand.RIGHT, LimbSize.MEDIUM), shown);
    RigDrawing left = drawing(adjustable(Hand.LEFT, LimbSize.MEDIUM), shown);

    for (int i = 0; i < right.strokes().size(); i++) {
      List<Double> there = numbers(right.strokes().get(i).path());
      List<Double> mirrored = numbers(left.strokes().get(i).path());
      for (int n = 0; n < there.size(); n += 2) {
        assertEquals(right.width() - there.get(n), mirrored.get(n), 0.11);
        assertEquals(there.get(n + 1), mirrored.get(n + 1), 0.001);
      }
    }
    assertEquals("end", left.callouts().get(0).anchor());
  }

  @Test
  void aLongerBow_isDrawnTaller() {
    Reading shown = measured(215, 190, 186);

    int shorter = drawing(adjustable(Hand.RIGHT, LimbSize.SHORT), shown).height();
    int longer = drawing(adjustable(Hand.RIGHT, LimbSize.LONG), shown).height();

    assertEquals(4 * PIXELS_PER_INCH, longer - shorter, 1.01);
  }

  @ParameterizedTest(name = "a junior bow of {0} in")
  @ValueSource(ints = {48, 54, 62, 72})
  void wordsOfAShortBow_neitherOverlapNorLeaveThePaper(int bowLengthIn) {
    RigDrawing drawing = drawing(junior(bowLengthIn), measured(160, 140, 138));

    double free = 0;
    for (Callout callout : drawing.callouts()) {
      double top = Double.parseDouble(callout.wordsY()) - 12;
      assertTrue(top >= free, callout.note() + " begins at " + top + " above " + free);
      free =
          Double.parseDouble(callout.scale() == null ? callout.noteY() : callout.scale().wordsY())
              + 2;
    }
    assertTrue(free <= drawing.height());
    double circleBelow =
        Double.parseDouble(drawing.nocking().y()) + Double.parseDouble(drawing.nocking().radius());
    assertTrue(circleBelow <= Double.parseDouble(drawing.callouts().get(1).wordsY()) - 10);
  }

  @ParameterizedTest(name = "{0} in")
  @ValueSource(ints = {48, 60, 68})
  void everyLine_staysOnThePaper(int bowLengthIn) {
    RigDrawing drawing = drawing(junior(bowLengthIn), measured(150, 132, 130));

    for (BowOutline.Stroke stroke : drawing.strokes()) {
      List<Double> numbers = numbers(stroke.path());
      for (int n = 0; n < numbers.size(); n += 2) {
        assertTrue(0 < numbers.get(n) && numbers.get(n) < drawing.width());
        assertTrue(0 < numbers.get(n + 1) && numbers.get(n + 1) < drawing.height());
      }
    }
  }

  private static BowShape shape(double upperIn, double lowerIn) {
    return BowShape.of(new BowShape.Wish(68, 25, 8.5, upperIn, lowerIn, 26.25)).orElseThrow();
  }

  @Test
  void theLimbs_standAsSolved_fromTheMeasuredEndsToTheString() {
    BowShape shape = shape(7.5, 7.25);

    assertEquals(7.5, shape.upper().braced().belly().get(0).out(), 1e-12);
    assertEquals(7.25, shape.lower().braced().belly().get(0).out(), 1e-12);
    // The string lies against both limbs where it leaves them.
    assertEquals(0, shape.upper().braced().leaves().out(), 0.05);
    assertEquals(0, shape.lower().braced().leaves().out(), 0.05);
    double braced = 2 * shape.upper().braced().leaves().along();
    assertEquals(8.5 - 26.25, shape.nock().out(), 1e-12);
    assertTrue(2 * shape.upper().drawn().leaves().along() < braced, "drawn, the tips come nearer");
    double unstrungTip = shape.upper().unstrung().belly().get(51).out();
    assertTrue(unstrungTip > 7.5, "unstrung, the tip points to the target: " + unstrungTip);
  }

  @Test
  void theDrawing_showsTheBowUnstrungBracedAndDrawn_orBracedOnlyWhereNoModelReaches() {
    RigDrawing solved =
        drawing(adjustable(Hand.RIGHT, LimbSize.MEDIUM), measured(215.9, 190.5, 184.15));
    assertEquals(2, solved.strokes().stream().filter(s -> s.kind().equals("faint")).count());
    assertEquals(3, solved.strokes().stream().filter(s -> s.kind().equals("thin")).count());

    RigDrawing plain = drawing(junior(26), measured(100, 90, 90));
    assertTrue(plain.strokes().stream().noneMatch(s -> s.kind().equals("thin")));
    assertEquals(1, plain.strokes().stream().filter(s -> s.kind().equals("string")).count());
  }

  @Test
  void readings_areSignedByTheirBands() {
    RigDrawing drawing = drawing(adjustable(Hand.RIGHT, LimbSize.MEDIUM), measured(190, 194, 186));

    assertEquals("stop", drawing.callouts().get(1).sign());
    assertEquals("note", drawing.callouts().get(3).sign());
    assertEquals("fine", drawing.nocking().sign());
    assertEquals("+5/16 in · +8 mm", drawing.callouts().get(3).words());
  }

  @Test
  void braceMeasuredToTheButton_isDimensionedThere() {
    Reading shown =
        new Reading(Length.ofMm(203), BracePoint.BUTTON, Length.ofMm(180), Length.ofMm(178));

    Callout brace = drawing(adjustable(Hand.RIGHT, LimbSize.MEDIUM), shown).callouts().get(1);
    Callout throat =
        drawing(adjustable(Hand.RIGHT, LimbSize.MEDIUM), measured(203, 180, 178)).callouts().get(1);

    assertEquals("brace, to the button", brace.note());
    assertEquals("brace, to the throat", throat.note());
    assertTrue(numbers(brace.dimension()).get(1) < numbers(throat.dimension()).get(1));
  }

  @Test
  void whatWasNotMeasured_carriesNoFigureAndSaysSo() {
    RigDrawing drawing = drawing(adjustable(Hand.RIGHT, LimbSize.MEDIUM), Reading.of(null));

    assertTrue(drawing.callouts().stream().allMatch(callout -> callout.words().isEmpty()));
    assertEquals("", drawing.nocking().locator());
    assertTrue(drawing.description().contains("Brace, to the throat not measured"));
  }

  @Test
  void theDescription_givesEveryFigureWithItsBand() {
    RigDrawing drawing =
        drawing(adjustable(Hand.LEFT, LimbSize.MEDIUM), measured(215.9, 190.5, 186));

    assertEquals("A left-handed recurve bow of 68 in, strung, seen from the side", drawing.title());
    assertTrue(
        drawing.description().contains("8 1/2 in · 216 mm, should be 8 in · 203 mm to 9 in"));
    assertTrue(drawing.description().contains("Upper tiller distance 7 1/2 in · 191 mm"));
    assertFalse(drawing.description().contains("not measured"));
  }

  /** The absolute coordinates of a path without H and V, as x and y in turn. */
  private static List<Double> numbers(String path) {
    return NUMBERS.matcher(path).results().map(m -> Double.parseDouble(m.group())).toList();
  }
}
