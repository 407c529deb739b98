package club.ascham.verdict;

import static club.ascham.verdict.Remark.words;
import static club.ascham.verdict.SeenBows.adjustable;
import static club.ascham.verdict.SeenBows.asSetUp;
import static club.ascham.verdict.SeenBows.following;
import static club.ascham.verdict.SeenBows.reading;
import static club.ascham.verdict.SeenBows.seated;
import static club.ascham.verdict.SeenBows.seen;
import static club.ascham.verdict.SeenBows.signs;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.bow.Band;
import club.ascham.bow.BracePoint;
import club.ascham.bow.Build;
import club.ascham.bow.SetUpFigures;
import club.ascham.bow.Target;
import club.ascham.bow.Targets;
import club.ascham.bow.Who;
import club.ascham.mechanics.OwnRecord;
import club.ascham.mechanics.TwistLimits;
import club.ascham.units.Length;
import club.ascham.verdict.AskAgain.About;
import club.ascham.verdict.BenchStep.Key;
import club.ascham.verdict.TwistAdvice.Reach;
import club.ascham.verdict.Verdict.AdjustFirst;
import club.ascham.verdict.Verdict.FitToIssue;
import club.ascham.verdict.Verdict.Kind;
import club.ascham.verdict.Verdict.Withdraw;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class JudgeTest {
  private static final double NINE_INCHES = 228.6;
  private final Judge judge = new Judge(new BenchAdvice(TwistLimits.IN_PRINT, OwnRecord.NONE));

  @ParameterizedTest
  @EnumSource(Build.class)
  void verdict_measuresAsSetUp_fitWithoutANote(Build build) {
    OnRecord bow = SeenBows.of(build);
    FitToIssue fit = fit(bow, seen(asSetUp(bow)));
    assertEquals(List.of(), words(fit.notes()));
    assertEquals(2, fit.findings().size());
  }

  @ParameterizedTest(name = "brace {0}, upper {1}, lower {2}: {3}")
  @CsvSource({
    "220.0,  182.0, 178.0, FIT",
    "215.9,  182.0, 178.0, FIT",
    "222.25, 182.0, 178.0, FIT",
    "222.7,  182.0, 178.0, FIT",
    "222.8,  182.0, 178.0, ADJUST",
    "215.5,  182.0, 178.0, FIT",
    "215.3,  182.0, 178.0, ADJUST",
    "240.0,  182.0, 178.0, ADJUST",
    "220.0,  184.0, 178.0, FIT",
    "220.0,  178.0, 178.0, FIT",
    "220.0,  177.9, 178.0, ADJUST",
    "220.0,  184.4, 178.0, FIT",
    "220.0,  184.6, 178.0, ADJUST",
    "220.0,  190.0, 178.0, ADJUST"
  })
  void verdict_adjustable(double brace, double upper, double lower, Kind kind) {
    assertEquals(kind, kind(adjustable(), seen(following(adjustable(), brace, upper, lower))));
  }

  @ParameterizedTest(name = "upper {0}: {1}")
  @CsvSource({
    "162.0, FIT",
    "165.0, FIT",
    "159.0, FIT",
    "165.5, FIT",
    "165.6, WITHDRAW",
    "158.4, WITHDRAW",
    "175.0, WITHDRAW",
    "150.0, WITHDRAW"
  })
  void verdict_fixedTiller_isWithdrawnNeverAdjusted(double upper, Kind kind) {
    assertEquals(kind, kind(SeenBows.screwIn(), seen(reading(195, upper, 158))));
    assertEquals(kind, kind(SeenBows.onePiece(), seen(reading(195, upper, 158))));
  }

  @Test
  void verdict_fixedTillerBeyondItsOuterBandThoughUnchanged_withdraw() {
    OnRecord screwIn = SeenBows.screwIn();
    OnRecord bow =
        SeenBows.onRecord(
            screwIn.rig(), SeenBows.setUp(195, 169, 158, null, null, null), screwIn.targets());
    Withdraw withdraw = withdraw(bow, seen(asSetUp(bow)));
    assertEquals(Set.of(BowPart.LIMBS), withdraw.parts());
    assertEquals(1, withdraw.reasons().size());
    assertTrue(
        words(withdraw.reasons())
            .get(0)
            .startsWith("Tiller is 7/16 in · 11 mm, beyond the limits"));
  }

  @Test
  void verdict_screwInTillerChanged_looksAtSeatsAndTightness() {
    Withdraw withdraw = withdraw(SeenBows.screwIn(), seen(reading(195, 166, 158)));
    assertEquals(
        List.of(
            "Tiller is 5/16 in · 8 mm, beyond the limits 1/16 in · 1 mm to 1/4 in · 7 mm.",
            "Tiller has changed since the set-up, and nothing on this bow sets it."),
        words(withdraw.reasons()));
    assertTrue(words(withdraw.work()).get(1).contains("hand-tight"));
    assertFalse(String.join(" ", words(withdraw.work())).contains("turns"));
  }

  @Test
  void verdict_onePieceTillerChanged_saysNothingOfBolts() {
    Withdraw withdraw = withdraw(SeenBows.onePiece(), seen(reading(195, 166, 158)));
    assertFalse(String.join(" ", words(withdraw.work())).contains("bolt"));
    assertTrue(words(withdraw.work()).get(1).startsWith("Tiller: measure again"));
  }

  @Test
  void verdict_oneBrokenStrand_withdrawsTheString() {
    Sign strand = Signs.byKey("string-strand-broken").orElseThrow().seen();
    OnRecord bow = adjustable();
    Withdraw withdraw = withdraw(bow, seen(asSetUp(bow), strand));
    assertEquals(
        List.of("String: A strand is cut or broken, be it only one"), words(withdraw.reasons()));
    assertEquals(Set.of(BowPart.STRING), withdraw.parts());
    assertEquals(
        List.of(
            "If it is strung: string off with the stringer, and leave it off. Don't draw it.",
            "String: fit another one, then set the bow up again from brace to nocking point."),
        words(withdraw.work()));
    assertTrue(
        words(withdraw.basis()).stream()
            .anyMatch(line -> line.contains("Olympic Archery in Schools")));
  }

  @ParameterizedTest
  @EnumSource(BowPart.class)
  void verdict_aStopOnAnyPart_withdrawsThatPartAndSaysItsWork(BowPart part) {
    OnRecord bow = adjustable();
    Withdraw withdraw = withdraw(bow, seen(asSetUp(bow), new Sign(part, Gravity.STOP, "broken")));
    assertEquals(Set.of(part), withdraw.parts());
    String work = words(withdraw.work()).get(withdraw.work().size() - 1);
    assertTrue(work.toLowerCase().startsWith(part.words()), work);
  }

  @ParameterizedTest
  @CsvSource({"LIMBS, 2", "STRING, 2", "RISER, 2", "BOLTS, 1", "REST, 1"})
  void verdict_whatCouldBreak_isUnstrungFirst(BowPart part, int lines) {
    OnRecord bow = adjustable();
    Withdraw withdraw = withdraw(bow, seen(asSetUp(bow), new Sign(part, Gravity.STOP, "broken")));
    assertEquals(lines, withdraw.work().size());
    assertEquals(lines == 2, words(withdraw.work()).get(0).startsWith("If it is strung"));
  }

  @Test
  void verdict_boltsOfAScrewInBow_areInspectedWithoutTurns() {
    OnRecord bow = SeenBows.screwIn();
    Withdraw withdraw =
        withdraw(bow, seen(asSetUp(bow), new Sign(BowPart.BOLTS, Gravity.STOP, "thread worn")));
    assertEquals(
        List.of("Limb bolts: string off, then look at thread, seat, washer and tightness."),
        words(withdraw.work()));
  }

  @Test
  void verdict_crackedLimbNotMeasured_isWithdrawnWithoutStringingIt() {
    Sign crack = Signs.byKey("limbs-crack-across").orElseThrow().seen();
    Seen cracked = SeenBows.seen(null, List.of(crack), Reported.NOTHING, List.of(), false);
    assertEquals(List.of(), withdraw(adjustable(), cracked).findings());
  }

  @ParameterizedTest
  @CsvSource({"ADJUSTABLE, true", "SCREW_IN, true", "ONE_PIECE, false"})
  void verdict_dryLooseReported_withdrawsEveryPartThatMayHaveBeenHarmed(
      Build build, boolean bolts) {
    OnRecord bow = SeenBows.of(build);
    Seen seen = SeenBows.seen(asSetUp(bow), signs(), new Reported(true, false), List.of(), false);
    Set<BowPart> parts = withdraw(bow, seen).parts();
    assertTrue(parts.containsAll(Set.of(BowPart.STRING, BowPart.LIMBS, BowPart.RISER)));
    assertEquals(bolts, parts.contains(BowPart.BOLTS));
    assertFalse(parts.contains(BowPart.REST));
  }

  @Test
  void verdict_cameBackStrung_isANote() {
    OnRecord bow = adjustable();
    Seen seen = SeenBows.seen(asSetUp(bow), signs(), new Reported(false, true), List.of(), false);
    assertEquals(1, fit(bow, seen).notes().size());
    assertTrue(words(fit(bow, seen).notes()).get(0).startsWith("It came back strung"));
  }

  @Test
  void verdict_aNote_fitWithTheNoteAndItsSource() {
    OnRecord bow = adjustable();
    Sign fuzzy = Signs.byKey("string-fuzzy").orElseThrow().seen();
    FitToIssue fit = fit(bow, seen(asSetUp(bow), fuzzy));
    assertEquals(
        List.of("String: Dry or a little fuzzy, no strand cut: wax it, not on the servings"),
        words(fit.notes()));
    assertTrue(
        words(fit.basis()).stream().anyMatch(line -> line.contains("50th State Archery Club")));
  }

  @Test
  void verdict_basis_namesBandsSetUpFiguresAndScatter() {
    OnRecord bow = adjustable();
    List<String> basis = words(fit(bow, seen(asSetUp(bow))).basis());
    assertTrue(basis.contains("Brace: a guide, 68 in"));
    assertTrue(basis.contains("Tiller: split finger"));
    assertTrue(
        basis.contains(
            "Set-up figures: brace 8 11/16 in · 220 mm from the throat of the grip, tiller 3/16 in"
                + " · 4 mm (upper 7 3/16 in · 182 mm, lower 7 in · 178 mm)."));
    assertTrue(basis.stream().anyMatch(line -> line.contains("judged, not measured")));
    assertTrue(basis.contains("Limb bolts: fine (fine)"));
  }

  /** Whether a move within the band is a change, the readings together say, not one alone. */
  @Test
  void verdict_movedInsideItsBand_fitWithoutANote() {
    assertEquals(
        List.of(),
        words(fit(adjustable(), seen(following(adjustable(), 216.5, 182, 178))).notes()));
  }

  @Test
  void verdict_fixedTillerOutsideWhatIsAimedForElsewhere_fitWithANote() {
    OnRecord usual = SeenBows.screwIn();
    OnRecord bow =
        SeenBows.onRecord(
            usual.rig(),
            usual.setUp(),
            new Targets(
                usual.targets().brace(),
                new Target(Band.ofMm(0, 3), Band.ofMm(-4, 10), "maker"),
                usual.targets().nocking()));
    assertEquals(
        List.of("Tiller is 3/16 in · 4 mm, outside 0 in · 0 mm to 1/8 in · 3 mm."),
        words(fit(bow, seen(asSetUp(bow))).notes()));
  }

  @Test
  void adjust_whatIsAReason_isNotANoteAsWell() {
    assertEquals(
        List.of(),
        words(
            adjust(adjustable(), seen(following(adjustable(), NINE_INCHES, 182, 178)), false)
                .notes()));
  }

  // ---- questions before a verdict

  @Test
  void verdict_braceFromAnotherPoint_asksForTheSetUpsPoint() {
    Reading fromButton =
        new Reading(Length.ofMm(220), BracePoint.BUTTON, Length.ofMm(182), Length.ofMm(178));
    AskAgain again =
        assertInstanceOf(AskAgain.class, judge.verdict(adjustable(), seen(fromButton), false));
    assertEquals(List.of(About.BRACE), abouts(again));
    assertTrue(
        again.questions().get(0).words().endsWith("Measure again from the throat of the grip."));
  }

  @Test
  void verdict_braceFromAnotherPoint_isStillWithdrawnForItsTiller() {
    Reading fromButton =
        new Reading(Length.ofMm(195), BracePoint.BUTTON, Length.ofMm(170), Length.ofMm(158));
    Withdraw withdraw = withdraw(SeenBows.screwIn(), seen(fromButton));
    assertEquals(
        List.of(Quantity.TILLER), withdraw.findings().stream().map(Finding::quantity).toList());
  }

  @Test
  void verdict_nothingMeasuredOrAnswered_asksForAll() {
    Seen nothing = SeenBows.seen(null, List.of(), Reported.NOTHING, List.of(), false);
    AskAgain again = assertInstanceOf(AskAgain.class, judge.verdict(adjustable(), nothing, false));
    assertEquals(
        List.of(About.BRACE, About.TILLER, About.STRING, About.LIMBS, About.BOLTS), abouts(again));
  }

  @Test
  void verdict_onePiece_isNotAskedForBolts() {
    OnRecord bow = SeenBows.onePiece();
    Seen unanswered = SeenBows.seen(asSetUp(bow), List.of(), Reported.NOTHING, List.of(), false);
    AskAgain again = assertInstanceOf(AskAgain.class, judge.verdict(bow, unanswered, false));
    assertEquals(List.of(About.STRING, About.LIMBS), abouts(again));
  }

  @Test
  void verdict_onlySomePartsAnswered_asksForTheOthers() {
    OnRecord bow = adjustable();
    Seen some =
        SeenBows.seen(
            asSetUp(bow),
            List.of(new Sign(BowPart.LIMBS, Gravity.FINE, "fine")),
            Reported.NOTHING,
            List.of(),
            false);
    AskAgain again = assertInstanceOf(AskAgain.class, judge.verdict(bow, some, false));
    assertEquals(List.of(About.STRING, About.BOLTS), abouts(again));
  }

  @Test
  void verdict_aStop_isAReasonAndNotANote() {
    OnRecord bow = adjustable();
    Withdraw withdraw =
        withdraw(bow, seen(asSetUp(bow), new Sign(BowPart.LIMBS, Gravity.STOP, "crack")));
    assertEquals(List.of(), words(withdraw.notes()));
    assertFalse(words(withdraw.basis()).contains("Limbs: crack (fine)"));
  }

  @Test
  void verdict_withdrawn_saysWhatThatRestsOn() {
    OnRecord bow = adjustable();
    Seen dry = SeenBows.seen(asSetUp(bow), signs(), new Reported(true, false), List.of(), false);
    assertTrue(
        words(withdraw(bow, dry).basis()).stream()
            .anyMatch(line -> line.contains("common practice")));
    assertTrue(
        words(withdraw(SeenBows.screwIn(), seen(reading(195, 166, 158))).basis()).stream()
            .anyMatch(line -> line.contains("never adjusted (our judgement)")));
  }

  // ---- a danger stands against it

  private static OnRecord withdrawn() {
    OnRecord usual = adjustable();
    return SeenBows.onRecord(
        usual.rig(),
        usual.setUp(),
        usual.targets(),
        usual.scatter(),
        null,
        false,
        null,
        List.of("L-0109-5 is withdrawn: layers parting."));
  }

  @Test
  void danger_readingsFine_isNotFit_andTheStringComesOff() {
    AdjustFirst left = adjust(withdrawn(), seen(asSetUp(withdrawn())), false);
    assertEquals(
        List.of(
            "L-0109-5 is withdrawn: layers parting.",
            "Readings release nothing: take no more of them."),
        words(left.reasons()));
    assertEquals(
        "If it is strung: take the string off with the stringer, and leave it off.",
        left.steps().get(0).words());
    assertTrue(left.forWorkshop());
  }

  @Test
  void danger_readingsOff_areSaid_andNothingIsTwisted() {
    AdjustFirst left =
        adjust(withdrawn(), seen(following(withdrawn(), NINE_INCHES, 182, 178)), true);
    assertEquals(3, left.reasons().size());
    assertTrue(words(left.reasons()).get(1).startsWith("Brace is 9 in"));
    assertEquals(List.of(Key.STRING_OFF, Key.RELEASE), keys(left));
    assertFalse(left.forWorkshop());
  }

  @Test
  void danger_withoutReadings_isALook_thatFindsNothingFit() {
    AdjustFirst look = adjust(withdrawn(), seen(null), false);
    assertEquals(
        "This was a look, without readings: it finds nothing fit.", words(look.reasons()).get(1));
    Seen blind = SeenBows.seen(null, List.of(), Reported.NOTHING, List.of(), false);
    assertEquals(
        List.of(About.STRING, About.LIMBS, About.BOLTS),
        abouts(assertInstanceOf(AskAgain.class, judge.verdict(withdrawn(), blind, false))),
        "what it is looked over for");
  }

  @Test
  void danger_partsMissing_areSaidAsWell() {
    Seen seen =
        SeenBows.seen(null, signs(), Reported.NOTHING, List.of("S-0147-X is not on it"), false);
    assertTrue(words(adjust(withdrawn(), seen, true).reasons()).contains("S-0147-X is not on it"));
  }

  // ---- adjust first

  @Test
  void adjust_68InBowAtNineInches_twistsOut() {
    AdjustFirst adjust =
        adjust(adjustable(), seen(following(adjustable(), NINE_INCHES, 182, 178)), false);
    assertEquals(
        List.of(
            Key.STRING_OFF,
            Key.COUNT_TWISTS,
            Key.TWISTS,
            Key.STRING_ON,
            Key.LOOPS,
            Key.STRING_LINE,
            Key.MEASURE_AGAIN),
        keys(adjust));
    assertTrue(adjust.steps().stream().allMatch(step -> step.who() == Who.VOLUNTEER));
    // 8.6 mm from the set-up figure, 2 to 3 twists a millimetre: the strands of this string are not
    // known, so it is a rule of thumb.
    assertEquals(
        ("Take out about 21 twists (14 or more may be needed; it has room for 30 and gets there with a chance of about %.0f in 100, else another string), turning a loop against the way the"
                + " string is twisted.")
            .formatted(100 * adjust.twists().orElseThrow().chance()),
        adjust.steps().get(2).words());
    assertEquals(Optional.of(-21.0), adjust.steps().get(2).amount());
    assertEquals(
        List.of("Brace is 9 in · 229 mm, outside 8 1/2 in · 216 mm to 8 3/4 in · 222 mm."),
        words(adjust.reasons()));
    assertFalse(adjust.forWorkshop());
    assertTrue(
        words(adjust.basis()).stream()
            .anyMatch(line -> line.startsWith("No adjustment of this bow yet: a rule of thumb.")));
    assertEquals(
        List.of(
            "Brace about 8 5/8 in · 220 mm (8 1/2 to 8 13/16 in · 216 to 224 mm, 9 times in 10). No"
                + " adjustment of this bow yet: a rule of thumb."),
        words(adjust.expected()));
  }

  @Test
  void adjust_outToTheMakersVeryLimit_isAllowed() {
    AdjustFirst adjust =
        adjust(adjustable(2.25, 2.0, 2.0), seen(reading(220, 184.75, 175.25)), true);
    assertEquals(Optional.of(-0.25), adjust.steps().get(3).amount());
    assertFalse(adjust.forWorkshop());
  }

  @Test
  void adjust_setUpTillerJustLargeEnoughToTurnOver_isSuspected() {
    OnRecord usual = adjustable();
    OnRecord bow =
        SeenBows.onRecord(
            usual.rig(), SeenBows.setUp(220, 181, 178, null, null, null), usual.targets());
    AdjustFirst adjust = adjust(bow, seen(reading(220, 178, 181)), true);
    assertEquals(Key.LOOK_AT_LIMBS, keys(adjust).get(1));
  }

  @Test
  void adjust_setUpTillerItselfOutsideTheBand_turnedOverIntoIt_isFit() {
    OnRecord usual = adjustable();
    OnRecord bow =
        SeenBows.onRecord(
            usual.rig(), SeenBows.setUp(220, 178, 181.5, null, null, null), usual.targets());
    assertEquals(Kind.FIT, kind(bow, seen(reading(220, 181, 178.5))));
  }

  @Test
  void adjust_braceALittleLow_twistsInTheWayTheStringIsTwisted() {
    AdjustFirst adjust = adjust(adjustable(), seen(following(adjustable(), 215, 182, 178)), false);
    assertTrue(adjust.steps().get(2).words().startsWith("Put in about 12 twists"));
    assertTrue(adjust.steps().get(2).words().endsWith("the way the string is already twisted."));
  }

  @Test
  void adjust_fewTwistsAndBraceTooHigh_anotherString() {
    OnRecord usual = adjustable();
    OnRecord bow =
        SeenBows.onRecord(SeenBows.adjustableRig(null, 12), usual.setUp(), usual.targets());
    AdjustFirst adjust = adjust(bow, seen(following(adjustable(), NINE_INCHES, 182, 178)), false);
    assertEquals(Key.OTHER_STRING, adjust.steps().get(2).key());
    assertTrue(
        adjust
            .steps()
            .get(2)
            .words()
            .startsWith("Only then fit another string: too few twists would be left"));
    assertTrue(
        adjust.steps().get(2).words().contains("made for a 68 in bow, untwisted about 5/16 in"));
    assertTrue(adjust.steps().get(2).words().contains("longer than this one"));
    assertEquals(Reach.LONGER_STRING, adjust.twists().orElseThrow().reach());
  }

  @Test
  void adjust_manyTwistsAndBraceTooLow_anotherString() {
    OnRecord usual = adjustable();
    OnRecord bow =
        SeenBows.onRecord(SeenBows.adjustableRig(null, 58), usual.setUp(), usual.targets());
    AdjustFirst adjust = adjust(bow, seen(following(adjustable(), 214, 182, 178)), false);
    assertTrue(adjust.steps().get(2).words().contains("shorter than this one"));
  }

  @Test
  void adjust_anotherStringNeeded_tillerWaitsForIt() {
    OnRecord usual = adjustable();
    OnRecord bow =
        SeenBows.onRecord(SeenBows.adjustableRig(null, 12), usual.setUp(), usual.targets());
    AdjustFirst adjust = adjust(bow, seated(following(adjustable(), NINE_INCHES, 186, 178)), true);
    assertEquals(2, adjust.reasons().size());
    assertTrue(adjust.bolts().isEmpty());
    assertFalse(keys(adjust).stream().anyMatch(Key::turnsBolt));
  }

  @Test
  void adjust_braceBeyondItsLimits_looksBeforeTwisting() {
    AdjustFirst look = adjust(adjustable(), seen(following(adjustable(), 235, 182, 178)), false);
    assertEquals(
        List.of(
            Key.LOOK_ALONG,
            Key.STRING_OFF,
            Key.COUNT_TWISTS,
            Key.LOOK_AT_LIMBS,
            Key.STRING_ON,
            Key.LOOPS,
            Key.STRING_LINE,
            Key.MEASURE_AGAIN),
        keys(look));
    assertTrue(look.twists().isEmpty());
    assertEquals(
        List.of(
            "Brace is 9 1/4 in · 235 mm, beyond the limits 8 1/8 in · 206 mm to 9 1/8 in · 232 mm.",
            "With brace so far off, a loop or a limb may not be seated."),
        words(look.reasons()));
    AdjustFirst then = adjust(adjustable(), seated(following(adjustable(), 230, 182, 178)), false);
    assertTrue(keys(then).contains(Key.TWISTS));
  }

  @Test
  void adjust_braceOfAnUntabledBowBeyondItsLimits_looksThenAimsAtTheSetUpFigure() {
    OnRecord bow = SeenBows.screwIn();
    assertEquals(Kind.FIT, kind(bow, seen(following(bow, 204, 162, 158))));
    assertTrue(
        keys(adjust(bow, seen(following(bow, 206, 162, 158)), false)).contains(Key.LOOK_AT_LIMBS));
    AdjustFirst then = adjust(bow, seated(following(bow, 209, 162, 158)), false);
    // 14 mm above the set-up figure: 30 twists can't give up 23, and 10 stay in any string.
    assertEquals(Reach.LONGER_STRING, then.twists().orElseThrow().reach());
  }

  @ParameterizedTest
  @CsvSource({
    "ADJUSTABLE, seated in their pockets",
    "SCREW_IN, hand-tight",
    "ONE_PIECE, this bow's own string"
  })
  void adjust_look_speaksOfThisBuild(Build build, String words) {
    OnRecord bow = SeenBows.of(build);
    Reading far =
        new Reading(
            bow.setUp().brace().plus(Length.ofMm(30)),
            BracePoint.GRIP_THROAT,
            bow.setUp().tillerUpper().plus(Length.ofMm(30)),
            bow.setUp().tillerLower().plus(Length.ofMm(30)));
    AdjustFirst look = adjust(bow, seen(far), false);
    BenchStep seats = look.steps().get(keys(look).indexOf(Key.LOOK_AT_LIMBS));
    assertTrue(seats.words().contains(words), seats.words());
  }

  @Test
  void adjust_tillerThreeEighths_upperInAndLowerOutAQuarterEach() {
    OnRecord bow = adjustable(4.0, 2.0, 2.0);
    AdjustFirst adjust = adjust(bow, seen(reading(220, 184.75, 175.25)), true);
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
        keys(adjust));
    assertEquals(
        "Turn the upper limb bolt in (tighten) by a quarter of a turn.",
        adjust.steps().get(2).words());
    assertEquals(Optional.of(0.25), adjust.steps().get(2).amount());
    assertEquals(
        "Turn the lower limb bolt out (loosen) by a quarter of a turn.",
        adjust.steps().get(3).words());
    assertEquals(Optional.of(-0.25), adjust.steps().get(3).amount());
    assertEquals(
        Optional.of("Never beyond the maker's 4 turns out."), adjust.steps().get(3).caution());
    assertEquals(
        Optional.of("Stop where it comes to its seat; never force it."),
        adjust.steps().get(2).caution());
    assertTrue(
        adjust.steps().stream()
            .filter(step -> step.key().turnsBolt())
            .allMatch(step -> step.who() == Who.PERMIT_HOLDER));
    assertFalse(adjust.forWorkshop());
  }

  @Test
  void adjust_maximumTurnsUnknown_onlyIn() {
    AdjustFirst adjust = adjust(adjustable(), seen(reading(220, 184.75, 175.25)), true);
    assertTrue(keys(adjust).contains(Key.UPPER_BOLT));
    assertFalse(keys(adjust).contains(Key.LOWER_BOLT));
    assertTrue(
        words(adjust.basis()).stream().anyMatch(line -> line.contains("No bolt is turned out")));
  }

  @Test
  void adjust_tillerTooSmall_lowerIn() {
    AdjustFirst adjust = adjust(adjustable(), seated(reading(220, 178, 180)), true);
    assertEquals(Key.LOWER_BOLT, keys(adjust).get(2));
    assertFalse(keys(adjust).contains(Key.UPPER_BOLT));
  }

  @Test
  void adjust_noPermit_boltsAreWorkForTheWorkshop() {
    AdjustFirst adjust =
        adjust(adjustable(4.0, 2.0, 2.0), seen(reading(220, 184.75, 175.25)), false);
    assertTrue(adjust.forWorkshop());
    assertTrue(keys(adjust).contains(Key.TO_WORKSHOP));
    assertFalse(keys(adjust).stream().anyMatch(Key::turnsBolt));
    assertEquals(Key.TO_WORKSHOP, adjust.steps().get(adjust.steps().size() - 1).key());
    assertTrue(adjust.bolts().isPresent());
  }

  @Test
  void adjust_braceAndTillerOff_onePassServesBoth() {
    AdjustFirst adjust =
        adjust(adjustable(4.0, 2.0, 2.0), seen(following(adjustable(), 215, 184.75, 175.25)), true);
    assertEquals(Key.TWISTS, keys(adjust).get(2));
    assertEquals(Key.LOCK_LOOSENED, keys(adjust).get(3));
    assertEquals(1, keys(adjust).stream().filter(Key.STRING_OFF::equals).count());
    assertEquals(2, adjust.reasons().size());
  }

  @Test
  void adjust_boltBottomedOutAndNoneMayGoOut_workshop() {
    OnRecord bow = adjustable(null, 0.0, 0.0);
    AdjustFirst adjust = adjust(bow, seen(reading(220, 184.75, 175.25)), true);
    assertTrue(adjust.forWorkshop());
    assertTrue(
        adjust
            .steps()
            .get(1)
            .words()
            .contains("no limb bolt has room the way it would have to be turned"));
  }

  @ParameterizedTest(name = "maximum {0}, lower bolt stands {1} out")
  @CsvSource(
      nullValues = "-",
      value = {"-, 2.0", "4.0, -", "2.1, 2.0"})
  void adjust_recklessAdviceOut_isNotPassedOn(Double max, Double lower) {
    Judge reckless = new Judge(new Reckless());
    AdjustFirst adjust =
        assertInstanceOf(
            AdjustFirst.class,
            reckless.verdict(
                adjustable(max, 2.0, lower), seen(reading(220, 184.75, 175.25)), true));
    assertTrue(adjust.forWorkshop());
    assertFalse(keys(adjust).stream().anyMatch(Key::turnsBolt));
  }

  @Test
  void adjust_tillerTurnedOver_looksWhetherTheLimbsAreSwapped() {
    AdjustFirst adjust = adjust(adjustable(), seen(reading(220, 178, 181.9)), true);
    assertEquals(Key.LOOK_AT_LIMBS, keys(adjust).get(1));
    assertEquals(2, adjust.reasons().size());
    assertTrue(words(adjust.reasons()).get(0).startsWith("Tiller is −1/8 in · −3.9 mm, outside"));
    assertTrue(words(adjust.reasons()).get(1).contains("wrong way up"));
    assertFalse(keys(adjust).stream().anyMatch(Key::turnsBolt));
  }

  @Test
  void adjust_tillerTurnedOverInsideAWideBand_looksAllTheSame() {
    OnRecord usual = adjustable();
    OnRecord bow =
        SeenBows.onRecord(
            usual.rig(),
            usual.setUp(),
            new Targets(
                SeenBows.BRACE_68,
                new Target(Band.ofMm(-6, 6), Band.ofMm(-10, 10), "wide"),
                usual.targets().nocking()));
    assertEquals(Key.LOOK_AT_LIMBS, keys(adjust(bow, seen(reading(220, 178, 182)), true)).get(1));
    assertEquals(Kind.FIT, kind(bow, seated(reading(220, 178, 182))));
  }

  @Test
  void adjust_tillerTooSmallToTurnOver_isNotSuspected() {
    OnRecord usual = adjustable();
    OnRecord bow =
        SeenBows.onRecord(
            usual.rig(), SeenBows.setUp(220, 181, 179, null, null, null), usual.targets());
    AdjustFirst adjust = adjust(bow, seen(reading(220, 179, 181)), true);
    assertFalse(keys(adjust).contains(Key.LOOK_AT_LIMBS));
  }

  @ParameterizedTest(name = "upper {0}, lower {1}")
  @CsvSource({"188.1, 178, true", "188, 178, false", "186, 171.9, true", "182, 172.5, false"})
  void adjust_distanceMovedByMoreThanSixMillimetres_looksBeforeTurning(
      double upper, double lower, boolean look) {
    AdjustFirst adjust = adjust(adjustable(), seen(reading(220, upper, lower)), true);
    assertEquals(look, keys(adjust).contains(Key.LOOK_AT_LIMBS));
  }

  @ParameterizedTest(name = "{0}: brace {1}, upper {2}, lower {3}, seated {4}: {5}")
  @CsvSource({
    "ADJUSTABLE, 205, 167, 163, false, ADJUST, both fell with the brace",
    "SCREW_IN,   187, 154, 150, false, FIT, both fell with the brace",
    "ADJUSTABLE, 220, 190, 180, false, ADJUST, one moved by 8 mm",
    "ADJUSTABLE, 220, 190, 180, true,  WITHDRAW, it still is",
    "ADJUSTABLE, 212, 186.1, 172, false, WITHDRAW, one moved by 12 mm and brace fell",
    "ADJUSTABLE, 220, 194.1, 180, false, WITHDRAW, one moved by more than 12 mm",
    "ADJUSTABLE, 232, 182, 178, false, ADJUST, both alike: was brace read wrongly?",
    "ADJUSTABLE, 232, 182, 178, true, WITHDRAW, and it stands",
    "ONE_PIECE,  195, 169, 165.5, false, ADJUST, both moved by 7 mm"
  })
  void distances_areJudgedNetOfBrace(
      Build build, double brace, double upper, double lower, boolean seated, Kind kind) {
    Reading reading = reading(brace, upper, lower);
    OnRecord bow = SeenBows.of(build);
    Judgement judged = judge.verdict(bow, seated ? seated(reading) : seen(reading), true);
    assertEquals(kind, assertInstanceOf(Verdict.class, judged).kind(), judged.toString());
    if (judged instanceof Withdraw withdraw) {
      assertEquals(Set.of(BowPart.LIMBS), withdraw.parts());
      assertTrue(words(withdraw.work()).toString().contains("Before it is strung again"));
    }
  }

  @Test
  void distances_afterBoltsWereTurned_areComparedWithWhatWasMeasuredThen() {
    OnRecord usual = adjustable();
    Reading then = reading(220, 174, 172);
    OnRecord bow =
        SeenBows.onRecord(
            usual.rig(), usual.setUp(), usual.targets(), usual.scatter(), then, false, null);
    assertEquals(Kind.FIT, kind(bow, seen(then)));
    assertTrue(keys(adjust(usual, seen(then), true)).contains(Key.LOOK_AT_LIMBS));
  }

  @Test
  void theSameFigureThreeTimes_isAskedBack() {
    for (Build build : Build.values()) {
      Judgement judged = judge.verdict(SeenBows.of(build), seen(reading(220, 221, 224)), true);
      assertEquals(List.of(About.EACH), abouts(assertInstanceOf(AskAgain.class, judged)));
    }
    OnRecord usual = adjustable();
    OnRecord alike =
        SeenBows.onRecord(
            usual.rig(), SeenBows.setUp(220, 222, 218, null, null, null), usual.targets());
    assertEquals(Kind.FIT, kind(alike, seen(asSetUp(alike))), "such a bow there is");
    Sign crack = Signs.byKey("limbs-crack-across").orElseThrow().seen();
    assertEquals(Kind.WITHDRAW, kind(usual, seen(reading(220, 221, 224), crack)));
  }

  private static Seen measuredEach(Reading reading) {
    return SeenBows.seen(
        reading,
        signs(),
        Reported.NOTHING,
        List.of(),
        new Seen.Assured(false, true, false),
        List.of());
  }

  @ParameterizedTest(name = "{0}: brace {1}, upper {2}, lower {3}: asked {4}, {5}")
  @CsvSource({
    "ADJUSTABLE, 220, 220, 178, true,  brace typed twice",
    "ADJUSTABLE, 220, 182, 223, true,  the same with the lower",
    "ADJUSTABLE, 182, 182, 178, true,  a distance typed as brace",
    "ADJUSTABLE, 220, 214.9, 178, false, 5.1 mm apart",
    "SCREW_IN,   195, 195, 158, true,  where tiller is fixed as well",
    "ONE_PIECE,  195, 162, 195, true,  and on a bow of one piece"
  })
  void braceTheSameAsOneDistance_isAskedBack_andWithdrawsNothing(
      Build build, double brace, double upper, double lower, boolean asked) {
    OnRecord bow = SeenBows.of(build);
    Reading reading = reading(brace, upper, lower);
    Judgement judged = judge.verdict(bow, seen(reading), true);
    assertEquals(asked, judged instanceof AskAgain, judged.toString());
    assertInstanceOf(Verdict.class, judge.verdict(bow, measuredEach(reading), true));
  }

  @Test
  void braceTheSameAsOneDistance_measuredEach_isJudgedAsItIs() {
    assertEquals(Kind.WITHDRAW, kind(adjustable(), measuredEach(reading(220, 220, 178))));
    Sign crack = Signs.byKey("limbs-crack-across").orElseThrow().seen();
    assertEquals(Kind.WITHDRAW, kind(adjustable(), seen(reading(220, 220, 178), crack)));
  }

  @ParameterizedTest(name = "brace {0}, upper {1}, lower {2}: asked {3}")
  @CsvSource({"220, 218, 190, false", "226, 224, 196, false", "220, 224.5, 190, true"})
  void aBowWhoseBraceIsThatOfADistance_isAskedOnlyWhereThatMovedByItself(
      double brace, double upper, double lower, boolean asked) {
    OnRecord usual = adjustable();
    OnRecord alike =
        SeenBows.onRecord(
            usual.rig(), SeenBows.setUp(220, 218, 190, null, null, null), usual.targets());
    Judgement judged = judge.verdict(alike, seen(reading(brace, upper, lower)), true);
    assertEquals(asked, judged instanceof AskAgain, judged.toString());
  }

  @Test
  void measuredAgainAfterALook_andStillOff_asksForTheTick() {
    Reading far = following(adjustable(), 235, 182, 178);
    Seen unticked =
        SeenBows.seen(
            far,
            signs(),
            Reported.NOTHING,
            List.of(),
            new Seen.Assured(false, false, true),
            List.of());
    AskAgain again = assertInstanceOf(AskAgain.class, judge.verdict(adjustable(), unticked, false));
    assertEquals(List.of(About.SEATED), abouts(again));
    assertTrue(again.questions().get(0).words().contains("this is not ticked"));
    Seen fine =
        SeenBows.seen(
            asSetUp(adjustable()),
            signs(),
            Reported.NOTHING,
            List.of(),
            new Seen.Assured(false, false, true),
            List.of());
    assertEquals(Kind.FIT, kind(adjustable(), fine), "nothing is off any more: nothing is asked");
  }

  @ParameterizedTest(name = "brace {0}, upper {1}, lower {2}: {3}")
  @CsvSource(
      delimiter = '|',
      value = {
        "205 | 182 | 178 | Brace fell by about 9/16 in · 15 mm, and the tiller distances did not"
            + " follow: was brace measured from the same point?",
        "220 | 175 | 171 | Both tiller distances are about 1/4 in · 7 mm smaller than they were, and"
            + " brace is as it was: was brace measured from the same point?",
        "230 | 177 | 173 | Brace rose by about 3/8 in · 10 mm, and both tiller distances are about"
            + " 3/16 in · 5 mm smaller: was brace measured from the same point?",
        "212 | 182 | 170 | Brace fell by about 5/16 in · 8 mm, and the upper tiller distance did not"
            + " follow: a limb may not be seated.",
        "220 | 182 | 170 | The lower tiller distance has moved by about 5/16 in · 8 mm that neither"
            + " the change of brace nor a bolt explains: a limb may not be seated."
      })
  void whatMoved_isSaidAsTheFiguresShowIt(double brace, double upper, double lower, String said) {
    assertEquals(
        said,
        DistancesMoved.of(adjustable(), reading(brace, upper, lower)).orElseThrow().said().words());
  }

  @Test
  void adjust_changing_looksBeforeTwisting() {
    OnRecord usual = adjustable();
    OnRecord changing =
        SeenBows.onRecord(
            usual.rig(), usual.setUp(), usual.targets(), usual.scatter(), null, true, null);
    Reading high = following(usual, NINE_INCHES, 182, 178);
    assertEquals(Key.LOOK_ALONG, keys(adjust(changing, seen(high), true)).get(0));
    assertEquals(Key.STRING_OFF, keys(adjust(usual, seen(high), true)).get(0));
    AdjustFirst lost = adjust(usual, seen(following(usual, 213, 182, 178)), true);
    assertEquals(List.of(Key.LOOK_ALONG, Key.STRING_OFF, Key.TWISTS), keys(lost).subList(0, 3));
  }

  @Test
  void adjust_stringOverdue_isNotTwisted() {
    OnRecord usual = adjustable(4.0, 2.0, 2.0);
    OnRecord worn =
        SeenBows.onRecord(
            usual.rig(),
            usual.setUp(),
            usual.targets(),
            usual.scatter(),
            null,
            false,
            "it is overdue");
    AdjustFirst adjust = adjust(worn, seen(following(usual, 214, 184.75, 175.25)), true);
    assertEquals(List.of(Key.LOOK_ALONG, Key.STRING_OFF, Key.OTHER_STRING), keys(adjust));
    assertTrue(adjust.steps().get(2).words().contains("no twists go into this one, it is overdue"));
    assertTrue(adjust.twists().isEmpty());
    assertTrue(adjust.bolts().isEmpty(), "tiller waits for the string");
    assertEquals(2, adjust.reasons().size());
  }

  @Test
  void adjust_stringWithoutTwists_goesTheWayOfItsServing() {
    BenchStep step =
        BenchSteps.twists(
            SeenBows.adjustableRig(null, 0),
            new TwistAdvice(
                12,
                10,
                14,
                20,
                1,
                Reach.THIS_STRING,
                null,
                Length.ofMm(220),
                Length.ofMm(219),
                Length.ofMm(221),
                "",
                ""));
    assertTrue(step.words().endsWith("the way the serving is wound."), step.words());
  }

  @Test
  void adjust_partMissing_isPutRightBeforeAnythingIsTwistedOrTurned() {
    Seen seen =
        SeenBows.seen(
            following(adjustable(), NINE_INCHES, 186, 178),
            signs(),
            Reported.NOTHING,
            List.of("string S-0147-X is not there"),
            false);
    AdjustFirst adjust = adjust(adjustable(), seen, true);
    assertEquals(List.of("string S-0147-X is not there"), words(adjust.reasons()));
    assertEquals(Key.PARTS_RIGHT, keys(adjust).get(1));
    assertTrue(adjust.steps().get(1).words().endsWith("string S-0147-X is not there."));
    assertEquals(6, adjust.steps().size());
  }

  @Test
  void onRecord_withoutCompleteSetUpFigures_isRefused() {
    OnRecord bow = adjustable();
    var incomplete =
        new SetUpFigures(
            Length.ofMm(220), BracePoint.GRIP_THROAT, null, null, null, false, null, null, null);
    assertThrows(
        IllegalArgumentException.class,
        () -> SeenBows.onRecord(bow.rig(), incomplete, bow.targets()));
  }

  @Test
  void onRecord_withoutOuterBand_isRefused() {
    OnRecord bow = adjustable();
    Targets open =
        new Targets(
            new Target(null, null, "silence"), SeenBows.SPLIT_FINGER, bow.targets().nocking());
    assertThrows(
        IllegalArgumentException.class, () -> SeenBows.onRecord(bow.rig(), bow.setUp(), open));
  }

  @Test
  void reading_ofNothing_isRefused() {
    assertThrows(IllegalArgumentException.class, () -> reading(0, 182, 178));
    assertThrows(IllegalArgumentException.class, () -> reading(220, -1, 178));
  }

  private FitToIssue fit(OnRecord bow, Seen seen) {
    return assertInstanceOf(FitToIssue.class, judge.verdict(bow, seen, false));
  }

  private AdjustFirst adjust(OnRecord bow, Seen seen, boolean permit) {
    return assertInstanceOf(AdjustFirst.class, judge.verdict(bow, seen, permit));
  }

  private Withdraw withdraw(OnRecord bow, Seen seen) {
    return assertInstanceOf(Withdraw.class, judge.verdict(bow, seen, true));
  }

  private Kind kind(OnRecord bow, Seen seen) {
    return assertInstanceOf(Verdict.class, judge.verdict(bow, seen, true)).kind();
  }

  private static List<Key> keys(AdjustFirst adjust) {
    return adjust.steps().stream().map(BenchStep::key).toList();
  }

  private static List<About> abouts(AskAgain again) {
    return again.questions().stream().map(AskAgain.Question::about).toList();
  }
}
