package club.ascham.concern;

import club.ascham.SettingsOf;
import club.ascham.store.RowsOf;
import club.ascham.time.ClubTimeOf;
import java.nio.file.Path;
import java.sql.Connection;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** The reading of what stands against things, on a file that no server has open. */
public final class ConcernsOf {
  private ConcernsOf() {}

  /** As it would read at that moment. */
  public static Concerns file(Connection connection, Instant now) {
    return new Concerns(
        RowsOf.connection(connection),
        ClubTimeOf.clock(
            Clock.fixed(now, ZoneOffset.UTC), new SettingsOf(Path.of("."), ZoneId.of("UTC"))));
  }
}
