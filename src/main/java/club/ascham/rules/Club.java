package club.ascham.rules;

import club.ascham.bow.InPrint;
import club.ascham.store.Rows;
import club.ascham.units.Length;
import club.ascham.web.WhoseClub;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;

/** The club's rules, read once and again after each change: every page shows the name. */
@ApplicationScoped
public class Club implements WhoseClub {
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

  @Override
  public String name() {
    return rules().name();
  }

  @Override
  public boolean demo() {
    return rules().demo();
  }

  /** Empty in a data folder that was never opened before. */
  public Optional<ClubRules> stored() {
    return rows.one(
        ClubRules.class,
        """
        SELECT name, demo, brace_table, full_check_every_looks, loan_days, deposit_minor,
               sessions_a_week, shots_a_session, keep_names_days, fewest_twists, most_twists,
               twists_source, weigh_limbs_days, telephone, mail, terms, brace_may_move,
               brace_may_move_source, version FROM club""");
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

  /** What a club says of itself on a slip; any of it may be left out. */
  public record OnTheSlip(
      String telephone, String mail, String terms, Length braceMayMove, String source) {}

  /** Sets what stands on the slips of a new data folder. */
  public void introduce(OnTheSlip slip) {
    rows.change(
        """
        UPDATE club SET telephone = ?1, mail = ?2, terms = ?3, brace_may_move = ?4, brace_may_move_source = ?5""",
        slip.telephone(),
        slip.mail(),
        slip.terms(),
        slip.braceMayMove(),
        slip.source());
  }
}
