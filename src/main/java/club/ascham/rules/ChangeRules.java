package club.ascham.rules;

import club.ascham.form.Outcome;
import club.ascham.form.Refusal;
import club.ascham.id.ClubId;
import club.ascham.people.Actor;
import club.ascham.store.Rows;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;

/** Changes the club's settings and its own bands. */
@ApplicationScoped
class ChangeRules {
  private final Rows rows;
  private final Story story;
  private final Actor actor;
  private final ClubTime time;

  ChangeRules(Rows rows, Story story, Actor actor, ClubTime time) {
    this.rows = rows;
    this.story = story;
    this.actor = actor;
    this.time = time;
  }

  @Writes
  Outcome<ClubId> change(ClubRulesDetails to) {
    boolean changed =
        rows.change(
                """
            UPDATE club SET name = ?1, brace_table = ?2, full_check_every_looks = ?3, loan_days = ?4,
                   deposit_minor = ?5, sessions_a_week = ?6, shots_a_session = ?7,
                   keep_names_days = ?8, fewest_twists = ?9, most_twists = ?10, twists_source = ?11,
                   weigh_limbs_days = ?12, changed_by = ?13, changed_at = ?14, telephone = ?16, mail = ?17,
                   terms = ?18, brace_may_move = ?19, brace_may_move_source = ?20, version = version + 1
             WHERE version = ?15""",
                to.name(),
                to.braceTable(),
                to.fullCheckEveryLooks(),
                to.loanDays(),
                to.deposit().minor(),
                to.sessionsAWeek(),
                to.shotsASession(),
                to.keepNamesDays(),
                to.twists().fewest(),
                to.twists().most(),
                to.twistsSource(),
                to.weighLimbsDays(),
                actor.id(),
                time.now(),
                to.version(),
                to.slip().telephone(),
                to.slip().mail(),
                to.slip().terms(),
                to.slip().braceMayMove(),
                to.slip().source())
            == 1;
    return changed
        ? done("Changed the club's rules.", "The club's rules are changed.")
        : Outcome.refused(Refusal.savedFirst("these rules"));
  }

  /** Adds the band, or puts it in the place of the one for the same bow length. */
  @Writes
  Outcome<ClubId> keep(OwnBand band) {
    rows.change(
        """
        INSERT INTO club_brace_band (bow_length_in, low, high, source) VALUES (?1, ?2, ?3, ?4)
        ON CONFLICT (bow_length_in) DO UPDATE SET low = ?2, high = ?3, source = ?4""",
        band.bowLengthIn(),
        band.low(),
        band.high(),
        band.source());
    return done(
        "Entered a brace band of the club's own.",
        "The club's own band for bows of " + band.bowLengthIn() + " in is in force.");
  }

  @Writes
  Outcome<ClubId> remove(int bowLengthIn) {
    rows.change("DELETE FROM club_brace_band WHERE bow_length_in = ?1", bowLengthIn);
    return done(
        "Removed a brace band of the club's own.",
        "The club's own band for bows of " + bowLengthIn + " in is gone.");
  }

  private Outcome<ClubId> done(String told, String said) {
    story.tell(actor.id(), told);
    return Outcome.done(ClubId.ONE, said);
  }
}
