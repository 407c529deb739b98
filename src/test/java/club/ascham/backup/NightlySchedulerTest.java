package club.ascham.backup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.SettingsOf;
import club.ascham.store.DataFolder;
import club.ascham.store.ScrubbingOf;
import club.ascham.time.ClubTimeOf;
import club.ascham.time.NightlyRound;
import jakarta.enterprise.event.Event;
import java.lang.reflect.Proxy;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The night's round, with a round that fails when a test says so. */
class NightlySchedulerTest {
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-11-25T21:04:09Z"), ZoneOffset.UTC);

  @TempDir Path tmp;
  private final List<LocalDate> rounds = new ArrayList<>();
  private Throwable fails;
  private Path data;
  private Path stick;
  private NightlyScheduler night;

  @BeforeEach
  void aNightWithItsBackup() throws Exception {
    data = Files.createDirectory(tmp.resolve("data"));
    stick = tmp.resolve("stick");
    SmallClub.in(new DataFolder(data).file());
    SettingsOf settings = new SettingsOf(data, Optional.of(stick), ZoneId.of("Europe/London"));
    Backups backups = BackupsOf.of(settings, CLOCK);
    backups.make();
    night =
        new NightlyScheduler(
            backups,
            new TellBackup(null),
            round(),
            ScrubbingOf.nothingOwed(settings),
            ClubTimeOf.clock(CLOCK, settings));
  }

  @SuppressWarnings("unchecked")
  private Event<NightlyRound> round() {
    return (Event<NightlyRound>)
        Proxy.newProxyInstance(
            getClass().getClassLoader(),
            new Class<?>[] {Event.class},
            (proxy, method, arguments) -> {
              if (fails != null) {
                throw fails;
              }
              rounds.add(((NightlyRound) arguments[0]).day());
              return null;
            });
  }

  @Test
  void theRound_isMadeOnceADay() {
    night.look();
    night.look();
    assertEquals(List.of(LocalDate.of(2026, 11, 25)), rounds);
    assertEquals(Optional.empty(), night.worry());
  }

  @Test
  void aRoundThatFails_isTold_andTriedAgain_whateverItThrows() {
    for (Throwable thrown : List.of(new IllegalStateException("no"), new NoSuchFieldError("no"))) {
      fails = thrown;
      night.look();
      assertTrue(night.worry().orElseThrow().startsWith("What is done each night failed"));
    }
    fails = null;
    night.look();
    assertEquals(Optional.empty(), night.worry());
    assertEquals(1, rounds.size());
  }

  @Test
  void aStickThatIsBack_getsItsCopies_withoutAnyonesPress() throws Exception {
    night.look();
    assertTrue(Files.notExists(stick));
    Files.createDirectory(stick);
    night.look();
    assertEquals(1, stick.toFile().list().length);
  }
}
