package club.ascham.plan;

import java.util.Arrays;

/** Things by the week in which something happens to them, each in at most one; nothing is made. */
final class Buckets {
  private static final int NONE = -1;

  private final int[] first;
  private final int[] next;
  private final int[] before;
  private final int[] week;

  Buckets(int things, int weeks) {
    first = new int[weeks];
    next = new int[things];
    before = new int[things];
    week = new int[things];
  }

  void clear() {
    Arrays.fill(first, NONE);
    Arrays.fill(week, NONE);
  }

  /** Puts a thing into a week, out of the one it was in. */
  void put(int thing, int inWeek) {
    remove(thing);
    week[thing] = inWeek;
    before[thing] = NONE;
    next[thing] = first[inWeek];
    if (first[inWeek] != NONE) {
      before[first[inWeek]] = thing;
    }
    first[inWeek] = thing;
  }

  void remove(int thing) {
    if (week[thing] == NONE) {
      return;
    }
    if (before[thing] == NONE) {
      first[week[thing]] = next[thing];
    } else {
      next[before[thing]] = next[thing];
    }
    if (next[thing] != NONE) {
      before[next[thing]] = before[thing];
    }
    week[thing] = NONE;
  }

  /** The week a thing is in; negative: none. */
  int weekOf(int thing) {
    return week[thing];
  }

  /** The things of a week into the given array; answers how many. */
  int copy(int ofWeek, int[] into) {
    int count = 0;
    for (int thing = first[ofWeek]; thing != NONE; thing = next[thing]) {
      into[count++] = thing;
    }
    return count;
  }

  /** Any thing of a week; negative: it is empty. */
  int any(int ofWeek) {
    return first[ofWeek];
  }
}
