package club.ascham.upkeep;

import club.ascham.id.RuleId;
import club.ascham.people.Actor;
import club.ascham.store.Rows;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;

/** Adds, changes and removes the rules that plan upkeep; what is due follows at once. */
@ApplicationScoped
class ChangeUpkeepRule {
  private final Rows rows;
  private final Story story;
  private final Actor actor;
  private final ClubTime time;

  ChangeUpkeepRule(Rows rows, Story story, Actor actor, ClubTime time) {
    this.rows = rows;
    this.story = story;
    this.actor = actor;
    this.time = time;
  }

  @Writes
  RuleId add(RuleDetails rule) {
    long id =
        rows.number(
            """
        INSERT INTO upkeep_rule
          (item_kind, build, material, work, every_days, every_loans, every_shots, soon_days, blocks, source,
           changed_by, changed_at, beyond_percent)
        VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12, ?13) RETURNING id""",
            rule.itemKind(),
            rule.build(),
            rule.material(),
            rule.work(),
            rule.everyDays(),
            rule.everyLoans(),
            rule.everyShots(),
            rule.soonDays(),
            rule.blocks(),
            rule.source(),
            actor.id(),
            time.now(),
            rule.beyondPercent());
    tell("Added a rule of upkeep.");
    return new RuleId(id);
  }

  /** Answers false, and changes nothing, when someone saved since the form was opened. */
  @Writes
  boolean change(long id, int version, RuleDetails to) {
    boolean changed =
        rows.change(
                """
                UPDATE upkeep_rule SET item_kind = ?3, build = ?4, material = ?5, work = ?6, every_days = ?7,
                       every_loans = ?8, every_shots = ?9, soon_days = ?10, blocks = ?11, source = ?12,
                       changed_by = ?13, changed_at = ?14, beyond_percent = ?15, version = version + 1
                 WHERE id = ?1 AND version = ?2""",
                id,
                version,
                to.itemKind(),
                to.build(),
                to.material(),
                to.work(),
                to.everyDays(),
                to.everyLoans(),
                to.everyShots(),
                to.soonDays(),
                to.blocks(),
                to.source(),
                actor.id(),
                time.now(),
                to.beyondPercent())
            == 1;
    if (changed) {
      tell("Changed a rule of upkeep.");
    }
    return changed;
  }

  @Writes
  void remove(long id) {
    if (rows.change("DELETE FROM upkeep_rule WHERE id = ?1", id) == 1) {
      tell("Removed a rule of upkeep.");
    }
  }

  private void tell(String sentence) {
    story.tell(Story.Told.ofClub(time.now(), actor.id(), sentence));
  }
}
