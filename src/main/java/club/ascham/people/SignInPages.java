package club.ascham.people;

import club.ascham.form.Typed;
import club.ascham.rules.Club;
import club.ascham.web.Forms;
import club.ascham.web.Go;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.vertx.ext.web.RoutingContext;
import jakarta.annotation.security.PermitAll;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;

/** Signing in. */
@Path("/sign-in")
class SignInPages {
  /**
   * @param seconds how many seconds until the next try; null: none to wait
   */
  @CheckedTemplate(basePath = "people", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record SignInPage(boolean wrong, String seconds, Typed typed, boolean demo)
      implements TemplateInstance {}

  private final SignIn signIn;
  private final Sessions sessions;
  private final SessionCookie cookie;
  private final KnownBrowsers browsers;
  private final Club club;

  SignInPages(
      SignIn signIn, Sessions sessions, SessionCookie cookie, KnownBrowsers browsers, Club club) {
    this.signIn = signIn;
    this.sessions = sessions;
    this.cookie = cookie;
    this.browsers = browsers;
    this.club = club;
  }

  @GET
  @PermitAll
  public TemplateInstance signIn() {
    return page(false, null, Typed.nothing());
  }

  @POST
  @PermitAll
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response takeIn(MultivaluedMap<String, String> form, RoutingContext request) {
    Typed typed = Forms.typed(form);
    Visit visit = Visit.of(request);
    String name = typed.value("name");
    SignIn.Outcome outcome = signIn.attempt(name, Forms.exactly(form, "password"), visit);
    if (outcome instanceof SignIn.Outcome.In in) {
      cookie.carry(sessions.begin(in.account().id()), request);
      if (browsers.mark(name, visit.browser()).isEmpty()) {
        browsers.remember(name, request);
      }
      return Go.to(cookie.pageAskedFor(request));
    }
    if (outcome instanceof SignIn.Outcome.Wait waiting) {
      String seconds = Visit.seconds(waiting.length());
      return Response.status(429)
          .header("Retry-After", seconds)
          .type(MediaType.TEXT_HTML_TYPE.withCharset("UTF-8"))
          .entity(page(false, seconds, typed))
          .build();
    }
    return Go.again(page(true, null, typed));
  }

  private TemplateInstance page(boolean wrong, String seconds, Typed typed) {
    return new SignInPage(wrong, seconds, typed, club.rules().demo());
  }
}
