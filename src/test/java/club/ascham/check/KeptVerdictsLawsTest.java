package club.ascham.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.store.Rows;
import club.ascham.store.RowsOf;
import club.ascham.store.Schema;
import club.ascham.verdict.BenchStep;
import club.ascham.verdict.Given;
import club.ascham.verdict.RandomVerdicts;
import club.ascham.verdict.Remark;
import club.ascham.verdict.Verdict;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.lifecycle.BeforeContainer;

/** What is shown of a verdict at once, and what is shown of it when it was kept, is the same. */
class KeptVerdictsLawsTest {
  private static Path folder;
  private static Connection file;
  private static Rows rows;

  @BeforeContainer
  static void aFile() throws IOException, SQLException {
    folder = Files.createTempDirectory("kept-verdicts");
    String url = "jdbc:sqlite:" + folder.resolve("club.db") + "?foreign_keys=true&synchronous=OFF";
    Schema.of(url).load().migrate();
    file = DriverManager.getConnection(url);
    rows = RowsOf.connection(file);
    rows.change(
        "INSERT INTO account (id, name, password_hash, role) VALUES (1, 'a', 'x', 'OFFICER')");
    rows.change(
        "INSERT INTO rig (id, style, level, assembled_at) VALUES (1, 'SPLIT_FINGER', 'BEGINNER',"
            + " '2026-01-01T10:00:00.000Z')");
  }

  @AfterContainer
  static void close() throws IOException, SQLException {
    file.close();
    try (var files = Files.list(folder)) {
      for (Path one : files.toList()) {
        Files.delete(one);
      }
    }
    Files.delete(folder);
  }

  private static long checked(Given given) {
    return rows.number(
        """
        INSERT INTO bow_check (rig_id, kind, happened_at, recorded_at, checked_by, all_as_listed, verdict)
        VALUES (1, 'LOOK', '2026-02-01T10:00:00.000Z', '2026-02-01T10:00:00.000Z', 1, 1, ?1) RETURNING id""",
        given.kind());
  }

  @Property(tries = 300)
  void aVerdictThatWasKept_isTheOneThatWasGiven(@ForAll long seed) {
    RandomVerdicts.of(seed)
        .map(Verdict::given)
        .ifPresent(
            given -> {
              long check = checked(given);
              Verdicts verdicts = new Verdicts(rows);
              verdicts.keep(check, given);
              Given kept = verdicts.of(check);
              assertEquals(given, kept);
              assertEquals(given.text(), kept.text());
              assertEquals(List.of(), beyondWhatAFileMayBring(kept));
            });
  }

  private static List<String> beyondWhatAFileMayBring(Given given) {
    return Stream.of(
            given.reasons(),
            given.steps().stream().map(BenchStep::says).toList(),
            given.expected(),
            given.work(),
            given.notes(),
            given.basis())
        .flatMap(List::stream)
        .map(Remark::beyond)
        .flatMap(Optional::stream)
        .toList();
  }

  @Example
  void manyAtOnce_areEachTheirOwn() {
    Verdicts verdicts = new Verdicts(rows);
    Map<Long, Given> given = new LinkedHashMap<>();
    for (long seed = 0; given.size() < 40; seed++) {
      RandomVerdicts.of(seed)
          .map(Verdict::given)
          .ifPresent(
              one -> {
                long check = checked(one);
                verdicts.keep(check, one);
                given.put(check, one);
              });
    }
    assertEquals(given, verdicts.of(given.keySet()));
  }

  @Example
  void whatCanNotBeSaid_isRefused() {
    for (List<String> kept :
        List.of(
            List.of("NOTHING_KNOWN", "[]"),
            List.of("AS_SAID", "[]"),
            List.of("AS_SAID", "[1]"),
            List.of("AS_SAID", "[\"one\", \"two\"]"),
            List.of("AS_SAID", "{}"),
            List.of("OUTSIDE", "[\"BRACE\", 21600000]"),
            List.of("OUTSIDE", "[\"BRACE\", 21600000, [22000000, 21000000]]"),
            List.of("OUTSIDE", "[\"BRACE\", 21.5, [21000000, 22000000]]"),
            List.of("SIGN", "[\"HANDLE\", \"cracked\"]"),
            List.of("TWISTS_IN", "[3, [\"AT_LEAST\", \"three\"]]"))) {
      assertThrows(
          IllegalArgumentException.class,
          () -> Verdicts.read(kept.get(0), kept.get(1)),
          kept.toString());
    }
    Remark read = Verdicts.read("OUTSIDE", "[\"BRACE\",21600000,[22000000,23000000]]");
    assertTrue(read.words().startsWith("Brace is 8 1/2 in · 216 mm, outside "), read.words());
  }
}
