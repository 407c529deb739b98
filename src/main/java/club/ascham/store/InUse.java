package club.ascham.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The right to a data folder, held by one process at a time. The operating system takes it back
 * when the process ends, however it ends, so that nothing stale is ever in the way.
 *
 * <p>A file of its own, since Java must not open the club's.
 */
public final class InUse implements AutoCloseable {
  /** Closing a second channel to the file would give up this process's own lock on it. */
  private static final Set<Path> HELD_HERE = ConcurrentHashMap.newKeySet();

  private final Path file;
  private final FileChannel channel;

  private InUse(Path file, FileChannel channel) {
    this.file = file;
    this.channel = channel;
  }

  /** Empty: another process holds it. */
  public static Optional<InUse> take(DataFolder folder) throws IOException {
    Path file = folder.inUse().toAbsolutePath().normalize();
    if (!HELD_HERE.add(file)) {
      return Optional.empty();
    }
    try {
      FileChannel channel =
          FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      FileLock lock = channel.tryLock();
      if (lock != null) {
        return Optional.of(new InUse(file, channel));
      }
      channel.close();
    } catch (IOException failure) {
      HELD_HERE.remove(file);
      throw failure;
    }
    HELD_HERE.remove(file);
    return Optional.empty();
  }

  @Override
  public void close() throws IOException {
    channel.close();
    HELD_HERE.remove(file);
  }
}
