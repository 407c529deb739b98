package club.ascham.time;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import org.junit.jupiter.api.Test;

class SinceBootTest {
  @Test
  void theFirstNumber_isReadToTheHundredth() {
    assertEquals(Duration.ofMillis(35_001_270), SinceBoot.seconds("35001.27 68210.11\n"));
  }

  @Test
  void itOnlyGoesOn() {
    Duration before = SinceBoot.counted();
    assertTrue(SinceBoot.counted().compareTo(before) >= 0);
    if (SinceBoot.isKnown()) {
      Duration read = SinceBoot.read();
      assertTrue(read.compareTo(Duration.ZERO) > 0);
      assertTrue(SinceBoot.read().compareTo(read) >= 0);
    }
  }
}
