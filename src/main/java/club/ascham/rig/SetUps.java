package club.ascham.rig;

import club.ascham.id.RigId;
import io.quarkus.hibernate.orm.panache.PanacheRepository;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;

/** Finds set-ups. */
@ApplicationScoped
public class SetUps implements PanacheRepository<SetUp> {
  /** The set-up of this rig that is begun and not finished; there is one at most. */
  public Optional<SetUp> openOf(RigId rig) {
    return find("rigId = ?1 and finishedAt is null", rig.value()).firstResultOptional();
  }
}
