package club.ascham.check;

import io.quarkus.hibernate.orm.panache.PanacheRepository;
import jakarta.enterprise.context.ApplicationScoped;

/** The checks themselves, for the use cases that add to them. */
@ApplicationScoped
class BowChecks implements PanacheRepository<BowCheck> {}
