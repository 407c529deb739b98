package club.ascham.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * A template is read in one window. Where its lines break a person decides: no formatter knows both
 * HTML and Qute's sections; indents, trailing blanks and the last line are the formatter's.
 */
class TemplatesTest {
  private static final Path TEMPLATES = Path.of("src", "main", "resources", "templates");
  private static final int LONGEST_LINE = 160;

  @Test
  void noLineOfATemplate_isTooLong() throws IOException {
    List<String> tooLong = new ArrayList<>();
    int read = 0;
    try (Stream<Path> files = Files.walk(TEMPLATES)) {
      for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
        List<String> lines = Files.readAllLines(file);
        for (int i = 0; i < lines.size(); i++) {
          read++;
          if (lines.get(i).length() > LONGEST_LINE) {
            tooLong.add("%s:%d has %d".formatted(file, i + 1, lines.get(i).length()));
          }
        }
      }
    }
    assertEquals(List.of(), tooLong, "at most " + LONGEST_LINE + " characters a line");
    assertTrue(read > 3000, read + " lines of templates read");
  }
}
