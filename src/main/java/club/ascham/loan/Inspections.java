package club.ascham.loan;

import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.register.ItemKind;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import club.ascham.units.ItemCode;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Reads when the bows that are out with a loan were last checked, and their parts inspected. */
@ApplicationScoped
class Inspections {
  private final Rows rows;
  private final ClubTime time;

  Inspections(Rows rows, ClubTime time) {
    this.rows = rows;
    this.time = time;
  }

  /** One part of a lent rig, and the moment it last passed an inspection. */
  record Last(long rig, String bareCode, ItemKind kind, Instant at) {
    public String label() {
      return kind.word() + " " + new ItemCode(bareCode).display();
    }
  }

  List<Last> lastOf(LoanId loan) {
    return rows.list(
        Last.class,
        """
        SELECT x.rig_id, i.code AS bare_code, i.kind, max(u.happened_at) AS at
          FROM loan_line x JOIN item i ON i.id = x.item_id
          JOIN upkeep_record u ON u.item_id = i.id AND u.result = 'PASSED'
         WHERE x.loan_id = ?1 AND x.rig_id IS NOT NULL AND x.back_at IS NULL
         GROUP BY x.id ORDER BY x.rig_id, x.id""",
        loan);
  }

  private record Checked(RigId rig, Instant at) {}

  /** The day each lent rig was last measured, in a check or a finished set-up. */
  Map<RigId, LocalDate> checked(LoanId loan) {
    return rows
        .list(
            Checked.class,
            """
            SELECT rig_id, max(at) AS at FROM (
              SELECT rig_id, happened_at AS at FROM bow_check WHERE kind = 'CHECK'
              UNION ALL SELECT rig_id, finished_at FROM set_up WHERE finished_at IS NOT NULL)
             WHERE rig_id IN (SELECT rig_id FROM loan_line WHERE loan_id = ?1 AND back_at IS NULL)
             GROUP BY rig_id""",
            loan)
        .stream()
        .collect(Collectors.toMap(Checked::rig, one -> time.dayOf(one.at())));
  }
}
