package club.ascham.exchange;

import club.ascham.Settings;
import club.ascham.exchange.Import.CsvFile;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;

/**
 * Keeps the files of a dry run in the data folder until they are imported: a browser can't be asked
 * to send the same files again. After a day they are thrown away.
 */
@ApplicationScoped
class TriedFiles {
  private static final Duration KEPT = Duration.ofDays(1);
  private static final String NAMES = "names";

  private final Path folder;
  private final ClubTime time;

  TriedFiles(Settings settings, ClubTime time) {
    this.folder = settings.dataDir().resolve("uploads");
    this.time = time;
  }

  /** Answers the key to ask for them by. */
  String keep(List<CsvFile> files) {
    String key = UUID.randomUUID().toString();
    try {
      throwOldOnesAway();
      Path own = Files.createDirectories(folder.resolve(key));
      List<String> names = new ArrayList<>();
      for (CsvFile file : files) {
        Files.write(own.resolve(names.size() + ".csv"), file.bytes());
        names.add(file.name().replaceAll("[\\r\\n]", " "));
      }
      Files.write(own.resolve(NAMES), names);
    } catch (IOException failure) {
      throw new UncheckedIOException("can't keep the files of a dry run", failure);
    }
    return key;
  }

  /** The files of a dry run; empty where they were imported or thrown away, or never were. */
  Optional<List<CsvFile>> kept(String key) {
    Path own = folder.resolve(key);
    if (!isKey(key) || !Files.isRegularFile(own.resolve(NAMES))) {
      return Optional.empty();
    }
    try {
      List<CsvFile> files = new ArrayList<>();
      for (String name : Files.readAllLines(own.resolve(NAMES))) {
        files.add(new CsvFile(name, Files.readAllBytes(own.resolve(files.size() + ".csv"))));
      }
      return Optional.of(files);
    } catch (IOException failure) {
      throw new UncheckedIOException("can't read the files of a dry run", failure);
    }
  }

  void forget(String key) {
    if (isKey(key)) {
      throwAway(folder.resolve(key));
    }
  }

  private void throwOldOnesAway() throws IOException {
    if (!Files.isDirectory(folder)) {
      return;
    }
    Instant before = time.now().minus(KEPT);
    try (Stream<Path> all = Files.list(folder)) {
      for (Path one : all.toList()) {
        if (Files.getLastModifiedTime(one).toInstant().isBefore(before)) {
          throwAway(one);
        }
      }
    }
  }

  private static void throwAway(Path own) {
    if (!Files.exists(own)) {
      return;
    }
    try (Stream<Path> all = Files.walk(own)) {
      for (Path one : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(one);
      }
    } catch (IOException failure) {
      throw new UncheckedIOException("can't throw away the files of a dry run", failure);
    }
  }

  /** Nothing but a key of ours may name a folder. */
  private static boolean isKey(String key) {
    return key.matches("[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}");
  }
}
