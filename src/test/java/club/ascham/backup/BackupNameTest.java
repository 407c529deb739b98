package club.ascham.backup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BackupNameTest {
  private static final String SEAL = "3f2a91bc77d0" + "a".repeat(52);

  @Test
  void aName_saysTheMomentAndTheSeal() {
    BackupName name = BackupName.of(Instant.parse("2026-11-25T21:04:09.987Z"), SEAL, null);
    assertEquals("ascham-2026-11-25T21-04-09Z-3f2a91bc77d0.db", name.fileName());
    assertEquals("3f2a 91bc 77d0", name.shownSeal());
  }

  @Test
  void aNameBeforeAMigration_saysWhich() {
    BackupName name = BackupName.of(Instant.parse("2026-11-25T21:04:09Z"), SEAL, "V011");
    assertEquals("ascham-2026-11-25T21-04-09Z-3f2a91bc77d0-before-V011.db", name.fileName());
  }

  @ParameterizedTest
  @CsvSource({
    "2026-11-25T21:04:09Z, V011",
    "2026-02-28T00:00:00Z, R",
    "2028-02-29T23:59:59Z,",
    "2026-03-29T01:30:00Z, V1.2"
  })
  void aName_isReadBackAsItWas(Instant moment, String before) {
    BackupName name = BackupName.of(moment, SEAL, before);
    assertEquals(Optional.of(name), BackupName.read(name.fileName()));
  }

  @Test
  void whereNothingWasToldYet_theSealIsNoughts() {
    assertEquals(
        "000000000000", BackupName.of(Instant.parse("2026-11-25T21:04:09Z"), "", null).seal());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "ascham.db",
        "ascham-1795640649000.part",
        "ascham-2026-11-25T21-04-09Z-3f2a91bc77d0.db.part",
        "ascham-2026-11-25T21-04-09Z-3f2a91bc77d0.db-wal",
        "ascham-2026-11-25T21-04-09Z-3F2A91BC77D0.db",
        "ascham-2026-02-30T21-04-09Z-3f2a91bc77d0.db",
        "ascham-2026-11-25T24-04-09Z-3f2a91bc77d0.db",
        "../ascham-2026-11-25T21-04-09Z-3f2a91bc77d0.db",
        "ascham-2026-11-25T21-04-09Z-3f2a91bc77d0-before-V0/../11.db",
        "\u0000"
      })
  void whatIsNoBackupsName_isNone(String file) {
    assertTrue(BackupName.read(file).isEmpty(), file);
  }
}
