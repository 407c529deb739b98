package club.ascham.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** No number of a file makes what the club writes after it unfit for a file. */
class NumbersInFilesTest {
  private static final String BORROWERS = "number,name,contact,memberNo,ageBand,guardian\n";
  private static final String STORIES =
      "number,happenedAt,recordedAt,by,sentence,why,loan,takenInWith\n";
  private static final String AT = "2026-01-02T18:30:00.000Z";

  @TempDir Path one;
  @TempDir Path other;
  private EmptyClub club;

  @BeforeEach
  void open() throws SQLException {
    club = EmptyClub.in(one);
  }

  @AfterEach
  void close() throws SQLException {
    club.close();
  }

  private ImportReport take(String text) throws SQLException {
    return club.take(EmptyClub.file("a.csv", text));
  }

  @Test
  void aNumberFarBeyondWhatIsThere_isRefusedAtItsColumn() throws SQLException {
    for (String csv :
        List.of(
            BORROWERS + "1000000000,A,b@c,,adult,\n",
            STORIES + "1000000000," + AT + "," + AT + ",,Told.,,,\n")) {
      ImportReport report = take(csv);
      assertEquals(1, report.badInAll());
      assertEquals("number", report.bad().get(0).column());
      assertEquals(
          "1000000000 is far beyond the next free number, 1: give a number near it, or leave it empty",
          report.bad().get(0).message());
    }
  }

  @Test
  void whateverNumbersWereTaken_whatComesAfterThem_isTakenElsewhere() throws SQLException {
    assertEquals(
        List.of(),
        take(BORROWERS + "7,A,b@c,,adult,\n1000008,B,b@c,,adult,\n2000009,C,b@c,,adult,\n").bad());
    try (Statement insert = club.connection().createStatement()) {
      insert.execute("INSERT INTO borrower (name, contact, age_band) VALUES ('D', 'd@c', 'ADULT')");
    }
    String exported = club.csv("borrowers");
    try (EmptyClub elsewhere = EmptyClub.in(other)) {
      assertEquals(List.of(), elsewhere.take(EmptyClub.file("b.csv", exported)).bad());
      assertEquals(exported, elsewhere.csv("borrowers"));
    }
  }

  @Test
  void aClubThatTookSuchANumberOnce_takesItsOwnExportBack() throws SQLException {
    try (Statement insert = club.connection().createStatement()) {
      insert.execute(
          "INSERT INTO borrower (id, name, contact, age_band) VALUES (1000000000, 'A', 'a@c', 'ADULT')");
      insert.execute("INSERT INTO borrower (name, contact, age_band) VALUES ('B', 'b@c', 'ADULT')");
    }
    ImportReport report = take(club.csv("borrowers"));
    assertEquals(List.of(), report.bad());
    assertEquals(2, report.lists().get(0).unchanged());
  }

  @Test
  void behindTheNewestSeal_noEntryIsTaken() throws SQLException {
    try (Statement insert = club.connection().createStatement()) {
      insert.execute(
          "INSERT INTO story (id, happened_at, recorded_at, sentence, hash) VALUES (9, '%s', '%s', 'Told.', hex(zeroblob(32)))"
              .formatted(AT, AT));
    }
    ImportReport report = take(STORIES + "5," + AT + "," + AT + ",,Told before.,,,\n");
    assertEquals("number", report.bad().get(0).column());
    assertEquals(
        "that number lies behind the record’s newest seal: leave it empty, and one is given",
        report.bad().get(0).message());
    assertEquals(List.of(), take(STORIES + "10," + AT + "," + AT + ",,Told.,,,\n").bad());
  }

  @Test
  void anOlderExport_ofEntriesThatDidNotSayHowTheyCame_isTaken() throws SQLException {
    String older = STORIES.replace(",takenInWith", "") + "1," + AT + "," + AT + ",,Told.,,\n";
    assertEquals(List.of(), take(older).bad());
    assertEquals(1, take(older).lists().get(0).unchanged());
  }
}
