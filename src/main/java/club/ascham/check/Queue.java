package club.ascham.check;

import club.ascham.concern.Against;
import club.ascham.concern.Concerns;
import club.ascham.concern.Matter;
import club.ascham.form.Words;
import club.ascham.id.RigId;
import club.ascham.rig.RigCard;
import club.ascham.rig.RigSpecs;
import club.ascham.standing.Standing;
import club.ascham.standing.State;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import club.ascham.units.ItemCode;
import club.ascham.upkeep.Work;
import club.ascham.verdict.Verdict;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The bows that wait to be checked, those that waited longest first. */
@ApplicationScoped
public class Queue {
  private final Rows rows;
  private final RigSpecs specs;
  private final Concerns concerns;
  private final ClubTime time;

  Queue(Rows rows, RigSpecs specs, Concerns concerns, ClubTime time) {
    this.rows = rows;
    this.specs = specs;
    this.concerns = concerns;
    this.time = time;
  }

  /** Why a bow waits. */
  public enum Why {
    /** It came back and was not checked since. */
    RECEIVED,
    /** Its check said <i>adjust first</i>, and nobody has measured it again. */
    ADJUST,
    /** Its check found it fit, and nobody has put it back. */
    NOT_PUT_BACK,
    /** Something was told of it that nobody has answered; nothing was received. */
    REPORTED,
    /** An inspection that keeps it in is due; a check does not help. */
    INSPECTION
  }

  /** What a bow in this queue says by being there. */
  static final Set<Matter> SAID_BY_WAITING = Set.of(Matter.NOT_CHECKED);

  /**
   * One bow that waits.
   *
   * @param since when it began to wait
   * @param check its last check; null: none since it came back
   * @param looked the last thing known of it is a look, since it came back; a full check is due
   * @param dryLooseOrFall a receipt says so of which there is no report
   * @param against what stands against it
   */
  public record Waiting(
      RigId rig,
      RigCard card,
      Why why,
      Instant since,
      Long check,
      boolean looked,
      boolean dryLooseOrFall,
      Against against,
      List<Overdue> overdue) {
    /** Whether checking it, or acting on its check, is what comes next. */
    public boolean isForChecking() {
      return why != Why.INSPECTION;
    }

    public String name() {
      return card.name();
    }

    /** Where it is worked on. */
    public String page() {
      return why == Why.ADJUST || why == Why.NOT_PUT_BACK
          ? CheckPages.verdictPage(rig, check)
          : CheckPages.page(rig);
    }

    /** The word on its button. */
    public String next() {
      return switch (why) {
        case ADJUST -> "Adjust";
        case NOT_PUT_BACK -> "Put back";
        case RECEIVED, REPORTED, INSPECTION -> "Check";
      };
    }

    public String facts() {
      return BowWords.facts(card);
    }
  }

  /** An inspection that keeps a bow in. */
  public record Overdue(RigId rig, String bareCode, Work work) {
    /** {@code R-0147-J: limb-bolt inspection}. */
    public String said() {
      return code() + ": " + work.said();
    }

    /** Where it is done. */
    public String page() {
      return "/upkeep/" + code() + "/" + Words.of(work);
    }

    String code() {
      return new ItemCode(bareCode).display();
    }
  }

  /**
   * @param waited its last check said that something is answered or released first
   */
  private record Row(
      RigId rig,
      boolean needsCheck,
      Instant lastEvent,
      LocalDate blockedFrom,
      Instant backAt,
      Long check,
      Instant checkedAt,
      Checks.Kind kind,
      Verdict.Kind verdict,
      boolean waited,
      Instant told,
      boolean dryLoose) {

    Why why() {
      if (!needsCheck) {
        return told == null ? Why.INSPECTION : Why.REPORTED;
      }
      if (checkedAt == null || kind == Checks.Kind.LOOK || isBackAfterCheck()) {
        return Why.RECEIVED;
      }
      if (verdict == Verdict.Kind.WITHDRAW || (waited && told == null)) {
        // What it waited for is over: it is checked, and nothing is adjusted.
        return Why.RECEIVED;
      }
      // Nothing is adjusted or put back before what was told is answered.
      return told != null
          ? Why.REPORTED
          : verdict == Verdict.Kind.FIT ? Why.NOT_PUT_BACK : Why.ADJUST;
    }

    private boolean isBackAfterCheck() {
      return backAt != null && backAt.isAfter(checkedAt);
    }
  }

  public List<Waiting> today() {
    List<Row> found =
        rows.list(
            Row.class,
            """
            SELECT s.rig_id, s.needs_check, nullif(s.last_event, '') AS last_event, s.blocked_from,
                   (SELECT max(x.back_at) FROM loan_line x WHERE x.rig_id = s.rig_id) AS back_at,
                   c.id AS check_id, c.happened_at AS checked_at, c.kind, c.verdict,
                   EXISTS (SELECT 1 FROM verdict_line v WHERE v.check_id = c.id AND v.step IN ('RELEASE', 'ANSWER_TOLD')) AS waited,
                   (SELECT min(a.happened_at) FROM fitting f JOIN report_against a ON a.item_id = f.item_id
                     WHERE f.rig_id = s.rig_id AND f.until_at IS NULL) AS told,
                   EXISTS (SELECT 1 FROM loan_line x JOIN receipt t ON t.id = x.receipt_id
                            WHERE x.rig_id = s.rig_id AND x.back_at > s.cleared_at AND t.dry_loose_or_fall = 1
                              AND NOT EXISTS (SELECT 1 FROM report o WHERE o.receipt_id = t.id)) AS dry_loose
              FROM rig_standing s
              LEFT JOIN bow_check c ON c.id = (SELECT n.id FROM bow_check n WHERE n.rig_id = s.rig_id
                                                 AND n.id NOT IN (SELECT check_id FROM undone_look)
                                                ORDER BY n.happened_at DESC, n.id DESC LIMIT 1)
             WHERE\s"""
                + Standing.STATE_TODAY
                + " = 'TO_BE_CHECKED'\n"
                + """
                     OR s.state_if_inspected = 'READY'
                    AND EXISTS (SELECT 1 FROM fitting f JOIN report_against a ON a.item_id = f.item_id
                                 WHERE f.rig_id = s.rig_id AND f.until_at IS NULL)""",
            time.today());
    List<RigId> rigs = found.stream().map(Row::rig).toList();
    Map<RigId, RigCard> cards = specs.of(rigs);
    Map<RigId, Against> against = concerns.ofRigs(rigs);
    Map<RigId, List<Overdue>> overdue = overdue();
    List<Waiting> waiting = new ArrayList<>();
    for (Row row : found) {
      Why why = row.why();
      waiting.add(
          new Waiting(
              row.rig(),
              cards.get(row.rig()),
              why,
              since(row, why),
              row.check(),
              row.kind() == Checks.Kind.LOOK && !row.isBackAfterCheck(),
              row.dryLoose(),
              against.get(row.rig()).without(SAID_BY_WAITING),
              overdue.getOrDefault(row.rig(), List.of())));
    }
    waiting.sort(Comparator.comparing(Waiting::since).thenComparing(w -> w.rig().value()));
    return waiting;
  }

  private Instant since(Row row, Why why) {
    return switch (why) {
      case RECEIVED ->
          row.backAt() != null && row.backAt().isBefore(row.lastEvent())
              ? row.backAt()
              : row.lastEvent();
      case ADJUST, NOT_PUT_BACK -> row.checkedAt();
      case REPORTED -> row.told();
      case INSPECTION -> time.momentOf(row.blockedFrom().plusDays(1).atStartOfDay());
    };
  }

  private Map<RigId, List<Overdue>> overdue() {
    return rows
        .list(
            Overdue.class,
            """
            SELECT DISTINCT f.rig_id, i.code AS bare_code, d.work
              FROM work_due d
              JOIN fitting f ON f.item_id = d.item_id AND f.until_at IS NULL
              JOIN item i ON i.id = d.item_id
             WHERE d.blocks = 1 AND (d.due_on < ?1 OR (d.task_id IS NOT NULL AND d.due_on <= ?1))""",
            time.today())
        .stream()
        .collect(Collectors.groupingBy(Overdue::rig));
  }

  /** The bow to be checked after this one. */
  Optional<Waiting> next(RigId after) {
    return today().stream()
        .filter(waiting -> waiting.isForChecking() && !waiting.rig().equals(after))
        .findFirst();
  }

  /** This bow, where its last check found something that nobody has acted on yet. */
  Optional<Waiting> toBeActedOn(RigId rig) {
    return today().stream()
        .filter(waiting -> waiting.rig().equals(rig))
        .filter(waiting -> waiting.why() == Why.ADJUST || waiting.why() == Why.NOT_PUT_BACK)
        .findFirst();
  }

  State state(RigId rig, LocalDate today) {
    return rows.one(
            Is.class,
            "SELECT " + Standing.STATE_TODAY + " AS state FROM rig_standing s WHERE s.rig_id = ?2",
            today,
            rig)
        .map(Is::state)
        .orElse(State.RETIRED);
  }

  private record Is(State state) {}

  /** Whether the rig came back, was checked or was set up after this check. */
  boolean happenedSince(RigId rig, long check, Instant happened) {
    return rows.number(
            """
            SELECT EXISTS (SELECT 1 FROM bow_check c WHERE c.rig_id = ?1
                            AND c.id NOT IN (SELECT check_id FROM undone_look)
                            AND (c.happened_at > ?3 OR (c.happened_at = ?3 AND c.id > ?2)))
                OR EXISTS (SELECT 1 FROM loan_line x WHERE x.rig_id = ?1 AND x.back_at > ?3)
                OR EXISTS (SELECT 1 FROM set_up u WHERE u.rig_id = ?1 AND u.finished_at > ?3)
                OR EXISTS (SELECT 1 FROM fitting f WHERE f.rig_id = ?1 AND f.from_at > ?3
                            AND f.until_at IS NULL)""",
            rig,
            check,
            happened)
        > 0;
  }
}
