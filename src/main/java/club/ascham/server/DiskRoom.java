package club.ascham.server;

import club.ascham.Settings;
import club.ascham.backup.Size;
import club.ascham.store.DataFolder;
import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.util.Optional;

/** Whether the disk of the data folder has room for what comes. */
@ApplicationScoped
class DiskRoom {
  /** Judged: some months of a club's backups, or a moment's worth of somebody else's log. */
  static final long LEAST = 500_000_000;

  /** Judged: a backup takes the file's size and a quarter, erasing someone as much again. */
  static final int TIMES_THE_FILE = 5;

  private final DataFolder folder;
  private final Disk disk;

  DiskRoom(Settings settings, Disk disk) {
    this.folder = new DataFolder(settings.dataDir());
    this.disk = disk;
  }

  Disk.Room room() throws IOException {
    return disk.at(folder.path());
  }

  /**
   * @param free bytes
   * @param clubsFile its bytes
   */
  static boolean isNearlyFull(long free, long clubsFile) {
    return free < Math.max(LEAST, TIMES_THE_FILE * clubsFile);
  }

  boolean isNearlyFull(Disk.Room room) {
    return isNearlyFull(room.free(), folder.file().toFile().length());
  }

  /** What an officer has to know; empty: there is room. */
  Optional<String> worry() {
    try {
      Disk.Room room = room();
      return isNearlyFull(room)
          ? Optional.of(
              "The server’s disk is nearly full: %s of %s are free. Make room, or soon nothing can be saved."
                  .formatted(Size.said(room.free()), Size.said(room.total())))
          : Optional.empty();
    } catch (IOException unreadable) {
      return Optional.of(
          "The server can’t say how full its disk is ("
              + unreadable.getMessage()
              + "): look there.");
    }
  }
}
