package club.ascham.web;

import club.ascham.form.Sent;
import club.ascham.form.Typed;
import club.ascham.id.Made;
import club.ascham.store.IdempotencyKeys;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.RequestScoped;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.LongFunction;

/** Reads off a request whose press it is, and by which key it may be known again. */
@RequestScoped
public class Presses {
  /** The field of a form that carries its key. */
  public static final String OF_A_FORM = "once-key";

  /** The field of a body that carries its key. */
  public static final String OF_A_BODY = "onceKey";

  private static final Set<String> NOT_ITS_VALUES = Set.of(OF_A_FORM, "csrf-token");
  private static final Set<String> NOT_ITS_FIELDS = Set.of(OF_A_BODY);
  private static final int LONGEST_KEY = 200;

  private final IdempotencyKeys keys;
  private final WhoActs actor;
  private final RoutingContext request;
  private SentBefore sentBefore;

  Presses(IdempotencyKeys keys, WhoActs actor, RoutingContext request) {
    this.keys = keys;
    this.actor = actor;
    this.request = request;
  }

  /**
   * A form that was sent, before anything of it is read.
   *
   * @param made names what it makes
   * @param page that it leads to
   */
  public <T extends Made> Press<T> form(
      Typed typed, LongFunction<T> made, Function<T, String> page) {
    return formOf(typed, (kind, id) -> made.apply(id), page);
  }

  /** The same, of a form that may make things of several kinds. */
  public <T extends Made> Press<T> formOf(
      Typed typed, IdempotencyKeys.Named<T> made, Function<T, String> page) {
    Sent sent = Sent.of(typed.all());
    return press(typed, sent, OF_A_FORM, NOT_ITS_VALUES, made).at(page);
  }

  /**
   * A body that was sent.
   *
   * @param body a record or a map by field; null: none was
   * @param typed what is read of it, and takes the faults
   * @param made names what it makes
   */
  public <T extends Made> Press<T> body(Object body, Typed typed, LongFunction<T> made) {
    return bodyOf(body, typed, (kind, id) -> made.apply(id));
  }

  /** The same, of a call that may make things of several kinds. */
  public <T extends Made> Press<T> bodyOf(Object body, Typed typed, IdempotencyKeys.Named<T> made) {
    return press(typed, Sent.of(body), OF_A_BODY, NOT_ITS_FIELDS, made);
  }

  /**
   * A form whose key was sent before with other values: nothing was done now, and the page that
   * comes back says so. It may have no place any more for what was typed, so that is shown too.
   *
   * @param page that it led to then
   * @param typed now, by field
   */
  public record SentBefore(String page, Map<String, String> typed) {}

  /** Null: this request is no such form. */
  SentBefore sentBefore() {
    return sentBefore;
  }

  void wasSentBefore(String page, Typed typed) {
    Map<String, String> values = new TreeMap<>(typed.all());
    values.keySet().removeAll(NOT_ITS_VALUES);
    values.remove("version");
    sentBefore = new SentBefore(page, values);
  }

  private <T extends Made> Press<T> press(
      Typed typed, Sent sent, String keyField, Set<String> leftOut, IdempotencyKeys.Named<T> made) {
    String key = sent.text(keyField);
    if (key.length() > LONGEST_KEY || !Typed.canBeShown(key)) {
      typed.fault(
          keyField,
          "At most " + LONGEST_KEY + " characters, please, and each one that can be seen.");
      return new Press<>(this, keys, null, keyField, typed, made);
    }
    return new Press<>(
        this,
        keys,
        key.isEmpty() || !actor.signedIn()
            ? null
            : new IdempotencyKeys.Press(
                actor.id(),
                request.request().method() + " " + request.normalizedPath(),
                key,
                sent.digest(leftOut)),
        keyField,
        typed,
        made);
  }
}
