package club.ascham.people;

import club.ascham.web.Go;
import io.quarkus.security.identity.CurrentIdentityAssociation;
import io.quarkus.vertx.http.runtime.security.FormAuthenticationMechanism;
import jakarta.annotation.security.PermitAll;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;

/** Signing out. */
@Path("/sign-out")
class SignOutPages {
  private final CurrentIdentityAssociation identity;

  SignOutPages(CurrentIdentityAssociation identity) {
    this.identity = identity;
  }

  @POST
  @PermitAll
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response signOut(MultivaluedMap<String, String> form) {
    if (!identity.getIdentity().isAnonymous()) {
      FormAuthenticationMechanism.logout(identity.getIdentity());
    }
    return Go.to("/sign-in");
  }
}
