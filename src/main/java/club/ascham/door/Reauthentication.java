package club.ascham.door;

import club.ascham.form.Typed;
import club.ascham.people.Accounts;
import club.ascham.people.Actor;
import club.ascham.web.Forms;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.core.MultivaluedMap;

/**
 * Asks who is signed in for password and code once more, before what opens the account is changed;
 * what is wrong is told at its field.
 */
@ApplicationScoped
class Reauthentication {
  private final SignIn signIn;
  private final Accounts accounts;
  private final Actor actor;

  Reauthentication(SignIn signIn, Accounts accounts, Actor actor) {
    this.signIn = signIn;
    this.accounts = accounts;
    this.actor = actor;
  }

  void forPassword(
      Typed typed, String field, MultivaluedMap<String, String> form, RoutingContext request) {
    told(
        typed,
        field,
        signIn.byPassword(actor.name(), Forms.exactly(form, field), Visit.of(request)),
        "That is not the password until now.");
  }

  /** Asked for after the password was right: a code that was looked at is spent. */
  void forCode(Typed typed, String field, RoutingContext request) {
    told(
        typed,
        field,
        signIn.byCode(
            accounts.numbered(actor.id()).orElseThrow(), typed.value(field), Visit.of(request)),
        "That is not the code of this moment, or it was used before. Wait for the next one.");
  }

  private static void told(Typed typed, String field, SignIn.Outcome outcome, String wrong) {
    if (outcome instanceof SignIn.Outcome.Wait waiting) {
      typed.fault(
          field, "Too many wrong tries: wait " + Visit.seconds(waiting.length()) + " seconds.");
    } else if (outcome instanceof SignIn.Outcome.Wrong) {
      typed.fault(field, wrong);
    }
  }
}
