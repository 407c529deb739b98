package club.ascham.story;

import club.ascham.SettingsOf;
import club.ascham.store.DataFolder;
import club.ascham.store.SameFile;
import club.ascham.time.ClubTimeOf;
import java.io.IOException;
import java.nio.file.Files;
import java.time.Clock;
import java.time.ZoneId;
import org.sqlite.SQLiteDataSource;

/** The mark of a data folder, without a server. */
public final class HighWaterOf {
  private HighWaterOf() {}

  /** As after a start. */
  public static HighWater opened(DataFolder folder, Loss.Backup newest, Clock clock)
      throws IOException {
    SQLiteDataSource source = new SQLiteDataSource();
    source.setUrl("jdbc:sqlite:" + folder.file());
    SameFile sameFile = new SameFile();
    HighWater highWater =
        new HighWater(
            source,
            sameFile,
            ClubTimeOf.clock(clock, new SettingsOf(folder.path(), ZoneId.of("Europe/London"))));
    highWater.opens(folder, newest);
    if (Files.exists(folder.file())) {
      sameFile.is(folder.file());
    }
    return highWater;
  }
}
