package club.ascham.web;

import club.ascham.form.SheetText;
import jakarta.ws.rs.core.Response;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** Rows of a page as a file for a spreadsheet: RFC 4180, UTF-8, a line of column names first. */
public final class CsvDownload {
  private static final String MEDIA_TYPE = "text/csv;charset=UTF-8;header=present";

  private CsvDownload() {}

  /**
   * @param name without {@code .csv}
   * @param rows their cells; null: an empty one
   */
  public static Response of(String name, List<String> header, List<List<String>> rows) {
    return answer(
        name,
        written(
            header,
            rows.stream()
                .map(
                    row ->
                        row.stream().map(cell -> cell == null ? "" : SheetText.safe(cell)).toList())
                .toList()));
  }

  /**
   * @param name without {@code .csv}
   * @param text as {@link #written} made it
   */
  public static Response answer(String name, String text) {
    return Response.ok(text)
        .type(MEDIA_TYPE)
        .header("Content-Disposition", "attachment; filename=\"" + name + ".csv\"")
        .build();
  }

  /** Cells as they are, each as its column writes it. */
  public static String written(List<String> header, Iterable<List<String>> rows) {
    StringBuilder text = new StringBuilder();
    try (CSVPrinter printer = new CSVPrinter(text, CSVFormat.RFC4180)) {
      printer.printRecord(header);
      for (List<String> row : rows) {
        printer.printRecord(row);
      }
    } catch (IOException impossible) {
      throw new UncheckedIOException("writing to memory failed", impossible);
    }
    return text.toString();
  }
}
