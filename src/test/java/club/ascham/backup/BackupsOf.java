package club.ascham.backup;

import club.ascham.Settings;
import club.ascham.time.ClubTimeOf;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;

/** Backups of a folder, without a server. */
public final class BackupsOf {
  private BackupsOf() {}

  public static Backups folder(Path folder, Clock clock) {
    Settings settings =
        new Settings() {
          @Override
          public boolean demo() {
            return false;
          }

          @Override
          public Path dataDir() {
            return folder;
          }

          @Override
          public ZoneId zone() {
            return ZoneId.of("Europe/London");
          }

          @Override
          public String currency() {
            return "GBP";
          }
        };
    return new Backups(settings, ClubTimeOf.clock(clock, settings));
  }
}
