package club.ascham.rig;

import club.ascham.register.ItemKind;
import java.util.Optional;

/** Where on a rig a part is fitted. */
public enum Place {
  /** A riser, or a one-piece bow. */
  BODY,
  LIMBS,
  STRING;

  /** Where an item of this kind goes; empty for one that is not part of a rig. */
  static Optional<Place> of(ItemKind kind) {
    return switch (kind) {
      case RISER, BOW -> Optional.of(BODY);
      case LIMBS -> Optional.of(LIMBS);
      case STRING -> Optional.of(STRING);
      default -> Optional.empty();
    };
  }
}
