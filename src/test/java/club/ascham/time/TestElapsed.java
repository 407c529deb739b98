package club.ascham.time;

import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Alternative;
import java.time.Duration;

/** Time that goes on, and that a test lets go on by more or less than the clock does. */
@Alternative
@Priority(1)
@ApplicationScoped
public class TestElapsed implements Elapsed {
  private volatile Duration more = Duration.ZERO;

  @Override
  public Duration now() {
    return SinceBoot.counted().plus(more);
  }

  public void goesOnBy(Duration length) {
    more = more.plus(length);
  }
}
