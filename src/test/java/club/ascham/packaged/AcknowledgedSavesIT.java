package club.ascham.packaged;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import org.jboss.logging.Logger;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What the server acknowledged survives {@code kill -9}, at whatever moment it falls. The moments
 * come from a seed: {@code -Dascham.kill-seed=…} tries others. The long form is off by default:
 * {@code mvn verify -Pmeasure -Dit.test=AcknowledgedSavesIT -Dtest=none
 * -Dsurefire.failIfNoSpecifiedTests=false}.
 */
class AcknowledgedSavesIT {
  private static final Logger LOG = Logger.getLogger(AcknowledgedSavesIT.class);
  private static final long SEED = Long.getLong("ascham.kill-seed", 1545);
  private static final int CLERKS = 4;

  /** Long enough that some kills fall on the log of writes being folded into the file. */
  private static final int LATEST_KILL_MS = 1200;

  @TempDir Path folder;

  private final List<Clerk> clerks = new ArrayList<>();
  private final Random random = new Random(SEED);
  private int savedUnheard;

  @Test
  void whatWasAcknowledged_isThereAfterEachOfEightKills() throws Exception {
    survives(8);
  }

  @Test
  @Tag("measure")
  void whatWasAcknowledged_isThereAfterEachOfTwoHundredKills() throws Exception {
    survives(200);
  }

  private void survives(int kills) throws Exception {
    Path data = folder.resolve("data");
    long started = System.nanoTime();
    PackagedServer server = PackagedServer.demo(data);
    try {
      hire(server);
      for (int kill = 1; kill <= kills; kill++) {
        workUntilKilled(server);
        server = PackagedServer.demo(data);
        List<Saved> fresh = of(Clerk::savedSince);
        assertFalse(fresh.isEmpty(), "nothing was saved before kill " + kill);
        try (Ledger ledger = Ledger.of(data)) {
          ledger.isSound();
          assertAllThere(ledger, fresh, kill);
          savedUnheard += savedUnheard(ledger);
        }
        server.as("officer").findsTheRecordWhole();
        assertEquals(
            "[]",
            server.as("officer").get("/api/server").body().path("items").toString(),
            "a kill is no loss, whatever the high-water mark had come to");
      }
      for (Clerk clerk : clerks) {
        clerk.settle(server.as("officer"));
      }
      try (Ledger ledger = Ledger.of(data)) {
        ledger.isSound();
        assertAllThere(ledger, of(Clerk::saved), kills);
        assertEquals(
            List.of(),
            ledger.texts(
                """
                SELECT b.name, count(*) FROM loan l JOIN borrower b ON b.id = l.borrower_id
                 WHERE b.name LIKE 'clerk-%' GROUP BY b.name HAVING count(*) > 1"""),
            "one press, one loan");
        report(kills, Duration.ofNanos(System.nanoTime() - started));
      }
      server.stop();
    } finally {
      server.close();
    }
  }

  /** Each has bows of their own, so that each knows what has to be there. */
  private void hire(PackagedServer server) throws Exception {
    List<Bow> bows = Bow.ready(server.as("officer"));
    assertTrue(bows.size() >= 2 * CLERKS, bows.size() + " ready bows");
    int each = bows.size() / CLERKS;
    for (int i = 0; i < CLERKS; i++) {
      clerks.add(new Clerk("clerk-" + i, bows.subList(i * each, (i + 1) * each)));
    }
  }

  private void workUntilKilled(PackagedServer server) throws Exception {
    CountDownLatch busy = new CountDownLatch(CLERKS);
    ExecutorService desks = Executors.newFixedThreadPool(CLERKS);
    try {
      List<Future<?>> working = new ArrayList<>();
      for (Clerk clerk : clerks) {
        working.add(
            desks.submit(
                () -> {
                  clerk.work(server.as("officer"), busy::countDown);
                  return null;
                }));
      }
      busy.await(1, TimeUnit.MINUTES);
      assertFalse(
          server.endsWithin(Duration.ofMillis(random.nextInt(LATEST_KILL_MS))), server::log);
      server.kill();
      for (Future<?> one : working) {
        one.get(1, TimeUnit.MINUTES);
      }
    } finally {
      desks.shutdownNow();
    }
  }

  private <T> List<T> of(Function<Clerk, Collection<T>> each) {
    return clerks.stream().flatMap(clerk -> each.apply(clerk).stream()).toList();
  }

  /** Of the calls that the last kill cut off, how many were saved before it fell. */
  private int savedUnheard(Ledger ledger) throws SQLException {
    int many = 0;
    for (String key : of(Clerk::justCut)) {
      many += ledger.number("SELECT count(*) FROM idempotency_key WHERE key = ?1", key);
    }
    return many;
  }

  private static void assertAllThere(Ledger ledger, List<Saved> saved, int kill)
      throws SQLException {
    List<String> lost = new ArrayList<>();
    for (Saved one : saved) {
      if (!one.isIn(ledger)) {
        lost.add(one.what());
      }
    }
    assertEquals(List.of(), lost, "acknowledged, and not there after kill " + kill);
  }

  /** How much it was worth: cut off are the calls that a kill left without an answer. */
  private void report(int kills, Duration took) {
    int cut = of(Clerk::cut).size();
    assertTrue(cut >= kills, "the kills fell into idle moments: " + cut + " calls cut off");
    LOG.infof(
        "%d kills, seed %d: %d saves acknowledged and all there; %d calls cut off, %d of them saved"
            + " all the same; %.0f s.",
        kills, SEED, of(Clerk::saved).size(), cut, savedUnheard, took.toMillis() / 1000.0);
  }
}
