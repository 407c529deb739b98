package club.ascham.exchange;

import club.ascham.web.CsvDownload;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Optional;

/** A list as a download. */
final class CsvAnswer {
  private static final String ENDING = ".csv";

  private CsvAnswer() {}

  /**
   * @param file the list's name with {@code .csv}
   */
  static Optional<Response> of(Export export, String file) {
    return list(file).map(list -> answer(list, export.csv(list)));
  }

  /** The file without its rows, to be filled in. */
  static Optional<Response> ofColumns(String file) {
    return list(file).map(list -> answer(list, CsvText.written(list.header(), List.of())));
  }

  private static Optional<CsvList> list(String file) {
    return file.endsWith(ENDING)
        ? Lists.named(file.substring(0, file.length() - ENDING.length()))
        : Optional.empty();
  }

  private static Response answer(CsvList list, String text) {
    return CsvDownload.answer(list.name(), text);
  }
}
