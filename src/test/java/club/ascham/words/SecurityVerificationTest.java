package club.ascham.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the table of security requirements says is tested has its test. */
class SecurityVerificationTest {
  private static final Pattern TEST = Pattern.compile("(\\w+(?:Test|IT))(?:\\..*)?");
  private static final Pattern OF_MAIN = Pattern.compile("[a-z]+\\.[A-Z]\\w+(?:\\.\\w+)?");

  private final String text = NamedInText.read(Path.of("src/docs/security-verification.md"));
  private final NamedInText project = NamedInText.ofTheProject();

  SecurityVerificationTest() throws IOException {}

  private List<String> missingTests(String text) {
    return NamedInText.quoted(text).stream()
        .filter(quoted -> TEST.matcher(quoted).matches())
        .filter(quoted -> project.test(quoted.split("\\.")[0]).isEmpty() || !project.exists(quoted))
        .toList();
  }

  @Test
  void everyTestItNames_exists() {
    long named =
        NamedInText.quoted(text).stream().filter(one -> TEST.matcher(one).matches()).count();
    assertTrue(named > 40, named + " tests named");
    assertEquals(List.of(), missingTests(text));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "`NoSuchTest`",
        "`NoSuchIT`",
        "`SignInTest.noSuchCase_…`",
        "`SignInTest.manyWrongPasswords_`",
        "`Judge`, `NoSuchTest.aCase`"
      })
  void aTestThatIsNotThere_isFound(String row) {
    assertFalse(missingTests(row).isEmpty(), row);
  }

  @Test
  void everyClassOfTheProgramItNames_exists() {
    List<String> named =
        NamedInText.quoted(text).stream().filter(one -> OF_MAIN.matcher(one).matches()).toList();
    assertTrue(named.size() >= 20, named.size() + " classes named");
    assertEquals(List.of(), named.stream().filter(one -> !project.exists(one)).toList());
  }

  @Test
  void everyRow_saysOfItsRequirementWhetherItIsMet() {
    List<String> rows =
        text.lines().filter(line -> line.startsWith("| ") && !line.startsWith("| req")).toList();
    assertTrue(rows.size() > 80, rows.size() + " rows");
    assertEquals(
        List.of(),
        rows.stream()
            .filter(
                row ->
                    !row.matches(
                        "\\| (?:\\d+\\.|V\\d)[^|]* \\| (?:met|n/a|by the|not)[^|]* \\| [^|]+ \\|"))
            .toList());
  }
}
