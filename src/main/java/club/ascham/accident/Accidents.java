package club.ascham.accident;

import club.ascham.id.ItemId;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.store.Rows;
import club.ascham.units.ItemCode;
import io.quarkus.qute.TemplateData;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Reads accidents, and what each of them keeps. */
@ApplicationScoped
public class Accidents {
  private static final int LISTED = 200;
  private static final String HEAD =
      """
      SELECT a.id, a.loan_id, l.kind = 'SESSION' AS session, a.rig_id, a.happened_at AS happened, a.recorded_at AS recorded, p.name AS told_by, a.words,
             coalesce(b.name, l.leader) AS who, b.contact, b.guardian, a.ended_at, e.name AS ended_by, a.end_why,
             (SELECT group_concat(i.code) FROM accident_item k JOIN item i ON i.id = k.item_id
               WHERE k.accident_id = a.id AND i.kind IN ('RISER', 'BOW')) AS bodies
        FROM accident a JOIN account p ON p.id = a.told_by
        LEFT JOIN account e ON e.id = a.ended_by
        LEFT JOIN loan l ON l.id = a.loan_id LEFT JOIN borrower b ON b.id = l.borrower_id
       """;

  private final Rows rows;

  Accidents(Rows rows) {
    this.rows = rows;
  }

  /**
   * An accident.
   *
   * @param loan null: nobody had the bow
   * @param rig null: all of a loan
   * @param words what happened; null where the reader is not to see names (likewise who to
   *     guardian, and endWhy)
   * @param endedAt null: what was in hand is kept still
   * @param bodies bare codes of the bows, comma-separated; null: none
   */
  @TemplateData
  public record Head(
      long id,
      LoanId loan,
      boolean session,
      RigId rig,
      Instant happened,
      Instant recorded,
      String toldBy,
      String words,
      String who,
      String contact,
      String guardian,
      Instant endedAt,
      String endedBy,
      String endWhy,
      String bodies) {

    public boolean isKept() {
      return endedAt == null;
    }

    public List<String> bows() {
      return bodies == null
          ? List.of()
          : Arrays.stream(bodies.split(",")).map(code -> new ItemCode(code).display()).toList();
    }

    Head withoutNames() {
      return new Head(
          id, loan, session, rig, happened, recorded, toldBy, null, null, null, null, endedAt,
          endedBy, null, bodies);
    }
  }

  /**
   * A thing that was in hand, as it was registered.
   *
   * @param withdrawal that it is kept by; null: arrows out of a pool, or off the register before
   */
  @TemplateData
  public record Thing(
      ItemId item,
      String bareCode,
      String kind,
      String maker,
      String model,
      String batch,
      String serials,
      LocalDate boughtOn,
      LocalDate registeredOn,
      LocalDate retiredOn,
      String retiredWhy,
      RigId rig,
      Integer arrows,
      Long withdrawal,
      Instant releasedAt) {

    public String code() {
      return new ItemCode(bareCode).display();
    }

    public String mark() {
      return kind.equals("BOW") ? "one-piece" : kind.toLowerCase(Locale.ROOT);
    }

    public String kindSaid() {
      String word = kind.equals("BOW") ? "one-piece bow" : kind.toLowerCase(Locale.ROOT);
      return arrows == null ? word : arrows + " " + word + " out of a pool";
    }

    /** Maker, model, batch and serials, as far as known. */
    public String said() {
      return Stream.of(
              Stream.of(maker, model).filter(Objects::nonNull).collect(Collectors.joining(" ")),
              batch == null ? "" : "batch " + batch,
              serials == null ? "" : "serial " + serials)
          .filter(part -> !part.isEmpty())
          .collect(Collectors.joining(", "));
    }
  }

  /** Those kept still first, then the newest. */
  List<Head> all() {
    return rows.list(
        Head.class,
        HEAD + "ORDER BY a.ended_at IS NOT NULL, a.happened_at DESC, a.id DESC LIMIT " + LISTED);
  }

  Optional<Head> one(long id) {
    return rows.one(Head.class, HEAD + "WHERE a.id = ?1", id);
  }

  /** What was in hand: a bow's parts first, in the order of the hands. */
  List<Thing> things(long accident) {
    return rows.list(
        Thing.class,
        """
        SELECT i.id AS item, i.code AS bare_code, i.kind, i.maker, i.model, i.batch,
               nullif(concat_ws(' / ', i.serial, m.serial_upper, m.serial_lower), '') AS serials,
               i.bought_on, i.registered_on, i.retired_on, lower(i.retired_why) AS retired_why, k.rig_id, k.arrow_count AS arrows,
               k.withdrawal_id, w.released_at
          FROM accident_item k JOIN item i ON i.id = k.item_id
          LEFT JOIN limbs m ON m.id = i.id LEFT JOIN withdrawal w ON w.id = k.withdrawal_id
         WHERE k.accident_id = ?1 ORDER BY k.id""",
        accident);
  }
}
