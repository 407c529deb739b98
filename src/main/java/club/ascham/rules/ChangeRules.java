package club.ascham.rules;

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

  /** Answers false, and changes nothing, when someone saved since the form was opened. */
  @Writes
  boolean change(ClubRulesDetails to) {
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
    if (changed) {
      tell("Changed the club's rules.");
    }
    return changed;
  }

  /** Adds the band, or puts it in the place of the one for the same bow length. */
  @Writes
  void keep(OwnBand band) {
    rows.change(
        """
        INSERT INTO club_brace_band (bow_length_in, low, high, source) VALUES (?1, ?2, ?3, ?4)
        ON CONFLICT (bow_length_in) DO UPDATE SET low = ?2, high = ?3, source = ?4""",
        band.bowLengthIn(),
        band.low(),
        band.high(),
        band.source());
    tell("Entered a brace band of the club's own.");
  }

  @Writes
  void remove(int bowLengthIn) {
    rows.change("DELETE FROM club_brace_band WHERE bow_length_in = ?1", bowLengthIn);
    tell("Removed a brace band of the club's own.");
  }

  private void tell(String sentence) {
    story.tell(Story.Told.ofClub(time.now(), actor.id(), sentence));
  }
}
