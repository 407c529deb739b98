package club.ascham.years;

import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.door.SignedIn;
import club.ascham.people.Passwords;
import club.ascham.store.Rows;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.security.identity.CurrentIdentityAssociation;
import io.quarkus.test.junit.QuarkusMock;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.Random;
import org.jboss.logging.Logger;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Makes a club with years behind it, in {@code target/clubs}: {@code mvn test -Pmeasure
 * -Dtest=ClubsOfYearsTest -Dclub=X5 -Dtest.clock.at=2016-12-01T08:00:00Z}.
 */
@QuarkusTest
@Tag("measure")
@TestProfile(ClubsOfYearsTest.NewClub.class)
class ClubsOfYearsTest {
  private static final Logger LOG = Logger.getLogger(ClubsOfYearsTest.class);
  private static final long SEED = 20261201;
  private static final int RIGS_AT_ONCE = 20;

  public static class NewClub implements QuarkusTestProfile {
    @Override
    public Map<String, String> getConfigOverrides() {
      return Map.of("ascham.demo", "false", "quarkus.log.category.\"club.ascham\".level", "INFO");
    }
  }

  @Inject YearsGoBy years;
  @Inject Rows rows;
  @Inject Passwords passwords;
  @Inject CurrentIdentityAssociation identity;
  @Inject SignedIn signedIn;

  /** Says what it is told, and goes on by seconds with each question: no two facts are at once. */
  private static final class DayClock extends Clock {
    private Instant now;

    void at(Instant moment) {
      now = moment;
    }

    @Override
    public Instant instant() {
      now = now.plusMillis(7);
      return now;
    }

    @Override
    public ZoneId getZone() {
      return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
      return this;
    }
  }

  @Test
  void aClub_asItStandsAfterItsYears() throws IOException {
    SizeOfClub size = SizeOfClub.valueOf(System.getProperty("club", "X1"));
    DayClock clock = new DayClock();
    LocalDate last = LocalDate.now(ZoneOffset.UTC).minusDays(1);
    LocalDate first = last.minusYears(size.years);
    clock.at(first.atTime(8, 0).toInstant(ZoneOffset.UTC));
    QuarkusMock.installMockForType(clock, Clock.class);
    QuarkusTransaction.requiringNew().run(() -> account("officer", "OFFICER"));
    QuarkusTransaction.requiringNew().run(() -> account("volunteer", "VOLUNTEER"));
    QuarkusTransaction.requiringNew().run(() -> account("committee", "COMMITTEE"));
    identity.setIdentity(signedIn.as("officer"));
    Random random = new Random(SEED);
    YearsGoBy.Tally tally = new YearsGoBy.Tally();
    long start = System.nanoTime();
    for (int i = 0; i < size.rigs; i += RIGS_AT_ONCE) {
      years.begin(i, Math.min(size.rigs, i + RIGS_AT_ONCE), random, tally);
    }
    for (LocalDate day = first.plusDays(1); !day.isAfter(last); day = day.plusDays(1)) {
      clock.at(day.atTime(18, 0).toInstant(ZoneOffset.UTC));
      years.day(day, size.rigs, random, tally);
      if (day.getDayOfYear() == 1) {
        LOG.infof("%s: %s, %.0f s", size, day, (System.nanoTime() - start) / 1e9);
      }
    }
    Path folder = Path.of("target", "clubs", size.name());
    Files.createDirectories(folder);
    Files.deleteIfExists(folder.resolve("ascham.db"));
    rows.change("VACUUM INTO '" + folder.resolve("ascham.db") + "'");
    LOG.infof(
        "%s in %.0f s, %.1f MB: %s; refused: %s",
        size,
        (System.nanoTime() - start) / 1e9,
        Files.size(folder.resolve("ascham.db")) / 1e6,
        tally.done,
        tally.refused);
    int loans = tally.done.getOrDefault("issued", 0);
    assertTrue(
        loans > 7 * size.rigs * size.years && tally.done.getOrDefault("checked", 0) >= loans * 0.8,
        "too little of it came about: " + tally.done);
  }

  private void account(String name, String role) {
    rows.change(
        "INSERT INTO account (name, password_hash, role, permit_until) VALUES (?1, ?2, ?3, '2099-01-01')",
        name,
        passwords.hash("demo-fleet"),
        role);
  }
}
