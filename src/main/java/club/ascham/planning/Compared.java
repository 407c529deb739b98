package club.ascham.planning;

import club.ascham.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToLongFunction;

/** Two plans side by side. */
public record Compared(String what, String now, String then, String difference) {

  static List<Compared> of(Plan now, Plan then, Amounts amounts) {
    List<Compared> lines = new ArrayList<>();
    for (int y = 0; y < now.years().size(); y++) {
      Plan.Year a = now.years().get(y);
      Plan.Year b = then.years().get(y);
      String year = y == 0 ? "in the coming year" : "in the year after";
      lines.add(
          new Compared(
              "Money for parts " + year,
              amounts.whole(a.cost().median()),
              amounts.whole(b.cost().median()),
              amounts.change(b.cost().median() - a.cost().median())));
      lines.add(
          new Compared(
              "Money for parts %s, at most in nine of ten".formatted(year),
              amounts.whole(a.cost().high90()),
              amounts.whole(b.cost().high90()),
              amounts.change(b.cost().high90() - a.cost().high90())));
      lines.add(
          new Compared(
              "What failures cost beside, " + year,
              amounts.whole(a.besideParts().median()),
              amounts.whole(b.besideParts().median()),
              amounts.change(b.besideParts().median() - a.besideParts().median())));
      lines.add(count("Parts replaced " + year, a.replaced().median(), b.replaced().median()));
      lines.add(
          new Compared(
              "Hours of work " + year,
              Amounts.hours(a.minutes().median()),
              Amounts.hours(b.minutes().median()),
              change(b.minutes().median() - a.minutes().median(), 60, " h")));
    }
    lines.add(count("Pieces of work that do not fit", unfitting(now), unfitting(then)));
    lines.add(count("Weeks fuller than their hours", over(now), over(then)));
    lines.add(
        count(
            "Rigs out of use in the worst week", now.mostOut().median(), then.mostOut().median()));
    return List.copyOf(lines);
  }

  private static long unfitting(Plan plan) {
    return plan.unfitting().size();
  }

  private static long over(Plan plan) {
    ToLongFunction<Plan.Week> late = week -> week.lateSafety().median() + week.lateOther().median();
    return plan.weeks().stream().filter(week -> late.applyAsLong(week) > 0).count();
  }

  private static Compared count(String what, long now, long then) {
    return new Compared(what, String.valueOf(now), String.valueOf(then), change(then - now, 1, ""));
  }

  private static String change(long difference, double unit, String word) {
    String said = Amounts.number(Math.abs(difference) / unit);
    return said.equals("0") ? "no change" : (difference > 0 ? "+" : "−") + said + word;
  }
}
