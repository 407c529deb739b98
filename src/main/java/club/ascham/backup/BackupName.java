package club.ascham.backup;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.ResolverStyle;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a backup's file name says: {@code ascham-2026-11-25T21-04-09Z-3f2a91bc77d0.db}.
 *
 * @param moment to the second
 * @param seal the first twelve digits of the record's newest seal
 * @param before the migration it was made before, such as {@code V011}; null: none
 */
public record BackupName(Instant moment, String seal, String before) {
  /** Newest first. */
  static final Comparator<BackupName> NEWEST_FIRST =
      Comparator.comparing(BackupName::moment).thenComparing(BackupName::fileName).reversed();

  private static final DateTimeFormatter MOMENT =
      DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH-mm-ss'Z'")
          .withResolverStyle(ResolverStyle.STRICT)
          .withZone(ZoneOffset.UTC);
  private static final int SEAL_DIGITS = 12;
  private static final Pattern NAME =
      Pattern.compile(
          "ascham-(\\d{4}-\\d\\d-\\d\\dT\\d\\d-\\d\\d-\\d\\dZ)-([0-9a-f]{12})(?:-before-([VR][0-9.]*))?\\.db");

  /**
   * @param newestSeal whole; empty where nothing was told yet
   */
  static BackupName of(Instant moment, String newestSeal, String before) {
    String seal = newestSeal.isEmpty() ? "0".repeat(SEAL_DIGITS) : newestSeal;
    return new BackupName(
        moment.truncatedTo(ChronoUnit.SECONDS), seal.substring(0, SEAL_DIGITS), before);
  }

  static Optional<BackupName> read(String fileName) {
    Matcher parts = NAME.matcher(fileName);
    if (!parts.matches()) {
      return Optional.empty();
    }
    try {
      Instant moment = LocalDateTime.parse(parts.group(1), MOMENT).toInstant(ZoneOffset.UTC);
      return Optional.of(new BackupName(moment, parts.group(2), parts.group(3)));
    } catch (DateTimeException noSuchDay) {
      return Optional.empty();
    }
  }

  public String fileName() {
    return stem() + ".db";
  }

  /** The name without its ending. */
  public String stem() {
    return "ascham-"
        + MOMENT.format(moment)
        + "-"
        + seal
        + (before == null ? "" : "-before-" + before);
  }

  /** The seal in groups of four, as the record shows it. */
  public String shownSeal() {
    return seal.substring(0, 4) + " " + seal.substring(4, 8) + " " + seal.substring(8);
  }
}
