package club.ascham.check;

import club.ascham.form.Words;
import club.ascham.id.RigId;
import club.ascham.store.Rows;
import club.ascham.verdict.BowPart;
import club.ascham.verdict.Gravity;
import club.ascham.verdict.Reading;
import club.ascham.verdict.Verdict;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** Reads the checks that were made, for pages and others. */
@ApplicationScoped
public class Checks {
  private static final String COLUMNS =
      """
      SELECT c.id, c.rig_id, c.kind, c.happened_at, c.recorded_at, a.name AS "by", c.set_up_id, c.all_as_listed,
             c.brace, c.brace_from AS measured_from, c.tiller_upper, c.tiller_lower, c.dry_loose_or_fall, c.came_back_strung,
             c.verdict, c.corrects_id, c.correction_why, c.released_at, r.name AS released_by,
             (SELECT n.id FROM bow_check n WHERE n.corrects_id = c.id ORDER BY n.id DESC LIMIT 1) AS corrected_by,
             c.id IN (SELECT check_id FROM undone_look) AS undone
        FROM bow_check c JOIN account a ON a.id = c.checked_by
        LEFT JOIN account r ON r.id = c.released_by
       """;

  private final Rows rows;

  /** With measurements, or a mere look. */
  enum Kind {
    CHECK,
    LOOK
  }

  Checks(Rows rows) {
    this.rows = rows;
  }

  /**
   * A check as it was kept.
   *
   * @param kind CHECK, or LOOK without measurements
   * @param measured null: nothing was
   * @param correctedBy the check that says what was wrong with this one; null: none
   * @param undone a look that nobody took: the return it was kept with was undone
   */
  public record Row(
      long id,
      RigId rig,
      Kind kind,
      Instant happenedAt,
      Instant recordedAt,
      String by,
      Long setUpId,
      boolean allAsListed,
      Reading measured,
      boolean dryLooseOrFall,
      boolean cameBackStrung,
      Verdict.Kind verdict,
      Long corrects,
      String correctionWhy,
      Instant releasedAt,
      String releasedBy,
      Long correctedBy,
      boolean undone) {

    public boolean isFit() {
      return verdict == Verdict.Kind.FIT;
    }

    public boolean isLook() {
      return kind == Kind.LOOK;
    }

    public boolean isReleased() {
      return releasedAt != null;
    }

    /** What it was judged by; empty where something was not measured. */
    public Optional<Reading> reading() {
      return Optional.ofNullable(measured).filter(Reading::isWhole);
    }
  }

  /** One sign that was seen on a check. */
  public record SeenSign(BowPart part, Gravity gravity, String words) {
    public String line() {
      return CheckDesk.capital(part.words()) + ": " + words;
    }

    public String sign() {
      return Words.of(gravity);
    }
  }

  /**
   * What was done between two readings.
   *
   * @param after the second measurement; null: not yet measured
   */
  record Adjusted(long id, RigId rig, Long before, Long after, AdjustmentDone done) {
    Adjusted {
      done = done == null ? AdjustmentDone.NOT_COUNTED : done;
    }

    String said() {
      return done.said() + (done.words() == null ? "" : " " + done.words());
    }
  }

  public Optional<Row> one(long id) {
    return rows.one(Row.class, COLUMNS + "WHERE c.id = ?1", id);
  }

  /** The checks and looks of a rig, the last that happened first. */
  public List<Row> ofRig(RigId rig, int atMost) {
    return rows.list(
        Row.class,
        COLUMNS + "WHERE c.rig_id = ?1 ORDER BY c.happened_at DESC, c.id DESC LIMIT ?2",
        rig,
        atMost);
  }

  /** All checks and looks, the last that happened first. */
  public List<Row> page(Long rig, int skipped, int atMost) {
    return rows.list(
        Row.class,
        COLUMNS
            + "WHERE ?1 IS NULL OR c.rig_id = ?1 ORDER BY c.happened_at DESC, c.id DESC LIMIT ?2"
            + " OFFSET ?3",
        rig,
        atMost,
        skipped);
  }

  public long count(Long rig) {
    return rows.number("SELECT count(*) FROM bow_check WHERE ?1 IS NULL OR rig_id = ?1", rig);
  }

  public List<SeenSign> signs(long check) {
    return rows.list(
        SeenSign.class,
        "SELECT part, gravity, words FROM check_sign WHERE check_id = ?1 ORDER BY id",
        check);
  }

  /** The newest entry about this rig, whenever it happened; 0 where there is none. */
  long newest(RigId rig) {
    return rows.number("SELECT coalesce(max(id), 0) FROM bow_check WHERE rig_id = ?1", rig);
  }

  Optional<Adjusted> adjustment(long id) {
    return rows.one(
        Adjusted.class,
        """
        SELECT id, rig_id, check_id AS before, after_id, twists_added, upper_in, lower_in, words
          FROM adjustment WHERE id = ?1""",
        id);
  }

  /** The adjustment that this check is the second measurement of, or that followed it. */
  Optional<Adjusted> adjustmentAround(long check) {
    return rows
        .list(
            Adjusted.class,
            """
            SELECT id, rig_id, check_id AS before, after_id, twists_added, upper_in, lower_in, words
              FROM adjustment WHERE after_id = ?1 OR check_id = ?1
             ORDER BY after_id IS NOT ?1, id DESC LIMIT 1""",
            check)
        .stream()
        .findFirst();
  }

  /**
   * What receipts say about the bow since it was last put back, set up or checked, where no report
   * does: of a time before there were any, or of words that tell of nothing.
   */
  record Told(boolean dryLooseOrFall, boolean cameBackStrung, Instant backAt, String words) {}

  Told told(RigId rig) {
    List<Told> lines =
        rows.list(
            Told.class,
            """
            SELECT coalesce(t.dry_loose_or_fall, 0) AS dry_loose_or_fall, coalesce(t.came_back_strung, 0) AS came_back_strung, x.back_at, t.words
              FROM rig_facts f
              JOIN loan_line x ON x.rig_id = f.rig_id
               AND x.back_at > max(f.cleared_at, coalesce(
                     (SELECT c.happened_at FROM bow_check c
                       WHERE c.rig_id = f.rig_id AND c.kind = 'CHECK'
                       ORDER BY c.happened_at DESC LIMIT 1), ''))
              LEFT JOIN receipt t ON t.id = x.receipt_id
               AND NOT EXISTS (SELECT 1 FROM report o WHERE o.receipt_id = t.id)
             WHERE f.rig_id = ?1
             ORDER BY x.back_at""",
            rig);
    return new Told(
        lines.stream().anyMatch(Told::dryLooseOrFall),
        lines.stream().anyMatch(Told::cameBackStrung),
        lines.isEmpty() ? null : lines.get(lines.size() - 1).backAt(),
        lines.stream()
            .map(Told::words)
            .filter(Objects::nonNull)
            .distinct()
            .reduce((one, next) -> one + "; " + next)
            .orElse(null));
  }
}
