package club.ascham.loan;

import club.ascham.time.ClubTime;
import club.ascham.units.LengthUnit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.TreeSet;

/**
 * What the answers of a lending form are read against.
 *
 * @param unit of lengths typed without one
 * @param loanDays how long the club lends for unless said otherwise
 */
record LendingTerms(LocalDate today, LengthUnit unit, Currency currency, int loanDays) {
  /** A loan of more than a year is a gift, or a slip of the pen. */
  static final int LONGEST_DAYS = 400;

  private static final List<Integer> WEEKS_OFFERED = List.of(4, 6, 8);
  private static final int DAYS_A_WEEK = 7;

  LocalDate usualDue() {
    return usualDue(today);
  }

  LocalDate usualDue(LocalDate handedOver) {
    return handedOver.plusDays(loanDays);
  }

  /** Which of {@link #dues} is the club's own; empty where that is no whole number of weeks. */
  String usualWeeks() {
    return loanDays % DAYS_A_WEEK == 0 ? Integer.toString(loanDays / DAYS_A_WEEK) : "";
  }

  /** For how long a kit handed over today may be lent at one press. */
  List<DueChoice> dues() {
    List<DueChoice> dues = new ArrayList<>();
    TreeSet<Integer> weeks = new TreeSet<>(WEEKS_OFFERED);
    if (usualWeeks().isEmpty()) {
      dues.add(new DueChoice("", loanDays + " days", ClubTime.said(usualDue())));
    } else {
      weeks.add(loanDays / DAYS_A_WEEK);
    }
    for (int many : weeks) {
      dues.add(
          new DueChoice(
              Integer.toString(many),
              many == 1 ? "1 week" : many + " weeks",
              ClubTime.said(today.plusWeeks(many))));
    }
    return List.copyOf(dues);
  }
}
