package club.ascham.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * A migration that was released is never edited: files that went through it would differ from new
 * ones, and a start would refuse them. What may change is the one that is run again whenever it
 * does.
 */
class MigrationsStayTest {
  private static final Path MIGRATIONS = Path.of("migrations");
  private static final Path KNOWN =
      Path.of("src/test/resources/club/ascham/store/migrations.sha256");

  @Test
  void everyMigration_isAsItWasReleased() throws Exception {
    Map<String, String> known =
        Files.readAllLines(KNOWN).stream()
            .map(line -> line.split("  "))
            .collect(Collectors.toMap(line -> line[1], line -> line[0]));
    Map<String, String> there = there();
    assertTrue(there.size() > 50, there.size() + " migrations");
    List<String> wrong = new ArrayList<>();
    there.forEach(
        (name, digest) -> {
          if (!known.containsKey(name)) {
            wrong.add(name + " is new: add the line \"" + digest + "  " + name + "\" to " + KNOWN);
          } else if (!known.get(name).equals(digest)) {
            wrong.add(
                name
                    + " was edited: take that back, and say it in a migration of its own with the"
                    + " next number");
          }
        });
    known.keySet().stream()
        .filter(name -> !there.containsKey(name))
        .forEach(name -> wrong.add(name + " is gone: files that went through it would not open"));
    assertEquals(List.of(), wrong);
  }

  /** Two that had one number would depend on which is found first. */
  @Test
  void eachNumber_isGivenOnce_inBothFoldersTogether() throws Exception {
    List<String> numbers =
        there().keySet().stream()
            .filter(name -> !name.startsWith("before"))
            .map(name -> name.replaceAll(".*/(V\\d+)__.*", "$1"))
            .toList();
    assertEquals(numbers.stream().distinct().toList(), numbers);
  }

  private static Map<String, String> there() throws IOException, NoSuchAlgorithmException {
    Map<String, String> there = new TreeMap<>();
    try (Stream<Path> files = Files.walk(MIGRATIONS)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        String name = MIGRATIONS.relativize(file).toString().replace('\\', '/');
        if (file.getFileName().toString().startsWith("V")) {
          byte[] digest = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file));
          there.put(name, HexFormat.of().formatHex(digest));
        }
      }
    }
    return there;
  }
}
