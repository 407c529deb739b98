package club.ascham.exchange;

import club.ascham.rig.LentBows;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;

/** A part that a file fits today to a bow that is out. */
@ApplicationScoped
class FittedSuited extends SuitsWhoHasIt {
  FittedSuited(Rows rows, LentBows lent, ClubTime time) {
    super(rows, lent, time);
  }

  @Override
  public String list() {
    return "fittings";
  }

  @Override
  String column() {
    return "item";
  }

  @Override
  String touched() {
    return """
    SELECT f.id, f.rig_id
      FROM json_each(?1) t JOIN fitting f ON f.id = t.value
     WHERE f.until_at IS NULL AND f.from_at >= ?2
       AND EXISTS (SELECT 1 FROM loan_line o WHERE o.rig_id = f.rig_id AND o.back_at IS NULL)
     ORDER BY f.id\
    """;
  }
}
