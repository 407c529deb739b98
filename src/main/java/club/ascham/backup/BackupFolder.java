package club.ascham.backup;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jboss.logging.Logger;

/** Files with names of backups in one folder, which need not be there. */
record BackupFolder(Path path) {
  private static final Logger LOG = Logger.getLogger(BackupFolder.class);

  /** Newest first. */
  List<Backups.Backup> all() {
    if (!Files.isDirectory(path)) {
      return List.of();
    }
    List<Backups.Backup> found = new ArrayList<>();
    try (Stream<Path> files = Files.list(path)) {
      for (Path file : files.toList()) {
        Optional<BackupName> name = BackupName.read(file.getFileName().toString());
        if (name.isPresent()) {
          found.add(new Backups.Backup(name.get(), Files.size(file)));
        }
      }
    } catch (IOException failure) {
      throw new UncheckedIOException("can't look into " + path, failure);
    }
    found.sort((a, b) -> BackupName.NEWEST_FIRST.compare(a.name(), b.name()));
    return found;
  }

  List<BackupName> names() {
    return all().stream().map(Backups.Backup::name).toList();
  }

  Path path(BackupName name) {
    return path.resolve(name.fileName());
  }

  /** The file of a backup there is. */
  Optional<Path> file(String fileName) {
    return BackupName.read(fileName).map(this::path).filter(Files::isRegularFile);
  }

  /** The newest that is sound still. */
  Optional<Path> newestSound() {
    return names().stream()
        .map(this::path)
        .filter(file -> Soundness.ofAll(file) instanceof Soundness.Sound)
        .findFirst();
  }

  /** What a power cut left of the last try. */
  void forgetUnfinished() throws IOException {
    try (Stream<Path> files = Files.list(path)) {
      files
          .filter(file -> file.getFileName().toString().matches("ascham-\\d+\\.part"))
          .forEach(Snapshot::forget);
    }
  }

  /** Takes away what the rota keeps no longer. */
  void thinOut(Instant now, ZoneId zone) {
    Set<BackupName> go = Retention.superfluous(names(), now, zone);
    for (BackupName name : go) {
      try {
        Files.deleteIfExists(path(name));
      } catch (IOException failure) {
        LOG.warnf(failure, "can't take away the old backup %s", name.fileName());
      }
    }
  }
}
