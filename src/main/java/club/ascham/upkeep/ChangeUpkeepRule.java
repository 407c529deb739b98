package club.ascham.upkeep;

import club.ascham.form.Outcome;
import club.ascham.form.Refusal;
import club.ascham.id.RuleId;
import club.ascham.people.Actor;
import club.ascham.store.Rows;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.OptionalInt;

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
  Outcome<RuleId> add(RuleDetails rule) {
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
    return done(
        id,
        "Added a rule of upkeep.",
        "The rule is added; what it asks for stands in the upkeep list.");
  }

  @Writes
  Outcome<RuleId> change(long id, OptionalInt version, RuleDetails to) {
    boolean changed =
        rows.change(
                """
                UPDATE upkeep_rule SET item_kind = ?3, build = ?4, material = ?5, work = ?6, every_days = ?7,
                       every_loans = ?8, every_shots = ?9, soon_days = ?10, blocks = ?11, source = ?12,
                       changed_by = ?13, changed_at = ?14, beyond_percent = ?15, version = version + 1
                 WHERE id = ?1 AND version = ?2""",
                id,
                version.orElse(-1),
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
    return changed
        ? done(id, "Changed a rule of upkeep.", "The rule is changed; what is due follows it.")
        : Outcome.refused(Refusal.savedFirst("this rule"));
  }

  @Writes
  Outcome<RuleId> remove(long id) {
    rows.change("DELETE FROM upkeep_rule WHERE id = ?1", id);
    return done(
        id,
        "Removed a rule of upkeep.",
        "The rule is removed. What was done under it stays on record.");
  }

  private Outcome<RuleId> done(long id, String told, String said) {
    story.tell(actor.id(), told);
    return Outcome.done(new RuleId(id), said);
  }
}
