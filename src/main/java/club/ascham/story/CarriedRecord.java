package club.ascham.story;

import club.ascham.store.Rows;
import club.ascham.store.RowsInFile;
import java.sql.Connection;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * The record of a club's file from before 1.0.0, on its way into a file of the schema there is now:
 * looked through where it was, and closed where it comes to. Nothing of it is written anew:
 * numbers, sentences and seals stay.
 */
public final class CarriedRecord {
  /** Tables of earlier versions that held nothing of the club. */
  private static final Set<String> NO_FACTS = Set.of("pressed", "sessions_ended");

  /** The entry that bore a seal before; the seal’s first digits, and how many. */
  static final String SEALED_BEFORE =
      "SELECT row_id FROM change WHERE table_name = 'story' AND substr(what ->> '$.seal[0]', 1, ?2) = ?1 ORDER BY row_id LIMIT 1";

  private CarriedRecord() {}

  /**
   * Of a file from before, as its own program left it: what was changed in it and not recorded, one
   * sentence each. Rows that some other program wrote while the triggers watched wait for a
   * sentence; they get the one that the next save would have told.
   */
  public static List<String> looked(Connection before, Instant now) {
    Rows rows = RowsInFile.of(before);
    if (rows.number(
            "SELECT coalesce((SELECT max(story_id) FROM change), -1) > coalesce((SELECT max(id) FROM story), -1)")
        == 1) {
      tell(rows, now, Story.OUTSIDE);
    }
    SealedEntries sealed = SealedEntries.before(rows);
    seal(rows, sealed);
    List<String> faults = new ArrayList<>();
    new VerifyRecord(rows, sealed).chained(faults);
    for (Watched table : Watched.all(rows)) {
      if (!NO_FACTS.contains(table.table())) {
        for (VerifyRecord.Differs cell :
            rows.list(VerifyRecord.Differs.class, table.differences())) {
          if (!cameWithItsColumn(rows, table.table(), cell)) {
            faults.add(cell.said(table.table()));
          }
        }
      }
    }
    return faults;
  }

  /** A migration gave the column its value in every row there was; nobody could record it. */
  private static boolean cameWithItsColumn(Rows rows, String table, VerifyRecord.Differs cell) {
    return cell.recorded() == null
        && rows.number(
                "SELECT EXISTS (SELECT 1 FROM pragma_table_info(?1) WHERE name = ?2 AND dflt_value IN (?3, char(39) || replace(?3, char(39), char(39) || char(39)) || char(39)))",
                table,
                cell.field(),
                cell.found())
            == 1
        && rows.number(
                "SELECT EXISTS (SELECT 1 FROM change WHERE table_name = ?1 AND row_id = ?2 AND json_type(what, '$.' || ?3) IS NOT NULL)",
                table,
                cell.row(),
                cell.field())
            == 0;
  }

  /**
   * Seals the record in the file that it came to, with one more entry under which stand the seals
   * of before and whatever came with the schema, and reckons all of it again.
   *
   * @param sentence with blanks for how many entries there were, their newest seal, and the new one
   */
  public static VerifyRecord.Verified close(Connection file, Instant now, String sentence) {
    Rows rows = RowsInFile.of(file);
    SealedEntries sealed = new SealedEntries(rows);
    String newestBefore = sealed.newest().orElse(null);
    long told = rows.number("SELECT count(*) FROM story");
    long entry = rows.number("SELECT max(1, coalesce(max(id), 0) + 1) FROM story");
    new PersonalValues(rows).seal();
    String newest = anew(rows, sealed, entry);
    for (Watched table : Watched.all(rows)) {
      rows.change(table.recordOfWhatDiffers(), entry);
    }
    tell(rows, now, sentence.formatted(told, Seal.shortened(newestBefore), Seal.shortened(newest)));
    seal(rows, sealed);
    return new VerifyRecord(rows, sealed).verify();
  }

  /** Answers the newest seal there is then. */
  private static String anew(Rows rows, SealedEntries sealed, long underEntry) {
    return sealed.seal(
        SealedEntries.BEFORE_ALL,
        Chain.START,
        (entry, seal) ->
            rows.change(
                "INSERT INTO change (story_id, table_name, row_id, what) VALUES (?1, 'story', ?2, json_object('seal', json_array(?3, ?4)))",
                underEntry,
                entry.id(),
                entry.seal(),
                seal));
  }

  private static void tell(Rows rows, Instant now, String sentence) {
    rows.change(
        "INSERT INTO story (happened_at, recorded_at, sentence) VALUES (?1, ?1, ?2)",
        now,
        sentence);
  }

  private static void seal(Rows rows, SealedEntries sealed) {
    new PersonalValues(rows).seal();
    sealed.seal(
        rows.number(
            "SELECT coalesce(max(id), ?1) FROM story WHERE hash IS NOT NULL",
            SealedEntries.BEFORE_ALL),
        sealed.newest().orElse(Chain.START),
        (entry, seal) -> {});
  }
}
