package club.ascham.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NativeLeftoversTest {
  private static final Instant BEGAN = Instant.parse("2026-11-30T12:00:00Z");

  @TempDir Path temporary;

  private Path left(String name, Duration before) throws IOException {
    Path file = Files.writeString(temporary.resolve(name), "code");
    Files.setLastModifiedTime(file, FileTime.from(BEGAN.minus(before)));
    return file;
  }

  @Test
  void whatEarlierRunsUnpacked_goes_andNothingElse() throws IOException {
    Path library = left("sqlite-3.54.1.0-0419-libsqlitejdbc.so", Duration.ofDays(2));
    Path lock = left("sqlite-3.54.1.0-0419-libsqlitejdbc.so.lck", Duration.ofDays(2));
    Path fresh = left("sqlite-3.54.1.0-0420-libsqlitejdbc.so", Duration.ofMinutes(1));
    Path others = left("sqlite-notes.txt", Duration.ofDays(2));
    Path folder = Files.createDirectory(temporary.resolve("com_aayushatharva_brotli4j_1"));
    Files.writeString(folder.resolve("libbrotli.so"), "code");
    Files.setLastModifiedTime(folder, FileTime.from(BEGAN.minus(Duration.ofDays(2))));

    assertEquals(3, NativeLeftovers.takeAway(temporary, BEGAN));

    assertFalse(Files.exists(library) || Files.exists(lock) || Files.exists(folder));
    assertTrue(Files.exists(fresh), "another program may be about to open it");
    assertTrue(Files.exists(others));
  }

  @Test
  void aDataFolder_isItsOwnersAlone() throws IOException {
    Path folder = Files.createDirectory(temporary.resolve("data"));
    Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxr-xr-x"));
    OwnerOnly.make(folder);
    assertEquals("rwx------", PosixFilePermissions.toString(Files.getPosixFilePermissions(folder)));
  }
}
