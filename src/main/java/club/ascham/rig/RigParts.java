package club.ascham.rig;

import club.ascham.id.ItemId;
import club.ascham.register.Items;
import club.ascham.register.PartSpecs;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;

/** Reads parts with their names and with what decides about fitting them. */
@ApplicationScoped
public class RigParts {
  private final PartSpecs specs;

  RigParts(PartSpecs specs) {
    this.specs = specs;
  }

  /** The parts among these items by id; an item of another kind, and null, is left out. */
  public Map<ItemId, Part> of(Collection<ItemId> wanted) {
    Map<ItemId, Part> parts = new LinkedHashMap<>();
    specs
        .described(wanted)
        .forEach(
            (id, known) -> {
              Items.Named item = known.item();
              if (item.kind().isRigPart()) {
                parts.put(
                    id,
                    new Part(
                        id,
                        item.bareCode(),
                        item.kind(),
                        item.maker(),
                        item.model(),
                        known.riser(),
                        known.limbs(),
                        known.bow(),
                        known.string()));
              }
            });
    return parts;
  }
}
