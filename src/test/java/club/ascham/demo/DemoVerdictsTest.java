package club.ascham.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.bow.Band;
import club.ascham.bow.BracePoint;
import club.ascham.bow.BraceTable;
import club.ascham.bow.Compatibility;
import club.ascham.bow.RigSpec;
import club.ascham.bow.SetUpFigures;
import club.ascham.bow.Style;
import club.ascham.bow.Targets;
import club.ascham.id.ItemId;
import club.ascham.mechanics.OwnRecord;
import club.ascham.mechanics.TwistLimits;
import club.ascham.rig.Part;
import club.ascham.rig.RigParts;
import club.ascham.rules.Club;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import club.ascham.units.Length;
import club.ascham.verdict.BenchAdvice;
import club.ascham.verdict.Gravity;
import club.ascham.verdict.Judge;
import club.ascham.verdict.Judgement;
import club.ascham.verdict.OnRecord;
import club.ascham.verdict.Reading;
import club.ascham.verdict.Reported;
import club.ascham.verdict.Seen;
import club.ascham.verdict.Sign;
import club.ascham.verdict.Verdict;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The demo's invented checks are what the rules would have said. */
@QuarkusTest
class DemoVerdictsTest {
  @Inject Rows rows;
  @Inject RigParts parts;
  @Inject Club club;
  @Inject ClubTime time;

  /** A full check with the parts and the set-up it was made on. */
  record Made(
      long id,
      ItemId body,
      ItemId limbs,
      ItemId string,
      Style style,
      Length setBrace,
      BracePoint setFrom,
      Length setUpper,
      Length setLower,
      Length setNocking,
      Double turnsUpper,
      Double turnsLower,
      Integer twists,
      Length brace,
      BracePoint from,
      Length upper,
      Length lower,
      boolean dryLooseOrFall,
      boolean strung,
      Verdict.Kind verdict) {

    List<ItemId> ids() {
      return Stream.of(body, limbs, string).filter(Objects::nonNull).toList();
    }
  }

  record Mark(long check, club.ascham.verdict.BowPart part, Gravity gravity, String words) {}

  record ClubBand(int bowLengthIn, Length low, Length high) {}

  @Test
  void everyCheckOfTwoYears_wasOfPartsThatFit_andJudgedAsTheRulesJudgeIt() {
    List<Made> checks =
        rows.list(
            Made.class,
            """
            SELECT c.id, b.item_id AS body, l.item_id AS limbs, s.item_id AS string, r.style,
                   u.brace AS set_brace, u.brace_from AS set_from, u.tiller_upper AS set_upper,
                   u.tiller_lower AS set_lower, u.nocking AS set_nocking,
                   u.turns_upper, u.turns_lower, u.twists,
                   c.brace, c.brace_from AS "from", c.tiller_upper AS upper, c.tiller_lower AS lower,
                   c.dry_loose_or_fall, c.came_back_strung AS strung, c.verdict
              FROM bow_check c JOIN rig r ON r.id = c.rig_id JOIN set_up u ON u.id = c.set_up_id
              JOIN fitting b ON b.rig_id = r.id AND b.place = 'BODY'
               AND c.happened_at >= b.from_at AND (b.until_at IS NULL OR c.happened_at < b.until_at)
              LEFT JOIN fitting l ON l.rig_id = r.id AND l.place = 'LIMBS'
               AND c.happened_at >= l.from_at AND (l.until_at IS NULL OR c.happened_at < l.until_at)
              JOIN fitting s ON s.rig_id = r.id AND s.place = 'STRING'
               AND c.happened_at >= s.from_at AND (s.until_at IS NULL OR c.happened_at < s.until_at)
             WHERE c.kind = 'CHECK' AND c.brace IS NOT NULL AND c.recorded_at < ?1\
            """,
            time.today());
    assertTrue(checks.size() > 200, checks.size() + " checks");
    Map<ItemId, Part> known =
        parts.of(checks.stream().map(Made::ids).flatMap(Collection::stream).distinct().toList());
    Map<Long, List<Mark>> marks =
        rows.list(Mark.class, "SELECT check_id, part, gravity, words FROM check_sign").stream()
            .collect(Collectors.groupingBy(Mark::check));
    Map<Integer, Band> bands =
        rows.list(ClubBand.class, "SELECT bow_length_in, low, high FROM club_brace_band").stream()
            .collect(Collectors.toMap(ClubBand::bowLengthIn, b -> new Band(b.low(), b.high())));
    Judge judge = new Judge(new BenchAdvice(TwistLimits.IN_PRINT, OwnRecord.NONE));

    List<String> otherwise = new ArrayList<>();
    for (Made check : checks) {
      OnRecord bow = onRecord(check, known, bands);
      Compatibility.misfits(bow.rig()).forEach(m -> otherwise.add(check.id() + ": " + m.reason()));
      Judgement judged =
          judge.verdict(bow, seen(check, marks.getOrDefault(check.id(), List.of())), true);
      if (!(judged instanceof Verdict verdict) || verdict.kind() != check.verdict()) {
        otherwise.add(
            "check %d says %s, the rules say %s".formatted(check.id(), check.verdict(), judged));
      }
    }
    assertEquals(List.of(), otherwise);
  }

  private OnRecord onRecord(Made check, Map<ItemId, Part> known, Map<Integer, Band> bands) {
    Part body = known.get(check.body());
    RigSpec spec =
        new RigSpec(
            body.riser(),
            check.limbs() == null ? null : known.get(check.limbs()).limbs(),
            body.onePiece(),
            known.get(check.string()).string(),
            check.style());
    SetUpFigures setUp =
        new SetUpFigures(
            check.setBrace(),
            check.setFrom(),
            check.setUpper(),
            check.setLower(),
            check.setNocking(),
            true,
            check.turnsUpper(),
            check.turnsLower(),
            check.twists());
    Targets targets =
        Targets.of(
            spec,
            BraceTable.valueOf(club.rules().braceTable()),
            bands.get(spec.bowLengthIn().orElseThrow()),
            setUp);
    return new OnRecord(spec, setUp, targets, Judge.READERS_SCATTER, null, false, null, List.of());
  }

  private static Seen seen(Made check, List<Mark> marks) {
    return new Seen(
        new Reading(check.brace(), check.from(), check.upper(), check.lower()),
        marks.stream().map(m -> new Sign(m.part(), m.gravity(), m.words())).toList(),
        new Reported(check.dryLooseOrFall(), check.strung()),
        List.of(),
        Seen.Assured.NOTHING,
        List.of());
  }
}
