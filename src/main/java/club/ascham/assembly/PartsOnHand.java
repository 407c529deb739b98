package club.ascham.assembly;

import club.ascham.assembly.PartOnHand.OutOfUse;
import club.ascham.id.ItemId;
import club.ascham.id.RigId;
import club.ascham.rig.Part;
import club.ascham.rig.Place;
import club.ascham.rig.RigParts;
import club.ascham.standing.Standing;
import club.ascham.standing.State;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import club.ascham.units.ItemCode;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/** Reads the parts a rig can be made of, with what decides whether each can be fitted today. */
@ApplicationScoped
class PartsOnHand {
  private static final String FACTS =
      """
      SELECT s.item_id AS id, %s AS state, s.rig_id AS fitted_to, b.code AS fitted_to_code, w.happened_at AS withdrawn_at, w.why AS withdrawn_why, i.retired_on, i.retired_why,
             l.due_on AS due_back, s.blocked_from AS inspection_due, k.rig_id AS kept_with
        FROM item_standing s
        JOIN item i ON i.id = s.item_id
        LEFT JOIN fitting f ON f.rig_id = s.rig_id AND f.place = 'BODY' AND f.until_at IS NULL
        LEFT JOIN item b ON b.id = f.item_id
        LEFT JOIN withdrawal w ON w.item_id = s.item_id AND w.released_at IS NULL
        LEFT JOIN loan l ON l.id = s.loan_id
        LEFT JOIN kept_with k ON k.item_id = s.item_id
       WHERE i.kind IN ('RISER', 'BOW', 'LIMBS', 'STRING')
      """
          .formatted(Standing.STATE_TODAY);

  private final Rows rows;
  private final RigParts specs;
  private final ClubTime time;

  PartsOnHand(Rows rows, RigParts specs, ClubTime time) {
    this.rows = rows;
    this.specs = specs;
    this.time = time;
  }

  /** The parts among these codes; a code that names no part is left out. */
  Map<ItemCode, PartOnHand> coded(Collection<ItemCode> codes) {
    String wanted =
        codes.stream()
            .filter(Objects::nonNull)
            .map(code -> "\"" + code.bare() + "\"")
            .collect(Collectors.joining(",", "[", "]"));
    return read(" AND i.code IN (SELECT value FROM json_each(?2))", wanted).stream()
        .collect(Collectors.toMap(p -> new ItemCode(p.part().bareCode()), p -> p));
  }

  Optional<PartOnHand> coded(ItemCode code) {
    return Optional.ofNullable(coded(List.of(code)).get(code));
  }

  /** Every part for this place that is not retired, by code. */
  List<PartOnHand> inUse(Place place) {
    String kinds = place == Place.BODY ? "[\"RISER\",\"BOW\"]" : "[\"" + place + "\"]";
    return read(
        " AND i.retired_on IS NULL AND i.kind IN (SELECT value FROM json_each(?2)) ORDER BY i.code",
        kinds);
  }

  private List<PartOnHand> read(String which, String wanted) {
    List<Facts> facts = rows.list(Facts.class, FACTS + which, time.today(), wanted);
    Map<ItemId, Part> parts = specs.of(facts.stream().map(Facts::id).toList());
    return facts.stream().map(f -> f.with(parts.get(f.id()), time)).toList();
  }

  private record Facts(
      ItemId id,
      State state,
      RigId fittedTo,
      String fittedToCode,
      Instant withdrawnAt,
      String withdrawnWhy,
      LocalDate retiredOn,
      String retiredWhy,
      LocalDate dueBack,
      LocalDate inspectionDue,
      RigId keptWith) {

    PartOnHand with(Part part, ClubTime time) {
      return new PartOnHand(
          part,
          state,
          fittedTo,
          fittedToCode == null ? "" : new ItemCode(fittedToCode).display(),
          outOfUse(time),
          dueBack,
          inspectionDue,
          keptWith);
    }

    private OutOfUse outOfUse(ClubTime time) {
      if (retiredOn != null) {
        return new OutOfUse(retiredOn, PartOnHand.said(retiredWhy));
      }
      return withdrawnAt == null ? null : new OutOfUse(time.dayOf(withdrawnAt), withdrawnWhy);
    }
  }
}
