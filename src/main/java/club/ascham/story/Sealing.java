package club.ascham.story;

import club.ascham.store.Writes;
import jakarta.annotation.Priority;
import jakarta.interceptor.AroundInvoke;
import jakarta.interceptor.Interceptor;
import jakarta.interceptor.InvocationContext;
import jakarta.transaction.TransactionSynchronizationRegistry;

/**
 * Seals what a use case told, as the last thing in its transaction; a change without a sentence is
 * a defect and is taken back.
 */
@Writes
@Interceptor
@Priority(Interceptor.Priority.PLATFORM_BEFORE + 300)
class Sealing {
  private static final String BEGUN = Sealing.class.getName();

  private final TransactionSynchronizationRegistry transaction;
  private final Seals seals;

  Sealing(TransactionSynchronizationRegistry transaction, Seals seals) {
    this.transaction = transaction;
    this.seals = seals;
  }

  @AroundInvoke
  Object sealed(InvocationContext use) throws Exception {
    if (transaction.getResource(BEGUN) != null) {
      return use.proceed();
    }
    transaction.putResource(BEGUN, true);
    seals.noteWhatOthersChanged();
    Object outcome = use.proceed();
    if (!transaction.getRollbackOnly()) {
      seals.close();
    }
    return outcome;
  }
}
