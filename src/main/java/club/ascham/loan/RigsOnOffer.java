package club.ascham.loan;

import club.ascham.id.RigId;
import club.ascham.rig.RigCard;
import club.ascham.rig.RigSpecs;
import club.ascham.standing.Standing;
import club.ascham.standing.State;
import club.ascham.store.Rows;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads which rigs could be lent, in a fixed number of statements. */
@ApplicationScoped
class RigsOnOffer {
  private static final String COLUMNS =
      "SELECT s.rig_id, "
          + Standing.STATE_TODAY
          + ", s.loan_id, nullif(s.cleared_at, ''), coalesce(s.blocked_from < ?1, 0) FROM"
          + " rig_standing s ";

  private final Rows rows;
  private final RigSpecs specs;

  RigsOnOffer(Rows rows, RigSpecs specs) {
    this.rows = rows;
    this.specs = specs;
  }

  private record Row(
      RigId id, State state, Long loan, Instant readySince, boolean inspectionOverdue) {
    RigOffer offer(RigCard card) {
      return new RigOffer(card, state, loan, readySince, inspectionOverdue);
    }
  }

  List<RigOffer> ready(LocalDate today) {
    List<Row> ready =
        rows.list(
            Row.class,
            COLUMNS
                + "WHERE s.state_if_inspected = 'READY'"
                + " AND (s.blocked_from IS NULL OR s.blocked_from >= ?1) ORDER BY s.rig_id",
            today);
    Map<RigId, RigCard> cards = specs.of(ready.stream().map(Row::id).toList());
    return ready.stream()
        .filter(row -> cards.containsKey(row.id()))
        .map(row -> row.offer(cards.get(row.id())))
        .toList();
  }

  /** Empty when there is no such rig, or it was taken apart. */
  Optional<RigOffer> of(RigId rig, LocalDate today) {
    return rows.one(Row.class, COLUMNS + "WHERE s.rig_id = ?2", today, rig)
        .flatMap(row -> specs.of(rig).map(row::offer));
  }
}
