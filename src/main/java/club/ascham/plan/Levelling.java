package club.ascham.plan;

import java.util.Arrays;

/**
 * How much work a week must take over from later ones so that none of them exceeds its hours: going
 * back from half a year ahead, each week keeps what must not be begun sooner, then what it has room
 * for; the rest goes to the week before, as far as its slack allows. So work moves only when it
 * must, only forwards in time, and as little as it can. Work for safety is laid first, and other
 * work in the room that it leaves.
 *
 * <p>Work may be split between weeks. That makes it a flow and not a packing, so that more hours
 * never leave more undone. Work for safety is never planned past its day: what does not fit is
 * listed, and its bow stays in.
 */
final class Levelling {
  /** Weeks that are looked ahead. */
  static final int AHEAD = 26;

  private final int[] slackWeeks;
  private final int minutesAWeek;

  /** Minutes waiting, by class (safety or not, then slack) and the week they are due in. */
  private final int[][] minutes;

  private final int[] room = new int[AHEAD + 1];
  private final int[] pool = new int[AHEAD + 1];

  Levelling(int[] slackWeeks, int minutesAWeek, int weeks) {
    this.slackWeeks = slackWeeks;
    this.minutesAWeek = minutesAWeek;
    minutes = new int[2 * slackWeeks.length][weeks + AHEAD + 1];
  }

  void clear() {
    for (int[] ofClass : minutes) {
      Arrays.fill(ofClass, 0);
    }
  }

  void add(int week, int slack, boolean safety, int more) {
    minutes[row(slack, safety)][week] += more;
  }

  private int row(int slack, boolean safety) {
    return (safety ? 0 : slackWeeks.length) + slack;
  }

  /**
   * The minutes of later work of one class that have to be done in this week. Ask for safety first:
   * the other class gets the room it leaves.
   */
  int toPull(int w, boolean safety) {
    if (safety) {
      Arrays.fill(room, minutesAWeek);
    }
    Arrays.fill(pool, 0);
    int waiting = 0;
    for (int ahead = AHEAD; ahead > 0; ahead--) {
      for (int s = 0; s < slackWeeks.length; s++) {
        int more = minutes[row(s, safety)][w + ahead];
        pool[Math.max(0, ahead - slackWeeks[s])] += more;
        waiting += more;
      }
      // The latest first: what must not be begun earlier than this week finds room here or nowhere.
      for (int first = ahead; first >= 0 && room[ahead] > 0 && waiting > 0; first--) {
        int here = Math.min(room[ahead], pool[first]);
        pool[first] -= here;
        room[ahead] -= here;
        waiting -= here;
      }
      waiting -= pool[ahead];
      pool[ahead] = 0;
    }
    return pool[0];
  }
}
