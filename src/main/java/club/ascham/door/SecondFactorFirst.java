package club.ascham.door;

import club.ascham.people.Actor;
import club.ascham.web.Go;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.core.Response;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;

/**
 * Whoever must have a second step and has none is led to turning it on, whatever they ask for; they
 * may still sign out.
 */
class SecondFactorFirst {
  private final Actor actor;

  SecondFactorFirst(Actor actor) {
    this.actor = actor;
  }

  @ServerRequestFilter
  Response leadThere(ContainerRequestContext request) {
    // A program's request brought a key, and no code could be asked of it.
    boolean led = actor.session() != 0 && actor.lacksSecondStep();
    if (!led || isOnTheWay(request.getMethod(), path(request))) {
      return null;
    }
    return Go.to("/me", "Your club asks for a second step: please turn it on first.");
  }

  private static boolean isOnTheWay(String method, String path) {
    return path.equals("/me") && method.equals("GET")
        || path.equals("/me/second-step")
        || path.equals("/me/second-step/confirm")
        || path.equals("/sign-out");
  }

  private static String path(ContainerRequestContext request) {
    return request.getUriInfo().getPath();
  }
}
