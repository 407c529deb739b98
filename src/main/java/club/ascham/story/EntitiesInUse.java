package club.ascham.story;

import io.quarkus.hibernate.orm.PersistenceUnitExtension;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.TransactionSynchronizationRegistry;
import org.hibernate.Interceptor;
import org.hibernate.Transaction;

/**
 * Knows whether entities took part in a use case: opening a session only to hear that it holds
 * nothing back is a tenth of what a save costs.
 */
@PersistenceUnitExtension
@ApplicationScoped
class EntitiesInUse implements Interceptor {
  private static final String IN_USE = EntitiesInUse.class.getName();

  private final TransactionSynchronizationRegistry transaction;

  EntitiesInUse(TransactionSynchronizationRegistry transaction) {
    this.transaction = transaction;
  }

  @Override
  public void afterTransactionBegin(Transaction begun) {
    transaction.putResource(IN_USE, true);
  }

  static boolean in(TransactionSynchronizationRegistry transaction) {
    return transaction.getResource(IN_USE) != null;
  }
}
