package club.ascham.exchange;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;

/** A part that a file fits today to a bow that is out. */
@ApplicationScoped
class FittedSuited implements AfterRows {
  private static final String TOUCHED =
      """
      SELECT f.id AS number, f.rig_id
        FROM json_each(?1) t JOIN fitting f ON f.id = t.value
       WHERE f.until_at IS NULL AND f.from_at >= ?2
         AND EXISTS (SELECT 1 FROM loan_line o WHERE o.rig_id = f.rig_id AND o.back_at IS NULL)
       ORDER BY f.id\
      """;

  private final SuitsWhoHasIt suits;

  FittedSuited(SuitsWhoHasIt suits) {
    this.suits = suits;
  }

  @Override
  public String list() {
    return "fittings";
  }

  @Override
  public List<BadCell> check(Added added) {
    return suits.check(added, TOUCHED, "item");
  }
}
