package club.ascham.journey;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.FilePayload;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A club's spreadsheet finds its way in, at a real browser. */
@QuarkusTest
@Order(1)
class ExchangeJourneyTest {
  private static final String COLUMNS =
      "code,maker,model,batch,serial,boughtOn,price,notes,stringerKind,bowFromIn,bowToIn,"
          + "registeredOn,retiredOn,retiredWhy,retiredNote\n";

  @TestHTTPResource String address;

  @ParameterizedTest(name = "{0} px, {1}, script {2}")
  @CsvSource({"360, LIGHT, true", "360, DARK, false", "1280, LIGHT, false", "1280, DARK, true"})
  void anOfficer_bringsAFile_mendsIt_andHasItIn(int width, ColorScheme theme, boolean script) {
    String name = "exchange-" + width + "-" + theme.name().toLowerCase();
    try (Person officer = Person.at(address, width, theme, script)) {
      officer.signIn("officer").open("/exchange");
      look(officer, name, script);

      bring(officer, COLUMNS + ",Marlwick,Journey cord,,,,eleven,,tip-to-tip,62,70,,,,\n");
      assertTrue(officer.sees("Nothing was changed"), officer.words());
      assertTrue(officer.sees("cords.csv"), officer.words());
      officer.keep(name + "-bad");

      officer.press("Choose the files again");
      bring(officer, COLUMNS + ",Marlwick,Journey cord,,,,11.50,,tip-to-tip,62,70,,,,\n");
      assertTrue(officer.sees("Shall this one row come in?"), officer.words());
      look(officer, name + "-tried", script);

      officer.press("Import the row");
      assertTrue(officer.sees("One row is in."), officer.words());
    }
  }

  private static void bring(Person officer, String text) {
    officer
        .page()
        .getByLabel("Files")
        .setInputFiles(
            new FilePayload("cords.csv", "text/csv", text.getBytes(StandardCharsets.UTF_8)));
    officer.press("Try them out");
  }

  /** The checker of accessibility is itself a script, so it looks where scripts run. */
  private static void look(Person officer, String name, boolean script) {
    if (script) {
      officer.lookCarefully(name);
    } else {
      officer.keep(name);
    }
  }
}
