package club.ascham.register;

import io.quarkus.hibernate.orm.panache.PanacheRepository;
import jakarta.enterprise.context.ApplicationScoped;

/** Keeps the items themselves. */
@ApplicationScoped
class ItemRecords implements PanacheRepository<Item> {}
