package club.ascham.rules;

import club.ascham.bow.InPrint;
import club.ascham.store.Rows;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;

/** The club's rules, read once and again after each change: every page shows the name. */
@ApplicationScoped
public class Club {
  private final Rows rows;
  private final AtomicReference<ClubRules> known = new AtomicReference<>();

  Club(Rows rows) {
    this.rows = rows;
  }

  public ClubRules rules() {
    ClubRules rules = known.get();
    if (rules == null) {
      rules = stored().orElseThrow(() -> new IllegalStateException("the club has no rules yet"));
      known.set(rules);
    }
    return rules;
  }

  /** Empty in a data folder that was never opened before. */
  public Optional<ClubRules> stored() {
    return rows.one(
        ClubRules.class,
        """
        SELECT name, demo, brace_table, full_check_every_looks, loan_days, deposit_minor,
               sessions_a_week, shots_a_session, keep_names_days, fewest_twists, most_twists,
               twists_source, weigh_limbs_days, version FROM club""");
  }

  /** Called after a change was committed. */
  public void forget() {
    known.set(null);
  }

  /** The first row of a new data folder. */
  public void found(String name, boolean demo, String braceTable) {
    rows.change(
        """
        INSERT INTO club (id, name, demo, brace_table, twists_source) VALUES (1, ?1, ?2, ?3, ?4)""",
        name,
        demo,
        braceTable,
        InPrint.TWISTS);
  }
}
