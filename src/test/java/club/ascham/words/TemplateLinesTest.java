package club.ascham.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A page's template is read without turning the head. */
class TemplateLinesTest {
  private static final int WIDEST = 160;

  @Test
  void noLine_isWiderThanAScreen() throws IOException {
    List<Path> templates;
    try (Stream<Path> all = Files.walk(Path.of("src", "main", "resources", "templates"))) {
      templates = all.filter(Files::isRegularFile).toList();
    }
    assertFalse(templates.isEmpty());
    List<String> wide = new ArrayList<>();
    for (Path template : templates) {
      List<String> lines = Files.readAllLines(template);
      for (int i = 0; i < lines.size(); i++) {
        if (lines.get(i).length() > WIDEST) {
          wide.add(template + ":" + (i + 1));
        }
      }
    }
    assertEquals(List.of(), wide);
  }
}
