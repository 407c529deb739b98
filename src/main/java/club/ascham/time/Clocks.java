package club.ascham.time;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.time.Clock;

class Clocks {
  @Produces
  @ApplicationScoped
  Clock clock() {
    return Clock.systemUTC();
  }

  @Produces
  @Singleton
  Elapsed elapsed() {
    return SinceBoot.isKnown() ? SinceBoot::read : SinceBoot::counted;
  }
}
