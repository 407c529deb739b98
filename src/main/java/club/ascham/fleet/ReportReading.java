package club.ascham.fleet;

import club.ascham.planning.PlanBrief;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import club.ascham.upkeep.ClubsDays;
import club.ascham.upkeep.Work;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** Reads what happened in twelve months: one statement for each part of the report. */
@ApplicationScoped
class ReportReading {
  private static final int MONTHS = 12;

  private final Rows rows;
  private final PlanBrief brief;
  private final ClubTime time;

  ReportReading(Rows rows, PlanBrief brief, ClubTime time) {
    this.rows = rows;
    this.brief = brief;
    this.time = time;
  }

  private record Lent(int kits, int sessions) {}

  private record Withdrawn(int all, int released) {}

  private record Checks(String month, int fit, int unfit) {}

  private record Done(Work work, int done, int failed) {}

  private record Bought(String kind, int count, Long paid) {}

  private record Left(String why, int count) {}

  AnnualReport lastTwelveMonths(LocalDate today) {
    LocalDate from = today.minusMonths(MONTHS);
    Instant begin = time.beginOf(from);
    Lent lent =
        rows.one(
                Lent.class,
                """
                SELECT count(*) FILTER (WHERE kind = 'KIT') AS kits, count(*) FILTER (WHERE kind = 'SESSION') AS sessions
                  FROM loan WHERE issued_at >= ?1""",
                begin)
            .orElseThrow();
    Withdrawn withdrawn =
        rows.one(
                Withdrawn.class,
                "SELECT count(*) AS \"all\", count(released_at) AS released FROM withdrawal WHERE happened_at >= ?1",
                begin)
            .orElseThrow();
    return new AnnualReport(
        from,
        today,
        lent.kits(),
        lent.sessions(),
        rows.number(
            """
            SELECT coalesce(sum(l.shots), 0) FROM loan_line l JOIN item i ON i.id = l.item_id
             WHERE i.kind IN ('RISER', 'BOW') AND l.back_at >= ?1""",
            begin),
        condition(today),
        work(begin),
        come(from),
        gone(from),
        withdrawn.all(),
        withdrawn.released());
  }

  /** Calendar months, those without a check too. */
  List<AnnualReport.Month> condition(LocalDate today) {
    Map<LocalDate, AnnualReport.Month> months = new TreeMap<>();
    LocalDate first = today.withDayOfMonth(1).minusMonths(2L * MONTHS - 1);
    for (LocalDate month = first; !month.isAfter(today); month = month.plusMonths(1)) {
      months.put(month, new AnnualReport.Month(month, 0, 0));
    }
    rows.list(
            Checks.class,
            """
            SELECT substr(%s, 1, 7) AS month, count(*) FILTER (WHERE verdict = 'FIT') AS fit,
                   count(*) FILTER (WHERE verdict <> 'FIT') AS unfit
              FROM bow_check c
             WHERE happened_at >= ?1 AND NOT EXISTS (SELECT 1 FROM bow_check x WHERE x.corrects_id = c.id)
               AND c.id NOT IN (SELECT check_id FROM undone_look)
             GROUP BY 1"""
                .formatted(ClubsDays.dayOf("happened_at")),
            time.beginOf(first))
        .forEach(
            checks ->
                months.computeIfPresent(
                    LocalDate.parse(checks.month() + "-01"),
                    (month, none) -> new AnnualReport.Month(month, checks.fit(), checks.unfit())));
    return List.copyOf(months.values());
  }

  private List<AnnualReport.WorkDone> work(Instant begin) {
    return rows
        .list(
            Done.class,
            """
            SELECT work, count(*) AS done, count(*) FILTER (WHERE result = 'FAILED') AS failed FROM upkeep_record
             WHERE happened_at >= ?1 GROUP BY work ORDER BY 2 DESC""",
            begin)
        .stream()
        .map(done -> new AnnualReport.WorkDone(done.work().said(), done.done(), done.failed()))
        .toList();
  }

  private List<AnnualReport.Come> come(LocalDate from) {
    return rows
        .list(
            Bought.class,
            """
            SELECT kind, count(*) AS count, sum(price_minor) AS paid FROM item WHERE bought_on >= ?1
             GROUP BY kind ORDER BY 2 DESC""",
            from)
        .stream()
        .map(
            bought ->
                new AnnualReport.Come(
                    Naming.word(bought.kind()),
                    bought.count(),
                    bought.paid() == null ? null : brief.money(bought.paid())))
        .toList();
  }

  private List<AnnualReport.Gone> gone(LocalDate from) {
    return rows
        .list(
            Left.class,
            "SELECT retired_why AS why, count(*) AS count FROM item WHERE retired_on >= ?1 GROUP BY 1 ORDER BY 2"
                + " DESC",
            from)
        .stream()
        .map(left -> new AnnualReport.Gone(left.why().toLowerCase(Locale.ROOT), left.count()))
        .toList();
  }
}
