package club.ascham.planning;

import club.ascham.plan.Plan;
import club.ascham.plan.Progress;
import club.ascham.plan.Simulation;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;

/** One plan being reckoned, or reckoned. */
final class PlanRun implements Progress {
  private final long number;
  private final WhatIf whatIf;
  private final FleetToPlan.Read read;
  private final int shotsAnEvening;
  private final AtomicInteger done = new AtomicInteger();
  private final CountDownLatch ended = new CountDownLatch(1);
  private volatile boolean stopped;
  private volatile Plan plan;
  private volatile RuntimeException failure;

  PlanRun(long number, WhatIf whatIf, FleetToPlan.Read read, int shotsAnEvening) {
    this.number = number;
    this.whatIf = whatIf;
    this.read = read;
    this.shotsAnEvening = shotsAnEvening;
  }

  void reckon(int threads) {
    try {
      if (!stopped) {
        plan =
            Simulation.of(read.fleet(), whatIf.assumed(read.basis(), shotsAnEvening), threads, this)
                .orElse(null);
      }
    } catch (RuntimeException failed) {
      failure = failed;
      throw failed;
    } finally {
      ended.countDown();
    }
  }

  /** The plan; empty while it is being reckoned, and for ever once it was stopped. */
  Optional<Plan> within(Duration patience) {
    try {
      if (!ended.await(patience.toMillis(), TimeUnit.MILLISECONDS)) {
        return Optional.empty();
      }
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      return Optional.empty();
    }
    if (failure != null) {
      throw new IllegalStateException("the plan could not be reckoned", failure);
    }
    return Optional.ofNullable(plan);
  }

  long number() {
    return number;
  }

  WhatIf whatIf() {
    return whatIf;
  }

  FleetToPlan.Read read() {
    return read;
  }

  int done() {
    return done.get();
  }

  void stop() {
    stopped = true;
  }

  @Override
  public void reckoned(int replications) {
    done.accumulateAndGet(replications, Math::max);
  }

  @Override
  public boolean stopped() {
    return stopped;
  }
}
