package club.ascham.story;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.SettingsOf;
import club.ascham.bow.Who;
import club.ascham.check.VerdictsOf;
import club.ascham.start.CarriedOver;
import club.ascham.store.DataFolder;
import club.ascham.store.DatabaseRefusal;
import club.ascham.store.Rows;
import club.ascham.store.RowsOf;
import club.ascham.store.SqliteFile;
import club.ascham.time.ClubTime;
import club.ascham.time.ClubTimeOf;
import club.ascham.time.TestClock;
import club.ascham.verdict.BenchStep;
import club.ascham.verdict.Given;
import club.ascham.verdict.Remark;
import java.nio.file.Path;
import java.sql.Connection;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A club whose checks were kept as prose: they say what they said, and its record stays whole. */
class OlderVerdictsTest {
  private static final String ADJUST =
      """
      Brace is 8 1/2 in · 215 mm, outside 8 3/4 in · 222 mm to 9 in · 229 mm.
      Told, and not answered: “Step by step it got worse”.
      Step STRING_OFF by volunteer: Take the string off with the stringer. | Keep your face away: mind | the tips.
      Step TWISTS +12.000 by volunteer: Put in about 12 twists.
      Step UPPER_BOLT -0.125 by permit-holder: Turn the upper limb bolt out: an eighth of a turn. | Only back.
      Step SOMETHING_ELSE by volunteer: Nobody knows it.
      Step TWISTS many by volunteer: Nobody counted.
      Expect: Brace about 8 3/4 in. No adjustment of this bow yet.
      Note: It came back strung.
      Rests on: Brace: the maker's own range.
      Rests on: A change of up to 1/8 in may be nothing.""";

  private static final String WITHDRAW =
      "Limbs: A crack across a limb\r\nNeeds: Limbs: someone looks.\n\nNeeds: Don't draw it.\n";

  @TempDir Path home;
  private DataFolder folder;

  @BeforeEach
  void anOlderClub() throws Exception {
    folder = new DataFolder(home.resolve("club"));
    OlderClub.in(folder, "042", "hash", "Wystan Holt");
    try (Connection file = SqliteFile.open(folder.file())) {
      Rows rows = RowsOf.connection(file);
      rows.change(
          "INSERT INTO rig (id, style, level, assembled_at) VALUES (1, 'SPLIT_FINGER',"
              + " 'BEGINNER', '2026-01-01T10:00:00.000Z')");
      checked(rows, "ADJUST", ADJUST);
      checked(rows, "WITHDRAW", WITHDRAW);
      checked(rows, "FIT", "Looked over, nothing seen.");
      checked(rows, "ADJUST", "Step RELEASE by permit-holder: Decide what stands against it.");
    }
    OlderClub.change(folder, "Checked four times.");
    CarriedOver.folder(folder);
  }

  private static void checked(Rows rows, String verdict, String text) {
    rows.change(
        """
        INSERT INTO bow_check (rig_id, kind, happened_at, recorded_at, checked_by, all_as_listed, verdict, verdict_text)
        VALUES (1, 'LOOK', '2026-02-01T10:00:00.000Z', '2026-02-01T10:00:00.000Z', 1, 1, ?1, ?2)""",
        verdict,
        text);
  }

  @Test
  void anOlderCheck_saysWhatItSaid() throws Exception {
    try (Connection file = SqliteFile.open(folder.file())) {
      var given = VerdictsOf.file(RowsOf.connection(file)).of(List.of(1L, 2L, 3L, 4L));
      Given adjust = given.get(1L);
      assertEquals(
          List.of(
              "Brace is 8 1/2 in · 215 mm, outside 8 3/4 in · 222 mm to 9 in · 229 mm.",
              "Told, and not answered: “Step by step it got worse”.",
              "Step SOMETHING_ELSE by volunteer: Nobody knows it.",
              "Step TWISTS many by volunteer: Nobody counted."),
          Remark.words(adjust.reasons()));
      assertEquals(
          List.of(
              new BenchStep(
                  BenchStep.Key.STRING_OFF,
                  Who.VOLUNTEER,
                  null,
                  Remark.read(
                      "AS_SAID_WITH_CAUTION",
                      List.of(
                          "Take the string off with the stringer.",
                          "Keep your face away: mind | the tips."))),
              new BenchStep(
                  BenchStep.Key.TWISTS,
                  Who.VOLUNTEER,
                  12_000,
                  Remark.asSaid("Put in about 12 twists.")),
              new BenchStep(
                  BenchStep.Key.UPPER_BOLT,
                  Who.PERMIT_HOLDER,
                  -125,
                  Remark.read(
                      "AS_SAID_WITH_CAUTION",
                      List.of(
                          "Turn the upper limb bolt out: an eighth of a turn.", "Only back.")))),
          adjust.steps());
      assertEquals(
          List.of("Brace about 8 3/4 in. No adjustment of this bow yet."),
          Remark.words(adjust.expected()));
      assertEquals(List.of("It came back strung."), Remark.words(adjust.notes()));
      assertEquals(2, adjust.basis().size());
      assertEquals(List.of("Limbs: A crack across a limb"), Remark.words(given.get(2L).reasons()));
      assertEquals(
          List.of("Limbs: someone looks.", "Don't draw it."), Remark.words(given.get(2L).work()));
      assertEquals(List.of("Looked over, nothing seen."), Remark.words(given.get(3L).reasons()));
      assertEquals(BenchStep.Key.RELEASE, given.get(4L).steps().get(0).key());
    }
  }

  @Test
  void itsRecord_isWhole_andHoldsEachTextAndEachLineOnce() throws Exception {
    try (Connection file = SqliteFile.open(folder.file())) {
      Rows rows = RowsOf.connection(file);
      sealed(rows, "Opened by this version.");
      assertEquals(List.of(), faults(rows));
      assertEquals(
          List.of(WITHDRAW),
          rows.texts(
              "SELECT what ->> '$.verdict_text[1]' FROM change WHERE table_name = 'bow_check' AND row_id = 2"));
      assertEquals(
          rows.number("SELECT count(*) FROM verdict_line"),
          rows.number("SELECT count(*) FROM change WHERE table_name = 'verdict_line'"));
      checkedNow(rows);
      sealed(rows, "Checked by this version.");
      assertEquals(List.of(), faults(rows));
      assertEquals(
          1,
          rows.number("SELECT count(*) FROM change WHERE table_name = 'bow_check' AND row_id = 5"));
    }
  }

  @Test
  void whatAnotherProgramChanges_whileNothingWatches_isFound() throws Exception {
    try (Connection file = SqliteFile.open(folder.file())) {
      Rows rows = RowsOf.connection(file);
      sealed(rows, "Opened by this version.");
      rows.change("DROP TRIGGER record_insert_bow_check");
      rows.change("DROP TRIGGER record_update_bow_check");
      rows.change("UPDATE bow_check SET verdict = 'ADJUST' WHERE id = 3");
      sealed(rows, "Opened again.");
      assertTrue(faults(rows).toString().contains("verdict"), faults(rows).toString());
    }
  }

  @Test
  void aLine_isNeverChanged_andNeverDeleted() throws Exception {
    try (Connection file = SqliteFile.open(folder.file())) {
      Rows rows = RowsOf.connection(file);
      for (String change :
          List.of(
              "UPDATE verdict_line SET said_of = '[\"Fine.\"]' WHERE id = 1",
              "DELETE FROM verdict_line WHERE id = 1")) {
        assertEquals(
            "what-was-decided-stays",
            assertThrows(DatabaseRefusal.class, () -> rows.change(change)).rule());
      }
    }
  }

  private static void checkedNow(Rows rows) {
    rows.change(
        """
        INSERT INTO bow_check (rig_id, kind, happened_at, recorded_at, checked_by, all_as_listed, verdict)
        VALUES (1, 'LOOK', '2026-02-02T10:00:00.000Z', '2026-02-02T10:00:00.000Z', 1, 1, 'FIT')""");
  }

  private void sealed(Rows rows, String sentence) {
    ClubTime time =
        ClubTimeOf.clock(
            TestClock.running(), new SettingsOf(folder.path(), ZoneId.of("Europe/London")));
    Story story = new Story(rows, time);
    SealedEntries sealed = new SealedEntries(rows);
    Seals seals = new Seals(rows, sealed, new PersonalValues(rows), story, time);
    new Watch(rows, story, sealed, time).begin();
    story.tell(Story.Told.ofClub(time.now(), null, sentence));
    seals.close();
  }

  private static List<String> faults(Rows rows) {
    return new VerifyRecord(rows, new SealedEntries(rows)).verify().faults();
  }
}
