package club.ascham.exchange;

import static club.ascham.web.Program.as;
import static org.hamcrest.Matchers.containsString;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.Settings;
import club.ascham.store.Rows;
import club.ascham.store.SqliteFile;
import club.ascham.story.SealedEntries;
import club.ascham.web.Visitor;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.Statement;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@QuarkusTest
class EverythingTest {
  private static final Pattern LINE =
      Pattern.compile("\\{\"seal\":\"([0-9a-f]{64})\",\"entry\":(.*)\\}");

  @Inject SealedEntries sealed;
  @Inject Settings settings;
  @Inject Rows rows;

  /** By its name in the folder of the zip. */
  private static Map<String, byte[]> everything() throws IOException {
    byte[] zip =
        as("officer")
            .get("/api/export/everything.zip")
            .then()
            .statusCode(200)
            .contentType("application/zip")
            .header("Content-Disposition", containsString(".zip"))
            .extract()
            .asByteArray();
    Map<String, byte[]> files = new TreeMap<>();
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip))) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        files.put(entry.getName().substring(entry.getName().indexOf('/') + 1), in.readAllBytes());
      }
    }
    return files;
  }

  private static String text(byte[] bytes) {
    return new String(bytes, StandardCharsets.UTF_8);
  }

  @Test
  void everyList_isAsItGoesOutAlone() throws IOException {
    Map<String, byte[]> files = everything();
    for (CsvList list : Lists.all()) {
      String alone = as("officer").get("/api/export/" + list.name() + ".csv").asString();
      assertEquals(alone, text(files.get("lists/" + list.name() + ".csv")), list.name());
    }
  }

  @Test
  void theRecord_endsWhereTheSqliteFileEnds_andCanBeReckonedAgain(@TempDir Path folder)
      throws Exception {
    Map<String, byte[]> files = everything();
    String newest = sealed.newest().orElseThrow();
    String database =
        files.keySet().stream().filter(name -> name.endsWith(".db")).findFirst().orElseThrow();
    assertTrue(database.contains(newest.substring(0, 12)), database);
    Path file = Files.write(folder.resolve("taken.db"), files.get(database));
    long entries;
    try (Connection connection = SqliteFile.open(file);
        Statement statement = connection.createStatement();
        ResultSet found = statement.executeQuery("SELECT count(*) FROM story")) {
      assertTrue(found.next());
      entries = found.getLong(1);
    }
    assertEquals(rows.number("SELECT count(*) FROM story"), entries);
    List<String> lines = text(files.get("record.jsonl")).lines().toList();
    assertEquals(entries, lines.size());
    String before = "";
    for (String line : lines) {
      Matcher parts = LINE.matcher(line);
      assertTrue(parts.matches(), line);
      assertEquals(
          parts.group(1),
          HexFormat.of()
              .formatHex(
                  MessageDigest.getInstance("SHA-256")
                      .digest((before + "\n" + parts.group(2)).getBytes(StandardCharsets.UTF_8))));
      before = parts.group(1);
    }
    assertEquals(newest, before);
    assertTrue(text(files.get("READ-ME.txt")).contains(newest));
  }

  @Test
  void nothingIsLeftBehind_inTheDataFolder() throws IOException {
    everything();
    try (Stream<Path> there = Files.list(settings.dataDir())) {
      assertEquals(
          List.of(),
          there.filter(file -> file.getFileName().toString().startsWith("copy-")).toList());
    }
  }

  @Test
  void onlyOfficers_takeEverythingAlong() {
    Visitor.signedInAs("officer").get("/exchange/everything.zip").then().statusCode(200);
    for (String name : List.of("volunteer", "committee")) {
      Visitor.signedInAs(name).get("/exchange/everything.zip").then().statusCode(403);
      as(name).get("/api/export/everything.zip").then().statusCode(403);
    }
  }
}
