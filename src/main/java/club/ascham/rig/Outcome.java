package club.ascham.rig;

import club.ascham.concern.Against;
import club.ascham.form.Typed;
import club.ascham.id.RigId;
import java.util.List;
import java.util.Optional;

/** How asking for a change to a rig ended. */
public sealed interface Outcome {
  /** Done; {@code said} tells the person what was. */
  record Done(RigId rig, String said) implements Outcome {}

  /**
   * The same form was sent before: this is where its first press led, and nothing more was done.
   */
  record PressedBefore(String page) implements Outcome {}

  /** Nothing was changed. */
  record Refused(List<Refusal> refusals) implements Outcome {
    /** Puts each reason at its answer. */
    void tell(Typed typed) {
      refusals.forEach(
          refusal ->
              typed.fault(refusal.field().isEmpty() ? WHOLE : refusal.field(), refusal.message()));
    }
  }

  /** Someone else changed the rig since the form was made; nothing was changed. */
  record ChangedMeanwhile() implements Outcome {
    static final String SAID =
        "Someone else changed this rig since you opened the page. What you see is how it is now;"
            + " look it over and press again if you still mean it.";
  }

  /** The name under which a fault of the form as a whole is kept. */
  String WHOLE = "rig";

  /** Nobody strings or draws a bow that a danger stands against. */
  static Optional<Refused> unstrung(Against against) {
    return against.dangers().stream()
        .findFirst()
        .map(one -> refused("", "Leave it unstrung. " + one.said(), one.ends()));
  }

  static Refused refused(String field, String reason, String remedy) {
    return new Refused(List.of(new Refusal(field, reason, remedy)));
  }
}
