package club.ascham.worksheet;

import club.ascham.standing.Standing;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import club.ascham.units.ItemCode;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;

/** Reads items as upkeep looks at them. */
@ApplicationScoped
class Subjects {
  private final Rows rows;
  private final ClubTime time;

  Subjects(Rows rows, ClubTime time) {
    this.rows = rows;
    this.time = time;
  }

  /** The item with this code; empty where the club has none such. */
  Optional<Subject> coded(ItemCode code) {
    return rows.one(
        Subject.class,
        """
        SELECT i.id, i.code AS bare_code, i.kind, i.maker, i.model,
               coalesce(r.build, l.build, CASE i.kind WHEN 'BOW' THEN 'ONE_PIECE' END) AS build, r.max_turns_out,
               i.bought_on, i.registered_on, s.withdrawn, %s AS state, s.rig_id, bi.code AS rig_bare_code, s.loan_id, o.due_on AS back_by,
               u.turns_upper, u.turns_lower
          FROM item_standing s
          JOIN item i ON i.id = s.item_id
          LEFT JOIN riser r ON r.id = i.id
          LEFT JOIN limbs l ON l.id = i.id
          LEFT JOIN fitting b ON b.rig_id = s.rig_id AND b.place = 'BODY' AND b.until_at IS NULL
          LEFT JOIN item bi ON bi.id = b.item_id
          LEFT JOIN loan o ON o.id = s.loan_id
          LEFT JOIN rig_parts p ON p.rig_id = s.rig_id
          LEFT JOIN set_up u ON u.id = p.set_up_id
         WHERE s.code = ?2\
        """
            .formatted(Standing.STATE_TODAY),
        time.today(),
        code.bare());
  }
}
