package club.ascham.home;

import club.ascham.askback.AskBack;
import club.ascham.askback.Asked;
import club.ascham.concern.Beside;
import club.ascham.concern.Concerns;
import club.ascham.fleet.FleetReading;
import club.ascham.fleet.OpenLoan;
import club.ascham.fleet.Shown;
import club.ascham.id.LoanId;
import club.ascham.people.Actor;
import club.ascham.people.Role;
import club.ascham.report.Report;
import club.ascham.report.Reports;
import club.ascham.server.Worries;
import club.ascham.time.ClubTime;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/** What is on tonight. */
@Path("/")
class HomePages {
  private static final int DAYS_AHEAD = 7;
  private static final int TOLD_AT_MOST = 4;

  private final FleetReading fleet;
  private final AskBack askBack;
  private final Concerns concerns;
  private final Reports reports;
  private final Worries worries;
  private final ClubTime time;
  private final Actor actor;

  HomePages(
      FleetReading fleet,
      AskBack askBack,
      Concerns concerns,
      Reports reports,
      Worries worries,
      ClubTime time,
      Actor actor) {
    this.fleet = fleet;
    this.askBack = askBack;
    this.concerns = concerns;
    this.reports = reports;
    this.worries = worries;
    this.time = time;
    this.actor = actor;
  }

  /**
   * @param beside what stands against what is out with each loan; no entry: nothing
   * @param askBack what is unsafe and in somebody’s hands
   * @param told what somebody told and nobody has answered
   * @param worries what is wrong with the server, for officers
   */
  @CheckedTemplate(basePath = "home", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record HomePage(
      Tonight tonight,
      Map<LoanId, Beside> beside,
      List<Asked> askBack,
      Shown<Report> told,
      List<Worries.Worry> worries)
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
    Tonight tonight =
        Tonight.of(
            fleet.rigs(today),
            fleet.loansDueBy(today.plusDays(DAYS_AHEAD)),
            concerns.keptIn().values(),
            today);
    return new HomePage(
        tonight,
        concerns.besideLoans(tonight.loansShown().map(OpenLoan::id).toList()),
        askBack.now(),
        Shown.of(reports.open(), TOLD_AT_MOST),
        actor.isOfficer() ? worries.now() : List.of());
  }
}
