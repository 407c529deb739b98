package club.ascham.door;

import club.ascham.form.Typed;
import club.ascham.people.PasswordRules;
import club.ascham.web.Forms;
import club.ascham.web.Go;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.PermitAll;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.List;

/**
 * The first account of a new club. The form has no key: nobody is signed in, it carries a password,
 * and its code works once.
 */
@Path("/first-officer")
class FirstOfficerPages {
  @CheckedTemplate(basePath = "people", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record FirstOfficerPage(boolean offered, Typed typed) implements TemplateInstance {}

  private final FirstOfficer firstOfficer;

  FirstOfficerPages(FirstOfficer firstOfficer) {
    this.firstOfficer = firstOfficer;
  }

  @GET
  @PermitAll
  public TemplateInstance firstOfficer() {
    return new FirstOfficerPage(firstOfficer.isOffered(), Typed.nothing());
  }

  @POST
  @PermitAll
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response createFirstOfficer(MultivaluedMap<String, String> form) {
    Typed typed = Forms.typed(form);
    String code = typed.required("code", 100, "The code stands in the server's log.");
    String name = typed.required("name", 40, "A name to sign in with, please.");
    String password = Forms.exactly(form, "password");
    PasswordRules.fault(password, name == null ? List.of() : List.of(name))
        .ifPresent(fault -> typed.fault("password", fault));
    if (code != null && !firstOfficer.knows(code)) {
      typed.fault("code", "That is not the code in the log.");
    }
    if (!typed.sound()) {
      return Go.again(new FirstOfficerPage(firstOfficer.isOffered(), typed));
    }
    if (!firstOfficer.create(code, name, password)) {
      typed.fault("code", "The code is spent: somebody made the first account with it just now.");
      return Go.again(new FirstOfficerPage(firstOfficer.isOffered(), typed));
    }
    return Go.to("/sign-in", "The account is made. Sign in with it.");
  }
}
