package club.ascham.fleet;

import club.ascham.people.Actor;
import club.ascham.people.Role;
import club.ascham.planning.InsuranceList;
import club.ascham.planning.PlanBrief;
import club.ascham.story.Seal;
import club.ascham.story.SealedEntries;
import club.ascham.time.ClubTime;
import club.ascham.web.NoSuchThing;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.UriInfo;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;

/** Can we run the next course, and are we safe? */
@Path("/fleet")
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
class FleetPages {
  private static final int SHOWN = 5;
  private static final Duration PATIENCE = Duration.ofSeconds(2);

  private final FleetReading reading;
  private final ReportReading reporting;
  private final PlanBrief brief;
  private final SealedEntries sealed;
  private final ClubTime time;
  private final Actor actor;

  FleetPages(
      FleetReading reading,
      ReportReading reporting,
      PlanBrief brief,
      SealedEntries sealed,
      ClubTime time,
      Actor actor) {
    this.reading = reading;
    this.reporting = reporting;
    this.brief = brief;
    this.sealed = sealed;
    this.time = time;
    this.actor = actor;
  }

  @CheckedTemplate(basePath = "fleet", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record FleetPage(
      Fleet fleet,
      List<AnnualReport.Month> condition,
      List<TroubledRig> troubled,
      PlanBrief.Brief planned,
      boolean mayPlan,
      String seal)
      implements TemplateInstance {}

  @CheckedTemplate(basePath = "fleet", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record ReportPage(
      Fleet fleet,
      AnnualReport report,
      List<TroubledRig> troubled,
      PlanBrief.Brief planned,
      InsuranceList.Total worth,
      String seal)
      implements TemplateInstance {}

  @CheckedTemplate(basePath = "fleet", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record RowsPage(FleetRows rows) implements TemplateInstance {}

  @GET
  public TemplateInstance fleet() {
    LocalDate today = time.today();
    return new FleetPage(
        reading.fleet(today),
        reporting.condition(today),
        TroubledRig.most(reading.troubles(today, null), SHOWN),
        brief.within(Duration.ZERO),
        actor.role() != Role.VOLUNTEER,
        seal());
  }

  @GET
  @Path("/report")
  @RolesAllowed({Role.OFFICERS, Role.COMMITTEES})
  public TemplateInstance report() {
    LocalDate today = time.today();
    return new ReportPage(
        reading.fleet(today),
        reporting.lastTwelveMonths(today),
        TroubledRig.most(reading.troubles(today, null), SHOWN),
        brief.within(PATIENCE),
        brief.worth(today),
        seal());
  }

  private String seal() {
    return Seal.shortened(sealed.newest().orElse(null));
  }

  @GET
  @Path("/rows")
  public TemplateInstance rows(@Context UriInfo address) {
    return new RowsPage(rowsAt(address, reading, time.today(), actor.role()));
  }

  static FleetRows rowsAt(UriInfo address, FleetReading reading, LocalDate today, Role reader) {
    String word = address.getQueryParameters().getFirst("list");
    FleetList list =
        FleetList.of(word)
            .orElseThrow(() -> new NoSuchThing("The fleet page has no list of that name."));
    return reading.rows(
        list,
        RigChoice.parse(address.getQueryParameters()::getFirst),
        rigAt(address),
        today,
        reader != Role.COMMITTEE);
  }

  /** Null where all are meant. */
  private static Long rigAt(UriInfo address) {
    String rig = address.getQueryParameters().getFirst("rig");
    return rig == null || !rig.matches("\\d{1,9}") ? null : Long.valueOf(rig);
  }
}
