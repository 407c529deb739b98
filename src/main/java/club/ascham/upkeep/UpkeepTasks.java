package club.ascham.upkeep;

import club.ascham.id.ItemId;
import io.quarkus.hibernate.orm.panache.PanacheRepository;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.Optional;

/** The tasks themselves, for the use cases that change them. */
@ApplicationScoped
public class UpkeepTasks implements PanacheRepository<UpkeepTask> {
  /** The task that waits; there is one at most. */
  Optional<UpkeepTask> openOf(ItemId item, Work work) {
    return find("itemId = ?1 and work = ?2 and closedByRecord is null", item.value(), work)
        .firstResultOptional();
  }

  /** Closes what was asked for, if anything, inside the use case that keeps the record. */
  public void close(ItemId item, Work work, long record, Instant happened) {
    openOf(item, work).ifPresent(task -> task.closeBy(record, happened));
  }
}
