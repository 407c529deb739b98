package club.ascham.backup;

import club.ascham.Settings;
import club.ascham.store.DataFolder;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jboss.logging.Logger;

/**
 * The folder of backups. A file that bears a backup's name there was sound when it got that name:
 * until then it has another.
 */
@ApplicationScoped
public class Backups {
  private static final Logger LOG = Logger.getLogger(Backups.class);
  private static final String COPY = "copy-";
  private static final String UNFINISHED = ".part";
  private static final Duration OLD = Duration.ofHours(50);

  private final DataFolder folder;
  private final ClubTime time;
  private volatile Failed lastFailure;

  Backups(Settings settings, ClubTime time) {
    this.folder = new DataFolder(settings.dataDir());
    this.time = time;
  }

  /** A backup there is. */
  public record Backup(BackupName name, long bytes) {
    public String size() {
      return Size.said(bytes);
    }
  }

  /** What became of a try to make one. */
  public sealed interface Outcome permits Made, Failed {}

  public record Made(Backup backup) implements Outcome {}

  /**
   * @param status of HTTP
   * @param why what is in the way and what helps, in sentences
   */
  public record Failed(Instant at, int status, String why) implements Outcome {}

  /** Makes one now; people go on working. */
  public Outcome make() {
    return make(null);
  }

  /**
   * Makes one before a migration.
   *
   * @param migration such as {@code V011}
   */
  public Outcome makeBefore(String migration) {
    return make(migration);
  }

  /** One at a time. */
  private synchronized Outcome make(String before) {
    Instant now = time.now();
    try {
      Backup made = made(now, before);
      lastFailure = null;
      LOG.infof("Backup %s is made and sound (%s).", made.name().fileName(), made.size());
      thinOut(now);
      return new Made(made);
    } catch (Snapshot.NotMade failure) {
      return failed(now, failure);
    } catch (IOException failure) {
      return failed(now, Snapshot.noFolder(failure));
    } catch (UncheckedIOException failure) {
      return failed(now, Snapshot.noFolder(failure.getCause()));
    }
  }

  private Failed failed(Instant now, Snapshot.NotMade failure) {
    LOG.errorf(failure, "no backup was made: %s", failure.getMessage());
    lastFailure = new Failed(now, failure.kind().status(), failure.getMessage());
    return lastFailure;
  }

  private Backup made(Instant now, String before) throws IOException {
    Files.createDirectories(folder.backups());
    forgetUnfinished();
    Path part = folder.backups().resolve("ascham-" + now.toEpochMilli() + UNFINISHED);
    Soundness.Sound sound = Snapshot.take(folder.file(), part);
    BackupName name = BackupName.of(now, sound.newestSeal(), before);
    Path whole = path(name);
    Files.move(part, whole, StandardCopyOption.ATOMIC_MOVE);
    Snapshot.forceFolder(folder.backups());
    return new Backup(name, Files.size(whole));
  }

  /** A copy of this moment that is no backup: for someone to read at leisure, then closed. */
  public Copy copy() {
    Instant now = time.now();
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

  /** What a power cut left of the last try. */
  private void forgetUnfinished() throws IOException {
    try (Stream<Path> files = Files.list(folder.backups())) {
      files
          .filter(file -> file.getFileName().toString().matches("ascham-\\d+\\.part"))
          .forEach(Snapshot::forget);
    }
  }

  private void thinOut(Instant now) {
    Set<BackupName> go =
        Rota.superfluous(all().stream().map(Backup::name).toList(), now, time.zone());
    for (BackupName name : go) {
      try {
        Files.deleteIfExists(path(name));
      } catch (IOException failure) {
        LOG.warnf(failure, "can't take away the old backup %s", name.fileName());
      }
    }
  }

  /** Newest first. */
  public List<Backup> all() {
    if (!Files.isDirectory(folder.backups())) {
      return List.of();
    }
    List<Backup> found = new ArrayList<>();
    try (Stream<Path> files = Files.list(folder.backups())) {
      for (Path file : files.toList()) {
        Optional<BackupName> name = BackupName.read(file.getFileName().toString());
        if (name.isPresent()) {
          found.add(new Backup(name.get(), Files.size(file)));
        }
      }
    } catch (IOException failure) {
      throw new UncheckedIOException("can't look into " + folder.backups(), failure);
    }
    found.sort((a, b) -> BackupName.NEWEST_FIRST.compare(a.name(), b.name()));
    return found;
  }

  /**
   * What holds whom the club erases now, until its turn is over.
   *
   * @param lastDay on which the last backup goes that goes by itself; null: there is none
   * @param stay backups whose day nobody knows: the last that were made before an update
   * @param setAside folders in which a restore left a file, which nobody but a person deletes
   */
  public record Older(LocalDate lastDay, int stay, List<String> setAside) {
    public boolean none() {
      return lastDay == null && stay == 0 && setAside.isEmpty();
    }
  }

  /** What was kept until now. */
  public Older older() {
    Rota.End end = Rota.end(all().stream().map(Backup::name).toList(), time.now(), time.zone());
    try (Stream<Path> files = Files.list(folder.path())) {
      return new Older(
          end.lastDay(),
          end.stay(),
          files
              .map(file -> file.getFileName().toString())
              .filter(name -> name.startsWith(Restore.SET_ASIDE))
              .sorted()
              .toList());
    } catch (IOException failure) {
      throw new UncheckedIOException("can't look into " + folder.path(), failure);
    }
  }

  /** The file of a backup there is. */
  public Optional<Path> file(String fileName) {
    return BackupName.read(fileName).map(this::path).filter(Files::isRegularFile);
  }

  /** The newest that is sound still. */
  public Optional<Path> newestSound() {
    return all().stream()
        .map(backup -> path(backup.name()))
        .filter(file -> Soundness.ofAll(file) instanceof Soundness.Sound)
        .findFirst();
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

  /** Whether the daily one is due. */
  boolean isDue() {
    List<Instant> made = all().stream().map(backup -> backup.name().moment()).toList();
    Failed failure = lastFailure;
    return QuietHour.calls(made, failure == null ? null : failure.at(), time.now(), time.zone());
  }

  /** What an officer has to know of the backups without asking; empty: all is well. */
  public Optional<String> worry() {
    Failed failure = lastFailure;
    if (failure != null) {
      return Optional.of("The last backup failed. " + failure.why());
    }
    List<Backup> all = all();
    if (all.isEmpty() || all.get(0).name().moment().plus(OLD).isAfter(time.now())) {
      // A first one is made a minute after the start.
      return Optional.empty();
    }
    return Optional.of("There is no backup of the last two days.");
  }

  private Path path(BackupName name) {
    return folder.backups().resolve(name.fileName());
  }
}
