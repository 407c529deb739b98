package club.ascham.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.bow.Band;
import club.ascham.bow.BraceTable;
import club.ascham.bow.RigSpec;
import club.ascham.bow.StringMaterial;
import club.ascham.bow.StringSpec;
import club.ascham.bow.Style;
import club.ascham.bow.Target;
import club.ascham.bow.Targets;
import club.ascham.mechanics.OwnRecord;
import club.ascham.mechanics.ReadingScatter;
import club.ascham.mechanics.Run;
import club.ascham.mechanics.TwistLimits;
import club.ascham.units.Length;
import club.ascham.verdict.BenchStep.Key;
import club.ascham.verdict.TwistAdvice.Reach;
import club.ascham.verdict.Verdict.AdjustFirst;
import club.ascham.verdict.Verdict.FitToIssue;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What a technician meets on a club evening, through the judge and the mechanics together. */
class EverydayTest {
  private static final double NINE_INCHES = 228.6;

  @Test
  @DisplayName("68 in bow at 9 in for 8 1/2 to 8 3/4: twists out, one and a half to two dozen")
  void braceTooHigh_twistsOut() {
    AdjustFirst adjust = adjust(bow(40, Style.SPLIT_FINGER), OwnRecord.NONE, NINE_INCHES, 4);
    TwistAdvice twists = adjust.twists().orElseThrow();
    assertEquals(Reach.THIS_STRING, twists.reach());
    assertTrue(twists.turns() <= -10 && twists.turns() >= -24, twists.toString());
    assertEquals("no adjustment of this bow yet: from the string's geometry", twists.restsOn());
    assertEquals(220, twists.expected().mm(), 0.5, "the aim is the set-up figure");
    assertTrue(twists.expectedLow().mm() < 218 && twists.expectedHigh().mm() > 222);
    assertTrue(Remark.words(adjust.expected()).get(0).contains("from the string's geometry"));
  }

  @Test
  @DisplayName(
      "tiller 3/8 in, split fingers: upper in, lower out, 1/4 turn each; 1/2 to 3/4 in all")
  void tillerTooLarge_aQuarterTurnEach() {
    AdjustFirst adjust = adjust(bow(40, Style.SPLIT_FINGER), OwnRecord.NONE, 220, 9.525);
    BoltAdvice bolts = adjust.bolts().orElseThrow();
    assertEquals(new Turns(0.25, -0.25), bolts.first());
    double inAll = bolts.total().upper() - bolts.total().lower();
    assertTrue(inAll >= 0.5 && inAll <= 0.75, "in all " + inAll);
    assertEquals(
        List.of(
            Key.STRING_OFF,
            Key.LOCK_LOOSENED,
            Key.UPPER_BOLT,
            Key.LOWER_BOLT,
            Key.LOCK_TIGHTENED,
            Key.STRING_ON,
            Key.LOOPS,
            Key.STRING_LINE,
            Key.MEASURE_AGAIN),
        adjust.steps().stream().map(BenchStep::key).toList());
    assertTrue(
        Remark.words(adjust.expected()).get(0).startsWith("Tiller about 1/4 in"),
        Remark.words(adjust.expected()).get(0));
    assertTrue(
        Remark.words(adjust.expected())
            .get(0)
            .contains("In all about 3/4 of a turn, both bolts together"));
    assertTrue(bolts.basis().contains("Brace hardly moves"), bolts.basis());
  }

  @Test
  void threeUnder_aimsAtNoTiller() {
    OnRecord bow = bow(40, Style.THREE_UNDER);
    assertEquals(Length.ZERO, bow.targets().tiller().aim(null).orElseThrow());
    AdjustFirst adjust = adjust(bow, OwnRecord.NONE, 220, 5);
    BoltAdvice bolts = adjust.bolts().orElseThrow();
    assertEquals(new Turns(0.25, -0.25), bolts.first());
    assertTrue(bolts.expected().mm() < 5 && bolts.expected().mm() > 0, bolts.toString());
  }

  @Test
  @DisplayName("9 in on a string already at its fewest twists: another string, with its length")
  void noTwistsLeft_anotherStringAndItsLength() {
    AdjustFirst adjust = adjust(bow(10, Style.SPLIT_FINGER), OwnRecord.NONE, NINE_INCHES, 4);
    TwistAdvice twists = adjust.twists().orElseThrow();
    assertEquals(Reach.LONGER_STRING, twists.reach());
    assertEquals(13.3, twists.otherLonger().mm(), 0.5);
    assertTrue(
        words(adjust, Key.OTHER_STRING)
            .contains("One made for a 68 in bow, untwisted about 1/2 in · 13.3 mm longer"),
        words(adjust, Key.OTHER_STRING));
    assertTrue(
        words(adjust, Key.OTHER_STRING).contains("65 1/2 in · 1664 mm"),
        words(adjust, Key.OTHER_STRING));
  }

  @Test
  void aStringThatReachesTheBandButNotTheFigure_staysOn() {
    OnRecord bow = bow(20, Style.SPLIT_FINGER);
    Target wide = new Target(Band.ofMm(203, 226), Band.ofMm(193, 236), "a wide band");
    OnRecord wideBand =
        SeenBows.onRecord(
            bow.rig(),
            SeenBows.setUp(208, 170, 166, 2.0, 2.0, 20),
            new Targets(wide, bow.targets().tiller(), bow.targets().nocking()));
    TwistAdvice twists = adjust(wideBand, OwnRecord.NONE, 227, 4).twists().orElseThrow();
    assertEquals(Reach.THIS_STRING, twists.reach());
    assertTrue(twists.turns() < 0 && twists.expected().mm() < 226, twists.toString());
  }

  @Test
  void braceAndTillerOff_oneStringOffServesBoth() {
    AdjustFirst adjust = adjust(bow(40, Style.SPLIT_FINGER), OwnRecord.NONE, NINE_INCHES, 9.525);
    List<Key> keys = adjust.steps().stream().map(BenchStep::key).toList();
    assertEquals(1, keys.stream().filter(Key.STRING_OFF::equals).count());
    assertEquals(1, keys.stream().filter(Key.STRING_ON::equals).count());
    assertEquals(1, keys.stream().filter(Key.MEASURE_AGAIN::equals).count());
    assertTrue(keys.indexOf(Key.TWISTS) > keys.indexOf(Key.STRING_OFF));
    assertTrue(keys.indexOf(Key.LOWER_BOLT) < keys.indexOf(Key.STRING_ON));
    assertEquals(2, adjust.expected().size());
    assertTrue(Remark.words(adjust.expected()).get(0).startsWith("Brace about"));
    assertTrue(Remark.words(adjust.expected()).get(1).startsWith("Tiller about"));
  }

  @Test
  void threeAdjustmentsOfThisBow_narrowItsAdvice_andAreNamed() {
    OnRecord bow = bow(40, Style.SPLIT_FINGER);
    TwistAdvice before = adjust(bow, OwnRecord.NONE, NINE_INCHES, 4).twists().orElseThrow();
    Run run =
        new Run(
            List.of(
                new Run.Point(10, 206, 1.1),
                new Run.Point(22, 209.2, 1.1),
                new Run.Point(32, 214, 1.1),
                new Run.Point(42, 220, 1.1)));
    OwnRecord record = new OwnRecord(List.of(run), List.of(run), List.of());
    TwistAdvice after = adjust(bow, record, NINE_INCHES, 4).twists().orElseThrow();
    assertEquals("from 3 adjustments of this bow", after.restsOn());
    assertTrue(after.low() - after.high() < before.low() - before.high(), after.toString());
  }

  @Test
  void theClubsOwnLimits_areKept() {
    OnRecord bow = bow(40, Style.SPLIT_FINGER);
    Judge strict = new Judge(new BenchAdvice(new TwistLimits(35, 50), OwnRecord.NONE));
    AdjustFirst adjust =
        assertInstanceOf(AdjustFirst.class, strict.verdict(bow, seen(NINE_INCHES, 4), true));
    assertEquals(Reach.LONGER_STRING, adjust.twists().orElseThrow().reach());
    assertTrue(
        Remark.words(adjust.basis()).stream().anyMatch(line -> line.contains("35 to 50 twists")));
  }

  @Test
  void screwInAndOnePieceBows_hearNothingOfBolts() {
    for (OnRecord bow : List.of(SeenBows.screwIn(), SeenBows.onePiece())) {
      Judge judge = new Judge(new BenchAdvice(TwistLimits.IN_PRINT, OwnRecord.NONE));
      AdjustFirst adjust =
          assertInstanceOf(
              AdjustFirst.class,
              judge.verdict(bow, SeenBows.seated(SeenBows.following(bow, 209, 162, 158)), true));
      assertFalse(SeenBows.said(adjust).contains("bolt"), SeenBows.said(adjust));
      assertFalse(adjust.twists().orElseThrow().basis().contains("bolt"));
      assertTrue(adjust.bolts().isEmpty());
    }
  }

  @Test
  void tillerThatWentTheWrongWay_isPutBack_whateverWasLearnt() {
    Run wrong = new Run(List.of(new Run.Point(0, 8, 1.2), new Run.Point(0.5, 11, 1.2)));
    Judge judge =
        new Judge(
            new BenchAdvice(
                TwistLimits.IN_PRINT, new OwnRecord(List.of(), List.of(), List.of(wrong))));
    WorkDone done = new WorkDone(null, new Turns(0.25, -0.25), SeenBows.reading(220, 186, 178));
    AdjustFirst adjust =
        assertInstanceOf(
            AdjustFirst.class,
            judge.afterAdjustment(
                bow(40, Style.SPLIT_FINGER),
                done,
                SeenBows.seated(SeenBows.reading(220, 188, 177)),
                true));
    assertTrue(adjust.forWorkshop());
    assertTrue(words(adjust, Key.UPPER_BOLT).contains("out (loosen) by a quarter"));
    assertTrue(words(adjust, Key.LOWER_BOLT).contains("in (tighten) by a quarter"));
  }

  @Test
  @DisplayName("the learner's readers scatter as the verdict's do: 19 pairs in 20 within 3 mm")
  void oneScatterOfReaders_forVerdictAndLearner() {
    double pair = 1.96 * Math.sqrt(2) * ReadingScatter.braceMm(25.4 / 16);
    assertEquals(Judge.READERS_SCATTER.mm(), pair, 0.1);
  }

  @Test
  void atItsFigures_nothingIsAdvised() {
    Judge judge = new Judge(new BenchAdvice(TwistLimits.IN_PRINT, OwnRecord.NONE));
    assertInstanceOf(
        FitToIssue.class, judge.verdict(bow(40, Style.SPLIT_FINGER), seen(220, 4), true));
  }

  /** 68 in, 65 in string of 14 strands, set up at brace 220 mm, the maker allows 4 turns out. */
  private static OnRecord bow(int twists, Style style) {
    RigSpec adjustable = SeenBows.adjustableRig(4.0, twists);
    StringSpec string =
        new StringSpec(
            68, Length.ofInches(65), StringMaterial.POLYESTER, 14, Length.ofMm(0.45), twists);
    RigSpec rig = new RigSpec(adjustable.riser(), adjustable.limbs(), null, string, style);
    double lower = style == Style.THREE_UNDER ? 180 : 178;
    double upper = style == Style.THREE_UNDER ? 180 : 182;
    var setUp = SeenBows.setUp(220, upper, lower, 2.0, 2.0, twists);
    Targets byStyle = Targets.of(rig, BraceTable.TRADE_OUTREACH_2020, null, setUp);
    return SeenBows.onRecord(
        rig, setUp, new Targets(SeenBows.BRACE_68, byStyle.tiller(), byStyle.nocking()));
  }

  private static AdjustFirst adjust(OnRecord bow, OwnRecord record, double brace, double tiller) {
    Judge judge = new Judge(new BenchAdvice(TwistLimits.IN_PRINT, record));
    return assertInstanceOf(AdjustFirst.class, judge.verdict(bow, seen(brace, tiller), true));
  }

  private static Seen seen(double brace, double tiller) {
    double middle = 180 + brace - 220;
    return SeenBows.seated(SeenBows.reading(brace, middle + tiller / 2, middle - tiller / 2));
  }

  private static String words(AdjustFirst adjust, Key key) {
    return adjust.steps().stream()
        .filter(step -> step.key() == key)
        .map(BenchStep::words)
        .findFirst()
        .orElse("no step " + key);
  }
}
