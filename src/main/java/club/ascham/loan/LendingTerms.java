package club.ascham.loan;

import club.ascham.units.LengthUnit;
import java.time.LocalDate;
import java.util.Currency;

/**
 * What the answers of a lending form are read against.
 *
 * @param unit of lengths typed without one
 * @param loanDays how long the club lends for unless said otherwise
 */
record LendingTerms(LocalDate today, LengthUnit unit, Currency currency, int loanDays) {
  /** A loan of more than a year is a gift, or a slip of the pen. */
  static final int LONGEST_DAYS = 400;

  LocalDate usualDue() {
    return today.plusDays(loanDays);
  }
}
