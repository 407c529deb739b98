package club.ascham.rig;

import club.ascham.concern.Against;
import club.ascham.form.Outcome;
import club.ascham.form.Refusal;
import club.ascham.id.RigId;
import java.util.List;
import java.util.Optional;

/**
 * Why something can't be done with a rig, and what would make it possible.
 *
 * @param field the answer it is about; empty: the whole
 * @param reason a sentence
 * @param remedy a sentence
 */
public record Obstacle(String field, String reason, String remedy) {
  /** The name under which a fault of the form as a whole is kept. */
  public static final String WHOLE = "rig";

  public String message() {
    return remedy.isEmpty() ? reason : reason + " " + remedy;
  }

  Refusal refusal() {
    return new Refusal(field.isEmpty() ? WHOLE : field, message());
  }

  public static Outcome<RigId> refused(List<Obstacle> all) {
    return Outcome.refused(all.stream().map(Obstacle::refusal).toList());
  }

  public static Outcome<RigId> refused(Obstacle one) {
    return refused(List.of(one));
  }

  public static Outcome<RigId> refused(String field, String reason, String remedy) {
    return refused(new Obstacle(field, reason, remedy));
  }

  /** Someone else changed the rig since the form was made. */
  public static Outcome<RigId> changedMeanwhile() {
    return Outcome.refused(
        Refusal.now(
            "Changed meanwhile",
            WHOLE,
            "Someone else changed this rig since you opened the page. What you see is how it is"
                + " now; look it over and press again if you still mean it."));
  }

  /** Nobody strings or draws a bow that a danger stands against. */
  public static Optional<Obstacle> unstrung(Against against) {
    return against.dangers().stream()
        .findFirst()
        .map(one -> new Obstacle("", "Leave it unstrung. " + one.said(), one.ends()));
  }
}
