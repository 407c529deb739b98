package club.ascham.upkeep;

import club.ascham.form.Outcome;
import club.ascham.form.Refusal;
import club.ascham.id.RuleId;
import club.ascham.people.Actor;
import club.ascham.store.NewRow;
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
        rows.add(
            NewRow.of("upkeep_rule")
                .with("item_kind", rule.itemKind())
                .with("build", rule.build())
                .with("material", rule.material())
                .with("work", rule.work())
                .with("every_days", rule.everyDays())
                .with("every_loans", rule.everyLoans())
                .with("every_shots", rule.everyShots())
                .with("soon_days", rule.soonDays())
                .with("blocks", rule.blocks())
                .with("source", rule.source())
                .with("changed_by", actor.id())
                .with("changed_at", time.now())
                .with("beyond_percent", rule.beyondPercent()));
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
