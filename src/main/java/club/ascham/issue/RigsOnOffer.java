package club.ascham.issue;

import club.ascham.concern.Against;
import club.ascham.concern.Concerns;
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
      "SELECT s.rig_id AS id, "
          + Standing.STATE_TODAY
          + " AS state, s.loan_id, nullif(s.cleared_at, '') AS ready_since FROM rig_standing s ";

  private final Rows rows;
  private final RigSpecs specs;
  private final Concerns concerns;

  RigsOnOffer(Rows rows, RigSpecs specs, Concerns concerns) {
    this.rows = rows;
    this.specs = specs;
    this.concerns = concerns;
  }

  private record Row(RigId id, State state, Long loan, Instant readySince) {
    RigOffer offer(RigCard card, Against against) {
      return new RigOffer(card, state, loan, readySince, against);
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
    List<RigId> ids = ready.stream().map(Row::id).toList();
    Map<RigId, RigCard> cards = specs.of(ids);
    Map<RigId, Against> against = concerns.ofRigs(ids);
    return ready.stream()
        .filter(row -> cards.containsKey(row.id()) && !against.get(row.id()).blocks())
        .map(row -> row.offer(cards.get(row.id()), against.get(row.id())))
        .toList();
  }

  /** Empty when there is no such rig, or it was taken apart. */
  Optional<RigOffer> of(RigId rig, LocalDate today) {
    return rows.one(Row.class, COLUMNS + "WHERE s.rig_id = ?2", today, rig)
        .flatMap(row -> specs.of(rig).map(card -> row.offer(card, concerns.of(rig))));
  }
}
