package club.ascham.rig;

import static org.junit.jupiter.api.Assertions.assertEquals;

import club.ascham.bow.Who;
import club.ascham.check.Verdicts;
import club.ascham.fixture.ClubFixture;
import club.ascham.fixture.LaidBow;
import club.ascham.store.Rows;
import club.ascham.verdict.BenchStep;
import club.ascham.verdict.Given;
import club.ascham.verdict.Remark;
import club.ascham.verdict.Verdict;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Beside a check that looks first the trend names no cause of its own. */
@QuarkusTest
class LooksFirstTest {
  @Inject ClubFixture fixture;
  @Inject RigRecords records;
  @Inject Verdicts verdicts;
  @Inject Rows rows;

  @ParameterizedTest(name = "{0} with {1}: {2}")
  @CsvSource({
    "ADJUST, TWISTS, false",
    "ADJUST, LOOK_AT_LIMBS, true",
    "ADJUST, RELEASE, true",
    "WITHDRAW, STRING_OFF, true",
  })
  void aStepSaysIt_andNoWord(Verdict.Kind verdict, BenchStep.Key step, boolean looksFirst) {
    LaidBow bow = fixture.aBowJustReceived();
    QuarkusTransaction.requiringNew().run(() -> checked(bow, verdict, step));
    assertEquals(
        List.of(looksFirst),
        records.measured(bow.id(), 5).stream().map(RigRecords.Checked::looksFirst).toList());
  }

  private void checked(LaidBow bow, Verdict.Kind verdict, BenchStep.Key step) {
    long check =
        rows.number(
            """
            INSERT INTO bow_check (rig_id, kind, happened_at, recorded_at, checked_by, all_as_listed, brace,
                   brace_from, tiller_upper, tiller_lower, verdict)
            VALUES (?1, 'CHECK', '2026-03-01T10:00:00.000Z', '2026-03-01T10:00:00.000Z', 1, 1, 21600000,
                    'GRIP_THROAT', 19000000, 18600000, ?2) RETURNING id""",
            bow.id(),
            verdict);
    verdicts.keep(
        check,
        new Given(
            verdict,
            List.of(Remark.asSaid("It says: Step LOOK_AT_LIMBS, Step RELEASE by no one.")),
            List.of(new BenchStep(step, Who.VOLUNTEER, null, Remark.asSaid("Do it."))),
            List.of(),
            List.of(),
            List.of(),
            List.of()));
  }
}
