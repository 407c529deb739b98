package club.ascham.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.bow.ArrowMass;
import club.ascham.bow.BraceTable;
import club.ascham.bow.Build;
import club.ascham.bow.Hand;
import club.ascham.bow.InPrint;
import club.ascham.bow.Known;
import club.ascham.bow.Level;
import club.ascham.bow.LimbSize;
import club.ascham.bow.LimbsSpec;
import club.ascham.bow.RigSpec;
import club.ascham.bow.RiserSpec;
import club.ascham.bow.SetUpSheet;
import club.ascham.bow.Style;
import club.ascham.bow.Targets;
import club.ascham.store.Schema;
import club.ascham.verdict.Signs;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What people see names a source by title, institution and year: never by a host's name alone, and
 * never with a note of whoever read it.
 */
class OurOwnWordsTest {
  /** A maker's word for a fitting that others make too; written so that it is not found here. */
  private static final List<String> MAKERS_WORDS =
      List.of("for" + "mula", "hoyt", "easton", "lancaster", "bloodsport");

  @ParameterizedTest
  @ValueSource(
      strings = {
        "a care tolerance (selfbow.ch)",
        "archery.org.au/safety",
        "Season start (archers-rixheim.fr, after the federation).",
        "See club-page.co.uk",
        "as it was read in a stored copy",
        "https://a/b",
        "a page (R)"
      })
  void whatThisTestLooksFor_isFound(String text) {
    assertTrue(!HostNames.in(text).isEmpty(), text);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "sasha@example.org",
        "1.25 mm",
        "on Monday. It went at 7 lb.in",
        "J. R. Stat. Soc. B 37, 1975",
        "<svg xmlns=\"http://www.w3.org/2000/svg\">"
      })
  void whatIsNoHost_isLeftAlone(String text) {
    assertEquals(List.of(), HostNames.in(text));
  }

  @Test
  void templatesAndScripts() throws IOException {
    List<Path> files = files("src/main/resources/templates", ".html", ".svg", ".txt");
    assertTrue(files.size() > 50, files.size() + " templates");
    List<Path> more = new ArrayList<>(files);
    more.addAll(files("src/main/resources/META-INF/resources", ".js", ".svg", ".html"));
    assertEquals(List.of(), found(more, OurOwnWordsTest::withoutExpressions));
  }

  @Test
  void sentencesOfTheProgram() throws IOException {
    List<Path> files = files("src/main/java", ".java");
    assertTrue(files.size() > 300, files.size() + " sources");
    assertEquals(List.of(), found(files, HostNames::literals));
  }

  @Test
  void theDemoClub() throws IOException {
    List<Path> files = files("demo-data", ".csv");
    assertTrue(files.size() > 20, files.size() + " lists");
    assertEquals(List.of(), found(files, UnaryOperator.identity()));
  }

  @Test
  void signs_stepsAndTables() {
    List<String> texts = new ArrayList<>();
    Signs.all().forEach(sign -> texts.add(sign.words() + " " + sign.source()));
    for (BraceTable table : BraceTable.values()) {
      texts.add(table.source());
    }
    for (Style style : Style.values()) {
      for (Hand hand : Hand.values()) {
        RigSpec rig = rig(hand, style);
        Targets targets = Targets.of(rig, BraceTable.FRENCH_FEDERATION_2008, null, null);
        SetUpSheet.steps(rig, targets, Level.FULLER).forEach(step -> texts.add(step.toString()));
      }
    }
    texts.add(ArrowMass.BASIS);
    texts.add(InPrint.TWISTS);
    assertTrue(texts.size() > 100, texts.size() + " texts");
    assertEquals(List.of(), texts.stream().flatMap(text -> strange(text).stream()).toList());
  }

  @Test
  void whatAClubStartsWith(@TempDir Path folder) throws SQLException {
    String url = "jdbc:sqlite:" + folder.resolve("club.db");
    Schema.of(url).load().migrate();
    List<String> texts = new ArrayList<>();
    try (Connection connection = DriverManager.getConnection(url)) {
      for (String table : List.of("upkeep_rule", "replacement_terms", "plan_rule")) {
        try (ResultSet rows =
            connection.createStatement().executeQuery("SELECT source FROM " + table)) {
          while (rows.next()) {
            texts.add(rows.getString(1));
          }
        }
      }
    }
    assertTrue(texts.size() >= 15, texts.size() + " sources");
    assertEquals(List.of(), texts.stream().flatMap(text -> strange(text).stream()).toList());
  }

  private static RigSpec rig(Hand hand, Style style) {
    return new RigSpec(
        new RiserSpec(Build.ADJUSTABLE, hand, 25, "ILF", null, 4.0, true),
        new LimbsSpec(
            Build.ADJUSTABLE, LimbSize.MEDIUM, null, "ILF", null, 24, 28, 25, Known.YES, null),
        null,
        null,
        style);
  }

  private static List<String> found(List<Path> files, UnaryOperator<String> shown)
      throws IOException {
    List<String> found = new ArrayList<>();
    for (Path file : files) {
      for (String one : strange(shown.apply(Files.readString(file)))) {
        found.add(file + ": " + one);
      }
    }
    return found;
  }

  /** Comments and expressions are gone before a page is seen. */
  private static String withoutExpressions(String template) {
    String shown = template.replaceAll("\\{!(?s:.*?)!\\}", "");
    return shown.replaceAll("\\{[^{}\\s][^{}]*\\}", "");
  }

  private static List<String> strange(String text) {
    List<String> strange = new ArrayList<>(HostNames.in(text));
    for (String word : MAKERS_WORDS) {
      if (text.toLowerCase(Locale.ROOT).matches("(?s).*\\b" + word + "\\b.*")) {
        strange.add(word);
      }
    }
    return strange;
  }

  private static List<Path> files(String folder, String... ends) throws IOException {
    try (Stream<Path> all = Files.walk(Path.of(folder))) {
      return all.filter(path -> Stream.of(ends).anyMatch(path.toString()::endsWith))
          .sorted()
          .toList();
    }
  }
}
