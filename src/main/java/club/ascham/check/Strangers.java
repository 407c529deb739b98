package club.ascham.check;

import club.ascham.id.RigId;
import club.ascham.store.Rows;
import club.ascham.units.ItemCode;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;

/** Finds what a code stands for, and where it should be. */
@ApplicationScoped
class Strangers {
  private final Rows rows;

  Strangers(Rows rows) {
    this.rows = rows;
  }

  Optional<Stranger> with(ItemCode code) {
    return rows.one(
        Stranger.class,
        """
        SELECT i.id, i.code, i.kind,
               EXISTS (SELECT 1 FROM withdrawal w WHERE w.item_id = i.id AND w.released_at IS NULL),
               i.retired_why, f.rig_id, b.code, k.rig_id,
               (SELECT coalesce(p.name, l.leader)
                  FROM loan_line x JOIN loan l ON l.id = x.loan_id
                  LEFT JOIN borrower p ON p.id = l.borrower_id
                 WHERE x.item_id = i.id AND x.back_at IS NULL LIMIT 1)
          FROM item i
          LEFT JOIN fitting f ON f.item_id = i.id AND f.until_at IS NULL
          LEFT JOIN fitting fb ON fb.rig_id = f.rig_id AND fb.place = 'BODY' AND fb.until_at IS NULL
          LEFT JOIN item b ON b.id = coalesce(fb.item_id, i.id)
          LEFT JOIN kept_with k ON k.item_id = i.id
         WHERE i.code = ?1""",
        code.bare());
  }

  /** The rig that this part is fitted to. */
  Optional<RigId> rigOf(ItemCode code) {
    return rows.one(
            OfRig.class,
            """
            SELECT f.rig_id FROM item i JOIN fitting f ON f.item_id = i.id AND f.until_at IS NULL
             WHERE i.code = ?1""",
            code.bare())
        .map(OfRig::rig);
  }

  private record OfRig(RigId rig) {}
}
