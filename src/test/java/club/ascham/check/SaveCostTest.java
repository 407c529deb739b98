package club.ascham.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.door.SignedIn;
import club.ascham.fixture.ClubFixture;
import club.ascham.fixture.LaidBow;
import club.ascham.form.Outcome;
import club.ascham.form.Typed;
import club.ascham.id.CheckId;
import club.ascham.people.Actor;
import club.ascham.store.IdempotencyKeys;
import club.ascham.store.Rows;
import io.agroal.api.AgroalDataSource;
import io.quarkus.security.identity.CurrentIdentityAssociation;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * What gate, transaction, record and seal cost: a check as it is saved, against nothing but the
 * commit of the very same rows by JDBC into a copy of the file that has no triggers; in blocks by
 * turns, so that a slow minute of the machine hits both. Off by default: {@code mvn test -Pmeasure
 * -Dtest=SaveCostTest}.
 */
@QuarkusTest
@Tag("measure")
class SaveCostTest {
  private static final Logger LOG = Logger.getLogger(SaveCostTest.class);

  /** So many that all of it is compiled in full, as the few loops of the bare commit soon are. */
  private static final int WARM_UP = 20_000;

  private static final int BOWS = 40;
  private static final int BLOCKS = 30;
  private static final int SAVES_A_BLOCK = 40;
  private static final double RATIO_AT_LEAST = 0.5;

  /** The tables that a check writes, in the order in which they may be. */
  private static final List<String> WRITTEN =
      List.of(
          "bow_check",
          "check_sign",
          "verdict_line",
          "change",
          "story",
          "story_about",
          "personal",
          "idempotency_key");

  @Inject ClubFixture fixture;
  @Inject CheckDesk desk;
  @Inject RecordCheck recordCheck;
  @Inject Rows rows;
  @Inject IdempotencyKeys keys;
  @Inject Actor actor;
  @Inject AgroalDataSource source;
  @Inject CurrentIdentityAssociation identity;
  @Inject SignedIn signedIn;

  @ConfigProperty(name = "quarkus.datasource.jdbc.url")
  String url;

  /** The rows of one save, by table. */
  private record Saved(Map<String, List<Object[]>> rows) {
    int many() {
      return rows.values().stream().mapToInt(List::size).sum();
    }
  }

  @Test
  void aCheckIsSaved_atHalfTheRateAtLeast_ofTheCommitOfItsRows() throws Exception {
    identity.setIdentity(signedIn.as("officer"));
    List<LaidBow> bows = Stream.generate(fixture::aBowReadyToGoOut).limit(BOWS).toList();
    CheckEntry entry = recordCheck.read(desk.card(bows.get(0).id()), fine());
    for (int i = 0; i < WARM_UP; i++) {
      save(bows.get(i % BOWS), entry);
    }
    // Beside the file itself: what a commit costs is mostly the disk's.
    Path copy = file().resolveSibling("copy.db");
    rows.change("VACUUM INTO '" + copy + "'");
    double[] ours = new double[BLOCKS];
    double[] bare = new double[BLOCKS];
    int rowsOfOne = 0;
    String theirUrl = url.replaceFirst("sqlite:[^?]+", "sqlite:" + copy);
    assertTrue(theirUrl.contains("synchronous=FULL") && !theirUrl.equals(url), theirUrl);
    try (Connection theirs = DriverManager.getConnection(theirUrl)) {
      withoutTriggers(theirs);
      theirs.setAutoCommit(false);
      Map<String, PreparedStatement> inserts = new HashMap<>();
      // The first block of either is for the compiler and the cache.
      for (int block = -1; block < BLOCKS; block++) {
        long nanos = 0;
        long theirNanos = 0;
        Map<String, Long> before = newest();
        for (int i = 0; i < SAVES_A_BLOCK; i++) {
          long start = System.nanoTime();
          save(bows.get(i % BOWS), entry);
          nanos += System.nanoTime() - start;
          Map<String, Long> after = newest();
          Saved saved = between(before, after);
          before = after;
          rowsOfOne = saved.many();
          start = System.nanoTime();
          commit(theirs, inserts, saved);
          theirNanos += System.nanoTime() - start;
        }
        if (block >= 0) {
          ours[block] = SAVES_A_BLOCK / (nanos / 1e9);
          bare[block] = SAVES_A_BLOCK / (theirNanos / 1e9);
        }
      }
    }
    double[] ratios = new double[BLOCKS];
    Arrays.setAll(ratios, i -> ours[i] / bare[i]);
    double ratio = median(ratios);
    String report =
        "a check of %d rows: saved %.0f/s, bare commit of its rows %.0f/s, ratio %.2f (medians of %d blocks; ratio from %.2f to %.2f)"
            .formatted(
                rowsOfOne,
                median(ours),
                median(bare),
                ratio,
                BLOCKS,
                Arrays.stream(ratios).min().orElseThrow(),
                Arrays.stream(ratios).max().orElseThrow());
    LOG.info(report);
    assertTrue(ratio >= RATIO_AT_LEAST, report);
  }

  private Path file() {
    return Path.of(rows.texts("SELECT file FROM pragma_database_list WHERE name = 'main'").get(0));
  }

  private static Typed fine() {
    return Typed.of(
        Map.of(
            "allAsListed", "on",
            "brace", "216 mm",
            "braceFrom", "grip-throat",
            "tillerUpper", "190 mm",
            "tillerLower", "186 mm",
            "string", "fine",
            "limbs", "fine",
            "bolts", "fine"));
  }

  private void save(LaidBow bow, CheckEntry entry) {
    IdempotencyKeys.Press press =
        new IdempotencyKeys.Press(
            actor.id(), "POST /check/1", UUID.randomUUID().toString(), "0".repeat(64));
    assertInstanceOf(
        Outcome.Done.class,
        keys.once(
            press,
            (kind, id) -> new CheckId(id),
            () -> recordCheck.record(bow.id(), entry),
            Outcome::done));
  }

  private static void withoutTriggers(Connection theirs) throws SQLException {
    try (Statement statement = theirs.createStatement()) {
      List<String> triggers = new ArrayList<>();
      try (ResultSet found =
          statement.executeQuery("SELECT name FROM sqlite_master WHERE type = 'trigger'")) {
        while (found.next()) {
          triggers.add(found.getString(1));
        }
      }
      assertTrue(triggers.size() > 50, triggers.size() + " triggers");
      for (String trigger : triggers) {
        statement.execute("DROP TRIGGER " + trigger);
      }
    }
  }

  /** The newest row of every table. */
  private Map<String, Long> newest() {
    Map<String, Long> newest = new LinkedHashMap<>();
    for (String table : tables()) {
      newest.put(table, rows.number("SELECT max(rowid) FROM \"" + table + "\""));
    }
    return newest;
  }

  private List<String> tables() {
    return rows.texts(
        "SELECT name FROM pragma_table_list WHERE schema = 'main' AND type = 'table' AND wr = 0 AND name NOT GLOB 'sqlite_*' ORDER BY name");
  }

  private Saved between(Map<String, Long> before, Map<String, Long> after) throws SQLException {
    Map<String, List<Object[]>> saved = new LinkedHashMap<>();
    try (Connection connection = source.getConnection()) {
      for (String table : WRITTEN) {
        try (PreparedStatement statement =
            connection.prepareStatement("SELECT * FROM " + table + " WHERE rowid > ?")) {
          statement.setLong(1, before.get(table));
          try (ResultSet found = statement.executeQuery()) {
            while (found.next()) {
              Object[] row = new Object[found.getMetaData().getColumnCount()];
              for (int i = 0; i < row.length; i++) {
                row[i] = found.getObject(i + 1);
              }
              saved.computeIfAbsent(table, t -> new ArrayList<>()).add(row);
            }
          }
        }
      }
    }
    Map<String, Long> others = new LinkedHashMap<>(after);
    Map<String, Long> othersBefore = new LinkedHashMap<>(before);
    others.keySet().removeAll(WRITTEN);
    othersBefore.keySet().removeAll(WRITTEN);
    assertEquals(othersBefore, others, "it writes into no other table");
    return new Saved(saved);
  }

  private static void commit(
      Connection connection, Map<String, PreparedStatement> inserts, Saved saved)
      throws SQLException {
    for (Map.Entry<String, List<Object[]>> table : saved.rows().entrySet()) {
      for (Object[] row : table.getValue()) {
        PreparedStatement insert = inserts.get(table.getKey());
        if (insert == null) {
          insert =
              connection.prepareStatement(
                  "INSERT INTO "
                      + table.getKey()
                      + " VALUES (?"
                      + ", ?".repeat(row.length - 1)
                      + ")");
          inserts.put(table.getKey(), insert);
        }
        for (int i = 0; i < row.length; i++) {
          insert.setObject(i + 1, row[i]);
        }
        insert.executeUpdate();
      }
    }
    connection.commit();
  }

  private static double median(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }
}
