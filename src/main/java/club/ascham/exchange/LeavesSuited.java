package club.ascham.exchange;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;

/** A bow that leaves by a file today. */
@ApplicationScoped
class LeavesSuited implements AfterRows {
  private static final String TOUCHED =
      """
      SELECT x.id AS number,
             coalesce(x.rig_id, (SELECT o.rig_id FROM loan_line o
                                  WHERE o.loan_id = x.loan_id AND o.rig_id IS NOT NULL AND o.back_at IS NULL)) AS rig
        FROM json_each(?1) t JOIN loan_line x ON x.id = t.value
       WHERE x.back_at IS NULL AND x.out_at >= ?2
         AND EXISTS (SELECT 1 FROM loan_line o
                      WHERE o.loan_id = x.loan_id AND o.rig_id IS NOT NULL AND o.back_at IS NULL)
       ORDER BY x.id\
      """;

  private final SuitsWhoHasIt suits;

  LeavesSuited(SuitsWhoHasIt suits) {
    this.suits = suits;
  }

  @Override
  public String list() {
    return "loan-lines";
  }

  @Override
  public List<BadCell> check(Added added) {
    return suits.check(added, TOUCHED, "loan");
  }
}
