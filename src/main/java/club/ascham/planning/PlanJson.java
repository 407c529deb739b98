package club.ascham.planning;

import club.ascham.form.Words;
import club.ascham.plan.Kind;
import club.ascham.plan.Plan;
import club.ascham.plan.Spread;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A plan in JSON.
 *
 * @param jobsThatDoNotFit that more hours would get done in time
 * @param hoursThatDo with so many hours a week they are, if nothing fails; null: no hours that
 *     people have
 * @param hoursThatDoOnceCaughtUp the same if what is late already had been done by today
 * @param lateWhateverTheHours what was due before today
 */
record PlanJson(
    String currency,
    long seed,
    int replications,
    double hoursAWeek,
    List<Plan.Year> years,
    List<MonthJson> months,
    List<Plan.Week> weeks,
    List<PurchaseJson> purchases,
    List<Plan.Job> jobs,
    int jobsThatDoNotFit,
    Double hoursThatDo,
    Double hoursThatDoOnceCaughtUp,
    List<Plan.Job> lateWhateverTheHours,
    Spread mostRigsOut) {

  /** A month. */
  record MonthJson(
      LocalDate from,
      Map<String, Double> planned,
      Map<String, Double> unplanned,
      Spread replaced,
      Spread cost,
      Spread costSoFar) {}

  /** What is ordered in a month. */
  record PurchaseJson(LocalDate month, String kind, String alike, Spread count) {}

  static PlanJson of(Plan plan, String currency) {
    return new PlanJson(
        currency,
        plan.assumed().seed(),
        plan.assumed().replications(),
        plan.assumed().hoursAWeek(),
        plan.years(),
        plan.months().stream()
            .map(
                m ->
                    new MonthJson(
                        m.from(),
                        byWord(m.planned()),
                        byWord(m.unplanned()),
                        m.replaced(),
                        m.cost(),
                        m.costSoFar()))
            .toList(),
        plan.weeks(),
        plan.purchases().stream()
            .map(p -> new PurchaseJson(p.month(), Words.of(p.kind()), p.alike(), p.count()))
            .toList(),
        plan.jobs(),
        plan.unfitting().size(),
        plan.enough().hoursAWeek(),
        plan.enough().onceCaughtUp(),
        plan.enough().late(),
        plan.mostOut());
  }

  private static Map<String, Double> byWord(Map<Kind, Double> byKind) {
    Map<String, Double> byWord = new TreeMap<>();
    byKind.forEach((kind, value) -> byWord.put(Words.of(kind), value));
    return byWord;
  }

  static final String EXAMPLE =
      """
      {"currency": "GBP", "seed": 1, "replications": 1000, "hoursAWeek": 3.0,
       "years": [{"from": "2026-11-25",
         "cost": {"low90": 22000, "low50": 25000, "median": 28000, "high50": 31000, "high90": 36000, "mean": 28100.0},
         "besideParts": {"low90": 39000, "low50": 49000, "median": 56000, "high50": 64000, "high90": 76000, "mean": 56700.0},
         "replaced": {"low90": 21, "low50": 24, "median": 26, "high50": 28, "high90": 32, "mean": 26.1},
         "minutes": {"low90": 3300, "low50": 3400, "median": 3450, "high50": 3500, "high90": 3600, "mean": 3450.0}}],
       "months": [], "weeks": [], "purchases": [],
       "jobs": [{"week": "2026-12-02", "code": "R-0101-E", "name": "Alderfen Fenlight 25", "work": "bolt-inspection",
         "due": "2026-12-05", "minutes": 15, "safety": true}],
       "jobsThatDoNotFit": 0, "hoursThatDo": 2.75, "hoursThatDoOnceCaughtUp": 2.5, "lateWhateverTheHours": [],
       "mostRigsOut": {"low90": 1, "low50": 2, "median": 2, "high50": 3, "high90": 4, "mean": 2.3}}
      """;
}
