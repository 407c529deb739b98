package club.ascham.packaged;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The log of writes is gone after a cut: saves that were acknowledged are missing from the file.
 */
class LostLogIT {
  private static final Duration MARK_IS_BEHIND_AT_MOST = Duration.ofSeconds(20);

  @TempDir Path folder;

  private static long enter(ApiCaller officer, String name)
      throws IOException, InterruptedException {
    ApiCaller.Answer entered =
        officer.post(
            "/api/borrowers",
            Map.of("name", name, "contact", "someone@example.org", "ageBand", "adult"));
    assertEquals(201, entered.status(), () -> entered.body().toString());
    return entered.id();
  }

  private static JsonNode newestEntry(ApiCaller officer) throws IOException, InterruptedException {
    return officer.get("/api/record?size=1").body().path("items").path(0);
  }

  private static JsonNode worries(ApiCaller officer) throws IOException, InterruptedException {
    return officer.get("/api/server").body().path("items");
  }

  /** Until the mark holds this seal. */
  private static void waitForTheMark(PackagedServer server, Path data, String seal)
      throws IOException, InterruptedException {
    Path mark = data.resolve("high-water-mark");
    long patience = MARK_IS_BEHIND_AT_MOST.toMillis();
    while (!(Files.exists(mark) && Files.readString(mark).contains(seal))) {
      assertTrue(patience > 0, "the mark does not follow");
      assertFalse(server.endsWithin(Duration.ofMillis(100)), server::log);
      patience -= 100;
    }
  }

  @Test
  void whatWasLostWithTheLog_isToldUntilItIsRead_andNothingElseIs() throws Exception {
    Path data = folder.resolve("data");
    Path backup;
    try (PackagedServer server = PackagedServer.demo(data)) {
      ApiCaller officer = server.as("officer");
      ApiCaller.Answer made = officer.post("/api/backups", Map.of());
      assertEquals(201, made.status(), () -> made.body().toString());
      backup = data.resolve("backups").resolve(made.body().path("file").asText());
      long erased = enter(officer, "Wren Soon-Erased");
      assertEquals(
          200,
          officer.post("/api/borrowers/" + erased + "/erasure", Map.of()).status(),
          "erasing writes the file anew");
      String seal = newestEntry(officer).path("seal").asText();
      waitForTheMark(server, data, seal);
      server.kill();
    }
    String lastSeal;
    long lost;
    try (PackagedServer server = PackagedServer.demo(data)) {
      ApiCaller officer = server.as("officer");
      assertEquals("[]", worries(officer).toString(), "neither a kill nor an erasing is a loss");
      enter(officer, "Tess Lost");
      enter(officer, "Wilf Lost");
      lost = newestEntry(officer).path("number").asLong();
      lastSeal = newestEntry(officer).path("seal").asText();
      waitForTheMark(server, data, lastSeal);
      server.kill();
    }
    Path log = data.resolve("ascham.db-wal");
    assertTrue(Files.size(log) > 0, "there is something to lose");
    Files.delete(log);
    Files.deleteIfExists(data.resolve("ascham.db-shm"));

    try (PackagedServer server = PackagedServer.demo(data)) {
      ApiCaller officer = server.as("officer");
      JsonNode said = worries(officer);
      assertEquals(1, said.size(), said::toString);
      assertEquals("record", said.path(0).path("about").asText());
      assertTrue(said.path(0).path("said").asText().contains("to " + lost + " of the record"));
      assertTrue(server.log().contains(said.path(0).path("said").asText()), server::log);
      assertEquals(503, officer.get("/q/health/well").status());
      assertEquals(200, officer.get("/q/health/ready").status());
      officer.findsTheRecordWhole();
      server.stop();
    }
    try (PackagedServer server = PackagedServer.demo(data)) {
      ApiCaller officer = server.as("officer");
      assertEquals(1, worries(officer).size(), "until it is read");
      assertEquals(200, officer.post("/api/server/read/record", Map.of()).status());
      assertEquals("[]", worries(officer).toString());
      assertTrue(
          newestEntry(officer).path("sentence").asText().startsWith("Read that the club’s file"));
      server.stop();
      assertTrue(
          Files.readString(data.resolve("high-water-mark"))
              .contains("\nend " + lastNumber(data) + " "),
          "a clean stop leaves the mark behind by nothing");
    }
    assertEquals(0, RestoreCommand.run(data, backup).code());
    try (PackagedServer server = PackagedServer.demo(data)) {
      assertEquals("[]", worries(server.as("officer")).toString(), "brought back on purpose");
      assertFalse(server.log().contains("was opened on"), server::log);
      server.stop();
    }
  }

  private static long lastNumber(Path data) throws Exception {
    try (Ledger ledger = Ledger.of(data)) {
      return ledger.number("SELECT max(id) FROM story");
    }
  }
}
