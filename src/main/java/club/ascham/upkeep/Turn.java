package club.ascham.upkeep;

/** Where a piece of work stands in the plan of the weeks ahead, what comes first first. */
enum Turn {
  /** Overdue, and the item stays in until it is done. */
  SAFETY,
  OVERDUE,
  THIS_WEEK,
  THIS_MONTH,
  LATER
}
