package club.ascham.web;

import club.ascham.form.Outcome;
import club.ascham.form.Refusal;
import club.ascham.form.Typed;
import club.ascham.id.Made;
import club.ascham.store.DatabaseRefusal;
import club.ascham.store.IdempotencyKeys;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * One press of a form, or one call with a body: done once, and its outcome told to a person as a
 * page or to a program as JSON. The work reads what was typed and calls the use case; it runs in
 * one transaction with the keeping of the key, and is not run at all where the press was done
 * before, since what was sent then may not be acceptable any more.
 */
public final class Press<T extends Made> {
  private final Presses presses;
  private final IdempotencyKeys keys;
  private final IdempotencyKeys.Press press;
  private final String keyField;
  private final Typed typed;
  private final IdempotencyKeys.Named<T> made;
  private Function<T, String> at = thing -> null;
  private String whole;
  private Runnable ahead;

  /**
   * @param press null: it has no key, and nothing is kept
   */
  Press(
      Presses presses,
      IdempotencyKeys keys,
      IdempotencyKeys.Press press,
      String keyField,
      Typed typed,
      IdempotencyKeys.Named<T> made) {
    this.presses = presses;
    this.keys = keys;
    this.press = press;
    this.keyField = keyField;
    this.typed = typed;
    this.made = made;
  }

  /** The address of what is made: a page, or where a program finds it. */
  public Press<T> at(Function<T, String> address) {
    this.at = address;
    return this;
  }

  /**
   * The field at which the form shows what is said of all of it. What the database refuses is shown
   * there too, and else on a page of its own.
   */
  public Press<T> whole(String field) {
    this.whole = field;
    return this;
  }

  /**
   * What takes too long for the gate: run before the work, and where the key is known not at all.
   */
  public Press<T> ahead(Runnable slow) {
    this.ahead = slow;
    return this;
  }

  /** Does the work once. */
  public Outcome<T> once(Supplier<Outcome<T>> work) {
    if (!typed.sound() && typed.messageAt(keyField) != null) {
      return Outcome.unread();
    }
    if (ahead != null && (press == null || !keys.knows(press))) {
      ahead.run();
    }
    try {
      return press == null ? work.get() : keys.once(press, made, work, this::sentOtherwise);
    } catch (DatabaseRefusal refusal) {
      if (whole == null) {
        throw refusal;
      }
      return Outcome.refused(Refusal.now("Not possible any more", whole, refusal.getMessage()));
    }
  }

  private Outcome<T> sentOtherwise(T then) {
    if (keyField.equals(Presses.OF_A_FORM)) {
      presses.wasSentBefore(at.apply(then), typed);
      return Outcome.unread();
    }
    String where = at.apply(then);
    return Outcome.refused(
        keyField,
        "This key was sent before with other values, and nothing was done now."
            + (where == null ? "" : " See " + where + ".")
            + " Another call needs another key.");
  }

  /**
   * As a page: on to what was made (303), or the form again (422).
   *
   * @param again the form with what was typed, made when nothing was done
   */
  public Response page(Supplier<Outcome<T>> work, Supplier<? extends TemplateInstance> again) {
    return page(work, done -> Go.to(at.apply(done.made()), done.said()), again);
  }

  /**
   * The same, where more is to be said of what was done.
   *
   * @param onwards after it was done now
   */
  public Response page(
      Supplier<Outcome<T>> work,
      Function<Outcome.Done<T>, Response> onwards,
      Supplier<? extends TemplateInstance> again) {
    Outcome<T> outcome = once(work);
    if (outcome instanceof Outcome.Done<T> done) {
      return onwards.apply(done);
    }
    if (outcome instanceof Outcome.DoneBefore<T> before) {
      return Go.to(at.apply(before.made()));
    }
    Refusal.at(typed, outcome.refusals(), whole == null ? "form" : whole);
    return Go.again(again.get());
  }

  /**
   * As JSON: what was made, the same when it is sent again; or 422 with each fault at its field,
   * 409 where things stand otherwise, 403 where somebody else may.
   *
   * @param status of what was done: 200, 201 or 204
   * @param shown what was made as it is now
   */
  public Response json(int status, Supplier<Outcome<T>> work, Function<T, ?> shown) {
    return json(work, done -> Response.status(status).entity(shown.apply(done.made())));
  }

  /**
   * The same, where the answer has a shape of its own.
   *
   * @param answer to what was done; where it was done before, with nothing said
   */
  public Response json(
      Supplier<Outcome<T>> work, Function<Outcome.Done<T>, Response.ResponseBuilder> answer) {
    Outcome<T> outcome = once(work);
    if (outcome instanceof Outcome.Done<T> done) {
      return located(done, answer);
    }
    if (outcome instanceof Outcome.DoneBefore<T> before) {
      return located(new Outcome.Done<>(before.made(), ""), answer);
    }
    return Problem.of(typed, outcome.refusals());
  }

  private Response located(
      Outcome.Done<T> done, Function<Outcome.Done<T>, Response.ResponseBuilder> answer) {
    String where = at.apply(done.made());
    Response.ResponseBuilder built = answer.apply(done);
    return where == null ? built.build() : built.location(URI.create(where)).build();
  }
}
