package club.ascham.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.EnumSet;
import java.util.Set;

/**
 * A few lines beside the club's file: there whole or not at all, for their owner's eyes alone, and
 * on the disk when they are written.
 */
public final class SmallFile {
  private static final String UNFINISHED = ".new";

  private SmallFile() {}

  public static void write(Path file, String text) throws IOException {
    Path made = file.resolveSibling(file.getFileName() + UNFINISHED);
    try (FileChannel out = anew(made)) {
      out.write(ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8)));
      out.force(true);
    }
    Files.move(made, file, StandardCopyOption.ATOMIC_MOVE);
  }

  /** What a power cut left half-written may have had other rights. */
  private static FileChannel anew(Path made) throws IOException {
    Set<StandardOpenOption> newOnly =
        EnumSet.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
    try {
      return FileChannel.open(made, newOnly, OwnerOnly.ofNewFile(made));
    } catch (FileAlreadyExistsException left) {
      Files.delete(made);
      return FileChannel.open(made, newOnly, OwnerOnly.ofNewFile(made));
    }
  }
}
