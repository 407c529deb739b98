package club.ascham.server;

import club.ascham.form.Words;
import club.ascham.id.ClubId;
import club.ascham.people.Actor;
import club.ascham.people.Role;
import club.ascham.web.Forms;
import club.ascham.web.Go;
import club.ascham.web.NoSuchThing;
import club.ascham.web.Presses;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.WebApplicationException;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.Arrays;
import org.jboss.resteasy.reactive.RestPath;

/** What the first page says of the server is read. */
@Path("/server")
@RolesAllowed(Role.OFFICERS)
class ServerPages {
  private final ReadWorry readWorry;
  private final Actor actor;
  private final Presses presses;

  ServerPages(ReadWorry readWorry, Actor actor, Presses presses) {
    this.readWorry = readWorry;
    this.actor = actor;
    this.presses = presses;
  }

  @POST
  @Path("/read/{about}")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response read(@RestPath String about, MultivaluedMap<String, String> form) {
    Worries.About worry = named(about);
    return presses
        .form(Forms.typed(form), ClubId::new, club -> "/")
        .page(
            () -> readWorry.tell(worry, actor.id()),
            done -> {
              readWorry.end(worry);
              return Go.to("/", done.said());
            },
            () -> {
              // Nothing is typed in it: no page of ours sends what could be refused.
              throw new WebApplicationException(422);
            });
  }

  static Worries.About named(String path) {
    return Arrays.stream(Worries.About.values())
        .filter(about -> Words.of(about).equals(path))
        .findFirst()
        .orElseThrow(() -> new NoSuchThing("The server tells of nothing by that name."));
  }
}
