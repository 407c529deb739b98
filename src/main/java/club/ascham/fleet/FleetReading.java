package club.ascham.fleet;

import club.ascham.askback.AskBack;
import club.ascham.askback.Asked;
import club.ascham.bow.BowLength;
import club.ascham.bow.Hand;
import club.ascham.bow.LimbSize;
import club.ascham.check.Verdicts;
import club.ascham.concern.Against;
import club.ascham.concern.Concerns;
import club.ascham.concern.Matter;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.standing.Standing;
import club.ascham.standing.State;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import club.ascham.units.ItemCode;
import club.ascham.verdict.Given;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Reads what the fleet page and the first page count and list: one statement for each list. */
@ApplicationScoped
public class FleetReading {
  private static final int DAYS_TO_THE_COURSE = 7;
  private static final int MONTHS_OF_STRINGS = 3;
  private static final int MONTHS_OF_TROUBLE = 12;

  private static final String DUE_WORK =
      """
      SELECT i.code, i.kind, i.maker, i.model, w.work, w.due_on, w.because, s.for_bow_in,
             EXISTS (SELECT 1 FROM loan_line l WHERE l.item_id = i.id AND l.back_at IS NULL) AS on_loan,
             w.task_id IS NOT NULL AS asked
        FROM work_due w
        JOIN item i ON i.id = w.item_id
        LEFT JOIN bowstring s ON s.id = i.id
      """;

  private final Rows rows;
  private final ClubTime time;
  private final AskBack askBack;
  private final Concerns concerns;
  private final Verdicts verdicts;

  FleetReading(Rows rows, ClubTime time, AskBack askBack, Concerns concerns, Verdicts verdicts) {
    this.rows = rows;
    this.time = time;
    this.askBack = askBack;
    this.concerns = concerns;
    this.verdicts = verdicts;
  }

  private record RigRow(
      RigId id,
      ItemCode code,
      String maker,
      String model,
      Hand hand,
      boolean hasBody,
      Integer riserIn,
      LimbSize size,
      Integer makersIn,
      Double markedLb,
      State state,
      LoanId loan,
      LocalDate dueOn,
      boolean needsCheck,
      Instant since,
      String lastVerdict) {

    FleetRig rig(Against now, Against then, LocalDate today, LocalDate courseDay) {
      Fielding.Reason course = Fielding.of(dueOn, then, today, courseDay);
      return new FleetRig(
          id,
          code,
          Naming.of(maker, model, null),
          hand,
          hasBody,
          bowLengthIn(),
          markedLb,
          state,
          loan,
          dueOn,
          // Fit by a check that knew nothing of what stands against it now is not fit any more.
          Waiting.of(
              state,
              !now.has(Matter.NOT_SET_UP),
              needsCheck,
              now.blocks() || now.has(Matter.REPORTED) ? null : lastVerdict),
          since,
          course.fielding(),
          course.by(),
          now);
    }

    private Integer bowLengthIn() {
      if (riserIn == null) {
        return hasBody ? makersIn : null;
      }
      var length = BowLength.of(riserIn, size, makersIn);
      return length.isPresent() ? length.getAsInt() : null;
    }
  }

  /** Every assembled rig, by its code. */
  public List<FleetRig> rigs(LocalDate today) {
    LocalDate courseDay = courseDay(today);
    List<RigRow> found =
        rows.list(
            RigRow.class,
            """
            SELECT s.rig_id AS id, i.code, i.maker, i.model, coalesce(ri.hand, bo.hand) AS hand, s.body_id IS NOT NULL AS has_body,
                   ri.length_in AS riser_in, li.size, coalesce(li.bow_length_in, bo.bow_length_in) AS makers_in,
                   coalesce(li.marked_lb, bo.marked_lb) AS marked_lb, %s AS state, s.loan_id, l.due_on, s.needs_check,
                    nullif(s.last_event, '') AS since,
                   (SELECT c.verdict FROM bow_check c
                     WHERE c.rig_id = s.rig_id AND c.happened_at = s.last_event LIMIT 1) AS last_verdict
              FROM rig_standing s
              LEFT JOIN item i ON i.id = coalesce(s.body_id, s.limbs_id, s.string_id)
              LEFT JOIN riser ri ON ri.id = s.body_id
              LEFT JOIN bow bo ON bo.id = s.body_id
              LEFT JOIN limbs li ON li.id = s.limbs_id
              LEFT JOIN loan l ON l.id = s.loan_id
             ORDER BY i.code, s.rig_id\
            """
                .formatted(Standing.STATE_TODAY),
            today);
    List<RigId> ids = found.stream().map(RigRow::id).toList();
    Concerns.NowAndThen against = concerns.nowAndOn(ids, courseDay);
    return found.stream()
        .map(
            row ->
                row.rig(
                    against.now().get(row.id()), against.then().get(row.id()), today, courseDay))
        .toList();
  }

  /** Loans with something out that are due on or before a day, the latest late one first. */
  public List<OpenLoan> loansDueBy(LocalDate day) {
    return rows.list(
        OpenLoan.class,
        """
        SELECT l.id, l.kind = 'SESSION' AS session, coalesce(b.name, l.leader) AS who, b.contact, b.guardian, l.due_on, p.lines_out, p.bodies, p.kinds
          FROM (SELECT x.loan_id, count(*) AS lines_out, group_concat(DISTINCT i.kind) AS kinds,
                       group_concat(CASE WHEN i.kind IN ('RISER', 'BOW') THEN i.code END) AS bodies
                  FROM loan_line x JOIN item i ON i.id = x.item_id
                 WHERE x.back_at IS NULL GROUP BY x.loan_id) p
          JOIN loan l ON l.id = p.loan_id
          LEFT JOIN borrower b ON b.id = l.borrower_id
         WHERE l.due_on <= ?1
         ORDER BY l.due_on, l.id\
        """,
        day);
  }

  /** Inspections that block issue from today on: one that was asked for blocks at once. */
  List<DueNow> inspectionsOverdue(LocalDate today) {
    return rows.list(
        DueNow.class,
        DUE_WORK
            + " WHERE w.blocks = 1 AND (w.due_on < ?1 OR (w.task_id IS NOT NULL AND w.due_on <="
            + " ?1)) ORDER BY w.due_on, i.code, w.work",
        today);
  }

  /** Strings to be replaced by a day, those that are overdue among them. */
  List<DueNow> stringsDueBy(LocalDate day) {
    return rows.list(
        DueNow.class,
        DUE_WORK
            + " WHERE w.work = 'STRING_REPLACEMENT' AND w.due_on <= ?1 ORDER BY w.due_on, i.code",
        day);
  }

  /** Parts out of use, the newest first. */
  List<OpenWithdrawal> withdrawals() {
    return rows.list(
        OpenWithdrawal.class,
        """
        SELECT i.code, i.kind, i.maker, i.model, w.happened_at AS since, w.why,
               EXISTS (SELECT 1 FROM loan_line l WHERE l.item_id = i.id AND l.back_at IS NULL) AS on_loan
          FROM withdrawal w JOIN item i ON i.id = w.item_id
         WHERE w.released_at IS NULL
         ORDER BY w.happened_at DESC, w.id DESC\
        """);
  }

  /**
   * What went wrong with the rigs there are in the last twelve months, newest first: checks that
   * did not find them fit, and parts withdrawn without a check.
   *
   * @param rig null: every one
   */
  List<Trouble> troubles(LocalDate today, Long rig) {
    return rows.list(
        Trouble.class,
        """
        SELECT e.rig_id, i.code, i.maker, i.model, e.happened_at AS at, e.what, e.check_id, e.said
          FROM (SELECT c.rig_id, c.happened_at, iif(c.verdict = 'ADJUST', 'adjust first', 'withdraw') AS what,
                       c.id AS check_id, NULL AS said
                  FROM bow_check c
                 WHERE c.verdict <> 'FIT' AND NOT EXISTS (SELECT 1 FROM verdict_line v WHERE v.check_id = c.id AND v.step = 'RELEASE') AND c.happened_at >= ?1
                   AND NOT EXISTS (SELECT 1 FROM bow_check x WHERE x.corrects_id = c.id)
                UNION ALL
                SELECT f.rig_id, w.happened_at, 'withdrawn', NULL, w.why
                  FROM withdrawal w
                  JOIN fitting f ON f.item_id = w.item_id AND f.from_at <= w.happened_at
                                AND (f.until_at IS NULL OR f.until_at >= w.happened_at)
                 WHERE w.check_id IS NULL AND w.happened_at >= ?1) e
          JOIN rig r ON r.id = e.rig_id AND r.dissolved_at IS NULL
          LEFT JOIN fitting b ON b.rig_id = e.rig_id AND b.place = 'BODY' AND b.until_at IS NULL
          LEFT JOIN item i ON i.id = b.item_id
         WHERE ?2 IS NULL OR e.rig_id = ?2
         ORDER BY e.happened_at DESC, e.rig_id\
        """,
        time.beginOf(today.minusMonths(MONTHS_OF_TROUBLE)),
        rig);
  }

  /** With what the verdicts of checks said. */
  private List<Trouble> said(List<Trouble> troubles) {
    Map<Long, Given> given =
        verdicts.of(troubles.stream().map(Trouble::check).filter(Objects::nonNull).toList());
    return troubles.stream()
        .map(one -> one.check() == null ? one : one.saying(given.get(one.check()).text()))
        .toList();
  }

  List<OpenLoan> loansOverdue(LocalDate today) {
    return loansDueBy(today.minusDays(1));
  }

  List<DueNow> stringsDue(LocalDate today) {
    return stringsDueBy(today.plusMonths(MONTHS_OF_STRINGS));
  }

  /**
   * The rows that one figure counts.
   *
   * @param rig of which alone troubles are asked for; null: of all
   * @param names whether the reader may see who has what
   */
  FleetRows rows(FleetList list, RigChoice choice, Long rig, LocalDate today, boolean names) {
    return switch (list) {
      case RIGS -> FleetRows.rigs(list, choice, choice.of(rigs(today)));
      case LOANS_OVERDUE -> {
        List<OpenLoan> late = loansOverdue(today);
        yield FleetRows.loans(
            list, names ? late : late.stream().map(OpenLoan::withoutName).toList());
      }
      case INSPECTIONS_OVERDUE -> FleetRows.work(list, inspectionsOverdue(today));
      case STRINGS_DUE -> FleetRows.work(list, stringsDue(today));
      case WITHDRAWALS -> FleetRows.withdrawals(list, withdrawals());
      case ASK_BACK -> {
        List<Asked> asked = askBack.now();
        yield FleetRows.askBack(
            list, names ? asked : asked.stream().map(Asked::withoutNames).toList());
      }
      case TROUBLE -> FleetRows.troubles(list, said(troubles(today, rig)));
    };
  }

  /** All of the committee's page. */
  Fleet fleet(LocalDate today) {
    return new Fleet(
        today,
        courseDay(today),
        rigs(today),
        loansOverdue(today),
        inspectionsOverdue(today),
        stringsDue(today),
        withdrawals(),
        askBack.now());
  }

  /** The evening that next week's course is reckoned for. */
  static LocalDate courseDay(LocalDate today) {
    return today.plusDays(DAYS_TO_THE_COURSE);
  }
}
