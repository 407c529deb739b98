package club.ascham.exchange;

import club.ascham.rig.LentBows;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;

/** An archer who by a file shares a bow that left today. */
@ApplicationScoped
class SharedSuited extends SuitsWhoHasIt {
  SharedSuited(Rows rows, LentBows lent, ClubTime time) {
    super(rows, lent, time);
  }

  @Override
  public String list() {
    return "session-archers";
  }

  @Override
  String column() {
    return "rig";
  }

  @Override
  String touched() {
    return """
    SELECT a.id, a.rig_id
      FROM json_each(?1) t JOIN session_archer a ON a.id = t.value
     WHERE EXISTS (SELECT 1 FROM loan_line o WHERE o.loan_id = a.loan_id AND o.rig_id = a.rig_id
                      AND o.back_at IS NULL AND o.out_at >= ?2)
     ORDER BY a.id\
    """;
  }
}
