package club.ascham.backup;

import club.ascham.Settings;
import club.ascham.store.DataFolder;
import club.ascham.store.FileTrouble;
import club.ascham.store.OlderBackups;
import club.ascham.store.SameFile;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jboss.logging.Logger;

/**
 * The folder of backups. A file that bears a backup's name there was sound when it got that name:
 * until then it has another.
 *
 * <p>It was opened, looked through and brought to the disk before.
 */
@ApplicationScoped
public class Backups implements OlderBackups {
  private static final Logger LOG = Logger.getLogger(Backups.class);
  private static final String COPY = "copy-";
  private static final String UNFINISHED = ".part";
  private static final Duration OLD = Duration.ofHours(50);

  private final DataFolder folder;
  private final BackupFolder kept;
  private final SameFile sameFile;
  private final SecondFolder copies;
  private final ClubTime time;
  private final Instant begun;
  private volatile Failed lastFailure;

  Backups(Settings settings, SameFile sameFile, SecondFolder copies, ClubTime time) {
    this.folder = new DataFolder(settings.dataDir());
    this.sameFile = sameFile;
    this.copies = copies;
    this.begun = time.now();
    this.kept = new BackupFolder(folder.backups());
    this.time = time;
  }

  /** A backup there is. */
  public record Backup(BackupName name, long bytes) {
    public String size() {
      return Size.said(bytes);
    }
  }

  /**
   * @param why what is in the way and what helps, in sentences
   */
  private record Failed(Instant at, String why) {}

  /** Makes one now; people go on working. */
  public Backup make() {
    Backup made = make(null);
    copies.follow(kept);
    return made;
  }

  /** The daily one, where it is due; empty too where it failed, which is a {@link #worry}. */
  Optional<Backup> makeIfDue() {
    try {
      return isDue() ? Optional.of(make()) : Optional.empty();
    } catch (FileTrouble told) {
      return Optional.empty();
    }
  }

  /**
   * Makes one before a migration; it is copied a minute later, since no start waits for a disk that
   * may not answer.
   *
   * @param migration such as {@code V011}
   */
  public Backup makeBefore(String migration) {
    return make(migration);
  }

  /** One at a time. */
  private synchronized Backup make(String before) {
    Instant now = time.now();
    try {
      Backup made = made(now, before);
      lastFailure = null;
      LOG.infof("Backup %s is made and sound (%s).", made.name().fileName(), made.size());
      kept.thinOut(now, time.zone());
      return made;
    } catch (FileTrouble failure) {
      throw failed(now, failure);
    } catch (IOException failure) {
      throw failed(now, Snapshot.noFolder(failure));
    } catch (UncheckedIOException failure) {
      throw failed(now, Snapshot.noFolder(failure.getCause()));
    }
  }

  SecondFolder copies() {
    return copies;
  }

  /** Copies to the second folder what could not be copied before. */
  void copyAgain() {
    copies.again(kept);
  }

  private FileTrouble failed(Instant now, FileTrouble failure) {
    LOG.errorf(failure, "no backup was made: %s", failure.getMessage());
    lastFailure = new Failed(now, failure.getMessage());
    return failure;
  }

  private Backup made(Instant now, String before) throws IOException {
    sameFile.mustBe();
    Files.createDirectories(folder.backups());
    kept.forgetUnfinished();
    Path part = folder.backups().resolve("ascham-" + now.toEpochMilli() + UNFINISHED);
    Soundness.Sound sound = Snapshot.take(folder.file(), part);
    BackupName name = BackupName.of(now, sound.newestSeal(), before);
    Path whole = kept.path(name);
    Files.move(part, whole, StandardCopyOption.ATOMIC_MOVE);
    Snapshot.forceFolder(folder.backups());
    return new Backup(name, Files.size(whole));
  }

  /** A copy of this moment that is no backup: for someone to read at leisure, then closed. */
  public Copy copy() {
    Instant now = time.now();
    sameFile.mustBe();
    try {
      Path file = Files.createTempDirectory(folder.path(), COPY).resolve("ascham.db");
      String seal = Snapshot.take(folder.file(), file).newestSeal();
      return new Copy(file, seal, BackupName.of(now, seal, null).stem());
    } catch (IOException failure) {
      throw Snapshot.noFolder(failure);
    }
  }

  /**
   * @param newestSeal of its record
   * @param stem what to call it: moment and seal
   */
  public record Copy(Path file, String newestSeal, String stem) implements AutoCloseable {
    @Override
    public void close() throws IOException {
      Snapshot.forget(file);
      Files.deleteIfExists(file.getParent());
    }
  }

  /** Newest first. */
  public List<Backup> all() {
    return kept.all();
  }

  @Override
  public Older older() {
    Retention.End end = Retention.end(kept.names(), time.now(), time.zone());
    try (Stream<Path> files = Files.list(folder.path())) {
      return new Older(
          end.lastDay(),
          end.stay(),
          files
              .map(file -> file.getFileName().toString())
              .filter(name -> name.startsWith(Restore.SET_ASIDE))
              .sorted()
              .toList(),
          copies.older());
    } catch (IOException failure) {
      throw new UncheckedIOException("can't look into " + folder.path(), failure);
    }
  }

  /** The file of a backup there is. */
  public Optional<Path> file(String fileName) {
    return kept.file(fileName);
  }

  /** The newest that is sound still, here or in the second folder. */
  public Optional<Path> newestSound() {
    return kept.newestSound().or(copies::newestSound);
  }

  /** Takes away copies that were being read when the server ended. */
  void forgetCopies() {
    try (Stream<Path> files = Files.list(folder.path())) {
      for (Path left : files.filter(f -> f.getFileName().toString().startsWith(COPY)).toList()) {
        Snapshot.forget(left.resolve("ascham.db"));
        Files.deleteIfExists(left);
      }
    } catch (IOException failure) {
      LOG.warn("can't take away old copies", failure);
    }
  }

  private boolean isDue() {
    List<Instant> made = kept.names().stream().map(BackupName::moment).toList();
    Failed failure = lastFailure;
    return QuietHour.calls(made, failure == null ? null : failure.at(), time.now(), time.zone());
  }

  /** What an officer has to know of the backups without asking; empty: all is well. */
  public Optional<String> worry() {
    Failed failure = lastFailure;
    if (failure != null) {
      return Optional.of("The last backup failed. " + failure.why());
    }
    Instant now = time.now();
    // A first one is made a minute after the start. What a wrong clock dated ahead does not count.
    Instant newest =
        kept.names().stream()
            .map(BackupName::moment)
            .filter(moment -> !moment.isAfter(now))
            .findFirst()
            .orElse(begun);
    return newest.plus(OLD).isAfter(now)
        ? Optional.empty()
        : Optional.of(
            "There is no backup of the last two nights. Press “Back up now”: it says what is in the way.");
  }
}
