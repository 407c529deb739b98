package club.ascham.exchange;

import java.util.List;
import java.util.Map;

/**
 * Judges what an import brought once all of it is in: what lets a row stand may come after it. Each
 * such rule is a bean; an empty club that is filled asks none.
 */
interface AfterRows {
  /**
   * What one file added.
   *
   * @param list its name
   * @param file as the person named it
   * @param lines where each new row stands in the file, by its number
   */
  record Added(String list, String file, Map<Long, Long> lines) {
    String numbers() {
      return lines.keySet().toString();
    }

    BadCell at(long number, String column, String message) {
      return new BadCell(file, lines.get(number), column, message);
    }
  }

  /** The name of the list whose new rows it judges. */
  String list();

  /** What can't stay as it was added, at its row and column. */
  List<BadCell> check(Added added);
}
