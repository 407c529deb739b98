package club.ascham.upkeep;

import club.ascham.id.ItemId;
import club.ascham.store.Rows;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;

/** Reads which work an item failed last and has not passed since: nothing but a pass answers it. */
@ApplicationScoped
public class FailedWork {
  private final Rows rows;

  FailedWork(Rows rows) {
    this.rows = rows;
  }

  /** In the order of {@link Work}; empty where nothing waits for its pass. */
  public List<Work> of(ItemId item) {
    return rows
        .texts(
            """
            SELECT DISTINCT u.work FROM upkeep_record u
             WHERE u.item_id = ?1 AND u.result = 'FAILED'
               AND NOT EXISTS (SELECT 1 FROM upkeep_record p
                                WHERE p.item_id = u.item_id AND p.work = u.work AND p.result = 'PASSED'
                                  AND (p.happened_at, p.id) > (u.happened_at, u.id))""",
            item)
        .stream()
        .map(Work::valueOf)
        .sorted()
        .toList();
  }
}
