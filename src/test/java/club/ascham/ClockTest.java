package club.ascham;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** There is one clock, so that tests can be run at any hour of any day. */
@AnalyzeClasses(packages = "club.ascham", importOptions = ImportOption.OnlyIncludeTests.class)
class ClockTest {
  private static final Pattern OF_SQLITE =
      Pattern.compile("'[n]ow'|CURRENT_[DT]|'[l]ocaltime'", Pattern.CASE_INSENSITIVE);

  /** It may note the moment at which it ran. */
  private static final Pattern RUNS_ONCE = Pattern.compile("V[0-9]+__.*[.]sql");

  @ArchTest
  static final ArchRule tests_ask_the_clock_that_can_be_shifted =
      noClasses()
          .that()
          .resideOutsideOfPackage("..time..")
          .should()
          .callMethod(LocalDate.class, "now")
          .orShould()
          .callMethod(Instant.class, "now")
          .orShould()
          .callMethod(LocalDateTime.class, "now")
          .orShould()
          .callMethod(ZonedDateTime.class, "now")
          .orShould()
          .callMethod(Clock.class, "systemUTC")
          .orShould()
          .callMethod(ZoneId.class, "systemDefault");

  @Test
  void sqliteIsNeverAskedForTheDay() throws IOException {
    List<String> asking = new ArrayList<>();
    int read = 0;
    for (String folder : List.of("src/main/java", "src/test/java", "migrations")) {
      try (Stream<Path> files = Files.walk(Path.of(folder))) {
        for (Path file : files.filter(Files::isRegularFile).toList()) {
          read++;
          if (RUNS_ONCE.matcher(file.getFileName().toString()).matches()) {
            continue;
          }
          if (OF_SQLITE.matcher(Files.readString(file)).find()) {
            asking.add(file.toString());
          }
        }
      }
    }
    assertTrue(read > 900, "files read: " + read);
    assertEquals(List.of(), asking, "it knows UTC alone, and no shifted clock");
  }
}
