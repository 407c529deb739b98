package club.ascham.borrower;

import club.ascham.bow.AgeBand;
import club.ascham.bow.Experience;
import club.ascham.bow.Hand;
import club.ascham.store.Rows;
import club.ascham.units.Length;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Reads borrowers for pages and others. */
@ApplicationScoped
public class Borrowers {
  private static final String COLUMNS =
      """
      SELECT b.id, b.name, b.contact, b.member_no, b.age_band, b.guardian, b.erased_on, b.version,
             (SELECT count(DISTINCT x.loan_id) FROM loan l JOIN loan_line x ON x.loan_id = l.id
               WHERE l.borrower_id = b.id AND x.back_at IS NULL) AS open_loans
        FROM borrower b
       """;
  private static final String NAMED =
      " WHERE (?1 IS NULL OR instr(lower(b.name), ?1) > 0 OR lower(coalesce(b.member_no, '')) = ?1)";

  private final Rows rows;

  Borrowers(Rows rows) {
    this.rows = rows;
  }

  /**
   * A borrower in a list.
   *
   * @param erasedOn null: still known by name
   * @param openLoans how many loans still have something out
   */
  public record Row(
      BorrowerId id,
      String name,
      String contact,
      String memberNo,
      AgeBand ageBand,
      String guardian,
      LocalDate erasedOn,
      int version,
      int openLoans) {

    public BorrowerDetails details() {
      return new BorrowerDetails(name, contact, memberNo, ageBand, guardian);
    }
  }

  /** By name; those whose name holds the text, or whose member number it is. */
  public List<Row> named(String text, int skipped, int atMost) {
    return rows.list(
        Row.class,
        COLUMNS + NAMED + " ORDER BY b.name COLLATE NOCASE, b.id LIMIT ?2 OFFSET ?3",
        NamePart.of(text),
        atMost,
        skipped);
  }

  public int countNamed(String text) {
    return (int) rows.number("SELECT count(*) FROM borrower b" + NAMED, NamePart.of(text));
  }

  /**
   * What was answered about the archer when they last borrowed, with the age as it is known now.
   */
  public record LastAnswers(
      Hand hand, Length draw, boolean drawEstimated, AgeBand age, Experience experience) {}

  /** Empty for whoever never borrowed a kit. */
  public Optional<LastAnswers> lastAnswers(BorrowerId id) {
    return rows.one(
        LastAnswers.class,
        """
        SELECT l.hand, l.draw_length AS draw, l.draw_estimated, b.age_band AS age, l.experience
          FROM loan l JOIN borrower b ON b.id = l.borrower_id
         WHERE b.id = ?1 AND l.hand IS NOT NULL AND l.draw_length IS NOT NULL AND l.experience IS NOT NULL
         ORDER BY l.issued_at DESC, l.id DESC LIMIT 1""",
        id);
  }

  public Optional<Row> row(BorrowerId id) {
    return rows.one(Row.class, COLUMNS + "WHERE b.id = ?1", id);
  }
}
