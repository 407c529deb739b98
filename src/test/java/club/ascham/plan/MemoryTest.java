package club.ascham.plan;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import org.junit.jupiter.api.Test;

class MemoryTest {
  private static final int MANY = 2_000;

  @Test
  void moreReplications_needNoMoreMemory() {
    Numbers numbers = new Numbers(Fleets.large(20, 5), Fleets.assumed(1, 4, 0.2));
    Replication replication = new Replication(numbers);
    Tallies tallies = new Tallies(numbers);
    reckon(replication, tallies, 0, MANY);
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    long before = threads.getCurrentThreadAllocatedBytes();
    reckon(replication, tallies, MANY, 2 * MANY);
    long each = (threads.getCurrentThreadAllocatedBytes() - before) / MANY;
    // A generator and a few sums, which are gone at once; nothing is kept of a replication.
    assertTrue(each < 1_000, each + " bytes for each replication");
  }

  private static void reckon(Replication replication, Tallies tallies, int from, int to) {
    for (int n = from; n < to; n++) {
      replication.run(Chance.of(1, n, 0.2), null);
      tallies.add(replication.happened);
    }
  }
}
