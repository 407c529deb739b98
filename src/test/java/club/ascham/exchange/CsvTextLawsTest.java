package club.ascham.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

/** Whatever bytes are sent, they are a table or no CSV, and what we write we read. */
class CsvTextLawsTest {

  @Property
  void whatIsWritten_isReadAgain(@ForAll("rows") List<List<String>> rows) {
    String text = CsvText.written(List.of("one", "two", "three"), rows);
    CsvText.Table table =
        assertInstanceOf(CsvText.Table.class, CsvText.read(text.getBytes(StandardCharsets.UTF_8)));

    assertEquals(List.of("one", "two", "three"), table.header());
    assertEquals(
        rows.stream().filter(row -> row.stream().anyMatch(cell -> !cell.isEmpty())).toList(),
        table.lines().stream().map(CsvText.Line::cells).toList());
  }

  @Property
  void anyBytes_areAnswered(@ForAll @Size(max = 200) byte[] bytes) {
    isAnswered(bytes);
  }

  @Property
  void anyChangeOfAFile_isAnswered(
      @ForAll("rows") List<List<String>> rows,
      @ForAll @IntRange(max = 400) int at,
      @ForAll("crumbs") String crumb) {
    StringBuilder text = new StringBuilder(CsvText.written(List.of("one", "two", "three"), rows));
    text.insert(Math.min(at, text.length()), crumb);

    isAnswered(text.toString().getBytes(StandardCharsets.UTF_8));
  }

  @Property(tries = 50)
  void noLongFile_takesLong(@ForAll("crumbs") String crumb) {
    byte[] bytes =
        crumb.repeat(500_000 / Math.max(1, crumb.length())).getBytes(StandardCharsets.UTF_8);

    assertTimeoutPreemptively(Duration.ofSeconds(10), () -> isAnswered(bytes));
  }

  private static void isAnswered(byte[] bytes) {
    CsvText.Reading reading = CsvText.read(bytes);
    if (reading instanceof CsvText.NotCsv not) {
      assertTrue(not.message().endsWith("."), not.message());
    } else {
      CsvText.Table table = (CsvText.Table) reading;
      assertEquals(table.header().size(), table.header().stream().distinct().count());
      assertTrue(table.lines().size() <= CsvText.MOST_LINES);
      long before = 1;
      for (CsvText.Line line : table.lines()) {
        assertTrue(line.number() > before, "the lines are numbered upwards");
        before = line.number();
      }
    }
  }

  @Provide
  Arbitrary<List<List<String>>> rows() {
    return Arbitraries.strings()
        .withChars("ab,;\"\n\r =+-é\u202e'\t")
        .ofMaxLength(8)
        .list()
        .ofSize(3)
        .list()
        .ofMaxSize(5);
  }

  @Provide
  Arbitrary<String> crumbs() {
    return Arbitraries.strings()
        .withChars("\",\n\r;\t\u0000a\ufeff\ud800é")
        .ofMinLength(1)
        .ofMaxLength(6);
  }
}
