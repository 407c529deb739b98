package club.ascham.upkeep;

import club.ascham.form.Outcome;
import club.ascham.id.RuleId;
import club.ascham.people.Actor;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.OptionalInt;

/**
 * Takes over what the club's own record proposes for a rule: it asks earlier, never later.
 *
 * <p>The number is reckoned anew at the press, so that nobody accepts what is no longer proposed.
 * Whoever wants a longer interval edits the rule, with a source.
 */
@ApplicationScoped
public class ShortenRule {
  private final RuleRecords rules;
  private final Story story;
  private final Actor actor;
  private final ClubTime time;

  ShortenRule(RuleRecords rules, Story story, Actor actor, ClubTime time) {
    this.rules = rules;
    this.story = story;
    this.actor = actor;
    this.time = time;
  }

  /**
   * @param source what the number rests on
   */
  @Writes
  public Outcome<RuleId> shorten(RuleId id, OptionalInt version, int everyDays, String source) {
    boolean changed =
        rules
            .seen(id.value(), version)
            .filter(rule -> rule.shorten(everyDays, source, actor.id(), time.now()))
            .isPresent();
    if (!changed) {
      return Outcome.refused("rule", "The rule was changed since, or asks as early already.");
    }
    story.tell(
        actor.id(),
        "Shortened a rule of upkeep to " + everyDays + " days, as the record proposed.",
        source);
    return Outcome.done(
        id, "The rule asks after " + everyDays + " days now; what is due follows it.");
  }
}
