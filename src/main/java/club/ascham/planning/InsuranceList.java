package club.ascham.planning;

import java.time.LocalDate;
import java.util.List;

/** What the club's bows are worth, kind by kind. */
public record InsuranceList(List<Group> groups, Total total) {
  /**
   * One kind.
   *
   * @param years over which it is written down
   * @param whence where today's price comes from
   */
  public record Group(
      String said, int years, String price, String whence, Total total, List<Line> lines) {}

  /**
   * One thing.
   *
   * @param paid null: not known, and today's price stands for it
   */
  public record Line(
      String code,
      String name,
      LocalDate since,
      String paid,
      String writtenDown,
      String replacement) {}

  /** Sums. */
  public record Total(int count, String cost, String writtenDown, String replacement) {}
}
