package club.ascham.backup;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** 25 November 2026 is a Wednesday. */
class RetentionTest {
  private static final ZoneId LONDON = ZoneId.of("Europe/London");

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      quoteCharacter = '"',
      value = {
        "nothing goes of nothing,                                 '',                              ''",
        "one stays,                                               11-25T03:30,                     ''",
        "all of the last two days stay,                           11-25T03:30 11-24T12:00 11-24T12:05 11-24T03:30, ''",
        "of an earlier day the newest stays,                      11-25T03:30 11-20T12:00 11-20T11:00 11-20T03:30, 11-20T11:00 11-20T03:30",
        "the week's newest stays when it is no longer a day's,    11-25T03:30 11-24T03:30 11-23T03:30 11-22T03:30 11-21T03:30 11-20T03:30 11-19T03:30 11-08T03:30 11-07T03:30, 11-07T03:30",
        "the sixth week stays as its month's newest,              11-25T03:30 11-24T03:30 11-23T03:30 11-22T03:30 11-21T03:30 11-20T03:30 11-19T03:30 11-15T03:30 11-08T03:30 11-01T03:30 10-25T03:30, ''",
        "what is no period's newest goes,                         11-25T03:30 11-24T03:30 11-23T03:30 11-22T03:30 11-21T03:30 11-20T03:30 11-19T03:30 11-15T03:30 11-08T03:30 11-01T03:30 10-25T03:30 10-18T03:30, 10-18T03:30",
        "a day without one is passed over,                        11-25T03:30 11-10T03:30 11-08T03:30 11-07T03:30, ''",
        "what seems to be from the future stays,                  12-25T03:30 12-25T02:30 11-25T03:30, ''",
      })
  void ofThese_theseGo(String title, String made, String go) {
    assertEquals(named(go), go(named(made).stream().map(m -> at(m, null)).toList()));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "Europe/London, 11-20T23:30 11-21T00:30, ''",
    "Australia/Sydney, 11-20T23:30 11-21T00:30, 11-20T23:30",
  })
  void theDays_areTheClubs(ZoneId zone, String made, String go) {
    List<BackupName> all = named(made).stream().map(m -> at(m, null)).toList();
    assertEquals(
        named(go),
        Retention.superfluous(all, Instant.parse("2026-11-25T10:00:00Z"), zone).stream()
            .map(RetentionTest::shortly)
            .toList());
  }

  @ParameterizedTest
  @CsvSource({"3, ''", "5, 01-01T12:00 01-02T12:00"})
  void theLastThreeBeforeAMigration_stayWhateverTheirAge(int many, String go) {
    List<BackupName> all =
        new ArrayList<>(
            IntStream.rangeClosed(1, many)
                .mapToObj(day -> at("01-0" + day + "T12:00", "V00" + day))
                .toList());
    // So many days, weeks and months since that no period keeps January's.
    for (int month = 2; month <= 12; month++) {
      all.add(
          new BackupName(
              Instant.parse("2026-%02d-20T12:00:00Z".formatted(month)), "0".repeat(12), null));
    }
    all.add(new BackupName(Instant.parse("2027-01-20T12:00:00Z"), "0".repeat(12), null));
    assertEquals(
        named(go),
        Retention.superfluous(all, Instant.parse("2027-01-25T10:00:00Z"), LONDON).stream()
            .map(RetentionTest::shortly)
            .sorted()
            .toList());
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      quoteCharacter = '\'',
      value = {
        "of none there is no day,                        2026-11-25T10:00, '',                                   '',         0",
        "a day's goes when seven newer days have one,    2026-11-25T10:00, 2026-11-25T03:30,                     2026-12-02, 0",
        "a month's last goes with its twelfth successor, 2026-11-30T10:00, 2026-11-30T03:30,                     2027-11-01, 0",
        "the latest of them counts,                      2026-11-30T10:00, 2026-10-31T03:30 2026-11-30T03:30,    2027-11-01, 0",
        "one before an update has no day,                2026-11-25T10:00, 2026-11-25T03:30 2026-11-20T12:00V,   2026-12-02, 1",
        "of four before updates the oldest has a day,    2026-11-25T10:00, 2026-11-10T09:00V 2026-11-11T09:00V 2026-11-12T09:00V 2026-11-13T09:00V, 2026-11-29, 3",
        "what is dated ahead has no day,                 2026-11-25T10:00, 2099-01-01T00:00,                     '',         1",
      })
  void thoseThereAre_areGoneByThisDay(String title, String now, String made, String day, int stay) {
    List<BackupName> all =
        Arrays.stream(made.split(" "))
            .filter(one -> !one.isEmpty())
            .map(
                one ->
                    new BackupName(
                        Instant.parse(one.replace("V", "") + ":00Z"),
                        "0".repeat(12),
                        one.endsWith("V") ? "V011" : null))
            .toList();
    assertEquals(
        new Retention.End(day.isEmpty() ? null : LocalDate.parse(day), stay),
        Retention.end(all, Instant.parse(now + ":00Z"), LONDON));
  }

  private static List<String> go(List<BackupName> made) {
    return Retention.superfluous(made, Instant.parse("2026-11-25T10:00:00Z"), LONDON).stream()
        .sorted(BackupName.NEWEST_FIRST)
        .map(RetentionTest::shortly)
        .toList();
  }

  private static List<String> named(String moments) {
    return Arrays.stream(moments.replace("'", "").split(" "))
        .filter(m -> !m.isBlank())
        .collect(Collectors.toList());
  }

  private static BackupName at(String moment, String before) {
    return new BackupName(Instant.parse("2026-" + moment + ":00Z"), "0".repeat(12), before);
  }

  private static String shortly(BackupName name) {
    return name.moment().toString().substring(5, 16);
  }
}
