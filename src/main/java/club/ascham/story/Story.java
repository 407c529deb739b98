package club.ascham.story;

import club.ascham.id.AccountId;
import club.ascham.id.ItemId;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.store.NewRow;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import io.quarkus.qute.TemplateData;
import jakarta.enterprise.context.ApplicationScoped;
import java.security.SecureRandom;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HexFormat;
import java.util.List;

/**
 * Tells what happened, and reads it back. A sentence names no borrower (it points to the loan) and
 * starts with what was done: "Retired: scrapped."
 */
@ApplicationScoped
public class Story {
  /** What is told of rows that some other program changed. */
  static final String OUTSIDE = "Changed outside the program.";

  private final Rows rows;
  private final ClubTime time;
  private final SecureRandom random = new SecureRandom();

  Story(Rows rows, ClubTime time) {
    this.rows = rows;
    this.time = time;
  }

  /**
   * One sentence to be told of some items and rigs, inside the use case's transaction and after
   * what it tells of was written.
   *
   * @param by null: the program by itself
   */
  public record Told(
      Instant happened,
      AccountId by,
      String sentence,
      String why,
      LoanId loan,
      Collection<ItemId> items,
      Collection<RigId> rigs) {

    public static Told ofItem(Instant happened, AccountId by, ItemId item, String sentence) {
      return new Told(happened, by, sentence, null, null, List.of(item), List.of());
    }

    public static Told ofRig(
        Instant happened, AccountId by, RigId rig, Collection<ItemId> parts, String sentence) {
      return new Told(happened, by, sentence, null, null, parts, List.of(rig));
    }

    /** Of the club as a whole. */
    public static Told ofClub(Instant happened, AccountId by, String sentence) {
      return new Told(happened, by, sentence, null, null, List.of(), List.of());
    }

    public Told because(String reason) {
      return new Told(happened, by, sentence, reason, loan, items, rigs);
    }

    public Told on(LoanId ofLoan) {
      return new Told(happened, by, sentence, why, ofLoan, items, rigs);
    }
  }

  /**
   * How an entry came from a file, whoever it says told it; null: it was told here.
   *
   * @param entry that took it in
   * @param by who brought the file
   */
  @TemplateData
  public record TakenIn(long entry, String by, Instant at) {
    /** The columns of entry {@code s}. */
    public static final String OF_ENTRY =
        """
         %1$s AS taken_in_entry,
         (SELECT a.name FROM story w JOIN account a ON a.id = w.account_id WHERE w.id = %1$s) AS taken_in_by,
         (SELECT w.recorded_at FROM story w WHERE w.id = %1$s) AS taken_in_at
        """
            .formatted(with("s.id"));

    /** The entry that took in the one so numbered, as SQL. */
    public static String with(String entry) {
      return "(SELECT max(t.what ->> '$.taken_in_with[1]') FROM change t WHERE t.table_name = 'story' AND t.row_id = %s)"
          .formatted(entry);
    }
  }

  /** A line of a story as shown. */
  public record Line(
      long id,
      Instant happened,
      Instant recorded,
      String by,
      String sentence,
      String why,
      Long loanId,
      TakenIn takenIn) {}

  /** Tells something of now, of the club as a whole. */
  public void tell(AccountId by, String sentence) {
    tell(by, sentence, null);
  }

  public void tell(AccountId by, String sentence, String why) {
    tell(Told.ofClub(time.now(), by, sentence).because(why));
  }

  public void tell(Told told) {
    String salt = told.why() == null ? null : salt();
    long entry =
        rows.add(
            NewRow.of("story")
                .with("happened_at", told.happened())
                .with("recorded_at", time.now())
                .with("account_id", told.by())
                .with("sentence", told.sentence())
                .with("why", told.why())
                .with("loan_id", told.loan())
                .with("why_salt", salt)
                .with("why_hash", salt == null ? null : Chain.ofPersonal(salt, told.why())));
    List<List<?>> about = new ArrayList<>();
    told.items().forEach(item -> about.add(Arrays.asList(entry, item, null)));
    told.rigs().forEach(rig -> about.add(Arrays.asList(entry, null, rig)));
    if (!about.isEmpty()) {
      rows.add("story_about (story_id, item_id, rig_id)", about);
    }
  }

  private record Reason(long entry, String why) {}

  /** Lets the reasons of entries that came from a file be erased one day, as any other. */
  public void keepReasonsApart() {
    for (Reason reason :
        rows.list(
            Reason.class,
            "SELECT id AS entry, why FROM story WHERE hash IS NULL AND why IS NOT NULL AND why_hash IS NULL")) {
      String salt = salt();
      rows.change(
          "UPDATE story SET why_salt = ?2, why_hash = ?3 WHERE id = ?1",
          reason.entry(),
          salt,
          Chain.ofPersonal(salt, reason.why()));
    }
  }

  /**
   * Lets entries that came from a file say so, under their seals: they came with the one told last.
   * What was changed besides them is that one's own.
   */
  public void tookIn(Collection<Long> entries) {
    for (String took :
        List.of(
            "UPDATE change SET story_id = (SELECT max(id) FROM story) WHERE story_id IN (SELECT value FROM json_each(?1))",
            "INSERT INTO change (story_id, table_name, row_id, what) SELECT value, 'story', value,"
                + " json_object('taken_in_with', json_array(NULL, (SELECT max(id) FROM story))) FROM json_each(?1)")) {
      rows.change(took, entries.toString());
    }
  }

  private String salt() {
    byte[] salt = new byte[16];
    random.nextBytes(salt);
    return HexFormat.of().formatHex(salt);
  }

  /** Newest first. */
  public List<Line> ofItem(ItemId item, int atMost) {
    return rows.list(Line.class, LINES + "WHERE a.item_id = ?1" + NEWEST_FIRST, item, atMost);
  }

  /** Newest first. */
  public List<Line> ofRig(RigId rig, int atMost) {
    return rows.list(Line.class, LINES + "WHERE a.rig_id = ?1" + NEWEST_FIRST, rig, atMost);
  }

  private static final String LINES =
      """
      SELECT s.id, s.happened_at AS happened, s.recorded_at AS recorded, coalesce(p.name, 'Ascham') AS "by", s.sentence, s.why, s.loan_id,"""
          + TakenIn.OF_ENTRY
          + """
        FROM story_about a JOIN story s ON s.id = a.story_id LEFT JOIN account p ON p.id = s.account_id
       """;
  private static final String NEWEST_FIRST = " ORDER BY s.happened_at DESC, s.id DESC LIMIT ?2";
}
