package club.ascham.upkeep;

import club.ascham.form.Outcome;
import club.ascham.form.Refusal;
import club.ascham.id.RuleId;
import club.ascham.people.Actor;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.OptionalInt;

/** Adds, changes and removes the rules that plan upkeep; what is due follows at once. */
@ApplicationScoped
class ChangeUpkeepRule {
  private final RuleRecords rules;
  private final Story story;
  private final Actor actor;
  private final ClubTime time;

  ChangeUpkeepRule(RuleRecords rules, Story story, Actor actor, ClubTime time) {
    this.rules = rules;
    this.story = story;
    this.actor = actor;
    this.time = time;
  }

  @Writes
  Outcome<RuleId> add(RuleDetails details) {
    UpkeepRule rule = new UpkeepRule(details, actor.id(), time.now());
    rules.persist(rule);
    return done(
        rule.id(),
        "Added a rule of upkeep.",
        "The rule is added; what it asks for stands in the upkeep list.");
  }

  @Writes
  Outcome<RuleId> change(long id, OptionalInt version, RuleDetails to) {
    UpkeepRule rule = rules.seen(id, version).orElse(null);
    if (rule == null) {
      return Outcome.refused(Refusal.savedFirst("this rule"));
    }
    rule.change(to, actor.id(), time.now());
    return done(
        rule.id(), "Changed a rule of upkeep.", "The rule is changed; what is due follows it.");
  }

  @Writes
  Outcome<RuleId> remove(long id) {
    rules.deleteById(id);
    return done(
        new RuleId(id),
        "Removed a rule of upkeep.",
        "The rule is removed. What was done under it stays on record.");
  }

  private Outcome<RuleId> done(RuleId rule, String told, String said) {
    story.tell(actor.id(), told);
    return Outcome.done(rule, said);
  }
}
