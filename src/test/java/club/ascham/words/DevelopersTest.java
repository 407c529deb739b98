package club.ascham.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The way into the code is read in ten minutes, and leads to what is there. */
class DevelopersTest {
  private static final int WORDS_AT_MOST = 3_000;

  private final String text = NamedInText.read(Path.of("DEVELOPERS.md"));

  @Test
  void itIsReadInTenMinutes() {
    int words = text.strip().split("\\s+").length;
    assertTrue(
        words <= WORDS_AT_MOST,
        words + " words: let a reason stand at the class or the package that it explains");
  }

  @Test
  void everyPathAndClassItNames_isThere() throws IOException {
    List<String> quoted = NamedInText.quoted(text);
    assertTrue(quoted.size() > 100, quoted.size() + " named");
    assertEquals(List.of(), NamedInText.ofTheProject().missing(text));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "`NoSuchClass`",
        "`store.Judge`",
        "`story.Watched.NO_SUCH_SET`",
        "`Typed.noSuchMethod`",
        "`src/docs/no-such.md`",
        "`no-such.xml`",
        "`src/docs/*.nothing`",
        "`mvn test -Dtest=NoSuchTest`",
        "`Rscript src/test/no_such.R`"
      })
  void whatIsNotThere_isFound(String text) throws IOException {
    assertEquals(1, NamedInText.ofTheProject().missing(text).size(), text);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "`Judge`, `verdict.Judge`",
        "`story.Watched.PERSONAL`",
        "`Typed.of`",
        "`pom.xml`, `charts.js`, `.ci/run`, `migrations`",
        "`src/docs/*.md`",
        "`mvn test -Dtest=JudgeTest`",
        "`/api`, `@Writes`, `…Pages`, `target/site`"
      })
  void whatIsThere_orNoNameOfOurs_passes(String text) throws IOException {
    assertEquals(List.of(), NamedInText.ofTheProject().missing(text), text);
  }

  @Test
  void everyRoomIsOnTheTour_andSaysWhatItIs() throws IOException {
    List<String> rooms = NamedInText.rooms();
    assertTrue(rooms.size() > 30, rooms.size() + " rooms");
    List<String> quoted = NamedInText.quoted(text);
    assertEquals(List.of(), rooms.stream().filter(room -> !quoted.contains(room)).toList());
    assertEquals(
        List.of(),
        rooms.stream()
            .filter(
                room ->
                    !Files.exists(Path.of("src/main/java/club/ascham", room, "package-info.java")))
            .toList());
  }

  @Test
  void thePapersInDocs_areNamed() throws IOException {
    try (Stream<Path> papers = Files.list(Path.of("src/docs"))) {
      assertEquals(
          List.of(),
          papers.map(Path::toString).filter(paper -> !text.contains("`" + paper + "`")).toList());
    }
  }

  @Test
  void whatIsMeasured_namesItsTests() throws IOException {
    assertEquals(
        List.of(),
        NamedInText.ofTheProject().missing(NamedInText.read(Path.of("src/docs/measured.md"))));
  }
}
