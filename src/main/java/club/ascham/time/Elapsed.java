package club.ascham.time;

import java.time.Duration;

/** Time that only goes on, whatever anyone sets the clock to. */
@FunctionalInterface
public interface Elapsed {
  /** Since some moment that stays the same while the program runs. */
  Duration now();
}
