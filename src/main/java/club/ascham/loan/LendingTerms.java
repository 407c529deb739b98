package club.ascham.loan;

import club.ascham.form.Typed;
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
public record LendingTerms(LocalDate today, LengthUnit unit, Currency currency, int loanDays) {
  /** A loan of more than a year is a gift, or a slip of the pen. */
  public static final int LONGEST_DAYS = 400;

  private static final List<Integer> WEEKS_OFFERED = List.of(4, 6, 8);
  private static final int DAYS_A_WEEK = 7;

  public LocalDate usualDue() {
    return usualDue(today);
  }

  public LocalDate usualDue(LocalDate handedOver) {
    return handedOver.plusDays(loanDays);
  }

  /** Which of {@link #dues} is the club's own; empty where that is no whole number of weeks. */
  public String usualWeeks() {
    return loanDays % DAYS_A_WEEK == 0 ? Integer.toString(loanDays / DAYS_A_WEEK) : "";
  }

  /**
   * A day that is typed at {@code dueOn} counts, whatever number of weeks is picked at {@code
   * dueWeeks}; null: neither was said, or what was can't be read.
   *
   * @param from the day that the weeks are counted from; null: not known
   */
  public static LocalDate due(Typed typed, LocalDate from) {
    if (typed.has("dueOn")) {
      return typed.day("dueOn");
    }
    Integer weeks = typed.whole("dueWeeks", 1, LONGEST_DAYS / DAYS_A_WEEK);
    return weeks == null || from == null ? null : from.plusWeeks(weeks);
  }

  /** How much longer a kit may be kept at one press: so many weeks from the day it is due. */
  public List<DueChoice> longer(LocalDate dueOn) {
    return dues(goesOnFrom(dueOn)).stream().filter(due -> !due.value().isEmpty()).toList();
  }

  /** What is late goes on from today. */
  public LocalDate goesOnFrom(LocalDate dueOn) {
    return dueOn.isBefore(today) ? today : dueOn;
  }

  /** For how long a kit handed over today may be lent at one press. */
  public List<DueChoice> dues() {
    return dues(today);
  }

  private List<DueChoice> dues(LocalDate from) {
    List<DueChoice> dues = new ArrayList<>();
    TreeSet<Integer> weeks = new TreeSet<>(WEEKS_OFFERED);
    if (usualWeeks().isEmpty()) {
      dues.add(new DueChoice("", loanDays + " days", ClubTime.said(usualDue(from))));
    } else {
      weeks.add(loanDays / DAYS_A_WEEK);
    }
    for (int many : weeks) {
      dues.add(
          new DueChoice(
              Integer.toString(many),
              many == 1 ? "1 week" : many + " weeks",
              ClubTime.said(from.plusWeeks(many))));
    }
    return List.copyOf(dues);
  }
}
