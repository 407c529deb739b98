package club.ascham.planning;

import club.ascham.Settings;
import club.ascham.form.Words;
import club.ascham.plan.AboutTo;
import club.ascham.rules.Club;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The plan as things stand, in brief, for pages about more than the plan. */
@ApplicationScoped
public class PlanBrief {
  static final int DAYS = 90;
  private static final int FEW = 5;

  /** Under this a failure is nothing to speak of. */
  private static final double WORTH_A_LINE = 0.05;

  private final PlanDesk desk;
  private final Insurance insurance;
  private final Club club;
  private final Amounts amounts;

  PlanBrief(PlanDesk desk, Insurance insurance, Club club, Settings settings) {
    this.desk = desk;
    this.insurance = insurance;
    this.club = club;
    this.amounts = new Amounts(Currency.getInstance(settings.currency()));
  }

  /**
   * In brief.
   *
   * @param plan null: still being reckoned
   * @param aboutTo the first few
   */
  public record Brief(PlanView plan, List<Soon> aboutTo) {}

  /**
   * A part that may have to be replaced soon.
   *
   * @param dueOn null: not within the days that are looked at
   * @param why in few words
   * @param failing in per cent
   */
  public record Soon(
      String code,
      String name,
      String kind,
      LocalDate dueOn,
      String why,
      String failing,
      long ageDays,
      String basis) {
    public String href() {
      return "/items/" + code;
    }

    /** {@code 2 years}, {@code 90 days}. */
    public String age() {
      return ageDays < 730 ? ageDays + " days" : Amounts.number(ageDays / 365.25) + " years";
    }
  }

  /** As far as it is reckoned after so long. */
  public Brief within(Duration patience) {
    PlanRun run = desk.ask(WhatIf.NOTHING);
    Optional<PlanView> plan =
        run.within(patience).map(done -> new PlanView(done, run.read(), amounts, Map.of()));
    return new Brief(plan.orElse(null), aboutTo(run).stream().limit(FEW).toList());
  }

  /** Every part that is due, or of which one in twenty fails, in the coming months. */
  List<Soon> aboutTo() {
    return aboutTo(desk.ask(WhatIf.NOTHING));
  }

  private List<Soon> aboutTo(PlanRun run) {
    FleetToPlan.Read read = run.read();
    return AboutTo.within(
            DAYS, read.fleet(), WhatIf.NOTHING.assumed(read.basis(), club.rules().shotsASession()))
        .stream()
        .filter(about -> about.dueOn() != null || about.failing() >= WORTH_A_LINE)
        .map(PlanBrief::soon)
        .toList();
  }

  private static Soon soon(AboutTo about) {
    return new Soon(
        about.part().code(),
        about.part().name(),
        about.part().alike(),
        about.dueOn(),
        why(about),
        Amounts.number(100 * about.failing()) + " %",
        Math.round(about.part().ageDays()),
        about.part().life() == null ? "" : about.part().life().basis());
  }

  /** {@code due by shots, every 4000}; {@code 12 % fail in 90 days at its age}. */
  private static String why(AboutTo about) {
    return about.by() == null
        ? "not due, but %s %% fail in %d days at its age"
            .formatted(Amounts.number(100 * about.failing()), DAYS)
        : "due by %s, every %d".formatted(Words.said(about.by().by()), about.by().every());
  }

  /** What everything is worth, and would cost new. */
  public InsuranceList.Total worth(LocalDate today) {
    return insurance.list(today, amounts).total();
  }

  public String money(long minor) {
    return amounts.exact(minor);
  }
}
