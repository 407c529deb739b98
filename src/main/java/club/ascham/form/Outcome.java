package club.ascham.form;

import club.ascham.id.Made;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** What a press led to. */
public sealed interface Outcome<T extends Made> {
  /**
   * It was done.
   *
   * @param made what came into being by it, or was changed
   * @param said what was done, for the person who did it; empty: what was made says it
   */
  record Done<T extends Made>(T made, String said) implements Outcome<T> {}

  /** The very same press had done it before, and nothing was done now. */
  record DoneBefore<T extends Made>(T made) implements Outcome<T> {}

  /** Nothing was done yet: this is to be answered first. */
  record Asked<T extends Made>(List<Refusal> questions) implements Outcome<T> {
    public Asked {
      questions = List.copyOf(questions);
    }
  }

  /**
   * Nothing was done.
   *
   * @param why empty: it stands at the fields of what was typed
   */
  record Refused<T extends Made>(List<Refusal> why) implements Outcome<T> {
    public Refused {
      why = List.copyOf(why);
    }
  }

  /** Why nothing was done, or what is to be answered first; empty where it was done. */
  default List<Refusal> refusals() {
    if (this instanceof Refused<T> refused) {
      return refused.why();
    }
    return this instanceof Asked<T> asked ? asked.questions() : List.of();
  }

  /** The same, of a press that may make things of several kinds. */
  @SuppressWarnings("unchecked") // nothing is ever put into an outcome
  static <T extends Made> Outcome<T> of(Outcome<? extends T> one) {
    return (Outcome<T>) one;
  }

  /** What comes of what could be read; where nothing could, each fault stands at its field. */
  static <C, T extends Made> Outcome<T> of(Optional<C> read, Function<C, Outcome<T>> act) {
    return read.map(act).orElseGet(Outcome::unread);
  }

  static <T extends Made> Outcome<T> done(T made, String said) {
    return new Done<>(made, said);
  }

  static <T extends Made> Outcome<T> done(T made) {
    return new Done<>(made, "");
  }

  static <T extends Made> Outcome<T> refused(String field, String words) {
    return refused(new Refusal(field, words));
  }

  static <T extends Made> Outcome<T> refused(Refusal why) {
    return new Refused<>(List.of(why));
  }

  static <T extends Made> Outcome<T> refused(List<Refusal> why) {
    return new Refused<>(why);
  }

  static <T extends Made> Outcome<T> asked(String field, String question) {
    return new Asked<>(List.of(new Refusal(field, question)));
  }

  /** What was typed can't be read; each fault stands at its field. */
  static <T extends Made> Outcome<T> unread() {
    return new Refused<>(List.of());
  }
}
