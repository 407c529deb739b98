package club.ascham.changes;

import club.ascham.id.LoanId;
import club.ascham.store.Rows;
import io.quarkus.qute.TemplateData;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;

/** Finds the accidents after which what was lent is kept as it is. */
@ApplicationScoped
class OpenAccidents {
  private final Rows rows;

  OpenAccidents(Rows rows) {
    this.rows = rows;
  }

  /** One that is not closed. */
  @TemplateData
  record OpenAccident(long id, Instant happened) {}

  List<OpenAccident> with(LoanId loan) {
    return rows.list(
        OpenAccident.class,
        "SELECT id, happened_at AS happened FROM accident WHERE ended_at IS NULL AND loan_id = ?1 ORDER BY happened_at",
        loan);
  }
}
