package club.ascham.exchange;

import club.ascham.rig.LentBows;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;

/** A bow that leaves by a file today. */
@ApplicationScoped
class LeavesSuited extends SuitsWhoHasIt {
  LeavesSuited(Rows rows, LentBows lent, ClubTime time) {
    super(rows, lent, time);
  }

  @Override
  public String list() {
    return "loan-lines";
  }

  @Override
  String column() {
    return "loan";
  }

  @Override
  String touched() {
    return """
    SELECT x.id, coalesce(x.rig_id, (SELECT o.rig_id FROM loan_line o
                                      WHERE o.loan_id = x.loan_id AND o.rig_id IS NOT NULL AND o.back_at IS NULL))
      FROM json_each(?1) t JOIN loan_line x ON x.id = t.value
     WHERE x.back_at IS NULL AND x.out_at >= ?2
       AND EXISTS (SELECT 1 FROM loan_line o
                    WHERE o.loan_id = x.loan_id AND o.rig_id IS NOT NULL AND o.back_at IS NULL)
     ORDER BY x.id\
    """;
  }
}
