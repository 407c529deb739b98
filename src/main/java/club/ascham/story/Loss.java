package club.ascham.story;

import club.ascham.time.ClubTime;
import java.time.Instant;
import java.util.Optional;

/**
 * The club's file was opened with less than was known of it.
 *
 * <p>Found before the file is migrated: the entry of the mark must be there under its seal, and so
 * must the seal in the newest backup's name.
 *
 * @param noticed when it was opened so
 * @param backup the file name of the backup that holds more; null: the high-water mark knew more
 * @param known where the record had come to; null: only the backup tells
 * @param found where the record of the opened file ends; null: it has no entry
 */
public record Loss(Instant noticed, String backup, RecordEnd known, RecordEnd found) {

  /** An opened file, asked by what is known of it from elsewhere. */
  interface Opened {
    /** Null: it has no entry. */
    RecordEnd end();

    boolean holds(long entry, String seal);

    /**
     * @param digits the seal's first
     */
    boolean holdsSeal(String digits);
  }

  /**
   * The newest backup there is.
   *
   * @param digits the first of the seal in its name
   */
  public record Backup(String fileName, String digits) {
    /** One that was made before anything was told can tell of nothing missing. */
    private boolean isEmpty() {
      return digits.matches("0+");
    }
  }

  /**
   * What is missing.
   *
   * @param newest null: there is no backup
   */
  static Optional<Loss> between(HighWaterMark mark, Backup newest, Opened file, Instant now) {
    RecordEnd known = mark.end();
    boolean holdsTheMark = known == null || file.holds(known.entry(), known.seal());
    boolean asks =
        newest != null && !newest.isEmpty() && !newest.fileName().equals(mark.settledBackup());
    boolean holdsTheBackup = !asks || file.holdsSeal(newest.digits());
    return holdsTheMark && holdsTheBackup
        ? Optional.empty()
        : Optional.of(
            new Loss(
                now,
                holdsTheBackup ? null : newest.fileName(),
                holdsTheMark ? null : known,
                file.end()));
  }

  /** What happened, as the end of a sentence without its full stop. */
  public String what(ClubTime time) {
    String opened = "the club’s file was opened on " + time.said(noticed);
    if (known == null) {
      return opened + " without what the backup " + backup + " holds";
    }
    if (isAnother()) {
      return opened
          + " with another record than before: entry "
          + known.entry()
          + " bears another seal";
    }
    long next = found == null ? 0 : found.entry() + 1;
    String missing =
        next == known.entry()
            ? "entry " + next + " of the record, of "
            : "entries " + next + " to " + known.entry() + " of the record, the last of ";
    return opened + " without " + missing + time.said(known.recorded());
  }

  /** As long as before or longer, and yet not the same. */
  private boolean isAnother() {
    return found != null && found.entry() >= known.entry();
  }

  /** What to do about it, in a sentence. */
  public String whatToDo(ClubTime time) {
    if (backup != null) {
      return "Bring back the backup "
          + backup
          + ", which holds more, and enter what came after it.";
    }
    String again =
        found == null
            ? "enter again what the club had."
            : "enter again what was done since " + time.said(found.recorded()) + ".";
    return isAnother()
        ? "If an older file was put in its place, put the right one back."
        : "If the newer file was moved away, put it back; else " + again;
  }
}
