package club.ascham.measure;

import club.ascham.people.Role;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;

/**
 * The floor: a page of constant text for someone signed in, through the same server and headers.
 */
@Path("/constant-text")
public class ConstantPages {
  @GET
  @Produces(MediaType.TEXT_HTML)
  @RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
  public String text() {
    return "<!DOCTYPE html><title>constant</title><p>constant text";
  }
}
