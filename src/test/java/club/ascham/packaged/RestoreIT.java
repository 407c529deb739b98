package club.ascham.packaged;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The drill: the file is destroyed, and the one documented command brings everything back. */
class RestoreIT {
  @TempDir Path folder;

  private static ApiCaller.Answer enter(ApiCaller officer, String name)
      throws IOException, InterruptedException {
    ApiCaller.Answer entered =
        officer.post(
            "/api/borrowers",
            Map.of("name", name, "contact", "someone@example.org", "ageBand", "adult"));
    assertEquals(201, entered.status(), () -> entered.body().toString());
    return entered;
  }

  private static String name(ApiCaller officer, long borrower)
      throws IOException, InterruptedException {
    return officer.get("/api/borrowers/" + borrower).body().path("name").asText();
  }

  private static String newestSeal(ApiCaller officer) throws IOException, InterruptedException {
    return officer.get("/api/record?size=1").body().path("items").path(0).path("seal").asText();
  }

  @Test
  void afterTheFileWasDestroyed_everythingOfTheBackupIsThere() throws Exception {
    Path data = folder.resolve("data");
    List<Long> saved = new ArrayList<>();
    Path backup;
    String seal;
    try (PackagedServer server = PackagedServer.demo(data)) {
      ApiCaller officer = server.as("officer");
      for (int i = 0; i < 20; i++) {
        saved.add(enter(officer, "Saved Before " + i).id());
      }
      seal = newestSeal(officer);
      ApiCaller.Answer made = officer.post("/api/backups", Map.of());
      assertEquals(201, made.status(), () -> made.body().toString());
      backup = data.resolve("backups").resolve(made.body().path("file").asText());
      assertTrue(backup.getFileName().toString().contains(seal.substring(0, 12)), backup::toString);
      enter(officer, "Saved After");

      RestoreCommand.Ended whileItRuns = RestoreCommand.run(data, backup);
      assertEquals(1, whileItRuns.code(), whileItRuns.said());
      assertTrue(whileItRuns.said().contains("stop it first"), whileItRuns.said());
      server.kill();
    }
    destroy(data.resolve("ascham.db"));

    PackagedServer.DidNotStart refused = doesNotStart(data);
    assertTrue(refused.getMessage().contains("is damaged"), refused.getMessage());
    assertTrue(refused.getMessage().contains("restore " + backup), refused.getMessage());
    assertFalse(refused.getMessage().contains("\tat "), refused.getMessage());

    RestoreCommand.Ended restored = RestoreCommand.run(data, backup);
    assertEquals(0, restored.code(), restored.said());
    assertTrue(restored.said().contains(seal), restored.said());
    try (Stream<Path> there = Files.list(data)) {
      assertTrue(
          there.anyMatch(file -> file.getFileName().toString().startsWith("set-aside-")),
          "the destroyed file is kept");
    }

    try (PackagedServer server = PackagedServer.demo(data)) {
      ApiCaller officer = server.as("officer");
      for (int i = 0; i < saved.size(); i++) {
        assertEquals("Saved Before " + i, name(officer, saved.get(i)));
      }
      officer.findsTheRecordWhole();
      assertEquals(seal, newestSeal(officer));
      enter(officer, "Saved After The Restore");
      officer.findsTheRecordWhole();
      server.stop();
    }
    try (Ledger ledger = Ledger.of(data)) {
      ledger.isSound();
      assertEquals(0, ledger.number("SELECT count(*) FROM borrower WHERE name = 'Saved After'"));
    }
  }

  @Test
  void aSecondServerOnTheFolder_doesNotStart_andTheFirstGoesOn() throws Exception {
    Path data = folder.resolve("data");
    try (PackagedServer first = PackagedServer.demo(data)) {
      PackagedServer.DidNotStart second = doesNotStart(data);
      assertTrue(
          second.getMessage().contains("Another Ascham runs on the data folder"),
          second.getMessage());
      assertFalse(second.getMessage().contains("\tat "), second.getMessage());
      enter(first.as("officer"), "Saved By The First");
      // However it ends, the folder is free again.
      first.kill();
    }
    try (PackagedServer next = PackagedServer.demo(data)) {
      enter(next.as("officer"), "Saved By The Next");
    }
  }

  private PackagedServer.DidNotStart doesNotStart(Path data) throws Exception {
    try (PackagedServer server = PackagedServer.demo(data)) {
      throw new AssertionError("it started\n" + server.log());
    } catch (PackagedServer.DidNotStart refused) {
      return refused;
    }
  }

  private static void destroy(Path file) throws IOException {
    byte[] bytes = Files.readAllBytes(file);
    for (int at = 4096; at < bytes.length; at += 4096) {
      Arrays.fill(bytes, at, Math.min(at + 200, bytes.length), (byte) 'X');
    }
    Files.write(file, bytes);
    // With the log of writes SQLite could mend some of these pages.
    Files.deleteIfExists(Path.of(file + "-wal"));
    Files.deleteIfExists(Path.of(file + "-shm"));
  }
}
