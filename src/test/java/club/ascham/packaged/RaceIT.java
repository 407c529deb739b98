package club.ascham.packaged;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.packaged.ApiCaller.Answer;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.Random;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.jboss.logging.Logger;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Sixty-four people want the same few kits at once, and lend, extend, receive, check and inspect
 * them over each other's heads. The long form is off by default: {@code mvn verify -Pmeasure
 * -Dit.test=RaceIT -Dtest=none -Dsurefire.failIfNoSpecifiedTests=false}.
 */
class RaceIT {
  private static final Logger LOG = Logger.getLogger(RaceIT.class);
  private static final int PEOPLE = 64;
  private static final int KITS = 4;

  /** Loans below which it was no race yet, however slow the machine. */
  private static final int LOANS_AT_LEAST = 5 * KITS;

  private enum Deed {
    ISSUE,
    EXTEND,
    RECEIVE,
    CHECK,
    PUT_BACK,
    INSPECT
  }

  @TempDir Path folder;

  /** What was answered with success, by deed: the number of what was made or changed. */
  private final Map<Deed, Queue<Long>> done = new EnumMap<>(Deed.class);

  private final Queue<String> extended = new ConcurrentLinkedQueue<>();
  private final Queue<String> wrong = new ConcurrentLinkedQueue<>();
  private final AtomicInteger refused = new AtomicInteger();
  private final AtomicInteger busy = new AtomicInteger();

  RaceIT() {
    for (Deed deed : Deed.values()) {
      done.put(deed, new ConcurrentLinkedQueue<>());
    }
  }

  @Test
  void theSameKits_wantedBySixtyFourAtOnce_areEachLentOnce() throws Exception {
    race(Duration.ofSeconds(10));
  }

  @Test
  @Tag("measure")
  void theSameKits_wantedBySixtyFourForAMinute_areEachLentOnce() throws Exception {
    race(Duration.ofMinutes(1));
  }

  private void race(Duration time) throws Exception {
    Path data = folder.resolve("data");
    try (PackagedServer server = PackagedServer.demo(data)) {
      List<Bow> kits = Bow.ready(server.as("officer")).subList(0, KITS);
      everyoneAtOnce(server, kits, time);
      try (Ledger ledger = Ledger.of(data)) {
        ledger.isSound();
        assertNothingLost(ledger);
      }
      server.as("officer").findsTheRecordWhole();
      server.stop();
    }
    LOG.infof(
        "%d people, %d kits, %d s: %s; %d refused, %d told to come again.",
        PEOPLE, KITS, time.toSeconds(), counts(), refused.get(), busy.get());
  }

  private void everyoneAtOnce(PackagedServer server, List<Bow> kits, Duration time)
      throws Exception {
    long until = System.nanoTime() + time.toNanos();
    ExecutorService people = Executors.newFixedThreadPool(PEOPLE);
    try {
      List<Future<?>> all = new ArrayList<>();
      for (int i = 0; i < PEOPLE; i++) {
        Random random = new Random(i);
        String name = "racer-" + i + "-";
        ApiCaller officer = server.as("officer");
        all.add(
            people.submit(
                () -> {
                  for (int n = 0; !isOver(until); n++) {
                    one(officer, kits.get(random.nextInt(KITS)), random, name + n);
                  }
                  return null;
                }));
      }
      for (Future<?> one : all) {
        one.get(time.toSeconds() + 240, TimeUnit.SECONDS);
      }
    } finally {
      people.shutdownNow();
    }
    assertEquals(List.of(), wrong.stream().limit(5).toList(), server::log);
  }

  private boolean isOver(long until) {
    return !wrong.isEmpty()
        || System.nanoTime() >= until && done.get(Deed.ISSUE).size() >= LOANS_AT_LEAST;
  }

  /** Looks at the kit as others left it, and wants what would be next; someone may be faster. */
  private void one(ApiCaller officer, Bow kit, Random random, String name)
      throws IOException, InterruptedException {
    JsonNode rig = officer.get("/api/rigs/" + kit.rig()).body();
    switch (rig.path("state").asText()) {
      case "ready" -> tried(Deed.ISSUE, officer.post("/api/loans", kit.issue(name)), null);
      case "on-loan" -> {
        long loan = rig.path("loanId").asLong();
        if (random.nextBoolean()) {
          int version = officer.get("/api/loans/" + loan).body().path("version").asInt();
          Answer answer =
              officer.post(
                  "/api/loans/" + loan + "/extend",
                  Map.of("dueOn", Bow.due(60 + random.nextInt(60)), "version", version));
          tried(Deed.EXTEND, answer, loan);
          if (answer.status() == 200) {
            extended.add("loan " + loan + " as read in version " + version);
          }
        } else {
          tried(Deed.RECEIVE, officer.post("/api/receipts", Map.of("loanId", loan)), null);
        }
      }
      default -> toBeChecked(officer, kit, random, name);
    }
  }

  /**
   * Most want it all the same. Only some check it: a check that another one follows at once puts
   * nothing back, so that sixty-four who all check would keep it in for good.
   */
  private void toBeChecked(ApiCaller officer, Bow kit, Random random, String name)
      throws IOException, InterruptedException {
    switch (random.nextInt(16)) {
      case 0 -> {
        Answer check = officer.post("/api/checks", kit.check());
        tried(Deed.CHECK, check, null);
        if (check.status() == 201) {
          tried(
              Deed.PUT_BACK,
              officer.post("/api/checks/" + check.id() + "/release", Map.of()),
              kit.rig());
        }
      }
      case 1 -> tried(Deed.INSPECT, officer.post("/api/inspections", kit.boltInspection()), null);
      default -> tried(Deed.ISSUE, officer.post("/api/loans", kit.issue(name)), null);
    }
  }

  /**
   * @param subject the number of what was changed; null: the answer's own
   */
  private void tried(Deed deed, Answer answer, Long subject) {
    switch (answer.status()) {
      case 200, 201 -> done.get(deed).add(subject == null ? answer.id() : subject);
      case 409, 422 -> refused.incrementAndGet();
      case 503 -> {
        busy.incrementAndGet();
        if (answer.headers().firstValue("Retry-After").isEmpty()) {
          wrong.add(deed + ": 503 without Retry-After");
        }
      }
      default -> wrong.add(deed + ": " + answer.status() + " " + answer.body());
    }
  }

  private void assertNothingLost(Ledger ledger) throws Exception {
    Collection<Long> issued = done.get(Deed.ISSUE);
    assertTrue(refused.get() > issued.size(), "hardly a race: " + refused + " refusals");
    assertEquals(issued.size(), new HashSet<>(issued).size(), "one success, one loan");
    assertEquals(
        issued.size(),
        ledger.number(
            """
            SELECT count(*) FROM loan l JOIN borrower b ON b.id = l.borrower_id WHERE b.name LIKE 'racer-%'"""),
        "loans that were answered with success, and those in the file");
    assertEquals(
        extended.size(),
        new HashSet<>(extended).size(),
        () -> "an extension overwrote one that its sender never saw: " + extended);
    for (long loan : issued) {
      // One change of the loan for each extension that was answered with success, and one for its
      // receipt.
      long extensions = done.get(Deed.EXTEND).stream().filter(id -> id == loan).count();
      long receipts = ledger.number("SELECT count(*) FROM receipt WHERE loan_id = ?1", loan);
      assertTrue(receipts <= 1, "loan " + loan + " came back " + receipts + " times");
      assertEquals(
          extensions + receipts,
          ledger.number("SELECT version FROM loan WHERE id = ?1", loan),
          "changes of loan " + loan);
    }
    for (long receipt : done.get(Deed.RECEIVE)) {
      assertTrue(
          ledger.number("SELECT count(*) FROM loan_line WHERE receipt_id = ?1", receipt) > 0,
          "receipt " + receipt);
    }
    for (long check : done.get(Deed.CHECK)) {
      assertEquals(
          3,
          ledger.number("SELECT count(*) FROM check_sign WHERE check_id = ?1", check),
          "signs of check " + check);
    }
    assertEquals(
        done.get(Deed.PUT_BACK).size(),
        ledger.number(
            "SELECT count(*) FROM story WHERE sentence = 'Put back after its check.' AND id > ?1",
            storiesBefore(ledger)),
        "bows put back, and stories of it");
  }

  /** The last story of the demo club itself: those of the race come after its first loan's. */
  private long storiesBefore(Ledger ledger) throws Exception {
    long first = done.get(Deed.ISSUE).stream().mapToLong(Long::longValue).min().orElseThrow();
    return ledger.number("SELECT min(id) FROM story WHERE loan_id = ?1", first);
  }

  private Map<Deed, Integer> counts() {
    Map<Deed, Integer> counts = new EnumMap<>(Deed.class);
    done.forEach((deed, ids) -> counts.put(deed, ids.size()));
    return counts;
  }
}
