package club.ascham.upkeep;

import io.quarkus.hibernate.orm.panache.PanacheRepository;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
import java.util.OptionalInt;

/** The rules themselves, for the use cases that change them. */
@ApplicationScoped
class RuleRecords implements PanacheRepository<UpkeepRule> {
  /** The rule as it was seen; empty: somebody changed or removed it since. */
  Optional<UpkeepRule> seen(long id, OptionalInt version) {
    return find("id = ?1 and version = ?2", id, version.orElse(-1)).firstResultOptional();
  }
}
