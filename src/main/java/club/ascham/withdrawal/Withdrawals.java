package club.ascham.withdrawal;

import club.ascham.id.ItemId;
import club.ascham.id.RigId;
import club.ascham.store.Rows;
import club.ascham.units.ItemCode;
import club.ascham.upkeep.FailedWork;
import club.ascham.upkeep.Work;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Reads what is and was withdrawn, for pages and others. */
@ApplicationScoped
public class Withdrawals {
  private static final String COLUMNS =
      """
      SELECT w.id, w.item_id, i.code AS bare_code, i.kind, i.maker, i.model, w.happened_at, a.name AS "by", w.why, w.work,
             w.check_id, f.rig_id,
             EXISTS (SELECT 1 FROM loan_line x WHERE x.item_id = i.id AND x.back_at IS NULL) AS on_loan,
             i.retired_on IS NOT NULL AS retired, w.released_at, r.name AS released_by, w.release_why,
             w.looked_at, coalesce(k.name, w.looked_by_name) AS looked_by, w.decided_at, d.name AS decided_by, w.no_work_why,
             (SELECT u.found FROM inspection_failed u WHERE u.item_id = w.item_id AND w.released_at IS NULL
                AND u.happened_at > w.happened_at AND instr(w.why, u.found) = 0 ORDER BY u.happened_at DESC LIMIT 1) AS found_since
        FROM withdrawal w JOIN item i ON i.id = w.item_id JOIN account a ON a.id = w.withdrawn_by
        LEFT JOIN account r ON r.id = w.released_by
        LEFT JOIN account k ON k.id = w.looked_by
        LEFT JOIN account d ON d.id = w.decided_by
        LEFT JOIN fitting f ON f.item_id = i.id AND f.until_at IS NULL
       """;
  private static final String SHOWN =
      " WHERE (?1 IS NULL OR (w.released_at IS NULL) = ?1) AND (?2 IS NULL OR w.item_id = ?2)";

  private final Rows rows;
  private final FailedWork failedWork;

  Withdrawals(Rows rows, FailedWork failedWork) {
    this.rows = rows;
    this.failedWork = failedWork;
  }

  /**
   * A withdrawal in a list.
   *
   * @param work null: none, or to be decided
   * @param lookedAt null: not released, or before that was asked (likewise lookedBy)
   * @param decidedAt null: it was said at once, or is to be decided (likewise decidedBy)
   * @param noWorkWhy why no inspection fits; null: one does, or it is to be decided
   * @param foundSince what an inspection found since that it did not pass; null: nothing new
   * @param rig where the part is fitted; null: nowhere
   * @param onLoan whether it is with a borrower, and not in the room
   */
  public record Row(
      long id,
      ItemId item,
      String bareCode,
      String kind,
      String maker,
      String model,
      Instant happenedAt,
      String by,
      String why,
      Work work,
      Long checkId,
      RigId rig,
      boolean onLoan,
      boolean retired,
      Instant releasedAt,
      String releasedBy,
      String releaseWhy,
      String lookedAt,
      String lookedBy,
      Instant decidedAt,
      String decidedBy,
      String noWorkWhy,
      String foundSince) {

    public String code() {
      return new ItemCode(bareCode).display();
    }

    /** Whether it is still to be said what it needs. */
    public boolean isUndecided() {
      return isOpen() && work == null && noWorkWhy == null;
    }

    public String kindWord() {
      return kind.equals("BOW") ? "one-piece" : kind.toLowerCase(Locale.ROOT);
    }

    public boolean isOpen() {
      return releasedAt == null;
    }
  }

  /**
   * Open ones longest out first; else the last ones first.
   *
   * @param open true: those not released; false: those released; null: all
   * @param item null: of all
   */
  public List<Row> list(Boolean open, ItemId item, int skipped, int atMost) {
    String order =
        Boolean.TRUE.equals(open)
            ? " ORDER BY w.happened_at, w.id"
            : " ORDER BY w.happened_at DESC, w.id DESC";
    return rows.list(
        Row.class, COLUMNS + SHOWN + order + " LIMIT ?3 OFFSET ?4", open, item, atMost, skipped);
  }

  public long count(Boolean open, ItemId item) {
    return rows.number("SELECT count(*) FROM withdrawal w" + SHOWN, open, item);
  }

  public Optional<Row> one(long id) {
    return rows.one(Row.class, COLUMNS + "WHERE w.id = ?1", id);
  }

  /** The newest record of the work that it needs, or of any where that is not decided. */
  public record Done(
      long id, Work work, String result, Instant happenedAt, String by, String found) {
    public String resultSaid() {
      return switch (result) {
        case "PASSED" -> "passed";
        case "FAILED" -> "not passed";
        default -> result.toLowerCase(Locale.ROOT).replace('_', ' ');
      };
    }

    public boolean failed() {
      return result.equals("FAILED");
    }
  }

  /** What was done last for a withdrawn thing; empty: nothing since it was withdrawn. */
  Optional<Done> newestWork(long id) {
    return rows.one(
        Done.class,
        """
        SELECT u.id, u.work, u.result, u.happened_at, a.name AS "by", u.found
          FROM withdrawal w JOIN upkeep_record u ON u.item_id = w.item_id AND (w.work IS NULL OR u.work = w.work)
          JOIN account a ON a.id = u.done_by
         WHERE w.id = ?1 AND u.happened_at >= w.happened_at
         ORDER BY u.happened_at DESC, u.id DESC LIMIT 1""",
        id);
  }

  /** What one check took out of use. */
  public List<Row> ofCheck(long check) {
    return rows.list(Row.class, COLUMNS + "WHERE w.check_id = ?1 ORDER BY w.id", check);
  }

  /** Why an open withdrawal can't be released yet; empty where it may be, or was. */
  Optional<Hindrance> hindrance(long id) {
    return rows.one(
            Hindrance.Weighed.class,
            """
            SELECT w.id, i.code AS bare_code, i.retired_on IS NOT NULL AS retired, w.work,
                   w.work IS NOT NULL OR w.no_work_why IS NOT NULL AS decided,
                   (SELECT u.result FROM upkeep_record u
                     WHERE u.item_id = w.item_id AND u.work = w.work
                       AND u.happened_at >= coalesce(w.decided_at, w.happened_at)
                     ORDER BY u.happened_at DESC, u.id DESC LIMIT 1) AS result,
                   (SELECT max(a.id) FROM accident a JOIN accident_item k ON k.accident_id = a.id
                     WHERE k.item_id = w.item_id AND k.withdrawal_id IS NOT NULL AND a.ended_at IS NULL) AS accident
              FROM withdrawal w JOIN item i ON i.id = w.item_id
             WHERE w.id = ?1 AND w.released_at IS NULL""",
            id)
        .flatMap(open -> Hindrance.of(open, failedWork.of(one(id).orElseThrow().item())));
  }

  /** Who of the club may have looked at a part. */
  List<Release.Person> people() {
    return rows.list(
        Release.Person.class, "SELECT id, name FROM account WHERE closed_on IS NULL ORDER BY name");
  }

  /** An item as far as withdrawing it needs. */
  record Subject(ItemId id, String bareCode, String kind, boolean retired, Long openWithdrawal) {
    public String code() {
      return new ItemCode(bareCode).display();
    }

    public String kindWord() {
      return switch (kind) {
        case "BOW" -> "one-piece bow";
        case "LIMBS" -> "pair of limbs";
        default -> kind.toLowerCase(Locale.ROOT);
      };
    }
  }

  Optional<Subject> subject(ItemCode code) {
    return rows.one(
        Subject.class,
        """
        SELECT i.id, i.code AS bare_code, i.kind, i.retired_on IS NOT NULL AS retired,
               (SELECT w.id FROM withdrawal w WHERE w.item_id = i.id AND w.released_at IS NULL) AS open_withdrawal
          FROM item i WHERE i.code = ?1""",
        code.bare());
  }

  /** Its last withdrawal, released or not. */
  Optional<Long> newestOf(ItemId item) {
    long newest = rows.number("SELECT max(id) FROM withdrawal WHERE item_id = ?1", item);
    return newest == 0 ? Optional.empty() : Optional.of(newest);
  }

  /** What was asked for out of turn and still keeps the item in. */
  List<String> stillAsked(ItemId item) {
    return rows.texts(
        """
        SELECT work FROM upkeep_task WHERE item_id = ?1 AND blocks = 1 AND closed_by_record IS NULL""",
        item);
  }
}
