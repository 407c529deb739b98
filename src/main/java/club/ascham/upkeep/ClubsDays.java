package club.ascham.upkeep;

import club.ascham.store.Rows;
import club.ascham.store.Stored;
import club.ascham.store.Writes;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.zone.ZoneOffsetTransition;
import java.time.zone.ZoneRules;
import java.util.ArrayList;
import java.util.List;

/**
 * Tells the file on which of the club's days a moment lies: its views plan upkeep by days, and
 * SQLite knows no time zones. A zone set otherwise plans everything anew.
 *
 * <p>Each start writes the offsets of the club's zone, and the views look them up.
 */
@ApplicationScoped
public class ClubsDays {
  private static final Instant FIRST = Instant.parse("1900-01-01T00:00:00Z");
  private static final Instant LAST = Instant.parse("2101-01-01T00:00:00Z");
  private static final DateTimeFormatter LOCAL =
      DateTimeFormatter.ofPattern("yyyy-MM-dd'T'HH:mm:ss");

  private final Rows rows;
  private final ClubTime time;

  ClubsDays(Rows rows, ClubTime time) {
    this.rows = rows;
    this.time = time;
  }

  /**
   * How far a clock is ahead of UTC from some moment on.
   *
   * @param fromAt in UTC
   * @param fromLocal the same moment as the clock shows it from then on
   */
  record Offset(String fromAt, String fromLocal, long aheadSeconds) {}

  /** SQL for the club's day on which the moment in a column lies. */
  public static String dayOf(String column) {
    return ("date(%1$s, (SELECT o.ahead_s FROM clock_offset o WHERE o.from_at <= %1$s"
            + " ORDER BY o.from_at DESC LIMIT 1) || ' seconds')")
        .formatted(column);
  }

  /** Every one in order, from before any day of a club to after it. */
  static List<Offset> of(ZoneId zone) {
    ZoneRules rules = zone.getRules();
    List<Offset> offsets = new ArrayList<>();
    offsets.add(offset(FIRST, rules.getOffset(FIRST)));
    ZoneOffsetTransition next = rules.nextTransition(FIRST);
    while (next != null && next.getInstant().isBefore(LAST)) {
      offsets.add(offset(next.getInstant(), next.getOffsetAfter()));
      next = rules.nextTransition(next.getInstant());
    }
    return offsets;
  }

  private static Offset offset(Instant from, ZoneOffset offset) {
    return new Offset(
        Stored.moment(from),
        LOCAL.format(LocalDateTime.ofInstant(from, offset)),
        offset.getTotalSeconds());
  }

  /** Writes them down where the file has others. */
  @Writes
  public void keep() {
    List<Offset> wanted = of(time.zone());
    List<Offset> known =
        rows.list(
            Offset.class,
            "SELECT from_at, from_local, ahead_s AS ahead_seconds FROM clock_offset ORDER BY from_at");
    if (wanted.equals(known)) {
      return;
    }
    rows.change("DELETE FROM clock_offset");
    for (Offset one : wanted) {
      rows.change(
          "INSERT INTO clock_offset (from_at, from_local, ahead_s) VALUES (?1, ?2, ?3)",
          one.fromAt(),
          one.fromLocal(),
          one.aheadSeconds());
    }
    rows.change("DELETE FROM upkeep_plan");
    rows.change(
        "INSERT INTO upkeep_plan (item_id, rule_id, due_on, because, beyond_on)"
            + " SELECT item_id, rule_id, due_on, because, beyond_on FROM upkeep_reckoned");
  }
}
