package club.ascham.door;

import club.ascham.form.Typed;
import club.ascham.people.Actor;
import club.ascham.people.ChangeSecondFactor;
import club.ascham.people.FreshSecrets;
import club.ascham.people.MyAccount;
import club.ascham.people.OneTimeCode;
import club.ascham.people.RecoveryCode;
import club.ascham.people.Role;
import club.ascham.people.SecondFactors;
import club.ascham.people.SharedSecret;
import club.ascham.people.SignedInSessions;
import club.ascham.time.ClubTime;
import club.ascham.web.Forms;
import club.ascham.web.Go;
import club.ascham.web.WhoseClub;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.vertx.ext.web.RoutingContext;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * One's own second step: turning it on and off, and recovery codes. These forms have no key, since
 * they carry a password or a code. A code is taken once, so a second press changes nothing.
 */
@Path("/me/second-step")
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
class SecondFactorPages {
  /**
   * A secret to be taken over into a phone.
   *
   * @param secret to be typed in; {@code address} for an app on this very device
   */
  @CheckedTemplate(basePath = "people", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record SecondStepPage(QrPath qr, String secret, String address, Typed typed)
      implements TemplateInstance {}

  /** Codes, shown this once. */
  @CheckedTemplate(basePath = "people", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record RecoveryCodesPage(List<String> codes, boolean turnedOn) implements TemplateInstance {}

  private final FreshSecrets fresh;
  private final ChangeSecondFactor changeSecondStep;
  private final SecondFactors secondSteps;
  private final Reauthentication askAgain;
  private final MyAccount myAccount;
  private final SignedInSessions sessions;
  private final SessionCookie cookie;
  private final WhoseClub club;
  private final Actor actor;
  private final ClubTime time;

  SecondFactorPages(
      FreshSecrets fresh,
      ChangeSecondFactor changeSecondStep,
      SecondFactors secondSteps,
      Reauthentication askAgain,
      MyAccount myAccount,
      SignedInSessions sessions,
      SessionCookie cookie,
      WhoseClub club,
      Actor actor,
      ClubTime time) {
    this.fresh = fresh;
    this.changeSecondStep = changeSecondStep;
    this.secondSteps = secondSteps;
    this.askAgain = askAgain;
    this.myAccount = myAccount;
    this.sessions = sessions;
    this.cookie = cookie;
    this.club = club;
    this.actor = actor;
    this.time = time;
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response begin(MultivaluedMap<String, String> form, RoutingContext request) {
    if (secondSteps.of(actor.id()).isPresent()) {
      return Go.to("/me", "The second step is on already.");
    }
    Typed typed = Typed.nothing();
    askAgain.forPassword(typed, "stepPassword", form, request);
    if (!typed.sound()) {
      return Go.again(myAccount.page(typed));
    }
    return Go.shown(page(fresh.keep(SharedSecret.fresh()), Typed.nothing()));
  }

  /** Nothing is kept before a code proved that the phone knows the secret. */
  @POST
  @Path("/confirm")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response confirm(MultivaluedMap<String, String> form, RoutingContext request) {
    Optional<SharedSecret> begun = fresh.newest(SharedSecret.class);
    if (begun.isEmpty()) {
      return Go.to("/me", "That took too long, and nothing was changed. Please begin again.");
    }
    SharedSecret secret = begun.get();
    Typed typed = Forms.typed(form);
    OptionalLong step = OneTimeCode.matched(secret.bytes(), typed.value("code"), time.now());
    if (step.isEmpty()) {
      typed.fault(
          "code",
          "That is not the code of this moment. Type the one shown now; if it is refused again, look"
              + " whether the phone’s clock is right.");
      return Go.again(page(secret, typed));
    }
    fresh.forget(SharedSecret.class);
    return handedOut(changeSecondStep.turnOn(actor.id(), secret, step.getAsLong()), true, request);
  }

  @POST
  @Path("/recovery-codes")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response newRecoveryCodes(MultivaluedMap<String, String> form, RoutingContext request) {
    Typed typed = asked("codes", form, request);
    return typed.sound()
        ? handedOut(changeSecondStep.newRecoveryCodes(actor.id()), false, request)
        : Go.again(myAccount.page(typed));
  }

  @POST
  @Path("/off")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response turnOff(MultivaluedMap<String, String> form, RoutingContext request) {
    Typed typed = asked("off", form, request);
    if (!typed.sound()) {
      return Go.again(myAccount.page(typed));
    }
    changeSecondStep.turnOff(actor.id());
    goOnHere(request);
    return Go.to("/me", "The second step is off; sessions in other browsers are ended.");
  }

  /** Password and code, in fields of that form's own. */
  private Typed asked(String which, MultivaluedMap<String, String> form, RoutingContext request) {
    Typed typed = Forms.typed(form);
    askAgain.forPassword(typed, which + "Password", form, request);
    if (typed.sound()) {
      askAgain.forCode(typed, which + "Code", request);
    }
    return typed;
  }

  private Response handedOut(List<RecoveryCode> codes, boolean turnedOn, RoutingContext request) {
    if (codes.isEmpty()) {
      return Go.to("/me", "Someone changed the second step meanwhile; nothing was changed here.");
    }
    goOnHere(request);
    return Go.shown(
        new RecoveryCodesPage(codes.stream().map(RecoveryCode::said).toList(), turnedOn));
  }

  /** Every session has ended: who just gave password and code begins another. */
  private void goOnHere(RoutingContext request) {
    cookie.carry(sessions.begin(actor.id()), request);
  }

  private TemplateInstance page(SharedSecret secret, Typed typed) {
    String address = secret.address(club.name(), actor.name());
    return new SecondStepPage(QrPath.of(address), secret.typed(), address, typed);
  }
}
