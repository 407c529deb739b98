package club.ascham.exchange;

import club.ascham.Settings;
import club.ascham.backup.Backups;
import club.ascham.record.RecordFile;
import club.ascham.store.SqliteFile;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.StreamingOutput;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Currency;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * All that the club has, of one moment, in a form that any program reads: each list as CSV, the
 * record as JSON lines, and the SQLite file itself.
 */
@ApplicationScoped
class Everything {
  static final String MEDIA_TYPE = "application/zip";

  private final Backups backups;
  private final RecordFile record;
  private final Currency currency;

  Everything(Backups backups, RecordFile record, Settings settings) {
    this.backups = backups;
    this.record = record;
    this.currency = Currency.getInstance(settings.currency());
  }

  Response download() {
    // Made before the answer begins, so that what is in its way can still be said.
    Backups.Copy copy = backups.copy();
    StreamingOutput zip =
        out -> {
          try (copy) {
            write(copy, out);
          } catch (SQLException failure) {
            throw new IOException("can't read the copy", failure);
          }
        };
    return Response.ok(zip, MEDIA_TYPE)
        .header("Content-Disposition", "attachment; filename=\"" + copy.stem() + ".zip\"")
        .build();
  }

  private void write(Backups.Copy copy, OutputStream out) throws IOException, SQLException {
    try (ZipOutputStream zip = new ZipOutputStream(out, StandardCharsets.UTF_8);
        Connection connection = SqliteFile.open(copy.file())) {
      begin(zip, copy, "READ-ME.txt");
      zip.write(READ_ME.formatted(copy.newestSeal()).getBytes(StandardCharsets.UTF_8));
      for (CsvList list : Lists.all()) {
        begin(zip, copy, "lists/" + list.name() + ".csv");
        zip.write(Export.csv(list, connection, currency).getBytes(StandardCharsets.UTF_8));
      }
      begin(zip, copy, "record.jsonl");
      record.writeUpTo(copy.newestSeal(), zip);
      begin(zip, copy, copy.stem() + ".db");
      Files.copy(copy.file(), zip);
      zip.closeEntry();
    }
  }

  private static void begin(ZipOutputStream zip, Backups.Copy copy, String name)
      throws IOException {
    zip.putNextEntry(new ZipEntry(copy.stem() + "/" + name));
  }

  private static final String READ_ME =
      """
      Everything that the club keeps in Ascham, of one moment.

      lists/         each list as CSV (RFC 4180, UTF-8, columns named in the first line); they import
                     again into an empty club.
      record.jsonl   every change ever made, one JSON object a line, oldest first. Each "seal" is the
                     SHA-256, in hexadecimal, of the seal before it, a line feed, and the "entry" as it
                     stands there.
      ascham-….db    the SQLite file: any SQLite reads it, and Ascham's "restore" brings it back.

      Newest seal of the record: %s

      It holds the names and contacts of everyone who borrowed. Keep it where only officers come.
      """;
}
