package club.ascham.time;

import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Alternative;
import jakarta.enterprise.inject.Produces;
import java.lang.management.ManagementFactory;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;

/**
 * The clock that tests run by: the machine's, or one that said {@code tests.begin.at} when the JVM
 * started and has been going since.
 */
public final class TestClock {
  private static final String AT = System.getProperty("tests.begin.at", "");

  private TestClock() {}

  public static Clock running() {
    if (AT.isEmpty()) {
      return Clock.systemUTC();
    }
    // Quarkus loads this class several times: only the JVM's own start is the same for all.
    Instant started = Instant.ofEpochMilli(ManagementFactory.getRuntimeMXBean().getStartTime());
    return Clock.offset(Clock.systemUTC(), Duration.between(started, Instant.parse(AT)));
  }

  static class OfTheServer {
    @Produces
    @Alternative
    @Priority(1)
    @ApplicationScoped
    Clock clock() {
      return running();
    }
  }
}
