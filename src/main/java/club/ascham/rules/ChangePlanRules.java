package club.ascham.rules;

import club.ascham.form.Outcome;
import club.ascham.form.Refusal;
import club.ascham.id.ClubId;
import club.ascham.people.Actor;
import club.ascham.plan.Kind;
import club.ascham.store.Rows;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;

/** Changes what the plan takes for granted; the next plan is reckoned with it. */
@ApplicationScoped
class ChangePlanRules {
  private static final Outcome<ClubId> SAVED_FIRST = Outcome.refused(Refusal.savedFirst("this"));

  private final Rows rows;
  private final Story story;
  private final Actor actor;
  private final ClubTime time;

  ChangePlanRules(Rows rows, Story story, Actor actor, ClubTime time) {
    this.rows = rows;
    this.story = story;
    this.actor = actor;
    this.time = time;
  }

  @Writes
  Outcome<ClubId> change(PlanRuleDetails to) {
    boolean changed =
        rows.change(
                """
            UPDATE plan_rule SET hours_a_week = ?1, terms_a_year = ?2, archers_a_course = ?3,
                   evenings_a_course = ?4, early_failure_percent = ?5, usage_spread_percent = ?6,
                   source = ?7, changed_by = ?8, changed_at = ?9, version = version + 1
             WHERE version = ?10""",
                to.hoursAWeek(),
                to.termsAYear(),
                to.archersACourse(),
                to.eveningsACourse(),
                to.earlyFailurePercent(),
                to.usageSpreadPercent(),
                to.source(),
                actor.id(),
                time.now(),
                to.version())
            == 1;
    if (!changed) {
      return SAVED_FIRST;
    }
    to.minutes()
        .forEach(
            (work, minutes) ->
                rows.change("UPDATE work_time SET minutes = ?2 WHERE work = ?1", work, minutes));
    return done("Changed what the plan takes for granted.");
  }

  @Writes
  Outcome<ClubId> change(Kind kind, PlanRuleDetails.Replacement to) {
    boolean changed =
        rows.change(
                """
            UPDATE replacement_terms SET price_minor = ?3, lead_days = ?4, minutes = ?5, years = ?6,
                   source = ?7, changed_by = ?8, changed_at = ?9, failure_times = ?10, version = version + 1
             WHERE item_kind = ?1 AND version = ?2""",
                kind,
                to.version(),
                to.price() == null ? null : to.price().minor(),
                to.leadDays(),
                to.minutes(),
                to.years(),
                to.source(),
                actor.id(),
                time.now(),
                to.failureTimes())
            == 1;
    return changed
        ? done("Changed what a new " + PlanRules.kindSaid(kind) + " costs and takes.")
        : SAVED_FIRST;
  }

  private Outcome<ClubId> done(String sentence) {
    story.tell(actor.id(), sentence);
    return Outcome.done(ClubId.ONE, "The next plan is reckoned with this.");
  }
}
