package club.ascham.plan;

import java.util.Arrays;

/** What one course of the months held, by week and by month; emptied for the next. */
final class Happened {
  final int[] minutes;
  final int[] lateSafetyMinutes;
  final int[] lateOtherMinutes;
  final int[] out;
  final int[][] planned = new int[Kind.values().length][Calendar.MONTHS];
  final int[][] unplanned = new int[Kind.values().length][Calendar.MONTHS];
  final int[][] bought;
  final long[] cost = new long[Calendar.MONTHS];
  final long[] beside = new long[Calendar.MONTHS];

  Happened(int weeks, int groups) {
    minutes = new int[weeks];
    lateSafetyMinutes = new int[weeks];
    lateOtherMinutes = new int[weeks];
    out = new int[weeks];
    bought = new int[groups][Calendar.MONTHS];
  }

  void clear() {
    Arrays.fill(minutes, 0);
    Arrays.fill(lateSafetyMinutes, 0);
    Arrays.fill(lateOtherMinutes, 0);
    Arrays.fill(out, 0);
    Arrays.fill(cost, 0);
    Arrays.fill(beside, 0);
    for (int[][] each : new int[][][] {planned, unplanned, bought}) {
      for (int[] row : each) {
        Arrays.fill(row, 0);
      }
    }
  }

  void replaced(int kind, int month, boolean asPlanned) {
    (asPlanned ? planned : unplanned)[kind][month]++;
  }

  void bought(int group, int month, long price) {
    bought[group][month]++;
    cost[month] += price;
  }

  /** A failure costs this beside its part, which may come out of the cupboard. */
  void failed(int month, long besidePart) {
    beside[month] += besidePart;
  }

  void late(int week, int byMinutes, boolean safety) {
    (safety ? lateSafetyMinutes : lateOtherMinutes)[week] += byMinutes;
  }
}
