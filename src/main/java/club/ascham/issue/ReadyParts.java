package club.ascham.issue;

import club.ascham.id.ItemId;
import club.ascham.rig.Part;
import club.ascham.rig.RigParts;
import club.ascham.store.Rows;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.Collection;

/** Reads the parts that lie ready and are fitted to nothing, in two statements. */
@ApplicationScoped
class ReadyParts {
  private final Rows rows;
  private final RigParts specs;

  ReadyParts(Rows rows, RigParts specs) {
    this.rows = rows;
    this.specs = specs;
  }

  private record Row(ItemId id) {}

  Collection<Part> on(LocalDate today) {
    return specs
        .of(
            rows
                .list(
                    Row.class,
                    """
                    SELECT s.item_id FROM item_standing s
                     WHERE s.kind IN ('RISER', 'LIMBS', 'BOW', 'STRING') AND s.rig_id IS NULL
                       AND s.state_if_inspected = 'READY'
                       AND (s.blocked_from IS NULL OR s.blocked_from >= ?1)
                       AND s.item_id NOT IN (SELECT item_id FROM kept_with)
                     ORDER BY s.code""",
                    today)
                .stream()
                .map(Row::id)
                .toList())
        .values();
  }
}
