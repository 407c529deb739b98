package club.ascham.time;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Produces;
import java.time.Clock;

class Clocks {
  @Produces
  @ApplicationScoped
  Clock clock() {
    return Clock.systemUTC();
  }
}
