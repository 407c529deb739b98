package club.ascham.backup;

import club.ascham.Settings;
import club.ascham.store.OlderBackups;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.jboss.logging.Logger;

/**
 * A copy of each backup in a second folder, on a disk that may not be there: what fails here is
 * told and tried again, and fails no backup.
 *
 * <p>A copy bears its name once it was read back; that a disk gives back what it only keeps in
 * memory is beyond us. A start never waits for it.
 */
@ApplicationScoped
public class SecondFolder {
  private static final Logger LOG = Logger.getLogger(SecondFolder.class);
  private static final Duration TRY_AGAIN_AFTER = Duration.ofHours(1);

  private final Path dataDir;
  private final BackupFolder folder;
  private final ClubTime time;
  private volatile Failed lastFailure;

  SecondFolder(Settings settings, ClubTime time) {
    this.dataDir = settings.dataDir();
    this.folder = settings.backupCopyDir().map(BackupFolder::new).orElse(null);
    this.time = time;
  }

  /**
   * @param away its disk is not there: that costs nothing to ask again
   */
  private record Failed(Instant at, boolean away, String why) {}

  /**
   * Copies what is newer than the newest copy: a disk that was away for a week gets that week's.
   *
   * @param kept the folder of backups
   */
  synchronized void follow(BackupFolder kept) {
    if (folder == null) {
      return;
    }
    try {
      mindTheFolder(kept);
      List<BackupName> missing = missing(kept);
      for (BackupName name : missing) {
        CopyOfFile.make(kept.path(name), folder.path(name), time.now());
        LOG.infof("Backup %s is copied to the second folder.", name.fileName());
      }
      folder.thinOut(time.now(), time.zone());
      lastFailure = null;
    } catch (CopyOfFile.NotMade failure) {
      failed(failure.isAway(), failure.getMessage(), failure.getCause());
    } catch (IOException | UncheckedIOException failure) {
      failed(false, "The second folder for backups can’t be written: look at its disk.", failure);
    }
  }

  private void failed(boolean away, String why, Throwable cause) {
    if (lastFailure == null || !lastFailure.why().equals(why)) {
      LOG.errorf(cause, "no copy of the backup was made: %s", why);
    }
    lastFailure = new Failed(time.now(), away, why);
  }

  /** Oldest first: should the disk fill up, the gap is at the end and is filled next time. */
  private List<BackupName> missing(BackupFolder kept) throws IOException {
    folder.forgetUnfinished();
    Instant now = time.now();
    // What a wrong clock dated ahead would else hold up every copy until then.
    Optional<Instant> newest =
        folder.names().stream()
            .map(BackupName::moment)
            .filter(moment -> !moment.isAfter(now))
            .findFirst();
    Predicate<BackupName> isNewer =
        name -> newest.isEmpty() || !name.moment().isBefore(newest.get());
    return kept.names().stream()
        .filter(isNewer)
        .filter(name -> !Files.exists(folder.path(name)))
        .sorted(Comparator.comparing(BackupName::moment))
        .toList();
  }

  /** It is never made: where its disk is not there, it would fill the server's own. */
  private void mindTheFolder(BackupFolder kept) throws IOException, CopyOfFile.NotMade {
    if (!Files.isDirectory(folder.path())) {
      throw CopyOfFile.NotMade.away();
    }
    if (folder.path().toRealPath().startsWith(dataDir.toRealPath())) {
      throw new CopyOfFile.NotMade(
          "The second folder for backups lies in the data folder: let ASCHAM_BACKUP_COPY_DIR name"
              + " one on another disk.",
          null);
    }
  }

  /** What the last try could not do; an hour later again, or once its disk is there. */
  void again(BackupFolder kept) {
    Failed failure = lastFailure;
    boolean justFailed =
        failure != null
            && !failure.away()
            && !failure.at().isAfter(time.now())
            && failure.at().plus(TRY_AGAIN_AFTER).isAfter(time.now());
    if (!justFailed) {
      follow(kept);
    }
  }

  /** What an officer has to know without asking; empty: all is well, or none are asked for. */
  public Optional<String> worry() {
    return Optional.ofNullable(lastFailure).map(Failed::why);
  }

  /**
   * What is in the second folder.
   *
   * @param there whether its disk is
   * @param newest when the newest backup in it was made; null: there is none
   * @param sameDisk whether one disk that fails takes both along
   */
  public record State(String folder, boolean there, Instant newest, boolean sameDisk) {}

  /** Empty: no copies are asked for. */
  public Optional<State> state() {
    return Optional.ofNullable(folder)
        .map(
            asked ->
                looked(this::state)
                    .orElseGet(() -> new State(asked.path().toString(), false, null, false)));
  }

  private State state(BackupFolder asked) throws IOException {
    return new State(
        asked.path().toString(),
        true,
        asked.names().stream().map(BackupName::moment).findFirst().orElse(null),
        Files.getFileStore(asked.path()).equals(Files.getFileStore(dataDir)));
  }

  private interface Look<T> {
    T into(BackupFolder folder) throws IOException;
  }

  /** Empty: the disk is not there, or does not answer as it should. */
  private <T> Optional<T> looked(Look<T> look) {
    if (folder == null || !Files.isDirectory(folder.path())) {
      return Optional.empty();
    }
    try {
      return Optional.ofNullable(look.into(folder));
    } catch (IOException | UncheckedIOException failure) {
      LOG.warnf(failure, "can't look into the second folder for backups");
      return Optional.empty();
    }
  }

  /** Null: no copies are asked for. */
  OlderBackups.OlderCopies older() {
    if (folder == null) {
      return null;
    }
    return looked(there -> Retention.end(there.names(), time.now(), time.zone()))
        .map(end -> new OlderBackups.OlderCopies(true, end.lastDay(), end.stay()))
        .orElseGet(() -> new OlderBackups.OlderCopies(false, null, 0));
  }

  /** The newest copy that is sound still. */
  Optional<Path> newestSound() {
    return looked(there -> there.newestSound().orElse(null));
  }
}
