package club.ascham.packaged;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.stream.Stream;

/**
 * What each start would else do anew, done once for all tests of the packaged server: its classes
 * are in an archive, and the demo club is in a folder that is copied.
 */
final class PreparedClub {
  private static final Path AT = Path.of("target", "prepared-club");
  private static final Path CLASSES = AT.resolve("classes.jsa");
  private static final Path DATA = AT.resolve("data");

  private PreparedClub() {}

  /** How Java is told of the classes. */
  static String classes() throws IOException, InterruptedException {
    prepare();
    return "-XX:SharedArchiveFile=" + CLASSES;
  }

  /** Gives a test a demo club of its own. */
  static void copyTo(Path folder) throws IOException, InterruptedException {
    prepare();
    try (Stream<Path> files = Files.walk(DATA)) {
      for (Path file : files.toList()) {
        Files.copy(file, folder.resolve(DATA.relativize(file).toString()));
      }
    }
  }

  /** Two processes test at once: one of them waits for the other to be through. */
  private static synchronized void prepare() throws IOException, InterruptedException {
    if (Files.notExists(PackagedServer.JAR)) {
      throw new IllegalStateException(PackagedServer.JAR + " is not there: mvn package makes it");
    }
    Files.createDirectories(AT);
    try (FileChannel channel =
        FileChannel.open(AT.resolve("lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
      channel.lock();
      if (!isOfThisBuild()) {
        clear(DATA);
        Files.deleteIfExists(CLASSES);
        PackagedServer.prepare(DATA, "-XX:ArchiveClassesAtExit=" + CLASSES);
        if (!Files.exists(CLASSES)) {
          throw new IOException(CLASSES + " was not made");
        }
      }
    }
  }

  private static boolean isOfThisBuild() throws IOException {
    return Files.exists(CLASSES)
        && Files.getLastModifiedTime(CLASSES)
                .compareTo(Files.getLastModifiedTime(PackagedServer.JAR))
            > 0;
  }

  private static void clear(Path folder) throws IOException {
    if (Files.exists(folder)) {
      try (Stream<Path> files = Files.walk(folder)) {
        for (Path file : files.sorted((one, other) -> other.compareTo(one)).toList()) {
          Files.delete(file);
        }
      }
    }
  }
}
