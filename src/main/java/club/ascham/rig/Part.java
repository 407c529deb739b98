package club.ascham.rig;

import club.ascham.bow.LimbsSpec;
import club.ascham.bow.OnePieceSpec;
import club.ascham.bow.RigSpec;
import club.ascham.bow.RiserSpec;
import club.ascham.bow.StringSpec;
import club.ascham.bow.Style;
import club.ascham.id.ItemId;
import club.ascham.register.ItemKind;
import club.ascham.units.ItemCode;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * An item that can be part of a rig, with what decides whether it fits. Exactly one of the four
 * specs is given.
 *
 * @param bareCode the code without hyphens
 * @param maker null: not known (likewise model)
 */
public record Part(
    ItemId id,
    String bareCode,
    ItemKind kind,
    String maker,
    String model,
    RiserSpec riser,
    LimbsSpec limbs,
    OnePieceSpec onePiece,
    StringSpec string) {

  /** The code as on the label. */
  public String code() {
    return new ItemCode(bareCode).display();
  }

  /** Maker and model, or the kind where neither is known. */
  public String name() {
    String name = Stream.of(maker, model).filter(Objects::nonNull).collect(Collectors.joining(" "));
    return name.isEmpty() ? kind.said() : name;
  }

  public Place place() {
    return Place.of(kind).orElseThrow();
  }

  /**
   * The rig that these parts make, as the trade's rules look at it; empty while the body, or the
   * limbs that its riser needs, are missing.
   *
   * @param body null: none (likewise limbs and string)
   */
  public static Optional<RigSpec> together(Part body, Part limbs, Part string, Style style) {
    StringSpec stringSpec = string == null ? null : string.string();
    if (body == null || (body.onePiece() == null && limbs == null)) {
      return Optional.empty();
    }
    return Optional.of(
        new RigSpec(
            body.riser(),
            body.onePiece() != null ? null : limbs.limbs(),
            body.onePiece(),
            stringSpec,
            style));
  }
}
