package club.ascham.check;

/** What to do about a part that is on a bow and not on its list. */
enum StrangerAnswer {
  /** The right part goes back on. */
  PUT_RIGHT,
  /** Nobody knows which is which: both stay in. */
  WITHDRAW_BOTH
}
