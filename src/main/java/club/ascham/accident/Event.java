package club.ascham.accident;

import club.ascham.id.LoanId;
import io.quarkus.qute.TemplateData;
import java.time.Instant;

/**
 * One thing that the record knows of an item.
 *
 * @param kind {@code check}, {@code lent} and so on, in one word or two
 * @param by the account; null: not of an account's making
 * @param loan null: none (likewise who)
 * @param who had it; null where the reader is not to see names
 * @param words what somebody told in their own; null: nothing, or as who
 */
@TemplateData
public record Event(
    Instant at, String kind, String said, String by, LoanId loan, String who, String words) {

  static Event of(Instant at, String kind, String said, String by) {
    return new Event(at, kind, said, by, null, null, null);
  }

  Event with(String told) {
    return new Event(at, kind, said, by, loan, who, told);
  }

  Event withoutNames() {
    return new Event(at, kind, said, by, loan, null, null);
  }
}
