package club.ascham.time;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Produces;
import java.time.Clock;

final class Clocks {
  private Clocks() {}

  @Produces
  @ApplicationScoped
  static Clock clock() {
    return Clock.systemUTC();
  }
}
