package club.ascham.exchange;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;

/** An archer who by a file shares a bow that left today. */
@ApplicationScoped
class SharedSuited implements AfterRows {
  private static final String TOUCHED =
      """
      SELECT a.id AS number, a.rig_id
        FROM json_each(?1) t JOIN session_archer a ON a.id = t.value
       WHERE EXISTS (SELECT 1 FROM loan_line o WHERE o.loan_id = a.loan_id AND o.rig_id = a.rig_id
                        AND o.back_at IS NULL AND o.out_at >= ?2)
       ORDER BY a.id\
      """;

  private final SuitsWhoHasIt suits;

  SharedSuited(SuitsWhoHasIt suits) {
    this.suits = suits;
  }

  @Override
  public String list() {
    return "session-archers";
  }

  @Override
  public List<BadCell> check(Added added) {
    return suits.check(added, TOUCHED, "rig");
  }
}
