package club.ascham.time;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;

/**
 * How long the machine has been on. Linux counts its sleep along, so that a laptop that was closed
 * overnight is no clock that jumped; elsewhere Java's own count stands still meanwhile.
 */
final class SinceBoot {
  private static final Path UPTIME = Path.of("/proc/uptime");

  private SinceBoot() {}

  static boolean isKnown() {
    return Files.isReadable(UPTIME);
  }

  static Duration read() {
    try {
      return seconds(Files.readString(UPTIME));
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  /** The first of its two numbers: {@code 35001.27 68210.11}. */
  static Duration seconds(String uptime) {
    return Duration.ofMillis(
        new BigDecimal(uptime.strip().split(" ")[0]).movePointRight(3).longValue());
  }

  static Duration counted() {
    return Duration.ofNanos(System.nanoTime());
  }
}
