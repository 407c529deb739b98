package club.ascham.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a check decided comes with the check, and is what a verdict can say. */
class VerdictLinesInFilesTest {
  private static final String LINES =
      "number,check,place,kind,saying,saidOf,step,byWhom,thousandths\n";
  private static final String NEXT = ",%d,900,reason,as-said,\"[\"\"Worn.\"\"]\",,,\n";

  @TempDir Path folder;
  private EmptyClub club;
  private Statement file;

  /** A club whose first check is sealed in the record. */
  @BeforeEach
  void open() throws Exception {
    club = EmptyClub.in(folder);
    club.take(EmptyClub.demoFiles(), 0);
    file = club.connection().createStatement();
    file.execute(
        "UPDATE story SET hash = hex(zeroblob(32)) WHERE id = (SELECT max(id) FROM story)");
    file.execute(
        "INSERT INTO change (story_id, table_name, row_id, what) SELECT max(id), 'bow_check', 1, '{\"id\":[null,1]}' FROM story");
  }

  @AfterEach
  void close() throws SQLException {
    file.close();
    club.close();
  }

  @Test
  void aLineOfACheckThatWasDecidedBefore_isRefusedAtItsCheck() throws SQLException {
    ImportReport report = club.take(EmptyClub.file("lines.csv", LINES + NEXT.formatted(1)));
    assertEquals("check", report.bad().get(0).column());
    assertEquals(
        "that check was decided before: its lines come with it, or all at once after it, and none is added",
        report.bad().get(0).message());
  }

  @Test
  void itsOwnLines_areTakenBackAsTheyAre() throws SQLException {
    ImportReport report = club.take(EmptyClub.file("lines.csv", club.csv("verdict-lines")));
    assertEquals(List.of(), report.bad());
    assertTrue(report.lists().get(0).unchanged() > 500);
  }

  @Test
  void linesThatComeWithTheirCheck_areTaken() throws SQLException {
    String[] checks = club.csv("checks").split("\r\n");
    ImportReport report =
        club.take(
            EmptyClub.file("lines.csv", LINES + NEXT.formatted(5000)),
            EmptyClub.file(
                "checks.csv", checks[0] + "\n" + checks[1].replaceFirst("^1,", "5000,") + "\n"));
    assertEquals(List.of(), report.bad());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "[\"\"]",
        "[\" \"]",
        "[\"Worn.\\nFrayed.\"]",
        "[\"Worn.\\rFrayed.\"]",
        "[[\"AS_SAID\", \"Worn.\\nFrayed.\"]]",
        "[300000001]",
        "[-300000001]",
        "[1e400]",
        "[null]",
        "[true]",
        "[{}]"
      })
  void theDatabase_refusesWhatNoVerdictSays(String saidOf) {
    String refused =
        assertThrows(
                SQLException.class,
                () ->
                    file.execute(
                        "INSERT INTO verdict_line (check_id, place, kind, saying, said_of) VALUES (2, 900, 'REASON', 'AS_SAID', '%s')"
                            .formatted(saidOf)))
            .getMessage();
    assertTrue(refused.contains("no-verdict-says-that"), refused);
  }
}
