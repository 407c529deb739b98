package club.ascham.fleet;

import club.ascham.people.Actor;
import club.ascham.people.Role;
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
import java.time.LocalDate;

/** Can we run the next course, and are we safe? */
@Path("/fleet")
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
class FleetPages {
  private final FleetReading reading;
  private final SealedEntries sealed;
  private final ClubTime time;
  private final Actor actor;

  FleetPages(FleetReading reading, SealedEntries sealed, ClubTime time, Actor actor) {
    this.reading = reading;
    this.sealed = sealed;
    this.time = time;
    this.actor = actor;
  }

  @CheckedTemplate(basePath = "fleet", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record FleetPage(Fleet fleet, String seal) implements TemplateInstance {}

  @CheckedTemplate(basePath = "fleet", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record RowsPage(FleetRows rows) implements TemplateInstance {}

  @GET
  public TemplateInstance fleet() {
    return new FleetPage(reading.fleet(time.today()), Seal.shortened(sealed.newest().orElse(null)));
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
        today,
        reader != Role.COMMITTEE);
  }
}
