package club.ascham.exchange;

import club.ascham.web.CsvDownload;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** The bytes of a CSV file (RFC 4180, UTF-8, a line of column names first) and its lines. */
final class CsvText {
  /** Fits into one sending by the page with what the browser puts round it (web.Limits: 8 MiB). */
  static final int MOST_BYTES = 8_000_000;

  /**
   * Of all files of one import: the gate is held as long as their rows take, and whoever waits
   * there does so for ten seconds (store.WriteGate). On two cores that eight programs shared it was
   * held for two to three; twenty thousand held it for ten once.
   */
  static final int MOST_LINES = 10_000;

  private static final int BOM = 0xFEFF;
  private static final CSVFormat COMMAS = CSVFormat.RFC4180;

  private CsvText() {}

  /** What became of the bytes of a file. */
  sealed interface Reading {}

  /** A file that can be read line by line. */
  record Table(List<String> header, List<Line> lines) implements Reading {}

  /** A file that can't be read at all; the message says what it is instead. */
  record NotCsv(String message) implements Reading {}

  /**
   * @param number of the file's line that it begins on, the column names standing on line 1
   */
  record Line(long number, List<String> cells) {}

  static String written(List<String> header, Iterable<List<String>> rows) {
    return CsvDownload.written(header, rows);
  }

  static Reading read(byte[] file) {
    if (file.length == 0) {
      return new NotCsv("It is empty.");
    }
    if (file.length > MOST_BYTES) {
      return new NotCsv(
          "It has %,d bytes; at most %,d are taken. Split it.".formatted(file.length, MOST_BYTES));
    }
    String otherKind = otherKind(file);
    if (otherKind != null) {
      return new NotCsv(otherKind);
    }
    CharsetDecoder strict =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    ByteBuffer bytes = ByteBuffer.wrap(file);
    try {
      CharBuffer text = strict.decode(bytes);
      if (text.length() > 0 && text.charAt(0) == BOM) {
        text.get();
      }
      return lines(text.toString());
    } catch (CharacterCodingException notUtf8) {
      return new NotCsv(
          "It is not UTF-8: line %d holds the byte %02X, which UTF-8 does not know there. Save it"
                  .formatted(lineOf(file, bytes.position()), file[bytes.position()] & 0xFF)
              + " again as “CSV UTF-8”.");
    }
  }

  private static String otherKind(byte[] file) {
    int first = file[0] & 0xFF;
    int second = file.length > 1 ? file[1] & 0xFF : 0;
    if (first == 'P' && second == 'K') {
      return "It is a spreadsheet or an archive, not CSV. Save it from the spreadsheet as “CSV UTF-8”.";
    }
    if (first == 0xFF && second == 0xFE || first == 0xFE && second == 0xFF) {
      return "It is UTF-16, not UTF-8. Save it again as “CSV UTF-8”.";
    }
    for (byte b : file) {
      if (b == 0) {
        return "It holds bytes that no text has: it is not CSV, or it is UTF-16 text. Save it again"
            + " as “CSV UTF-8”.";
      }
    }
    return null;
  }

  private static long lineOf(byte[] file, int position) {
    long line = 1;
    for (int i = 0; i < position; i++) {
      if (file[i] == '\n') {
        line++;
      }
    }
    return line;
  }

  private static Reading lines(String text) {
    long last = 0;
    try (CSVParser parser = CSVParser.parse(new StringReader(text), COMMAS)) {
      List<String> header = null;
      List<Line> lines = new ArrayList<>();
      for (CSVRecord row : parser) {
        long begins = last + 1;
        last = Math.max(parser.getCurrentLineNumber(), begins);
        List<String> cells = row.toList();
        if (header == null) {
          header = cells.stream().map(String::strip).toList();
          NotCsv wrong = wrongHeader(header);
          if (wrong != null) {
            return wrong;
          }
        } else if (cells.stream().anyMatch(cell -> !cell.isEmpty())) {
          lines.add(new Line(begins, cells));
        }
        if (lines.size() > MOST_LINES) {
          return new NotCsv(
              "It has more than %,d lines, and so many are taken at once, so that others get their turn to save. Split it; each part begins with the line that names the columns."
                  .formatted(MOST_LINES));
        }
      }
      return header == null
          ? new NotCsv("It holds nothing but a mark of its encoding.")
          : new Table(header, List.copyOf(lines));
    } catch (IOException | UncheckedIOException | IllegalStateException broken) {
      return new NotCsv(
          ("A quotation mark on line %d, or after it, stands where none can or is never closed."
                  + " Within quotation marks each one is written twice.")
              .formatted(last + 1));
    }
  }

  private static NotCsv wrongHeader(List<String> header) {
    if (header.size() == 1) {
      String only = header.get(0);
      for (String separator : List.of(";", "\t", "|")) {
        if (only.contains(separator)) {
          return new NotCsv(
              "Its columns are separated by %s; commas are wanted. Save it again with commas."
                  .formatted(separator.equals("\t") ? "tabs" : "“" + separator + "”"));
        }
      }
    }
    Set<String> seen = new HashSet<>();
    for (String name : header) {
      if (!seen.add(name)) {
        return new NotCsv("Two of its columns are named %s.".formatted(Codecs.quoted(name)));
      }
    }
    return null;
  }
}
