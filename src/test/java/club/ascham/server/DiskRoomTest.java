package club.ascham.server;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DiskRoomTest {
  @ParameterizedTest(name = "{0} MB free beside a file of {1} MB: nearly full {2}")
  @CsvSource({
    "499, 1, true",
    "500, 1, false",
    "500, 100, false",
    "500, 101, true",
    "504, 101, true",
    "505, 101, false",
    "0, 0, true",
  })
  void nearlyFull_isUnderHalfAGigabyte_orFiveTimesTheFile(
      long freeMb, long fileMb, boolean nearlyFull) {
    assertEquals(nearlyFull, DiskRoom.isNearlyFull(freeMb * 1_000_000, fileMb * 1_000_000));
  }
}
