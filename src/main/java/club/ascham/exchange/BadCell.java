package club.ascham.exchange;

import io.quarkus.qute.TemplateData;

/**
 * One thing that keeps a file from being imported.
 *
 * @param file as the person named it
 * @param line of the file; 0: the file as a whole
 * @param column its name; empty: the row as a whole
 * @param message what was found there and what would be accepted
 */
@TemplateData
record BadCell(String file, long line, String column, String message) {

  static BadCell ofFile(String file, String message) {
    return new BadCell(file, 0, "", message);
  }

  /** {@code risers.csv, line 14, “massG”}. */
  String where() {
    return file
        + (line == 0 ? "" : ", line " + line)
        + (column.isEmpty() ? "" : ", “" + column + "”");
  }
}
