package club.ascham.home;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.ProgramVersion;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The version of the build is told wherever somebody looks, and people are told what it brings. */
@QuarkusTest
class ReleaseTest {
  private static final Pattern BUILT_AS =
      Pattern.compile("<artifactId>ascham</artifactId>\\s*<version>([^<]+)</version>");

  @Inject ProgramVersion release;

  @Test
  void theProgram_isTheVersionOfItsBuild_andARelease() throws IOException {
    Matcher built = BUILT_AS.matcher(Files.readString(Path.of("pom.xml")));
    assertTrue(built.find());
    assertEquals(built.group(1), release.version());
    assertTrue(release.version().matches("\\d+\\.\\d+\\.\\d+"), release.version());
  }

  @ParameterizedTest
  @ValueSource(strings = {"/q/health", "/q/health/well"})
  void theHealthAddress_tellsIt(String address) {
    assertEquals(
        release.version(),
        given()
            .get(address)
            .jsonPath()
            .getString("checks.find { it.name == 'the program' }.data.version"));
  }

  @Test
  void backups_tellIt_andLeadToWhatChanged() {
    Visitor.signedInAs("officer")
        .get("/backups")
        .then()
        .body(containsString("Ascham " + release.version() + " runs here."))
        .body(containsString("href=\"/what-changed\""));
  }

  @ParameterizedTest
  @ValueSource(strings = {"officer", "volunteer", "committee"})
  void whoeverIsSignedIn_readsWhatItBrings_theNewestFirst(String name) {
    Visitor person = Visitor.signedInAs(name);
    person.get("/me").then().body(containsString("href=\"/what-changed\""));
    String page = person.get("/what-changed").then().statusCode(200).extract().asString();
    Matcher first = Pattern.compile("<h2>([^<]+)</h2>").matcher(page);
    assertTrue(first.find());
    assertEquals(release.version(), first.group(1));
  }
}
