package club.ascham.planning;

import club.ascham.concern.Concern;
import club.ascham.plan.EnoughHours;
import club.ascham.plan.Kind;
import club.ascham.plan.Plan;
import club.ascham.plan.Spread;
import club.ascham.rules.PlanRules;
import club.ascham.upkeep.Work;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A plan in words and numbers, ready to be shown. */
public final class PlanView {
  private static final int WEEKS_SHOWN = 8;
  private static final int UNFITTING_SHOWN = 10;

  /** From this average on an order is worth a line of its own. */
  private static final double WORTH_A_LINE = 0.5;

  private final Plan plan;
  private final FleetToPlan.Read read;
  private final Amounts amounts;
  private final Map<String, Concern> kept;

  /**
   * @param kept what keeps a thing in today, by its code
   */
  PlanView(Plan plan, FleetToPlan.Read read, Amounts amounts, Map<String, Concern> kept) {
    this.plan = plan;
    this.read = read;
    this.amounts = amounts;
    this.kept = kept;
  }

  /** A number to draw, and as it is said. */
  public record Cell(double value, String said) {}

  /** Twelve months' money for parts, and what failures cost beside them. */
  public record YearLine(
      LocalDate from,
      String cost,
      String half,
      String nine,
      String besideParts,
      String besideNine,
      String parts,
      String hours) {}

  /** A month's money, and with all before it at 5, 25, 50, 75 and 95 %. */
  public record MoneyLine(LocalDate from, String middle, String upTo, List<Cell> soFar) {}

  /** A month's replacements. */
  public record PartsLine(
      LocalDate from, Cell planned, Cell unplanned, String range, List<String> byKind) {}

  /** A week; hours and rigs out at 5, 25, 50, 75 and 95 %. */
  public record WeekLine(
      LocalDate from, List<Cell> hours, Cell ifNothingFails, Cell late, List<Cell> out) {}

  /** What to order. */
  public record OrderLine(LocalDate month, String what, String count, long upTo) {}

  /** A week's work by kind, with the codes. */
  public record WorkLine(LocalDate week, String hours, List<WorkOf> works) {}

  /** One kind of work in a week. */
  public record WorkOf(String said, List<Job> jobs) {}

  /**
   * One piece of work.
   *
   * @param kept what keeps the thing in today; null: nothing
   */
  public record Job(
      String code, String name, String work, LocalDate due, String href, Concern kept) {}

  /** The price of a kind, and what one that fails costs in all. */
  public record PriceLine(
      String said, String price, String whence, String failed, String life, int leadDays) {}

  public List<YearLine> years() {
    return plan.years().stream()
        .map(
            year ->
                new YearLine(
                    year.from(),
                    amounts.whole(year.cost().median()),
                    range(year.cost().low50(), year.cost().high50()),
                    range(year.cost().low90(), year.cost().high90()),
                    amounts.whole(year.besideParts().median()),
                    range(year.besideParts().low90(), year.besideParts().high90()),
                    year.replaced().low90() + " to " + year.replaced().high90(),
                    Amounts.hours(year.minutes().median())))
        .toList();
  }

  private String range(long low, long high) {
    return amounts.whole(low) + " to " + amounts.whole(high);
  }

  public List<MoneyLine> money() {
    return plan.months().stream()
        .map(
            month ->
                new MoneyLine(
                    month.from(),
                    amounts.whole(month.cost().median()),
                    amounts.whole(month.cost().high90()),
                    five(month.costSoFar())
                        .map(minor -> new Cell(amounts.units(minor), amounts.whole(minor)))
                        .toList()))
        .toList();
  }

  private static Stream<Long> five(Spread band) {
    return Stream.of(band.low90(), band.low50(), band.median(), band.high50(), band.high90());
  }

  /** The kinds of which any is replaced, as columns. */
  private List<Kind> kinds() {
    return Stream.of(Kind.values())
        .filter(
            kind ->
                plan.months().stream()
                    .anyMatch(m -> m.planned().get(kind) + m.unplanned().get(kind) > 0))
        .toList();
  }

  public List<String> kindsSaid() {
    return kinds().stream().map(PlanRules::kindSaid).toList();
  }

  public List<PartsLine> parts() {
    List<Kind> kinds = kinds();
    return plan.months().stream()
        .map(
            month ->
                new PartsLine(
                    month.from(),
                    cell(sum(month.planned())),
                    cell(sum(month.unplanned())),
                    month.replaced().low90() + " to " + month.replaced().high90(),
                    kinds.stream()
                        .map(k -> Amounts.number(month.planned().get(k) + month.unplanned().get(k)))
                        .toList()))
        .toList();
  }

  private static double sum(Map<Kind, Double> byKind) {
    return byKind.values().stream().mapToDouble(Double::doubleValue).sum();
  }

  private static Cell cell(double value) {
    return new Cell(value, Amounts.number(value));
  }

  private static Cell hours(double minutes) {
    return cell(minutes / 60);
  }

  public List<WeekLine> weeks() {
    return plan.weeks().stream()
        .map(
            week ->
                new WeekLine(
                    week.from(),
                    five(week.minutes()).map(PlanView::hours).toList(),
                    hours(week.ifNothingFails()),
                    hours(week.lateSafety().mean() + week.lateOther().mean()),
                    five(week.out()).map(PlanView::cell).toList()))
        .toList();
  }

  public double hoursAWeek() {
    return plan.assumed().hoursAWeek();
  }

  public String hoursAWeekSaid() {
    return Amounts.hoursAWeek(plan.assumed().hoursAWeek());
  }

  /** What is likely to be ordered in the coming year; the rest stands in {@link #byChance()}. */
  public List<OrderLine> orders() {
    return thisYear()
        .filter(purchase -> purchase.count().mean() >= WORTH_A_LINE)
        .map(
            purchase ->
                new OrderLine(
                    purchase.month(),
                    purchase.alike(),
                    Amounts.number(purchase.count().mean()),
                    purchase.count().high90()))
        .toList();
  }

  /** What chance will ask for in the coming year beside them: {@code 12.3 × string}. */
  public String byChance() {
    Map<Kind, Double> means = new EnumMap<>(Kind.class);
    thisYear()
        .filter(purchase -> purchase.count().mean() < WORTH_A_LINE)
        .forEach(purchase -> means.merge(purchase.kind(), purchase.count().mean(), Double::sum));
    return means.isEmpty()
        ? "nothing"
        : means.entrySet().stream()
            .map(e -> Amounts.number(e.getValue()) + " × " + PlanRules.kindSaid(e.getKey()))
            .collect(Collectors.joining(", "));
  }

  private Stream<Plan.Purchase> thisYear() {
    LocalDate next = plan.years().get(1).from();
    return plan.purchases().stream().filter(purchase -> purchase.month().isBefore(next));
  }

  /** What is best done in each of the coming weeks. */
  public List<WorkLine> work() {
    Map<LocalDate, List<Plan.Job>> byWeek =
        plan.jobs().stream()
            .filter(Plan.Job::fits)
            .collect(Collectors.groupingBy(Plan.Job::week, TreeMap::new, Collectors.toList()));
    List<WorkLine> lines = new ArrayList<>();
    Map<LocalDate, Integer> minutes =
        plan.weeks().stream().collect(Collectors.toMap(Plan.Week::from, Plan.Week::ifNothingFails));
    byWeek.entrySet().stream()
        .limit(WEEKS_SHOWN)
        .forEach(
            week ->
                lines.add(
                    new WorkLine(
                        week.getKey(),
                        Amounts.hours(minutes.get(week.getKey())),
                        works(week.getValue()))));
    return lines;
  }

  private List<WorkOf> works(List<Plan.Job> jobs) {
    return jobs.stream()
        .collect(Collectors.groupingBy(Plan.Job::work, TreeMap::new, Collectors.toList()))
        .entrySet()
        .stream()
        .map(
            work ->
                new WorkOf(said(work.getKey()), work.getValue().stream().map(this::job).toList()))
        .toList();
  }

  private Job job(Plan.Job job) {
    return new Job(
        job.code(),
        job.name(),
        said(job.work()),
        job.due(),
        "/upkeep/" + job.code() + "/" + job.work(),
        kept.get(job.code()));
  }

  private static String said(String word) {
    return Stream.of(Work.values())
        .filter(work -> work.word().equals(word))
        .map(Work::said)
        .findFirst()
        .orElse(word);
  }

  public List<Job> unfitting() {
    return plan.unfitting().stream().limit(UNFITTING_SHOWN).map(this::job).toList();
  }

  public int unfittingCount() {
    return plan.unfitting().size();
  }

  public long unfittingForSafety() {
    return plan.unfitting().stream().filter(Plan.Job::safety).count();
  }

  public long unfittingOther() {
    return unfittingCount() - unfittingForSafety();
  }

  /** Hours a week that would do if nothing fails; null: none that people have. */
  public Double enoughHours() {
    return plan.enough().hoursAWeek();
  }

  public String enoughHoursSaid() {
    return Amounts.hoursAWeek(enoughHours());
  }

  /** What was due before today, as hours of work. */
  public String lateHours() {
    return Amounts.hours(plan.enough().late().stream().mapToLong(Plan.Job::minutes).sum());
  }

  /** Hours a week that do once that is done; null: none that people have. */
  public String caughtUpSaid() {
    Double hours = plan.enough().onceCaughtUp();
    return hours == null ? null : Amounts.hoursAWeek(hours);
  }

  public int mostHours() {
    return EnoughHours.MOST_HOURS;
  }

  /** What was due before today: no hours make it be in time. */
  public List<Job> late() {
    return plan.enough().late().stream().map(this::job).toList();
  }

  public int moreUnfitting() {
    return Math.max(0, unfittingCount() - UNFITTING_SHOWN);
  }

  public String mostOut() {
    Spread out = plan.mostOut();
    return out.low90() == out.high90()
        ? String.valueOf(out.median())
        : out.low90() + " to " + out.high90();
  }

  public int replications() {
    return plan.assumed().replications();
  }

  public long seed() {
    return plan.assumed().seed();
  }

  public List<PriceLine> prices() {
    return read.prices().values().stream()
        .map(
            price ->
                new PriceLine(
                    PlanRules.kindSaid(price.terms().kind()),
                    amounts.exact(price.minor()),
                    price.whence(),
                    Amounts.number(price.terms().failureTimes()) + " times",
                    lifeOf(price.terms().kind()),
                    price.terms().leadDays()))
        .toList();
  }

  /** On what the life of a kind rests; several where its parts differ. */
  private String lifeOf(Kind kind) {
    String bases =
        read.fleet().parts().stream()
            .filter(part -> part.kind() == kind && part.life() != null)
            .map(part -> part.life().basis())
            .distinct()
            .sorted()
            .collect(Collectors.joining("; "));
    return bases.isEmpty() ? "does not fail of itself" : bases;
  }

  public int usageSpreadPercent() {
    return read.basis().usageSpreadPercent();
  }

  public int backAfterDays() {
    return FleetToPlan.BACK_AFTER_DAYS;
  }

  public int rigs() {
    return read.fleet().rigs().size();
  }

  public int partsInUse() {
    return read.fleet().parts().size();
  }

  public String currency() {
    return amounts.code();
  }
}
