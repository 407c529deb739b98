package club.ascham.backup;

import club.ascham.Settings;
import club.ascham.SettingsOf;
import club.ascham.store.SameFile;
import club.ascham.time.ClubTime;
import club.ascham.time.ClubTimeOf;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;

/** Backups of a folder, without a server. */
public final class BackupsOf {
  private BackupsOf() {}

  public static Backups folder(Path folder, Clock clock) {
    return of(new SettingsOf(folder, ZoneId.of("Europe/London")), clock);
  }

  static Backups of(Settings settings, Clock clock) {
    ClubTime time = ClubTimeOf.clock(clock, settings);
    return new Backups(settings, new SameFile(), new SecondFolder(settings, time), time);
  }
}
