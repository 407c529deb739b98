package club.ascham.store;

import jakarta.annotation.Priority;
import jakarta.interceptor.AroundInvoke;
import jakarta.interceptor.Interceptor;
import jakarta.interceptor.InvocationContext;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.ReentrantLock;

/**
 * Lets writers in one at a time and in order, before their transaction begins.
 *
 * <p>Whoever waits for ten seconds is answered 503 with {@code Retry-After}.
 */
@Writes
@Interceptor
@Priority(Interceptor.Priority.PLATFORM_BEFORE + 50)
class WriteGate {
  private static final ReentrantLock GATE = new ReentrantLock(true);
  private static final long PATIENCE_SECONDS = 10;

  private final Scrubbing scrubbing;
  private final SameFile sameFile;

  WriteGate(Scrubbing scrubbing, SameFile sameFile) {
    this.scrubbing = scrubbing;
    this.sameFile = sameFile;
  }

  @AroundInvoke
  Object inTurn(InvocationContext use) throws Exception {
    if (!GATE.tryLock(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
      throw new GateIsFull();
    }
    try {
      sameFile.mustBe();
      Object outcome = use.proceed();
      if (GATE.getHoldCount() == 1) {
        sameFile.mustStillBe();
        scrubbing.ifAsked();
      }
      return outcome;
    } catch (RuntimeException failure) {
      throw DatabaseRefusal.in(failure)
          .<RuntimeException>map(r -> r)
          .or(() -> FileTrouble.in(failure))
          .orElse(failure);
    } finally {
      GATE.unlock();
    }
  }

  /** For work on the file itself, which no transaction could hold: nobody writes meanwhile. */
  static void alone(Runnable work) {
    GATE.lock();
    try {
      work.run();
    } finally {
      GATE.unlock();
    }
  }
}
