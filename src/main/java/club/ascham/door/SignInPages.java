package club.ascham.door;

import club.ascham.form.Typed;
import club.ascham.people.Accounts;
import club.ascham.people.SignedInSessions;
import club.ascham.time.ClubTime;
import club.ascham.web.Forms;
import club.ascham.web.Go;
import club.ascham.web.WhoseClub;
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
import java.util.Optional;

/**
 * Signing in. The forms have no key: nobody is signed in yet, and they carry a password or a code.
 * Who signs in twice is signed in twice.
 */
@Path("/sign-in")
class SignInPages {
  /**
   * @param seconds how many seconds until the next try; null: none to wait
   */
  @CheckedTemplate(basePath = "people", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record SignInPage(boolean wrong, String seconds, Typed typed, boolean demo)
      implements TemplateInstance {}

  /**
   * @param seconds how many seconds until the next try; null: none to wait
   */
  @CheckedTemplate(basePath = "people", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record SignInCodePage(String name, boolean wrong, String seconds) implements TemplateInstance {}

  private final SignIn signIn;
  private final SignedInSessions sessions;
  private final SessionCookie cookie;
  private final HalfWayCookie halfWayCookie;
  private final KnownBrowsers browsers;
  private final WhoseClub club;
  private final ClubTime time;

  SignInPages(
      SignIn signIn,
      SignedInSessions sessions,
      SessionCookie cookie,
      HalfWayCookie halfWayCookie,
      KnownBrowsers browsers,
      WhoseClub club,
      ClubTime time) {
    this.signIn = signIn;
    this.sessions = sessions;
    this.cookie = cookie;
    this.halfWayCookie = halfWayCookie;
    this.browsers = browsers;
    this.club = club;
    this.time = time;
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
    SignIn.Outcome outcome = signIn.byPassword(name, Forms.exactly(form, "password"), visit);
    if (outcome instanceof SignIn.Outcome.In in) {
      if (in.account().secondStep()) {
        halfWayCookie.carry(HalfWay.of(in.account(), time.now()), request);
        return Go.to("/sign-in/code");
      }
      return welcome(in.account(), visit, request);
    }
    if (outcome instanceof SignIn.Outcome.Wait waiting) {
      String seconds = Visit.seconds(waiting.length());
      return mustWait(seconds, page(false, seconds, typed));
    }
    return Go.again(page(true, null, typed));
  }

  @GET
  @Path("/code")
  @PermitAll
  public Response askForCode(RoutingContext request) {
    return halfWay(request)
        .map(account -> Response.ok(new SignInCodePage(account.name(), false, null)).build())
        .orElseGet(SignInPages::fromTheStart);
  }

  @POST
  @Path("/code")
  @PermitAll
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response takeCode(MultivaluedMap<String, String> form, RoutingContext request) {
    Optional<Accounts.Credentials> account = halfWay(request);
    return account.isPresent() ? takeCode(account.get(), form, request) : fromTheStart();
  }

  private Response takeCode(
      Accounts.Credentials account, MultivaluedMap<String, String> form, RoutingContext request) {
    Visit visit = Visit.of(request);
    Typed typed = Forms.typed(form);
    // The second field is for letters: the keyboard of the first has none on a phone. Either takes
    // both.
    String code = typed.has("code") ? typed.value("code") : typed.value("recovery");
    SignIn.Outcome outcome = signIn.byCode(account, code, visit);
    if (outcome instanceof SignIn.Outcome.In) {
      halfWayCookie.end(request);
      return welcome(account, visit, request);
    }
    if (outcome instanceof SignIn.Outcome.Wait waiting) {
      String seconds = Visit.seconds(waiting.length());
      return mustWait(seconds, new SignInCodePage(account.name(), false, seconds));
    }
    return Go.again(new SignInCodePage(account.name(), true, null));
  }

  private Optional<Accounts.Credentials> halfWay(RoutingContext request) {
    return halfWayCookie.carried(request).flatMap(signIn::halfWay);
  }

  private static Response fromTheStart() {
    return Go.to(
        "/sign-in",
        "Please begin again: the code is to be given within five minutes of the password.");
  }

  private Response welcome(Accounts.Credentials account, Visit visit, RoutingContext request) {
    cookie.carry(sessions.begin(account.id()), request);
    if (browsers.mark(account.name(), visit.browser()).isEmpty()) {
      browsers.remember(account.name(), request);
    }
    return Go.to(cookie.pageAskedFor(request));
  }

  private static Response mustWait(String seconds, TemplateInstance page) {
    return Response.status(429)
        .header("Retry-After", seconds)
        .type(MediaType.TEXT_HTML_TYPE.withCharset("UTF-8"))
        .entity(page)
        .build();
  }

  private TemplateInstance page(boolean wrong, String seconds, Typed typed) {
    return new SignInPage(wrong, seconds, typed, club.demo());
  }
}
