package club.ascham.journey;

import static org.junit.jupiter.api.Assertions.assertEquals;

import club.ascham.store.Rows;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.nio.charset.StandardCharsets;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What people take along on paper is one sheet of it: the slip, and the sheet for the bench. */
@QuarkusTest
class PrintTest {
  private static final Pattern ONE_PAGE = Pattern.compile("/Type\\s*/Page\\b");

  @Inject Rows rows;
  @TestHTTPResource String address;

  @Test
  void slipAndSetUpSheet_eachFitOneA4() {
    long loan =
        rows.number(
            """
            SELECT l.loan_id FROM loan_line l JOIN loan k ON k.id = l.loan_id AND k.kind = 'KIT'
             GROUP BY l.loan_id ORDER BY count(*) DESC LIMIT 1""");
    long rig =
        rows.number("SELECT min(rig_id) FROM rig_standing WHERE state_if_inspected = 'READY'");
    try (Chromium chromium = new Chromium();
        Person officer =
            Person.at(
                    chromium.browser(), address.replaceAll("/$", ""), 1280, ColorScheme.LIGHT, true)
                .signIn("officer")) {
      Stream.of("/loans/" + loan + "/slip", "/rigs/" + rig + "/sheet")
          .forEach(path -> assertEquals(1, sheets(officer.open(path).page()), path));
    }
  }

  private static long sheets(Page page) {
    byte[] pdf = page.pdf(new Page.PdfOptions().setFormat("A4").setPreferCSSPageSize(true));
    return ONE_PAGE.matcher(new String(pdf, StandardCharsets.ISO_8859_1)).results().count();
  }
}
