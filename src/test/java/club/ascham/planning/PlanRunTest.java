package club.ascham.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.plan.Fleets;
import club.ascham.plan.PlannedFleet;
import club.ascham.rules.PlanRules;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class PlanRunTest {
  private static final Duration LONG = Duration.ofSeconds(60);

  private static PlanRun run(int rigs) {
    PlannedFleet fleet = Fleets.large(rigs, 1);
    PlanRules.Basis basis = new PlanRules.Basis(5, 3, 12, 6, 5, 20, "made up", null, null, 0);
    return new PlanRun(
        1, WhatIf.NOTHING, new FleetToPlan.Read(fleet, basis, List.of(), Map.of()), 60);
  }

  @Test
  void whoeverWaits_seesHowFarItIs_andThenThePlan() throws InterruptedException {
    PlanRun run = run(200);
    assertTrue(run.within(Duration.ZERO).isEmpty());
    Thread reckoner = new Thread(() -> run.reckon(2));
    reckoner.start();
    int furthest = 0;
    while (run.within(Duration.ofMillis(5)).isEmpty()) {
      assertTrue(run.done() >= furthest, "never backwards");
      furthest = run.done();
    }
    reckoner.join();
    assertEquals(WhatIf.REPLICATIONS, run.done());
    assertEquals(WhatIf.NOTHING, run.whatIf());
  }

  @Test
  void aStoppedRun_endsSoon_withoutAPlan() throws InterruptedException {
    PlanRun run = run(500);
    Thread reckoner = new Thread(() -> run.reckon(2));
    reckoner.start();
    while (run.done() == 0) {
      Thread.onSpinWait();
    }
    run.stop();
    assertTrue(run.within(LONG).isEmpty());
    reckoner.join();
    assertTrue(run.done() < WhatIf.REPLICATIONS, run.done() + " were done all the same");
  }

  @Test
  void aRunStoppedBeforeItBegan_neverBegins() {
    PlanRun run = run(5);
    run.stop();
    run.reckon(2);
    assertTrue(run.within(LONG).isEmpty());
    assertEquals(0, run.done());
  }
}
