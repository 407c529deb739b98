package club.ascham.people;

import club.ascham.form.Typed;
import club.ascham.time.ClubTime;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Locale;

/** The page of one's own account. */
@ApplicationScoped
public class MyAccount {
  /**
   * @param newKey an access key just made; null: it is not to be shown
   * @param step the second step; null: it is off
   * @param stepAsked whether the club wants one of this account
   * @param here the number of the session that this page was asked in
   */
  @CheckedTemplate(basePath = "people", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  public record MePage(
      People.Listed account,
      boolean permitHolds,
      String unit,
      String newKey,
      SecondFactors.State step,
      boolean stepAsked,
      List<SignedInSessions.Open> open,
      long here,
      Typed typed)
      implements TemplateInstance {}

  private final People people;
  private final SecondFactors secondSteps;
  private final SignedInSessions sessions;
  private final Actor actor;
  private final ClubTime time;

  MyAccount(
      People people,
      SecondFactors secondSteps,
      SignedInSessions sessions,
      Actor actor,
      ClubTime time) {
    this.people = people;
    this.secondSteps = secondSteps;
    this.sessions = sessions;
    this.actor = actor;
    this.time = time;
  }

  public TemplateInstance page(Typed typed) {
    return page(typed, null);
  }

  /**
   * @param newKey null: none was made
   */
  public TemplateInstance page(Typed typed, String newKey) {
    return new MePage(
        people.listed(actor.id().value()).orElseThrow(),
        actor.holdsPermit(time.today()),
        actor.unit().name().toLowerCase(Locale.ROOT),
        newKey,
        secondSteps.of(actor.id()).orElse(null),
        actor.secondStepAsked(),
        sessions.open(actor.id()),
        actor.session(),
        typed);
  }
}
