package club.ascham.plan;

import java.util.stream.Stream;

/** Everything that is counted over the replications: as much memory for a thousand as for ten. */
final class Tallies {
  final Tally[] minutes;
  final Tally[] lateSafety;
  final Tally[] lateOther;
  final Tally[] out;
  final Tally mostOut = new Tally();
  final Tally[][] planned = tallies(Kind.values().length, Calendar.MONTHS);
  final Tally[][] unplanned = tallies(Kind.values().length, Calendar.MONTHS);
  final Tally[] replaced = tallies(Calendar.MONTHS);
  final Tally[][] bought;
  final Tally[] cost = tallies(Calendar.MONTHS);
  final Tally[] costSoFar = tallies(Calendar.MONTHS);
  final Tally[] costOfYear = tallies(Calendar.MONTHS / Calendar.MONTHS_A_YEAR);
  final Tally[] besideOfYear = tallies(Calendar.MONTHS / Calendar.MONTHS_A_YEAR);
  final Tally[] minutesOfYear = tallies(Calendar.MONTHS / Calendar.MONTHS_A_YEAR);
  final Tally[] replacedOfYear = tallies(Calendar.MONTHS / Calendar.MONTHS_A_YEAR);
  final Tally lateSafetyInAll = new Tally();
  private final Numbers of;

  Tallies(Numbers of) {
    this.of = of;
    int weeks = of.calendar.weeks();
    minutes = tallies(weeks);
    lateSafety = tallies(weeks);
    lateOther = tallies(weeks);
    out = tallies(weeks);
    bought = tallies(of.alike.size(), Calendar.MONTHS);
  }

  private static Tally[] tallies(int count) {
    return Stream.generate(Tally::new).limit(count).toArray(Tally[]::new);
  }

  private static Tally[][] tallies(int rows, int count) {
    return Stream.generate(() -> tallies(count)).limit(rows).toArray(Tally[][]::new);
  }

  void add(Happened one) {
    int most = 0;
    long late = 0;
    long[] worked = new long[minutesOfYear.length];
    for (int w = 0; w < minutes.length; w++) {
      minutes[w].add(one.minutes[w]);
      lateSafety[w].add(one.lateSafetyMinutes[w]);
      lateOther[w].add(one.lateOtherMinutes[w]);
      out[w].add(one.out[w]);
      most = Math.max(most, one.out[w]);
      late += one.lateSafetyMinutes[w];
      worked[of.calendar.monthOf(w * Calendar.DAYS_A_WEEK) / Calendar.MONTHS_A_YEAR] +=
          one.minutes[w];
    }
    mostOut.add(most);
    lateSafetyInAll.add(late);
    long soFar = 0;
    long[] costs = new long[costOfYear.length];
    long[] beside = new long[besideOfYear.length];
    long[] parts = new long[replacedOfYear.length];
    for (int m = 0; m < Calendar.MONTHS; m++) {
      int year = m / Calendar.MONTHS_A_YEAR;
      int here = 0;
      for (int k = 0; k < planned.length; k++) {
        planned[k][m].add(one.planned[k][m]);
        unplanned[k][m].add(one.unplanned[k][m]);
        here += one.planned[k][m] + one.unplanned[k][m];
      }
      replaced[m].add(here);
      parts[year] += here;
      for (int g = 0; g < bought.length; g++) {
        bought[g][m].add(one.bought[g][m]);
      }
      soFar += one.cost[m];
      cost[m].add(one.cost[m]);
      costSoFar[m].add(soFar);
      costs[year] += one.cost[m];
      beside[year] += one.beside[m];
    }
    for (int y = 0; y < costs.length; y++) {
      costOfYear[y].add(costs[y]);
      besideOfYear[y].add(beside[y]);
      minutesOfYear[y].add(worked[y]);
      replacedOfYear[y].add(parts[y]);
    }
  }

  void add(Tallies other) {
    add(minutes, other.minutes);
    add(lateSafety, other.lateSafety);
    add(lateOther, other.lateOther);
    add(out, other.out);
    mostOut.add(other.mostOut);
    lateSafetyInAll.add(other.lateSafetyInAll);
    for (int k = 0; k < planned.length; k++) {
      add(planned[k], other.planned[k]);
      add(unplanned[k], other.unplanned[k]);
    }
    add(replaced, other.replaced);
    for (int g = 0; g < bought.length; g++) {
      add(bought[g], other.bought[g]);
    }
    add(cost, other.cost);
    add(costSoFar, other.costSoFar);
    add(costOfYear, other.costOfYear);
    add(besideOfYear, other.besideOfYear);
    add(minutesOfYear, other.minutesOfYear);
    add(replacedOfYear, other.replacedOfYear);
  }

  private static void add(Tally[] these, Tally[] others) {
    for (int i = 0; i < these.length; i++) {
      these[i].add(others[i]);
    }
  }
}
