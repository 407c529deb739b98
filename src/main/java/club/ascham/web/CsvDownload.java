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
    StringBuilder text = new StringBuilder();
    try (CSVPrinter printer = new CSVPrinter(text, CSVFormat.RFC4180)) {
      printer.printRecord(header);
      for (List<String> row : rows) {
        printer.printRecord(
            row.stream().map(cell -> cell == null ? "" : SheetText.safe(cell)).toList());
      }
    } catch (IOException impossible) {
      throw new UncheckedIOException("writing to memory failed", impossible);
    }
    return Response.ok(text.toString())
        .type(MEDIA_TYPE)
        .header("Content-Disposition", "attachment; filename=\"" + name + ".csv\"")
        .build();
  }
}
