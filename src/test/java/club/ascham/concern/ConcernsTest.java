package club.ascham.concern;

import static club.ascham.concern.KeptFile.ARROWS;
import static club.ascham.concern.KeptFile.LIMBS;
import static club.ascham.concern.KeptFile.OTHER_RISER;
import static club.ascham.concern.KeptFile.OTHER_STRING;
import static club.ascham.concern.KeptFile.RISER;
import static club.ascham.concern.KeptFile.STRING;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.id.ItemId;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * What is read of rows that tell of May 2026, on 20 May, of days before, between and after: as
 * things happened, known now.
 */
class ConcernsTest {
  private static final LocalDate TODAY = may(20);
  private static final RigId RIG = new RigId(1);
  private static final RigId OTHER_RIG = new RigId(2);
  private static final String LIMBS_CODE = KeptFile.code('L', LIMBS).display();
  private static final String STRING_CODE = KeptFile.code('S', STRING).display();

  private KeptFile file;

  @BeforeEach
  void open() throws Exception {
    file = new KeptFile();
    file.rigSetUp(1, RISER, STRING, may(1));
  }

  @AfterEach
  void close() throws Exception {
    file.close();
  }

  private static LocalDate may(int day) {
    return LocalDate.of(2026, 5, day);
  }

  private Against against(RigId rig, LocalDate day) {
    return file.readOn(TODAY).of(rig, day);
  }

  private Against against(long item, LocalDate day) {
    return file.readOn(TODAY).of(new ItemId(item), day);
  }

  /**
   * The rig has this against it from one day to another, with that weight, and at no other time.
   */
  private void onlyBetween(LocalDate first, LocalDate last, Matter matter, Weight weight) {
    for (LocalDate day = may(1); !day.isAfter(may(31)); day = day.plusDays(1)) {
      List<Weight> expected =
          day.isBefore(first) || day.isAfter(last) ? List.of() : List.of(weight);
      assertEquals(
          expected,
          against(RIG, day).all().stream()
              .filter(one -> one.matter() == matter)
              .map(Concern::weight)
              .toList(),
          "on " + day);
    }
  }

  @Test
  void aSoundRig_hasNothingAgainstIt_onAnyDay() {
    assertEquals(Against.NOTHING, against(RIG, may(1)));
    assertEquals(Against.NOTHING, against(RIG, TODAY));
    assertEquals(Against.NOTHING, against(RIG, may(31)));
    assertEquals(Against.NOTHING, against(RIG, LocalDate.of(2026, 4, 1)), "not assembled yet");
  }

  @Test
  void aWithdrawal_blocksFromItsDayUntilItsRelease_typedInLateOrNot() throws Exception {
    file.withdraw(LIMBS, may(3), may(15), "crack in the lower limb");
    file.release(LIMBS, may(16));
    onlyBetween(may(3), may(15), Matter.WITHDRAWN, Weight.BLOCKS);
    Concern told = against(RIG, may(5)).heaviest().orElseThrow();
    assertEquals(LIMBS_CODE + " is withdrawn: crack in the lower limb.", told.said());
    assertEquals(may(3), told.since());
    assertEquals(against(RIG, may(5)), against(LIMBS, may(5)));
  }

  @Test
  void anInspectionThatBlocks_doesSoFromTheDayAfterItsLast_untilItIsPassed_andAnewLater()
      throws Exception {
    file.rule("LIMBS", "LIMB_INSPECTION", 125, null, null, true);
    file.inspect(LIMBS, "LIMB_INSPECTION", may(12), "PASSED");
    onlyBetween(may(7), may(11), Matter.OVERDUE, Weight.BLOCKS);
    LocalDate again = may(12).plusDays(125);
    assertFalse(against(RIG, again).blocks());
    assertEquals(
        LIMBS_CODE + ": limb inspection overdue, 125 days since 12 May 2026.",
        against(RIG, again.plusDays(1)).heaviest().orElseThrow().said());
    assertEquals(
        LIMBS_CODE + ": limb inspection overdue, 125 days since 1 Jan 2026.",
        against(RIG, may(8)).heaviest().orElseThrow().said());
  }

  @Test
  void limbsLongerOffTheScaleThanTheClubLets_areANote_untilTheyAreWeighed() throws Exception {
    file.run("INSERT INTO club (id, name, demo, brace_table) VALUES (1, 'a', 0, 'FRENCH_CLUB')");
    assertEquals(365, file.number("SELECT weigh_limbs_days FROM club"));
    // Entered on 1 January: 125 days later is 6 May, the last day in time.
    file.run("UPDATE club SET weigh_limbs_days = 125");
    file.run(
        """
        INSERT INTO scale_reading (rig_id, item_id, happened_at, recorded_at, weighed_by, riser_in, draw_in, force_lb)
        VALUES (1, 2, '2026-05-12T12:00:00.000Z', '2026-05-12T12:00:00.000Z', 1, 25, 28, 23)""");
    onlyBetween(may(7), may(11), Matter.WEIGHING_DUE, Weight.NOTE);
    assertEquals(
        LIMBS_CODE + " is due on the bow scale: it never was there.",
        against(RIG, may(8)).heaviest().orElseThrow().said());
    assertEquals(
        LIMBS_CODE + " is due on the bow scale: last there on Tue 12 May 2026.",
        against(RIG, may(12).plusDays(126)).heaviest().orElseThrow().said());
    assertEquals(may(7), against(LIMBS, may(9)).heaviest().orElseThrow().since());
    file.run("UPDATE club SET weigh_limbs_days = NULL");
    assertTrue(against(RIG, may(8)).isNothing());
  }

  @Test
  void aStringPastItsDays_isSpokenAgainst_andKeptInAQuarterLater() throws Exception {
    file.rule("STRING", "STRING_REPLACEMENT", 100, null, null, false);
    file.run("UPDATE bowstring SET first_used = '2026-01-22' WHERE id = 3");
    assertTrue(against(RIG, may(2)).isNothing());
    assertTrue(against(RIG, may(3)).speaks());
    assertTrue(against(RIG, may(27)).speaks(), "the last day a quarter beyond");
    assertTrue(against(RIG, may(28)).blocks());
    assertEquals(
        STRING_CODE + ": string replacement overdue, 100 days since 22 Jan 2026.",
        against(RIG, may(3)).heaviest().orElseThrow().said());
    Concern beyond = against(RIG, may(28)).heaviest().orElseThrow();
    assertEquals(may(28), beyond.since(), "from then on it is kept in");
    assertEquals(
        STRING_CODE
            + ": string replacement overdue since 3 May 2026, 100 days since 22 Jan 2026, by more than the club lets pass.",
        beyond.said());
    assertEquals(may(3), against(RIG, may(27)).heaviest().orElseThrow().since());
  }

  @Test
  void aStringPastItsLoans_isSpokenAgainst_andKeptInAQuarterLater() throws Exception {
    file.rule("STRING", "STRING_REPLACEMENT", null, 4, null, false);
    for (int day = 2; day <= 6; day++) {
      file.receive(file.lend(1, may(day), RISER, LIMBS, STRING), may(day), null);
    }
    file.check(1, may(7), may(7));
    assertFalse(against(RIG, may(5)).has(Matter.OVERDUE), "the day of the fourth loan");
    assertTrue(against(STRING, may(6)).speaks());
    assertTrue(against(STRING, may(7)).blocks(), "the day after the fifth");
    assertTrue(against(RIG, TODAY).blocks());
    assertEquals(
        STRING_CODE
            + ": string replacement overdue since 6 May 2026, 4 loans since 1 Jan 2026, by more than the club lets pass.",
        against(STRING, TODAY).heaviest().orElseThrow().said());
  }

  @Test
  void aStringPastItsShots_isSpokenAgainst_andKeptInAQuarterLater() throws Exception {
    file.rule("STRING", "STRING_REPLACEMENT", null, null, 100, false);
    file.receive(file.lend(1, may(2), RISER, LIMBS, STRING), may(3), 99);
    assertTrue(against(STRING, may(4)).isNothing());
    file.receive(file.lend(1, may(4), RISER, LIMBS, STRING), may(5), 25);
    assertTrue(against(STRING, may(5)).isNothing());
    assertTrue(against(STRING, TODAY).speaks());
    file.receive(file.lend(1, may(6), RISER, LIMBS, STRING), may(8), 1);
    assertTrue(against(STRING, may(8)).speaks());
    assertTrue(against(STRING, may(9)).blocks());
  }

  @Test
  void aFailedInspection_isTakenBackByALaterPassAlone_notByARelease() throws Exception {
    file.inspect(LIMBS, "LIMB_INSPECTION", may(3), "FAILED");
    file.withdrawnAndReleased(LIMBS, may(3), may(9), "failed its inspection");
    file.inspect(LIMBS, "LIMB_INSPECTION", may(12), "PASSED");
    onlyBetween(may(3), may(11), Matter.INSPECTION_FAILED, Weight.BLOCKS);
    onlyBetween(may(3), may(8), Matter.WITHDRAWN, Weight.BLOCKS);
    assertEquals(
        LIMBS_CODE + " did not pass its limb inspection: a line at the butt.",
        against(RIG, may(10)).heaviest().orElseThrow().said());
  }

  @Test
  void workThatWasAskedFor_standsUntilItIsDone_byItsOwnWeight() throws Exception {
    file.ask(LIMBS, "LIMB_INSPECTION", may(4), "ASKED", true);
    file.inspect(LIMBS, "LIMB_INSPECTION", may(8), "PASSED");
    file.askedForIsDone();
    onlyBetween(may(4), may(7), Matter.ASKED, Weight.BLOCKS);
    file.ask(STRING, "STRING_REPLACEMENT", may(10), "CHANGING", false);
    onlyBetween(may(10), may(31), Matter.CHANGING, Weight.SPEAKS_AGAINST);
    assertEquals(
        STRING_CODE + ": it fell over.", against(RIG, TODAY).heaviest().orElseThrow().said());
  }

  @Test
  void aReport_standsUntilItIsAnswered_andThenAsLongAsItIsWatched() throws Exception {
    file.report(LIMBS, may(3), true, "BANG", "a bang at full draw");
    file.answer("WATCH", may(6), may(12));
    onlyBetween(may(3), may(5), Matter.REPORTED, Weight.BLOCKS);
    onlyBetween(may(6), may(12), Matter.WATCHED, Weight.NOTE);
    assertEquals(
        LIMBS_CODE + ", watched to 12 May 2026: a bang or a crack was heard. Seen: looked at it.",
        against(RIG, may(9)).heaviest().orElseThrow().said());
    assertTrue(
        against(RIG, may(4)).heaviest().orElseThrow().said().contains("“a bang at full draw”"));
  }

  @Test
  void ofAReportWhosePartIsNotKnown_noPartIsNamedAsIfItWereKnown() throws Exception {
    file.reportOfWhole(1, may(3), "BANG", "at full draw", RISER, LIMBS, STRING);
    String rig = KeptFile.code('R', RISER).display();
    String said =
        "Not known which part of "
            + rig
            + ", told and not answered yet: a bang or a crack was heard; “at full draw”.";
    assertEquals(
        List.of(said), against(RIG, TODAY).all().stream().map(Concern::said).toList(), "one line");
    assertEquals(said, against(LIMBS, TODAY).heaviest().orElseThrow().said());
    file.answer("WATCH", may(6), may(12));
    assertEquals(
        List.of(
            "Not known which part of "
                + rig
                + ", watched to 12 May 2026: a bang or a crack was heard. Seen: looked at it."),
        against(RIG, may(9)).all().stream().map(Concern::said).toList());
  }

  @Test
  void whatALaterInspectionFound_isToldBesideWhyItWasWithdrawn() throws Exception {
    file.withdraw(LIMBS, may(3), may(3), "a line at the butt");
    file.run(
        "UPDATE withdrawal SET work = 'LIMB_INSPECTION', decided_at = happened_at, decided_by = 1");
    file.inspect(LIMBS, "LIMB_INSPECTION", may(3), "FAILED");
    assertEquals(
        List.of(LIMBS_CODE + " is withdrawn: a line at the butt."),
        against(RIG, may(4)).all().stream().map(Concern::said).toList());
    file.inspect(LIMBS, "LIMB_INSPECTION", may(5), "PASSED");
    file.inspect(LIMBS, "LIMB_INSPECTION", may(8), "FAILED");
    file.run(
        "UPDATE upkeep_record SET found = 'the tip has parted' WHERE id = (SELECT max(id) FROM upkeep_record)");
    assertEquals(
        List.of(
            LIMBS_CODE + " is withdrawn: a line at the butt.",
            LIMBS_CODE + " did not pass its limb inspection: the tip has parted."),
        against(RIG, TODAY).all().stream().map(Concern::said).toList());
  }

  @Test
  void aPartTakenOff_isLackedFromThatDay_andNotFromTheLastFitting() throws Exception {
    file.takeOff(STRING, may(9));
    assertEquals(may(9), against(RIG, may(12)).heaviest().orElseThrow().since());
    file.takeOff(LIMBS, may(14));
    Concern both = against(RIG, TODAY).heaviest().orElseThrow();
    assertEquals("It lacks limbs and a string.", both.said());
    assertEquals(may(9), both.since(), "since the first of them");
    file.fit(1, OTHER_STRING, "STRING", may(16));
    assertEquals(may(14), against(RIG, TODAY).heaviest().orElseThrow().since());
    assertTrue(against(RIG, may(8)).isNothing());
  }

  @Test
  void aPartExchangedWhileTheBowIsOut_isNoComingBack_andTheLoanTellsOfTheSetUp() throws Exception {
    LoanId loan = new LoanId(file.lend(1, may(2), RISER, LIMBS, STRING));
    String rig = KeptFile.code('R', RISER).display();
    file.run(
        "UPDATE loan_line SET back_at = '2026-05-06T12:00:00.000Z', outcome = 'BACK' WHERE item_id = ?",
        STRING);
    file.takeOff(STRING, may(6));
    file.fit(1, OTHER_STRING, "STRING", may(6));
    file.run(
        "INSERT INTO loan_line (loan_id, item_id, rig_id, out_at) VALUES (?, ?, 1, '2026-05-06T12:00:00.000Z')",
        loan.value(),
        OTHER_STRING);
    assertEquals(List.of(Matter.NOT_SET_UP), matters(against(RIG, TODAY)));
    Concerns read = file.readOn(TODAY);
    assertEquals(
        List.of(rig + ": it has no complete set-up figures for these parts."),
        read.of(loan).all().stream().map(Concern::said).toList());
    assertTrue(read.of(loan, may(5)).isNothing(), "the day before");
    file.receive(loan.value(), may(10), null);
    assertEquals(
        List.of(Matter.NOT_SET_UP, Matter.NOT_CHECKED), matters(against(RIG, TODAY)), "back");
    assertEquals(List.of(Matter.NOT_SET_UP), matters(against(RIG, may(9))), "while it was out");
    assertTrue(file.readOn(TODAY).of(loan).isNothing());
  }

  @Test
  void aPartThatMoves_takesWhatStandsAgainstItAlong() throws Exception {
    file.run(
        "INSERT INTO rig (id, style, level, assembled_at) VALUES (2, 'SPLIT_FINGER', 'BEGINNER', '2026-05-01T12:00:00.000Z')");
    file.fit(2, OTHER_RISER, "BODY", may(1));
    file.fit(2, OTHER_STRING, "STRING", may(1));
    file.ask(LIMBS, "LIMB_INSPECTION", may(3), "ASKED", true);
    file.takeOff(LIMBS, may(6));
    file.fit(2, LIMBS, "LIMBS", may(7));
    file.setUp(2, may(8), may(8));
    assertTrue(against(RIG, may(5)).has(Matter.ASKED));
    assertFalse(against(OTHER_RIG, may(5)).has(Matter.ASKED));
    assertEquals(
        List.of("It lacks limbs."),
        against(RIG, may(6)).all().stream().map(Concern::said).toList());
    assertEquals(
        List.of(Matter.ASKED),
        against(OTHER_RIG, may(8)).all().stream().map(Concern::matter).toList());
    assertEquals(
        Map.of(RIG, true, OTHER_RIG, true),
        Map.of(RIG, against(RIG, TODAY).blocks(), OTHER_RIG, against(OTHER_RIG, TODAY).blocks()));
  }

  @Test
  void aSetUp_isMissedFromAChangeOfPartsUntilItIsFinished() throws Exception {
    file.takeOff(STRING, may(4));
    file.fit(1, OTHER_STRING, "STRING", may(6));
    file.run(
        "INSERT INTO set_up (rig_id, begun_at, begun_by) VALUES (1, '2026-05-08T12:00:00.000Z', 1)");
    file.run(
        """
        UPDATE set_up SET finished_at = '2026-05-10T12:00:00.000Z', finished_by = 1, brace = 22000000,
               brace_from = 'GRIP_THROAT', tiller_upper = 18000000, tiller_lower = 17700000,
               nocking = 400000, screws_seen = 1 WHERE finished_at IS NULL""");
    onlyBetween(may(4), may(9), Matter.NOT_SET_UP, Weight.BLOCKS);
    assertEquals("It lacks a string.", against(RIG, may(5)).all().get(0).said());
    assertEquals("/rigs/1/change", against(RIG, may(5)).all().get(0).page());
    assertEquals(
        "It has no complete set-up figures for these parts.",
        against(RIG, may(7)).all().get(0).said());
    assertEquals("Its set-up is begun.", against(RIG, may(9)).all().get(0).said());
    assertEquals("/rigs/1/set-up", against(RIG, may(9)).all().get(0).page());
  }

  @Test
  void whatCameBack_waitsUntilItIsPutBack() throws Exception {
    file.receive(file.lend(1, may(2), RISER, LIMBS, STRING), may(4), null);
    file.check(1, may(6), may(8));
    onlyBetween(may(4), may(7), Matter.NOT_CHECKED, Weight.BLOCKS);
    assertEquals(may(6), against(RIG, may(7)).heaviest().orElseThrow().since());
  }

  @Test
  void aRetiredThing_isOut_andNothingIsPlannedForItAnyMore() throws Exception {
    file.rule("ARROWS", "ARROW_INSPECTION", 10, null, null, true);
    assertTrue(against(ARROWS, may(9)).has(Matter.OVERDUE));
    file.run("UPDATE item SET retired_on = '2026-05-10', retired_why = 'SOLD' WHERE id = 6");
    assertTrue(against(ARROWS, may(9)).has(Matter.OVERDUE), "known of the time before");
    assertFalse(against(ARROWS, may(9)).has(Matter.RETIRED));
    for (LocalDate day : List.of(may(10), TODAY, may(31))) {
      assertTrue(against(ARROWS, day).has(Matter.RETIRED), "on " + day);
      assertFalse(against(ARROWS, day).has(Matter.OVERDUE), "on " + day);
    }
  }

  @Test
  void arrowsThatNobodyWeighed_areNoted_untilOneIs() throws Exception {
    assertEquals(List.of(Weight.NOTE), weights(against(ARROWS, TODAY)));
    assertTrue(against(ARROWS, LocalDate.of(2025, 12, 31)).isNothing(), "not the club's yet");
    file.run("UPDATE kit_item SET arrow_mass_gr = 312 WHERE id = 6");
    assertTrue(against(ARROWS, TODAY).isNothing());
  }

  private static List<Weight> weights(Against against) {
    return against.all().stream().map(Concern::weight).toList();
  }

  @Test
  void aLoan_isReadOfWhatWasOut_andOfItsIssueAtThatVeryMoment() throws Exception {
    file.ask(LIMBS, "LIMB_INSPECTION", may(2), "ASKED", false);
    LoanId loan = new LoanId(file.lend(1, may(3), RISER, LIMBS, STRING, ARROWS));
    file.run(
        """
        INSERT INTO withdrawal (item_id, happened_at, recorded_at, withdrawn_by, why)
        VALUES (2, '2026-05-03T15:00:00.000Z', '2026-05-03T15:00:00.000Z', 1, 'heard a crack')""");
    file.inspect(LIMBS, "LIMB_INSPECTION", may(5), "PASSED");
    file.askedForIsDone();
    Concerns read = file.readOn(TODAY);
    assertEquals(
        List.of(Matter.ASKED, Matter.ARROWS_NOT_WEIGHED),
        matters(read.whenLent(loan)),
        "as issued");
    assertEquals(
        List.of(Matter.WITHDRAWN, Matter.ASKED, Matter.ARROWS_NOT_WEIGHED),
        matters(read.of(loan, may(3))),
        "that evening");
    assertEquals(
        List.of(Matter.WITHDRAWN, Matter.ARROWS_NOT_WEIGHED), matters(read.of(loan)), "today");
    file.receive(loan.value(), may(6), null);
    assertTrue(file.readOn(TODAY).of(loan).isNothing());
    assertEquals(
        List.of(Matter.ASKED, Matter.ARROWS_NOT_WEIGHED),
        matters(file.readOn(TODAY).whenLent(loan)),
        "still as issued");
  }

  private static List<Matter> matters(Against against) {
    return against.all().stream().map(Concern::matter).toList();
  }

  @Test
  void whatIsKeptIn_isEveryThingInUseThatSomethingBlocks() throws Exception {
    file.withdraw(LIMBS, may(3), may(3), "crack");
    file.ask(STRING, "STRING_REPLACEMENT", may(4), "ASKED", false);
    file.ask(RISER, "BOLT_INSPECTION", may(4), "ASKED", true);
    file.inspect(OTHER_RISER, "RISER_INSPECTION", may(4), "FAILED");
    file.report(OTHER_STRING, may(5), true, "BANG", "a bang");
    file.withdraw(ARROWS, may(6), may(6), "bent");
    file.run("UPDATE item SET retired_on = '2026-05-10', retired_why = 'SCRAPPED' WHERE id = 6");
    assertEquals(
        List.of(LIMBS, RISER, OTHER_RISER, OTHER_STRING),
        file.readOn(TODAY).keptIn().keySet().stream().map(ItemId::value).toList());
  }
}
