package club.ascham.withdrawal;

import club.ascham.id.ItemId;
import io.quarkus.hibernate.orm.panache.PanacheRepository;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;

/** The withdrawals themselves, for the use cases that change them. */
@ApplicationScoped
class WithdrawalRecords implements PanacheRepository<Withdrawal> {
  Optional<Withdrawal> openOf(ItemId item) {
    return find("itemId = ?1 and releasedAt is null", item.value()).firstResultOptional();
  }
}
