package club.ascham.people;

import club.ascham.form.Typed;
import club.ascham.units.LengthUnit;
import club.ascham.web.Forms;
import club.ascham.web.Go;
import club.ascham.web.WhoseClub;
import io.quarkus.qute.TemplateInstance;
import io.vertx.ext.web.RoutingContext;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.List;

/** One's own account: unit, password, access key. */
@Path("/me")
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
class MePages {
  private final People people;
  private final ChangeAccounts changeAccounts;
  private final AccountData accountData;
  private final Reauthentication askAgain;
  private final MyAccount myAccount;
  private final SignedInSessions sessions;
  private final SessionCookie cookie;
  private final WhoseClub club;
  private final Actor actor;

  MePages(
      People people,
      ChangeAccounts changeAccounts,
      AccountData accountData,
      Reauthentication askAgain,
      MyAccount myAccount,
      SignedInSessions sessions,
      SessionCookie cookie,
      WhoseClub club,
      Actor actor) {
    this.people = people;
    this.changeAccounts = changeAccounts;
    this.accountData = accountData;
    this.askAgain = askAgain;
    this.myAccount = myAccount;
    this.sessions = sessions;
    this.cookie = cookie;
    this.club = club;
    this.actor = actor;
  }

  @GET
  public TemplateInstance me() {
    return myAccount.page(Typed.nothing());
  }

  /** Everything kept of oneself, as a file. */
  @GET
  @Path("/data")
  @Produces(MediaType.APPLICATION_JSON)
  public Response data() {
    return accountData.file(people.listed(actor.id().value()).orElseThrow());
  }

  @POST
  @Path("/unit")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response unit(MultivaluedMap<String, String> form) {
    Typed typed = Forms.typed(form);
    LengthUnit unit = typed.requiredWord("unit", LengthUnit.class, "Which unit?");
    if (!typed.sound()) {
      return Go.again(myAccount.page(typed));
    }
    changeAccounts.measureIn(actor.id(), unit);
    return Go.to("/me", "A length without a unit is now read that way.");
  }

  @POST
  @Path("/password")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response password(MultivaluedMap<String, String> form, RoutingContext request) {
    Typed typed = Forms.typed(form);
    String fresh = Forms.exactly(form, "newPassword");
    PasswordRules.fault(fresh, List.of(actor.name(), club.name()))
        .ifPresent(fault -> typed.fault("newPassword", fault));
    if (typed.sound()) {
      askAgain.forPassword(typed, "oldPassword", form, request);
    }
    if (!typed.sound()) {
      return Go.again(myAccount.page(typed));
    }
    changeAccounts.setPassword(actor.id(), changeAccounts.hash(fresh));
    cookie.end(request);
    return Go.to(
        "/sign-in", "The password is changed, and every session ended. Sign in with the new one.");
  }

  @POST
  @Path("/sessions/end")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response endSession(MultivaluedMap<String, String> form, RoutingContext request) {
    String number = Forms.typed(form).value("session");
    if (number.matches("\\d{1,18}")) {
      sessions.end(actor.id(), Long.parseLong(number));
    }
    if (!number.equals(Long.toString(actor.session()))) {
      return Go.to("/me", "That session is ended: it asks for the password again.");
    }
    cookie.end(request);
    return Go.to("/sign-in", "You are signed out here; your other sessions go on.");
  }

  @POST
  @Path("/key")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response newKey(MultivaluedMap<String, String> form) {
    String key = changeAccounts.newAccessKey(actor.id());
    return Go.shown(myAccount.page(Typed.nothing(), key));
  }

  @POST
  @Path("/key/revoke")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response revokeKey(MultivaluedMap<String, String> form) {
    changeAccounts.revokeAccessKey(actor.id());
    return Go.to("/me", "The access key no longer opens anything.");
  }
}
