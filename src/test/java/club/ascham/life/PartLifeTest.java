package club.ascham.life;

import static org.junit.jupiter.api.Assertions.assertEquals;

import club.ascham.life.PartLife.Measure;
import club.ascham.statistics.Service;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PartLifeTest {
  private static final LocalDate NEW = LocalDate.of(2024, 3, 1);

  private static PartLife part(LocalDate watched, LocalDate until, End end, long loans) {
    return new PartLife("S00001", "polyester", NEW, watched, until, end, loans, 40 * loans);
  }

  @Test
  void aNewPart_isWatchedFromTheStart() {
    PartLife part = part(NEW, NEW.plusDays(400), End.FAILED, 9);
    assertEquals(Optional.of(new Service(0, 400, true)), part.service(Measure.DAYS));
    assertEquals(Optional.of(new Service(0, 9, true)), part.service(Measure.LOANS));
    assertEquals(Optional.of(new Service(0, 360, true)), part.service(Measure.SHOTS));
  }

  @Test
  void onePartOlderThanTheRecord_countsFromTheAgeAtWhichItWasEntered_andTellsNothingInLoans() {
    PartLife part = part(NEW.plusDays(300), NEW.plusDays(500), End.IN_USE, 9);
    assertEquals(Optional.of(new Service(300, 500, false)), part.service(Measure.DAYS));
    assertEquals(Optional.empty(), part.service(Measure.LOANS));
  }

  @Test
  void whatWasLost_didNotFail() {
    assertEquals(
        Optional.of(new Service(0, 100, false)),
        part(NEW, NEW.plusDays(100), End.LOST, 2).service(Measure.DAYS));
  }

  @Test
  void whatWasNeverWatched_tellsNothing() {
    assertEquals(
        Optional.empty(),
        part(NEW.plusDays(9), NEW.plusDays(9), End.SOLD, 0).service(Measure.DAYS));
  }
}
