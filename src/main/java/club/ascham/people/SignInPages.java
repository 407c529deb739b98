package club.ascham.people;

import club.ascham.rules.Club;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.PermitAll;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import org.jboss.resteasy.reactive.RestQuery;

/** Signing in; the platform takes the name and password at {@code /sign-in/go}. */
@Path("/sign-in")
class SignInPages {
  @CheckedTemplate(basePath = "people", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record SignInPage(boolean failed, boolean demo) implements TemplateInstance {}

  private final Club club;

  SignInPages(Club club) {
    this.club = club;
  }

  @GET
  @PermitAll
  public TemplateInstance signIn(@RestQuery String failed) {
    return new SignInPage(failed != null, club.rules().demo());
  }
}
