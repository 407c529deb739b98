package club.ascham.planning;

import club.ascham.plan.Kind;
import club.ascham.plan.Worth;
import club.ascham.rules.PlanRules;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Makes the list that an insurer asks for: what was paid, what is left of it, what a new one costs.
 */
@ApplicationScoped
class Insurance {
  private static final Worth NOTHING = new Worth(0, 0, 0);

  private final FleetToPlan fleet;

  Insurance(FleetToPlan fleet) {
    this.fleet = fleet;
  }

  InsuranceList list(LocalDate today, Amounts amounts) {
    FleetToPlan.Read read = fleet.read(today);
    List<InsuranceList.Group> groups = new ArrayList<>();
    Worth all = NOTHING;
    int count = 0;
    for (Map.Entry<Kind, FleetToPlan.Priced> priced : read.prices().entrySet()) {
      List<InsuranceList.Line> lines = new ArrayList<>();
      Worth sum = NOTHING;
      for (FleetToPlan.ItemRow item : read.items()) {
        if (item.kind() == priced.getKey()) {
          Worth worth = worth(item, priced.getValue(), today);
          lines.add(line(item, worth, amounts));
          sum = sum.plus(worth);
        }
      }
      if (!lines.isEmpty()) {
        groups.add(group(priced.getValue(), lines, sum, amounts));
        all = all.plus(sum);
        count += lines.size();
      }
    }
    return new InsuranceList(groups, total(count, all, amounts));
  }

  /** New it costs what the club's rule says, else what was paid for it, else for its kind. */
  private static Worth worth(FleetToPlan.ItemRow item, FleetToPlan.Priced price, LocalDate today) {
    LocalDate bought = item.boughtOn() == null ? item.since() : item.boughtOn();
    return Worth.of(
        item.priceMinor(),
        price.terms().priceMinor() == null && item.priceMinor() != null
            ? item.priceMinor()
            : price.minor(),
        ChronoUnit.DAYS.between(bought, today),
        price.terms().years());
  }

  private static InsuranceList.Line line(FleetToPlan.ItemRow item, Worth worth, Amounts amounts) {
    return new InsuranceList.Line(
        item.code().display(),
        item.name(),
        item.boughtOn() == null ? item.since() : item.boughtOn(),
        item.priceMinor() == null ? null : amounts.exact(item.priceMinor()),
        amounts.exact(worth.writtenDown()),
        amounts.exact(worth.replacement()));
  }

  private static InsuranceList.Group group(
      FleetToPlan.Priced price, List<InsuranceList.Line> lines, Worth sum, Amounts amounts) {
    return new InsuranceList.Group(
        PlanRules.kindSaid(price.terms().kind()),
        price.terms().years(),
        amounts.exact(price.minor()),
        price.whence(),
        total(lines.size(), sum, amounts),
        lines);
  }

  private static InsuranceList.Total total(int count, Worth sum, Amounts amounts) {
    return new InsuranceList.Total(
        count,
        amounts.exact(sum.cost()),
        amounts.exact(sum.writtenDown()),
        amounts.exact(sum.replacement()));
  }
}
