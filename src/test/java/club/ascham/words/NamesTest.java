package club.ascham.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Whoever reads a class by its short name knows which one it is. */
class NamesTest {
  private static List<Path> sources() throws IOException {
    try (Stream<Path> main = Files.walk(Path.of("src", "main", "java"));
        Stream<Path> test = Files.walk(Path.of("src", "test", "java"))) {
      return Stream.concat(main, test).filter(file -> file.toString().endsWith(".java")).toList();
    }
  }

  @Test
  void noName_standsForTwoThings() throws IOException {
    Map<String, List<Path>> named = new TreeMap<>();
    for (Path file : sources()) {
      String name = file.getFileName().toString();
      if (!name.equals("package-info.java")) {
        named.computeIfAbsent(name, none -> new ArrayList<>()).add(file);
      }
    }
    named.values().removeIf(files -> files.size() == 1);
    assertEquals(Map.of(), named);
  }
}
