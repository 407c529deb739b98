package club.ascham.upkeep;

import java.time.LocalDate;

/**
 * One piece of work that an item is planned for.
 *
 * @param dueOn the last day on which it is in time; of work asked for, the day it was asked
 * @param soonDays the days before, within which it is due soon
 * @param blocks whether the item stays in once it is overdue
 * @param asked whether a person asked for it out of turn: it is waited for at once
 * @param because what it is counted from, or why it was asked for
 */
public record Due(
    Work work, LocalDate dueOn, int soonDays, boolean blocks, boolean asked, String because) {
  private static final int WEEK = 7;

  /** The days that count as this month on the plan. */
  static final int MONTH = 31;

  public Urgency on(LocalDate today) {
    if (dueOn.isBefore(today) || (asked && !dueOn.isAfter(today))) {
      return Urgency.OVERDUE;
    }
    return dueOn.isAfter(today.plusDays(soonDays)) ? Urgency.LATER : Urgency.DUE_SOON;
  }

  /** Whether its item may not be issued on that day because of it. */
  public boolean keepsIn(LocalDate today) {
    return blocks && on(today) == Urgency.OVERDUE;
  }

  Turn turn(LocalDate today) {
    if (on(today) == Urgency.OVERDUE) {
      return blocks ? Turn.SAFETY : Turn.OVERDUE;
    }
    if (dueOn.isBefore(today.plusDays(WEEK))) {
      return Turn.THIS_WEEK;
    }
    return dueOn.isBefore(today.plusDays(MONTH)) ? Turn.THIS_MONTH : Turn.LATER;
  }
}
