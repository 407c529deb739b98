package club.ascham.fleet;

import java.util.List;

/**
 * The head of a list that would not fit. A sheet of paper, which can't be scrolled, has room for
 * fewer: see {@link #onPaper()}.
 *
 * @param more how many were left out
 */
public record Shown<T>(List<T> first, int more) {
  private static final int ON_PAPER = 3;

  /** How many of the first are printed: one more than fits is worth a line of its own. */
  public int onPaper() {
    return all() <= ON_PAPER + 1 ? ON_PAPER + 1 : ON_PAPER;
  }

  /** How many are left out on paper. */
  public int moreOnPaper() {
    return Math.max(0, all() - onPaper());
  }

  private int all() {
    return first.size() + more;
  }

  public static <T> Shown<T> of(List<T> all, int atMost) {
    return all.size() <= atMost
        ? new Shown<>(all, 0)
        : new Shown<>(all.subList(0, atMost), all.size() - atMost);
  }
}
