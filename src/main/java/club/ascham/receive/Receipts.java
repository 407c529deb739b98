package club.ascham.receive;

import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.loan.Missing;
import club.ascham.store.Rows;
import club.ascham.units.ItemCode;
import club.ascham.units.Money;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Reads what is out and what came back. */
@ApplicationScoped
class Receipts {
  private final Rows rows;

  Receipts(Rows rows) {
    this.rows = rows;
  }

  /** The loan a receipt is for. */
  record Head(
      LoanId id,
      String kind,
      String who,
      Instant issuedAt,
      LocalDate dueOn,
      Money deposit,
      String depositHow) {
    boolean isSession() {
      return kind.equals("SESSION");
    }
  }

  /** A receipt just saved, and not undone. */
  record Done(
      long id,
      LoanId loan,
      String who,
      int linesBack,
      int linesOut,
      Money deposit,
      Money depositBack,
      Integer damaged,
      int arrowsMissing) {
    /** Of one that closed the loan: what of it came back. */
    public String back() {
      return Missing.allBackBut(arrowsMissing);
    }

    public boolean isClosed() {
      return linesOut == 0;
    }
  }

  /** A rig that waits for its check. */
  record Waiting(RigId rig, String bareCode) {
    public String code() {
      return bareCode == null ? "rig " + rig.value() : new ItemCode(bareCode).display();
    }
  }

  /** A receipt in a list. */
  record Row(
      long id,
      LoanId loanId,
      Instant happenedAt,
      String receivedBy,
      boolean dryLooseOrFall,
      boolean cameBackStrung,
      String words,
      String codes,
      Instant undoneAt) {
    public List<String> back() {
      return codes == null
          ? List.of()
          : Arrays.stream(codes.split(",")).map(code -> new ItemCode(code).display()).toList();
    }
  }

  Optional<Head> loan(LoanId loan) {
    return rows.one(
        Head.class,
        """
        SELECT l.id, l.kind, coalesce(b.name, l.leader) AS who, l.issued_at, l.due_on, l.deposit_minor AS deposit, l.deposit_how
          FROM loan l LEFT JOIN borrower b ON b.id = l.borrower_id WHERE l.id = ?1""",
        loan);
  }

  Optional<Done> done(long receipt) {
    return rows.one(
        Done.class,
        """
        SELECT r.id, l.id AS loan, coalesce(b.name, l.leader) AS who,
               (SELECT count(*) FROM loan_line x WHERE x.receipt_id = r.id) AS lines_back,
               (SELECT count(*) FROM loan_line x WHERE x.loan_id = l.id AND x.back_at IS NULL) AS lines_out,
               l.deposit_minor AS deposit, l.deposit_back_minor AS deposit_back,
               (SELECT count(*) FROM loan_line x WHERE x.receipt_id = r.id AND x.outcome = 'DAMAGED') AS damaged,
               (SELECT coalesce(sum(x.missing_count), 0) FROM loan_line x WHERE x.receipt_id = r.id) AS arrows_missing
          FROM receipt r JOIN loan l ON l.id = r.loan_id LEFT JOIN borrower b ON b.id = l.borrower_id
         WHERE r.id = ?1
           AND NOT EXISTS (SELECT 1 FROM moved d JOIN move m ON m.id = d.move_id
                            WHERE d.receipt_id = r.id AND m.undone_at IS NOT NULL)""",
        receipt);
  }

  List<Waiting> rigsOf(long receipt) {
    return rows.list(
        Waiting.class,
        """
        SELECT DISTINCT x.rig_id, i.code AS bare_code
          FROM loan_line x
          LEFT JOIN fitting f ON f.rig_id = x.rig_id AND f.place = 'BODY' AND f.until_at IS NULL
          LEFT JOIN item i ON i.id = f.item_id
         WHERE x.receipt_id = ?1 AND x.rig_id IS NOT NULL ORDER BY i.code""",
        receipt);
  }

  List<Row> page(int page, int size) {
    return rows.list(
        Row.class,
        LIST + " ORDER BY r.happened_at DESC, r.id DESC LIMIT ?1 OFFSET ?2",
        size,
        (page - 1) * size);
  }

  Optional<Row> row(long receipt) {
    return rows.one(Row.class, LIST + " WHERE r.id = ?1", receipt);
  }

  long count() {
    return rows.number("SELECT count(*) FROM receipt");
  }

  private static final String LIST =
      """
      SELECT r.id, r.loan_id, r.happened_at, a.name AS received_by, r.dry_loose_or_fall, r.came_back_strung, r.words,
             (SELECT group_concat(i.code) FROM loan_line x JOIN item i ON i.id = x.item_id WHERE x.receipt_id = r.id) AS codes,
             (SELECT m.undone_at FROM moved d JOIN move m ON m.id = d.move_id WHERE d.receipt_id = r.id) AS undone_at
        FROM receipt r JOIN account a ON a.id = r.received_by""";
}
