package club.ascham.door;

import club.ascham.people.Actor;
import club.ascham.people.Role;
import club.ascham.people.SignedInSessions;
import club.ascham.web.Go;
import io.vertx.ext.web.RoutingContext;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;

/**
 * Signing out, here and everywhere. The form has no key: a second press finds nobody signed in, and
 * is led to the same page.
 */
@Path("/sign-out")
class SignOutPages {
  private final Actor actor;
  private final SignedInSessions sessions;
  private final SessionCookie cookie;

  SignOutPages(Actor actor, SignedInSessions sessions, SessionCookie cookie) {
    this.actor = actor;
    this.sessions = sessions;
    this.cookie = cookie;
  }

  @POST
  @RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response signOut(MultivaluedMap<String, String> form, RoutingContext request) {
    sessions.endAll(actor.id());
    cookie.end(request);
    Response gone = Go.to("/sign-in", "You are signed out, here and in every other browser.");
    // What the browser kept of pages goes with the session.
    return Response.fromResponse(gone).header("Clear-Site-Data", "\"cache\"").build();
  }
}
