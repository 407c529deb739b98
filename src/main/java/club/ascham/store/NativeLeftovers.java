package club.ascham.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.jboss.logging.Logger;

/**
 * Copies of native libraries that earlier runs unpacked into the machine's temporary folder and
 * could not take away, since they were killed. A running program keeps what it has opened, even
 * where its file is deleted.
 */
public final class NativeLeftovers {
  private static final Logger LOG = Logger.getLogger(NativeLeftovers.class);
  private static final String UNPACKED =
      "{sqlite-*-libsqlitejdbc.so*,com_aayushatharva_brotli4j_*}";

  /** Another program may have unpacked and not opened its own yet. */
  private static final Duration SETTLED = Duration.ofMinutes(10);

  private NativeLeftovers() {}

  /**
   * Takes them away, as far as they are ours to delete; answers how many.
   *
   * @param began when this program did
   */
  public static int takeAway(Path temporary, Instant began) {
    int gone = 0;
    try (var found = Files.newDirectoryStream(temporary, UNPACKED)) {
      for (Path leftover : found) {
        if (Files.getLastModifiedTime(leftover).toInstant().isBefore(began.minus(SETTLED))) {
          delete(leftover);
          gone++;
        }
      }
    } catch (IOException failure) {
      LOG.debugf(failure, "Some leftovers stay in %s.", temporary);
    }
    return gone;
  }

  private static void delete(Path leftover) throws IOException {
    try (Stream<Path> within = Files.walk(leftover)) {
      List<Path> innermostFirst = within.sorted(Comparator.reverseOrder()).toList();
      for (Path each : innermostFirst) {
        Files.deleteIfExists(each);
      }
    }
  }
}
