package club.ascham.loan;

import club.ascham.borrower.NamePart;
import club.ascham.id.LoanId;
import club.ascham.store.Rows;
import club.ascham.web.NoSuchThing;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Reads loans for pages and others. Lists are in the order in which they fall due, so the latest
 * late ones lead.
 */
@ApplicationScoped
public class Loans {
  private static final String FROM =
      """
        FROM loan l
        JOIN (SELECT x.loan_id, sum(x.outcome IS NOT 'CHANGED') AS lines, sum(x.back_at IS NULL) AS lines_out,
                     group_concat(CASE WHEN i.kind IN ('RISER', 'BOW') AND x.outcome IS NOT 'CHANGED' THEN i.code END) AS bodies,
                     group_concat(i.code) AS codes, coalesce(sum(x.missing_count), 0) AS missing
                FROM loan_line x JOIN item i ON i.id = x.item_id
               WHERE ?1 = 1 OR x.loan_id IN (SELECT o.loan_id FROM loan_line o WHERE o.back_at IS NULL)
               GROUP BY x.loan_id) p ON p.loan_id = l.id
        LEFT JOIN borrower b ON b.id = l.borrower_id
       WHERE (?1 = 1 OR p.lines_out > 0)
         AND (?2 = 0 OR p.lines_out = 0)
         AND (?3 IS NULL OR (p.lines_out > 0 AND l.due_on < ?3))
         AND (?4 IS NULL OR l.kind = ?4)
         AND (?5 IS NULL OR l.borrower_id = ?5)
         AND (?6 IS NULL OR instr(lower(coalesce(b.name, l.leader)), ?6) > 0 OR instr(p.codes, ?7) > 0)
      """;

  private final Rows rows;

  Loans(Rows rows) {
    this.rows = rows;
  }

  /** One page of the loans that the filter lets through; closed ones newest first. */
  public List<LoanRow> list(LoanFilter filter, LocalDate today) {
    boolean past = filter.show() == LoanShow.CLOSED || filter.show() == LoanShow.ALL;
    return rows.list(
        LoanRow.class,
        """
        SELECT l.id, l.kind, coalesce(b.name, l.leader) AS who, l.borrower_id, l.issued_at, l.due_on,
               p.lines_out, p.lines, p.bodies, p.missing AS arrows_missing
        """
            + FROM
            + (past
                ? " ORDER BY l.issued_at DESC, l.id DESC"
                : " ORDER BY l.due_on, l.issued_at, l.id")
            + " LIMIT ?8 OFFSET ?9",
        parameters(filter, today, filter.size(), filter.skipped()));
  }

  public int count(LoanFilter filter, LocalDate today) {
    return (int) rows.number("SELECT count(*)" + FROM, parameters(filter, today));
  }

  /** Open loans due on or before a day, the longest overdue first. */
  public List<LoanRow> dueBy(LocalDate day, int atMost) {
    return list(new LoanFilter(LoanShow.OVERDUE, null, null, null, 1, atMost), day.plusDays(1));
  }

  public Optional<LoanSheet> sheet(LoanId id) {
    return rows.one(
        LoanSheet.class,
        """
        SELECT l.id, l.kind, l.borrower_id, b.name, b.contact, b.member_no, b.age_band, b.guardian,
               l.leader, l.issued_at, l.recorded_at, l.due_on, a.name AS issued_by, l.hand, l.draw_length, l.draw_estimated,
               l.experience, l.override_why, l.override_coach, l.deposit_minor, l.deposit_how, l.deposit_back_minor,
               l.deposit_kept_why, l.briefed_at, s.name AS briefed_by, l.version
          FROM loan l JOIN account a ON a.id = l.issued_by LEFT JOIN account s ON s.id = l.briefed_by
          LEFT JOIN borrower b ON b.id = l.borrower_id
         WHERE l.id = ?1\
        """,
        id);
  }

  public OpenLoanCounts openCounts(LocalDate today) {
    return rows.one(
            OpenLoanCounts.class,
            """
            SELECT count(*) AS open, coalesce(sum(due_on < ?1), 0) AS overdue, coalesce(sum(due_on = ?1), 0) AS due_today FROM loan
             WHERE id IN (SELECT loan_id FROM loan_line WHERE back_at IS NULL)\
            """,
            today)
        .orElseThrow();
  }

  private static Object[] parameters(LoanFilter filter, LocalDate today, Object... more) {
    LoanShow show = filter.show();
    Object[] all = new Object[7 + more.length];
    all[0] = show == LoanShow.CLOSED || show == LoanShow.ALL;
    all[1] = show == LoanShow.CLOSED;
    all[2] = show == LoanShow.OVERDUE ? today : null;
    all[3] = filter.kind();
    all[4] = filter.borrower();
    all[5] = NamePart.of(filter.text());
    all[6] = filter.text() == null ? null : bareCode(filter.text());
    System.arraycopy(more, 0, all, 7, more.length);
    return all;
  }

  /** Part of a code as it is kept: without hyphens, in upper case. */
  private static String bareCode(String text) {
    return text.toUpperCase(Locale.ROOT).replaceAll("[-\\s]", "");
  }

  /**
   * @throws NoSuchThing there never was one
   */
  public LoanSheet known(LoanId loan) {
    return sheet(loan).orElseThrow(() -> new NoSuchThing("There is no loan " + loan.value() + "."));
  }

  public static String page(LoanId loan) {
    return "/loans/" + loan.value();
  }
}
