package club.ascham.verdict;

import static club.ascham.verdict.Remark.words;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.bow.BracePoint;
import club.ascham.bow.Build;
import club.ascham.bow.Gauge;
import club.ascham.bow.Who;
import club.ascham.bow.Zone;
import club.ascham.mechanics.OwnRecord;
import club.ascham.mechanics.TwistLimits;
import club.ascham.units.Length;
import club.ascham.units.LengthText;
import club.ascham.verdict.BenchStep.Key;
import club.ascham.verdict.Verdict.AdjustFirst;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

// Edge cases multiply beyond use in cases of many numbers; the distances are dense near zero
// anyway.
@PropertyDefaults(edgeCases = EdgeCasesMode.NONE)
class VerdictLawsTest {
  private final Judge judge = new Judge(new BenchAdvice(TwistLimits.IN_PRINT, OwnRecord.NONE));

  /**
   * A bow on record and how far its reading lies from the set-up figures, in millimetres; the
   * distances beyond what brace takes with it.
   */
  record Case(OnRecord bow, double brace, double upper, double lower, boolean seated) {
    Seen seen(Sign... extra) {
      return seen(1, extra);
    }

    /** The same, so many times as far from the set-up figures. */
    Seen seen(double times, Sign... extra) {
      Reading reading =
          new Reading(
              bow.setUp().brace().plus(Length.ofMm(brace * times)),
              BracePoint.GRIP_THROAT,
              bow.setUp().tillerUpper().plus(Length.ofMm((brace + upper) * times)),
              bow.setUp().tillerLower().plus(Length.ofMm((brace + lower) * times)));
      return SeenBows.seen(reading, SeenBows.signs(extra), Reported.NOTHING, List.of(), seated);
    }
  }

  @Property
  void readingFurtherFromItsAim_neverMorePermissive(
      @ForAll("cases") Case one, @ForAll @DoubleRange(min = 1, max = 4) double times) {
    Assume.that(!OpenQuestions.isOneFigure(one.bow(), one.seen()));
    Assume.that(!OpenQuestions.isOneFigure(one.bow(), one.seen(times)));
    assertTrue(kind(one.bow(), one.seen()).compareTo(kind(one.bow(), one.seen(times))) <= 0);
  }

  @Property
  void oneMoreSign_neverMorePermissive(
      @ForAll("cases") Case one, @ForAll BowPart part, @ForAll Gravity gravity) {
    Sign more = new Sign(part, gravity, "seen");
    assertTrue(kind(one.bow(), one.seen()).compareTo(kind(one.bow(), one.seen(more))) <= 0);
  }

  @Property
  void graverSign_neverMorePermissive(
      @ForAll("cases") Case one,
      @ForAll BowPart part,
      @ForAll Gravity gravity,
      @ForAll Gravity other) {
    Gravity light = gravity.compareTo(other) < 0 ? gravity : other;
    Gravity grave = light == gravity ? other : gravity;
    Verdict.Kind lighter = kind(one.bow(), one.seen(new Sign(part, light, "seen")));
    assertTrue(lighter.compareTo(kind(one.bow(), one.seen(new Sign(part, grave, "seen")))) <= 0);
  }

  @Property
  void moreReportedOrMissing_neverMorePermissive(
      @ForAll("cases") Case one,
      @ForAll boolean dryLoose,
      @ForAll boolean strung,
      @ForAll @IntRange(max = 2) int missing) {
    Seen seen = one.seen();
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < missing; i++) {
      lines.add("part " + i);
    }
    Seen worse =
        SeenBows.seen(
            seen.reading(), seen.signs(), new Reported(dryLoose, strung), lines, one.seated());
    Verdict.Kind kind = kind(one.bow(), worse);
    assertTrue(kind(one.bow(), seen).compareTo(kind) <= 0);
    if (dryLoose) {
      assertEquals(Verdict.Kind.WITHDRAW, kind);
    }
    if (missing > 0) {
      assertTrue(kind.compareTo(Verdict.Kind.ADJUST) >= 0);
    }
  }

  @Property
  void nothingIsFit_whileWhatWasToldIsOpen(
      @ForAll("cases") Case one, @ForAll boolean dangerous, @ForAll boolean permit) {
    Seen seen = one.seen();
    Seen told =
        SeenBows.seen(
            dangerous ? null : seen.reading(),
            seen.signs(),
            seen.reported(),
            seen.missing(),
            seen.limbsSeated(),
            List.of(new Seen.Unanswered("a crack", dangerous)));
    Verdict verdict = (Verdict) judge.verdict(one.bow(), told, permit);
    assertNotEquals(Verdict.Kind.FIT, verdict.kind());
    assertTrue(kind(one.bow(), seen).compareTo(verdict.kind()) <= 0 || dangerous);
    if (dangerous && verdict instanceof AdjustFirst first) {
      List<Key> keys = first.steps().stream().map(BenchStep::key).toList();
      assertEquals(
          permit
              ? List.of(Key.STRING_OFF, Key.ANSWER_TOLD)
              : List.of(Key.STRING_OFF, Key.TO_WORKSHOP, Key.ANSWER_TOLD),
          keys,
          "nobody strings it to measure it");
    }
  }

  @Property
  void whatADangerStandsAgainst_isLeftUnstrung_whateverItMeasures(
      @ForAll("cases") Case one,
      @ForAll boolean measured,
      @ForAll boolean changing,
      @ForAll boolean permit) {
    OnRecord known = one.bow();
    OnRecord bow =
        SeenBows.onRecord(
            known.rig(),
            known.setUp(),
            known.targets(),
            known.scatter(),
            null,
            changing,
            null,
            List.of("L-0109-5 is withdrawn: layers parting."));
    Seen seen = one.seen();
    Seen looked = measured ? seen : SeenBows.seen(null);
    Verdict verdict = (Verdict) judge.verdict(bow, looked, permit);
    if (verdict instanceof AdjustFirst left) {
      List<Key> keys = left.steps().stream().map(BenchStep::key).toList();
      assertEquals(
          permit
              ? List.of(Key.STRING_OFF, Key.RELEASE)
              : List.of(Key.STRING_OFF, Key.TO_WORKSHOP, Key.RELEASE),
          keys,
          "nothing strings, tightens or draws it");
      assertTrue(left.twists().isEmpty() && left.bolts().isEmpty() && left.expected().isEmpty());
    } else {
      Verdict.Withdraw withdraw = (Verdict.Withdraw) verdict;
      assertTrue(words(withdraw.work()).get(0).startsWith("If it is strung: string off"));
    }
  }

  @Property
  void anyStop_withdraws(@ForAll("cases") Case one, @ForAll BowPart part) {
    Sign stop = new Sign(part, Gravity.STOP, "seen");
    assertEquals(Verdict.Kind.WITHDRAW, kind(one.bow(), one.seen(stop)));
  }

  @Property
  void steps_startStringOffAndEndMeasuring_orWithWhoComesNext(
      @ForAll("cases") Case one, @ForAll boolean permit) {
    if (judge.verdict(one.bow(), one.seen(), permit) instanceof AdjustFirst adjust) {
      List<Key> keys =
          adjust.steps().stream()
              .map(BenchStep::key)
              .filter(key -> key != Key.LOOK_ALONG && key != Key.SAME_POINT)
              .filter(key -> key != Key.COUNT_TWISTS)
              .toList();
      assertEquals(Key.STRING_OFF, keys.get(0));
      assertFalse(adjust.reasons().isEmpty());
      Key last = keys.get(keys.size() - 1);
      if (last == Key.TO_WORKSHOP || last == Key.OTHER_STRING) {
        assertEquals(2, keys.size(), "nothing is twisted or turned before");
      } else {
        assertEquals(
            List.of(Key.STRING_ON, Key.LOOPS, Key.STRING_LINE, Key.MEASURE_AGAIN),
            keys.subList(keys.size() - 4, keys.size()));
        assertTrue(keys.size() > 5, "nothing is done with the string off");
      }
    }
  }

  @Property
  void theWorseTheReading_theMoreIsLookedAt(
      @ForAll("cases") Case one, @ForAll boolean changing, @ForAll boolean permit) {
    OnRecord known = one.bow();
    OnRecord bow =
        SeenBows.onRecord(
            known.rig(),
            known.setUp(),
            known.targets(),
            known.scatter(),
            null,
            changing,
            known.noTwists());
    if (judge.verdict(bow, one.seen(), permit) instanceof AdjustFirst adjust) {
      List<Key> keys = adjust.steps().stream().map(BenchStep::key).toList();
      boolean beyond = adjust.findings().stream().anyMatch(f -> f.zone() == Zone.BEYOND);
      long looks = keys.stream().filter(Key.LOOK_ALONG::equals).count();
      assertTrue(looks <= 1, keys.toString());
      if (beyond || changing) {
        assertEquals(Key.LOOK_ALONG, keys.get(0), "before anything is strung, twisted or turned");
        assertTrue(adjust.steps().get(0).caution().isPresent());
      }
    }
  }

  @Property
  void whatTheGaugeCallsOutside_isAReason(@ForAll("cases") Case one, @ForAll boolean permit) {
    if (judge.verdict(one.bow(), one.seen(), permit) instanceof AdjustFirst adjust) {
      for (Finding finding : adjust.findings()) {
        String sign = Gauge.sign(finding.target(), finding.reading());
        boolean isReason =
            words(adjust.reasons()).stream()
                .anyMatch(
                    reason ->
                        reason.contains(" is " + LengthText.both(finding.reading()) + ", ")
                            && reason.toLowerCase().startsWith(finding.quantity().words()));
        assertEquals(!sign.equals("fine"), isReason, finding + " in " + words(adjust.reasons()));
      }
    }
  }

  @Property
  void steps_fixedTiller_neverABolt(@ForAll("cases") Case one, @ForAll boolean permit) {
    if (!one.bow().rig().tillerAdjusts()
        && judge.verdict(one.bow(), one.seen(), permit) instanceof AdjustFirst adjust) {
      assertFalse(
          adjust.steps().stream()
              .anyMatch(
                  step ->
                      step.key().turnsBolt() || step.words().toLowerCase().contains("turn the")));
      assertTrue(adjust.bolts().isEmpty());
    }
  }

  @Property
  void steps_boltsAreTurnedByAPermitHolderAQuarterAtMostAndNeverOutBeyondWhatIsKnown(
      @ForAll("cases") Case one, @ForAll boolean permit) {
    if (judge.verdict(one.bow(), one.seen(), permit) instanceof AdjustFirst adjust) {
      Double most = one.bow().rig().tillerAdjusts() ? one.bow().rig().riser().maxTurnsOut() : null;
      for (BenchStep step : adjust.steps()) {
        if (!step.key().turnsBolt()) {
          continue;
        }
        assertTrue(permit);
        assertEquals(Who.PERMIT_HOLDER, step.who());
        double turned = step.amount().orElse(0.0);
        assertTrue(Math.abs(turned) <= 0.25);
        if (turned < 0) {
          Double out =
              step.key() == Key.UPPER_BOLT
                  ? one.bow().setUp().turnsUpper()
                  : one.bow().setUp().turnsLower();
          assertTrue(most != null && out != null && out - turned <= most);
        }
      }
    }
  }

  @Property
  void bolts_turnTillerTowardsItsAim(
      @ForAll @DoubleRange(min = -15, max = 15) double now,
      @ForAll @DoubleRange(min = -6, max = 6) double aim,
      @ForAll("turns") Double max,
      @ForAll("turns") Double upper,
      @ForAll("turns") Double lower) {
    BoltAdvice advice =
        new BenchAdvice(TwistLimits.IN_PRINT, OwnRecord.NONE)
            .bolts(
                SeenBows.adjustableRig(max, 30),
                SeenBows.setUp(220, 182, 178, upper, lower, null),
                Length.ofMm(now),
                Length.ofMm(aim));
    int wanted = Length.ofMm(aim).compareTo(Length.ofMm(now));
    if (!advice.first().none() && wanted != 0) {
      assertEquals(wanted, advice.first().tillerSign());
      assertEquals(wanted, advice.expected().compareTo(Length.ofMm(now)));
      assertTrue(advice.expectedLow().compareTo(advice.expected()) <= 0);
      assertTrue(advice.expected().compareTo(advice.expectedHigh()) <= 0);
    }
  }

  @Property
  void twists_towardsTheAimAndInsideTheirRange(
      @ForAll @DoubleRange(min = 180, max = 260) double now,
      @ForAll @DoubleRange(min = 200, max = 240) double aim) {
    TwistAdvice advice =
        new BenchAdvice(TwistLimits.IN_PRINT, OwnRecord.NONE)
            .twists(SeenBows.adjustableRig(null, 30), Length.ofMm(now), Length.ofMm(aim));
    if (advice.reach() == TwistAdvice.Reach.THIS_STRING) {
      assertEquals(Math.signum(aim - now), Math.signum(advice.turns()));
      assertTrue(Math.abs(advice.low()) <= Math.abs(advice.turns()));
      assertTrue(advice.high() == null || Math.abs(advice.turns()) <= Math.abs(advice.high()));
    } else {
      assertEquals(0, advice.turns());
    }
  }

  @Provide
  Arbitrary<Double> turns() {
    return Arbitraries.doubles().between(0, 6).ofScale(2).injectNull(0.3);
  }

  @Provide
  Arbitrary<Case> cases() {
    Arbitrary<OnRecord> bows =
        Combinators.combine(Arbitraries.of(Build.class), turns(), turns(), turns())
            .as(
                (build, max, upper, lower) ->
                    build == Build.ADJUSTABLE
                        ? SeenBows.adjustable(max, upper, lower)
                        : SeenBows.of(build));
    Arbitrary<Double> near = Arbitraries.doubles().between(-4, 4).ofScale(2);
    Arbitrary<Double> far = Arbitraries.doubles().between(-25, 25).ofScale(2);
    Arbitrary<Double> distance = Arbitraries.oneOf(near, far);
    return Combinators.combine(bows, distance, distance, distance, Arbitraries.of(true, false))
        .as(Case::new);
  }

  private Verdict.Kind kind(OnRecord bow, Seen seen) {
    return ((Verdict) judge.verdict(bow, seen, true)).kind();
  }
}
