package club.ascham.rig;

import club.ascham.bow.Level;
import club.ascham.bow.RigSpec;
import club.ascham.bow.SetUpFigures;
import club.ascham.bow.SetUpSheet;
import club.ascham.bow.SetUpStep;
import club.ascham.bow.Style;
import club.ascham.bow.Targets;
import club.ascham.id.ItemId;
import club.ascham.id.RigId;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What the club knows of one assembled rig: its parts, what it measured when its set-up was
 * finished, and what it should measure.
 *
 * @param version of the rig, for the forms made from it
 * @param body null: none fitted (likewise limbs and string)
 * @param setUpId the finished set-up of these very parts that is in force; null: none
 * @param setUp its figures; null: none
 * @param targets null while body or limbs are missing
 * @param benchTargets the targets as if it had never been set up: a new set-up is not held to the
 *     old one's figures; null while body or limbs are missing
 */
public record RigCard(
    RigId id,
    Style style,
    Level level,
    int version,
    Part body,
    Part limbs,
    Part string,
    Long setUpId,
    SetUpFigures setUp,
    Targets targets,
    Targets benchTargets) {

  /** The rig as the trade's rules look at it; empty while body or limbs are missing. */
  public Optional<RigSpec> spec() {
    return Part.together(body, limbs, string, style);
  }

  /** The parts that are fitted, in the order body, limbs, string. */
  public List<Part> parts() {
    return Stream.of(body, limbs, string).filter(Objects::nonNull).toList();
  }

  public List<ItemId> partIds() {
    return parts().stream().map(Part::id).toList();
  }

  /** Whether every part is fitted that the rig needs. */
  public boolean isWhole() {
    return string != null && spec().isPresent();
  }

  /** What a bow scale weighs: the limbs, or the one-piece bow; null: none fitted. */
  public Part weighed() {
    return body != null && body.onePiece() != null ? body : limbs;
  }

  /**
   * The steps of its set-up, none of them held to figures of before; none while it is not whole.
   */
  public List<SetUpStep> sheet() {
    return spec().map(spec -> SetUpSheet.steps(spec, benchTargets, level)).orElse(List.of());
  }

  /** How people call it: by the code on its body, else on whatever is fitted. */
  public String name() {
    Part named = body != null ? body : limbs != null ? limbs : string;
    return named == null ? "rig " + id.value() : named.code();
  }
}
