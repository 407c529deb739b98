package club.ascham.learnt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.fixture.ClubFixture;
import club.ascham.fixture.LaidBow;
import club.ascham.store.Rows;
import club.ascham.store.StatementCount;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import org.junit.jupiter.api.Test;

@QuarkusTest
class BowRecordsTest {
  private static final String SECOND_CHECK =
      """
      INSERT INTO bow_check (rig_id, kind, happened_at, recorded_at, checked_by, all_as_listed, brace,
             brace_from, tiller_upper, tiller_lower, verdict)
      VALUES (?1, 'CHECK', ?2, ?2, 1, 1, ?3, 'GRIP_THROAT', 19000000, 18600000, 'ADJUST')""";

  @Inject BowRecords records;
  @Inject ClubFixture fixture;
  @Inject Rows rows;

  @Test
  void aLongStory_takesNoMoreStatements_thanAShortOne() {
    LaidBow bow = fixture.aBowReadyToGoOut();
    rows.change("UPDATE set_up SET twists = 20 WHERE rig_id = ?1", bow.id());
    adjust(bow, 1);
    assertEquals(1, of(bow).record().twists().size());
    long few = statements(bow);
    for (int day = 3; day < 20; day += 2) {
      adjust(bow, day);
    }
    Learnt learnt = of(bow);
    assertEquals(10, learnt.record().twists().size());
    assertEquals(40, learnt.twists());
    assertEquals(few, statements(bow));
    assertTrue(few <= 10, few + " statements");
  }

  private void adjust(LaidBow bow, int day) {
    QuarkusTransaction.requiringNew()
        .run(
            () -> {
              check(bow, day, 21_200_000);
              check(bow, day + 1, 21_300_000);
              rows.change(
                  """
                  INSERT INTO adjustment (rig_id, check_id, after_id, happened_at, recorded_at, done_by,
                         twists_added)
                  SELECT rig_id, max(id) - 1, max(id), ?2, ?2, 1, 2 FROM bow_check WHERE rig_id = ?1""",
                  bow.id(),
                  moment(day));
            });
  }

  private void check(LaidBow bow, int day, int brace) {
    rows.change(SECOND_CHECK, bow.id(), moment(day), brace);
  }

  private static String moment(int day) {
    return "2026-02-%02dT10:00:00.000Z".formatted(day);
  }

  private Learnt of(LaidBow bow) {
    return records.of(bow.id(), bow.body().id(), bow.limbs().id(), bow.string().id(), null);
  }

  private long statements(LaidBow bow) {
    long before = StatementCount.run();
    of(bow);
    return StatementCount.run() - before;
  }
}
