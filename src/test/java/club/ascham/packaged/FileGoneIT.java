package club.ascham.packaged;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The club's file is moved away under a running server, and is not there at the next start. */
class FileGoneIT {
  @TempDir Path folder;

  private static ApiCaller.Answer enter(ApiCaller officer, String name)
      throws IOException, InterruptedException {
    return officer.post(
        "/api/borrowers",
        Map.of("name", name, "contact", "someone@example.org", "ageBand", "adult"));
  }

  @Test
  void nothingIsAcknowledgedIntoAFileThatIsGone_andNoEmptyClubTakesItsPlace() throws Exception {
    Path data = folder.resolve("data");
    Path file = data.resolve("ascham.db");
    Path away = folder.resolve("away.db");
    try (PackagedServer server = PackagedServer.demo(data)) {
      ApiCaller officer = server.as("officer");
      assertEquals(201, enter(officer, "Saved Before").status());
      assertEquals(201, officer.post("/api/backups", Map.of()).status());

      Files.move(file, away);
      ApiCaller.Answer refused = enter(officer, "Saved Into Nothing");
      assertEquals(503, refused.status(), () -> refused.body().toString());
      assertTrue(refused.body().toString().contains("moved, replaced or cut short"));
      assertEquals(503, officer.get("/q/health/ready").status());

      Files.move(away, file);
      assertEquals(201, enter(officer, "Saved After").status());
      assertEquals(200, officer.get("/q/health/ready").status());

      Path log = data.resolve("ascham.db-wal");
      Path logAway = Files.move(log, folder.resolve("away.log"));
      ApiCaller.Answer withoutLog = enter(officer, "Saved Into No Log");
      assertEquals(503, withoutLog.status(), () -> withoutLog.body().toString());
      ApiCaller.Answer noBackup = officer.post("/api/backups", Map.of());
      assertEquals(503, noBackup.status());
      assertTrue(noBackup.body().toString().contains("or its log"), noBackup.body().toString());
      assertEquals(503, officer.get("/q/health/ready").status());
      Files.move(logAway, log);
      assertEquals(201, enter(officer, "Saved With Its Log").status());

      byte[] written = Files.readAllBytes(log);
      Files.write(log, new byte[0], StandardOpenOption.TRUNCATE_EXISTING);
      assertEquals(503, enter(officer, "Saved Into A Cut Log").status());
      assertEquals(503, officer.get("/q/health/ready").status());
      Files.write(log, written);
      assertEquals(200, officer.get("/q/health/ready").status());
      server.stop();
    }
    Files.move(file, away);
    PackagedServer.DidNotStart refused =
        assertThrows(PackagedServer.DidNotStart.class, () -> PackagedServer.demo(data).close());
    assertTrue(refused.getMessage().contains("is gone or empty"), refused.getMessage());
    assertTrue(Files.notExists(file), "nothing was made in its place");
  }

  @Test
  void whatIsFoundDamaged_staysSoUntilAStart_thoughItsBytesAreBack() throws Exception {
    Path data = folder.resolve("data");
    Path file = data.resolve("ascham.db");
    try (PackagedServer server = PackagedServer.demo(data)) {
      server.stop();
    }
    byte[] whole = Files.readAllBytes(file);
    try (PackagedServer server = PackagedServer.demo(data)) {
      ApiCaller officer = server.as("officer");
      try (FileChannel open = FileChannel.open(file, StandardOpenOption.WRITE)) {
        open.truncate(whole.length / 2);
      }
      ApiCaller.Answer read = officer.get("/api/borrowers");
      assertEquals(503, read.status());
      assertTrue(read.body().toString().contains("is damaged"), read.body().toString());
      assertEquals(503, officer.get("/q/health/ready").status());

      Files.write(file, whole, StandardOpenOption.WRITE);
      ApiCaller.Answer refused = enter(officer, "Saved Into Damage");
      assertEquals(503, refused.status(), () -> refused.body().toString());
      assertTrue(refused.body().toString().contains("is damaged"), refused.body().toString());
      assertEquals(503, officer.get("/q/health/ready").status());
      server.stop();
    }
    try (PackagedServer server = PackagedServer.demo(data)) {
      assertEquals(200, server.as("officer").get("/q/health/ready").status());
      assertEquals(201, enter(server.as("officer"), "Saved After A Start").status());
    }
  }
}
