package club.ascham.door;

import club.ascham.form.Outcome;
import club.ascham.form.Typed;
import club.ascham.id.AccountId;
import club.ascham.people.AccountData;
import club.ascham.people.Actor;
import club.ascham.people.ChangeAccounts;
import club.ascham.people.FreshSecrets;
import club.ascham.people.MyAccount;
import club.ascham.people.PasswordRules;
import club.ascham.people.People;
import club.ascham.people.Role;
import club.ascham.people.SignedInSessions;
import club.ascham.units.LengthUnit;
import club.ascham.web.Forms;
import club.ascham.web.Go;
import club.ascham.web.Presses;
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
import java.util.function.Supplier;

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
  private final FreshSecrets fresh;
  private final SessionCookie cookie;
  private final WhoseClub club;
  private final Actor actor;
  private final Presses presses;

  MePages(
      People people,
      ChangeAccounts changeAccounts,
      AccountData accountData,
      Reauthentication askAgain,
      MyAccount myAccount,
      SignedInSessions sessions,
      FreshSecrets fresh,
      SessionCookie cookie,
      WhoseClub club,
      Actor actor,
      Presses presses) {
    this.people = people;
    this.changeAccounts = changeAccounts;
    this.accountData = accountData;
    this.askAgain = askAgain;
    this.myAccount = myAccount;
    this.sessions = sessions;
    this.fresh = fresh;
    this.cookie = cookie;
    this.club = club;
    this.actor = actor;
    this.presses = presses;
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
    return press(
        typed,
        "/me",
        () -> {
          LengthUnit unit = typed.requiredWord("unit", LengthUnit.class, "Which unit?");
          return typed.sound() ? changeAccounts.measureIn(actor.id(), unit) : Outcome.unread();
        });
  }

  private Response press(Typed typed, String page, Supplier<Outcome<AccountId>> work) {
    return presses.form(typed, AccountId::new, me -> page).page(work, () -> myAccount.page(typed));
  }

  /**
   * Without a key, since it carries passwords. Nor does it need one: the first press ends the
   * session, so a second is led to the same page, and finds another password if it came as fast.
   */
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
    Typed typed = Forms.typed(form);
    String number = typed.value("session");
    boolean here = number.equals(Long.toString(actor.session()));
    return press(
        typed,
        here ? "/sign-in" : "/me",
        () -> {
          if (number.matches("\\d{1,18}")) {
            sessions.end(actor.id(), Long.parseLong(number));
          }
          if (here) {
            cookie.end(request);
          }
          return Outcome.done(
              actor.id(),
              here
                  ? "You are signed out here; your other sessions go on."
                  : "That session is ended: it asks for the password again.");
        });
  }

  @POST
  @Path("/key")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response newKey(MultivaluedMap<String, String> form) {
    return press(Forms.typed(form), "/me/key", () -> changeAccounts.newAccessKey(actor.id()));
  }

  /** The key that was just made here. */
  @GET
  @Path("/key")
  public Response key() {
    return fresh
        .newest(ChangeAccounts.FreshKey.class)
        .map(made -> Go.shown(myAccount.page(Typed.nothing(), made.key())))
        .orElseGet(() -> Go.to("/me"));
  }

  @POST
  @Path("/key/revoke")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response revokeKey(MultivaluedMap<String, String> form) {
    return press(Forms.typed(form), "/me", () -> changeAccounts.revokeAccessKey(actor.id()));
  }
}
