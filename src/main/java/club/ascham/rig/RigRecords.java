package club.ascham.rig;

import club.ascham.bow.BracePoint;
import club.ascham.bow.Level;
import club.ascham.bow.SetUpFigures;
import club.ascham.bow.Style;
import club.ascham.id.RigId;
import club.ascham.register.ItemKind;
import club.ascham.standing.Standing;
import club.ascham.standing.State;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import club.ascham.units.ItemCode;
import club.ascham.verdict.Reading;
import club.ascham.web.NoSuchThing;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Reads what is on record about rigs, for the pages and the API. */
@ApplicationScoped
public class RigRecords {
  private final Rows rows;
  private final RigSpecs specs;
  private final ClubTime time;

  RigRecords(Rows rows, RigSpecs specs, ClubTime time) {
    this.rows = rows;
    this.specs = specs;
    this.time = time;
  }

  private record Stand(RigId rig, State state, Long loanId, LocalDate dueBack) {}

  /** Every assembled rig, by the code it goes by. */
  public List<RigRow> all() {
    Map<RigId, RigCard> cards = specs.all();
    return rows.list(Stand.class, STANDS.formatted(""), time.today()).stream()
        .filter(stand -> cards.containsKey(stand.rig()))
        .map(s -> new RigRow(cards.get(s.rig()), s.state(), s.loanId(), s.dueBack()))
        .toList();
  }

  /** One assembled rig; empty when it was taken apart, or never was. */
  public Optional<RigRow> one(RigId rig) {
    return specs
        .of(rig)
        .flatMap(
            card ->
                rows.one(Stand.class, STANDS.formatted("WHERE s.rig_id = ?2"), time.today(), rig)
                    .map(s -> new RigRow(card, s.state(), s.loanId(), s.dueBack())));
  }

  /**
   * @throws NoSuchThing it was taken apart, or never was
   */
  public RigRow known(RigId rig) {
    return one(rig).orElseThrow(() -> RigSpecs.noSuch(rig));
  }

  private static final String STANDS =
      "SELECT s.rig_id, "
          + Standing.STATE_TODAY
          + " AS state, s.loan_id, l.due_on AS due_back FROM rig_standing s LEFT JOIN loan l ON l.id = s.loan_id %s";

  /** A rig that was, or is, by its own row. */
  record Head(RigId id, Style style, Level level, Instant assembledAt, Instant dissolvedAt) {}

  Optional<Head> head(RigId rig) {
    return rows.one(
        Head.class,
        "SELECT id, style, level, assembled_at, dissolved_at FROM rig WHERE id = ?1",
        rig);
  }

  /** A part that is or was fitted to a rig. */
  record Fitting(String bareCode, ItemKind kind, Instant fromAt, Instant untilAt) {
    public String page() {
      return RigPages.itemPage(code());
    }

    public String code() {
      return new ItemCode(bareCode).display();
    }
  }

  /** What was fitted to a rig, from when until when; what is fitted now first. */
  List<Fitting> fittings(RigId rig) {
    return rows.list(
        Fitting.class,
        """
        SELECT i.code AS bare_code, i.kind, f.from_at, f.until_at FROM fitting f JOIN item i ON i.id = f.item_id
         WHERE f.rig_id = ?1 ORDER BY f.until_at IS NOT NULL, f.from_at DESC, f.id DESC\
        """,
        rig);
  }

  /** Something kept with a rig without being fitted. */
  public record Kept(String bareCode, ItemKind kind) {
    public String page() {
      return RigPages.itemPage(code());
    }

    public String code() {
      return new ItemCode(bareCode).display();
    }
  }

  public List<Kept> kept(RigId rig) {
    return rows.list(
        Kept.class,
        """
        SELECT i.code AS bare_code, i.kind FROM kept_with k JOIN item i ON i.id = k.item_id
         WHERE k.rig_id = ?1 ORDER BY i.kind, i.code\
        """,
        rig);
  }

  /** An accident after which a part of the rig is kept as it is. */
  public record Accident(long id, Instant happened) {}

  List<Accident> accidents(RigId rig) {
    return rows.list(
        Accident.class,
        """
        SELECT a.id, a.happened_at AS happened FROM accident a WHERE a.ended_at IS NULL
           AND EXISTS (SELECT 1 FROM accident_item k JOIN fitting f ON f.item_id = k.item_id AND f.until_at IS NULL
                        WHERE k.accident_id = a.id AND k.withdrawal_id IS NOT NULL AND f.rig_id = ?1)
         ORDER BY a.happened_at\
        """,
        rig);
  }

  /**
   * A check as the rig's page shows it; a look has no figures.
   *
   * @param looksFirst its verdict says itself what these readings come from
   */
  record Checked(
      long id,
      Instant happenedAt,
      Reading reading,
      String verdict,
      boolean look,
      String by,
      boolean looksFirst) {

    public boolean isMeasured() {
      return reading != null && reading.brace() != null && reading.tiller() != null;
    }

    /** What stands for the figures where there are none: only a look was one. */
    String unmeasured() {
      return look ? "looked over" : "not measured";
    }
  }

  /** The last checks and looks, newest first. */
  List<Checked> checks(RigId rig, int atMost) {
    return rows.list(
        Checked.class,
"""
SELECT c.id, c.happened_at, c.brace, c.brace_from AS reading_from, c.tiller_upper, c.tiller_lower, c.verdict, c.kind = 'LOOK' AS look, a.name AS "by", 0 AS looks_first
  FROM bow_check c JOIN account a ON a.id = c.checked_by
 WHERE c.rig_id = ?1 AND c.id NOT IN (SELECT check_id FROM undone_look)
 ORDER BY c.happened_at DESC, c.id DESC LIMIT ?2\
""",
        rig,
        atMost);
  }

  /** The last checks that were measured, newest first. */
  List<Checked> measured(RigId rig, int atMost) {
    return rows.list(
        Checked.class,
        """
        SELECT c.id, c.happened_at, c.brace, c.brace_from AS reading_from, c.tiller_upper, c.tiller_lower, c.verdict, 0 AS look, a.name AS "by",
               c.verdict = 'WITHDRAW' OR EXISTS (SELECT 1 FROM verdict_line v WHERE v.check_id = c.id
                                                     AND v.step IN ('LOOK_AT_LIMBS', 'RELEASE')) AS looks_first
          FROM bow_check c JOIN account a ON a.id = c.checked_by
         WHERE c.rig_id = ?1 AND c.brace IS NOT NULL AND c.tiller_upper IS NOT NULL
           AND c.tiller_lower IS NOT NULL
         ORDER BY c.happened_at DESC, c.id DESC LIMIT ?2\
        """,
        rig,
        atMost);
  }

  private record Adjusted(Instant at) {}

  /** When it was adjusted, oldest first. */
  List<Instant> adjustments(RigId rig) {
    return rows
        .list(
            Adjusted.class,
            "SELECT happened_at AS at FROM adjustment WHERE rig_id = ?1 ORDER BY happened_at, id",
            rig)
        .stream()
        .map(Adjusted::at)
        .toList();
  }

  /** A reading of the bow scale with these limbs, on whatever riser. */
  public record Weighed(
      Instant happenedAt, String by, double drawIn, double forceLb, Integer riserIn) {
    public String said() {
      return new WeighedAs(drawIn, forceLb).onTheScale()
          + (riserIn == null ? "" : ", on a %d in riser".formatted(riserIn));
    }
  }

  /** What the bow scale showed of its limbs, newest first. */
  public List<Weighed> weighings(RigCard card) {
    Part weighed = card.weighed();
    return weighed == null
        ? List.of()
        : rows.list(
            Weighed.class,
            """
            SELECT s.happened_at, a.name AS "by", s.draw_in, s.force_lb, s.riser_in
              FROM scale_reading s JOIN account a ON a.id = s.weighed_by
             WHERE s.item_id = ?1 ORDER BY s.happened_at DESC, s.id DESC LIMIT 12\
            """,
            weighed.id());
  }

  /** A loan that a rig went out with. */
  record Lent(
      long loanId, String kind, String holder, Instant outAt, LocalDate dueOn, Instant backAt) {
    public boolean isSession() {
      return kind.equals("SESSION");
    }
  }

  /** The last loans, newest first. */
  List<Lent> loans(RigId rig, int atMost) {
    return rows.list(
        Lent.class,
"""
SELECT l.id AS loan_id, l.kind, coalesce(b.name, l.leader) AS holder, min(x.out_at) AS out_at, l.due_on,
       CASE WHEN count(*) = count(x.back_at) THEN max(x.back_at) END AS back_at
  FROM loan_line x JOIN loan l ON l.id = x.loan_id LEFT JOIN borrower b ON b.id = l.borrower_id
 WHERE x.rig_id = ?1 GROUP BY l.id ORDER BY min(x.out_at) DESC, l.id DESC LIMIT ?2\
""",
        rig,
        atMost);
  }

  /** The set-up that is begun and not finished. */
  public record OpenSetUp(
      long id,
      int version,
      Instant begunAt,
      String begunBy,
      String stepsDone,
      SetUpFigures figures) {
    public StepsDone done() {
      return StepsDone.of(stepsDone);
    }
  }

  public Optional<OpenSetUp> openSetUp(RigId rig) {
    return rows.one(
        OpenSetUp.class,
"""
SELECT u.id, u.version, u.begun_at, a.name AS begun_by, u.steps_done, u.brace, u.brace_from, u.tiller_upper,
       u.tiller_lower, u.nocking, u.screws_seen AS locking_screws_seen, u.turns_upper, u.turns_lower, u.twists
  FROM set_up u JOIN account a ON a.id = u.begun_by WHERE u.rig_id = ?1 AND u.finished_at IS NULL\
""",
        rig);
  }

  /** When the set-up in force was finished, and by whom. */
  record Finished(Instant finishedAt, String finishedBy) {}

  Optional<Finished> finished(long setUpId) {
    return rows.one(
        Finished.class,
        """
        SELECT u.finished_at, a.name AS finished_by FROM set_up u JOIN account a ON a.id = u.finished_by
         WHERE u.id = ?1\
        """,
        setUpId);
  }

  /** The point that brace was measured from at the last set-up of this rig; empty: none yet. */
  public Optional<BracePoint> lastBracePoint(RigId rig) {
    return rows
        .texts(
            """
            SELECT brace_from FROM set_up WHERE rig_id = ?1 AND brace_from IS NOT NULL
             ORDER BY begun_at DESC LIMIT 1\
            """,
            rig)
        .stream()
        .findFirst()
        .map(BracePoint::valueOf);
  }

  /** How many rigs stand in each state, for the head of the list. */
  static Map<State, Long> byState(List<RigRow> rigs) {
    return rigs.stream().collect(Collectors.groupingBy(RigRow::state, Collectors.counting()));
  }
}
