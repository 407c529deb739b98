package club.ascham.server;

import club.ascham.people.Actor;
import club.ascham.people.Role;
import club.ascham.web.Go;
import club.ascham.web.NoSuchThing;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.Arrays;
import java.util.Locale;
import org.jboss.resteasy.reactive.RestPath;

/** What the first page says of the server is read. */
@Path("/server")
@RolesAllowed(Role.OFFICERS)
class ServerPages {
  private final ReadWorry readWorry;
  private final Actor actor;

  ServerPages(ReadWorry readWorry, Actor actor) {
    this.readWorry = readWorry;
    this.actor = actor;
  }

  @POST
  @Path("/read/{about}")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response read(@RestPath String about, MultivaluedMap<String, String> form) {
    return Go.to(
        "/",
        readWorry.read(named(about), actor.id())
            ? "Noted in the record that you have read it."
            : "It was read before.");
  }

  /** As an address says it. */
  static String path(Worries.About about) {
    return about.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  static Worries.About named(String path) {
    return Arrays.stream(Worries.About.values())
        .filter(about -> path(about).equals(path))
        .findFirst()
        .orElseThrow(() -> new NoSuchThing("The server tells of nothing by that name."));
  }
}
