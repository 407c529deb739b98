package club.ascham.home;

import club.ascham.askback.AskBack;
import club.ascham.askback.Asked;
import club.ascham.concern.Concerns;
import club.ascham.fleet.FleetReading;
import club.ascham.people.Actor;
import club.ascham.people.Role;
import club.ascham.time.ClubTime;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import java.time.LocalDate;
import java.util.List;

/** What is on tonight. */
@Path("/")
class HomePages {
  private static final int DAYS_AHEAD = 7;

  private final FleetReading fleet;
  private final AskBack askBack;
  private final Concerns concerns;
  private final Worries worries;
  private final ClubTime time;
  private final Actor actor;

  HomePages(
      FleetReading fleet,
      AskBack askBack,
      Concerns concerns,
      Worries worries,
      ClubTime time,
      Actor actor) {
    this.fleet = fleet;
    this.askBack = askBack;
    this.concerns = concerns;
    this.worries = worries;
    this.time = time;
    this.actor = actor;
  }

  /**
   * @param askBack what is unsafe and in somebody’s hands
   * @param worries what is wrong with the server, for officers
   */
  @CheckedTemplate(basePath = "home", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record HomePage(Tonight tonight, List<Asked> askBack, List<Worries.Worry> worries)
      implements TemplateInstance {}

  /**
   * @param askBack how many things are to be asked back
   */
  @CheckedTemplate(basePath = "home", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record CommitteePage(Tonight tonight, int askBack) implements TemplateInstance {}

  @GET
  @RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
  public TemplateInstance home() {
    LocalDate today = time.today();
    if (actor.role() == Role.COMMITTEE) {
      return new CommitteePage(
          Tonight.of(fleet.rigs(today), List.of(), List.of(), today), Asked.things(askBack.now()));
    }
    return new HomePage(
        Tonight.of(
            fleet.rigs(today),
            fleet.loansDueBy(today.plusDays(DAYS_AHEAD)),
            concerns.keptIn().values(),
            today),
        askBack.now(),
        actor.isOfficer() ? worries.now() : List.of());
  }
}
