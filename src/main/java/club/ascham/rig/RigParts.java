package club.ascham.rig;

import club.ascham.id.ItemId;
import club.ascham.register.Items;
import club.ascham.register.PartSpecs;
import club.ascham.register.Parts;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * Reads parts with their names and with what decides about fitting them: six statements at most.
 */
@ApplicationScoped
public class RigParts {
  private final Items items;
  private final PartSpecs specs;

  RigParts(Items items, PartSpecs specs) {
    this.items = items;
    this.specs = specs;
  }

  /** The parts among these items by id; an item of another kind, and null, is left out. */
  public Map<ItemId, Part> of(Collection<ItemId> wanted) {
    List<ItemId> ids = wanted.stream().filter(Objects::nonNull).distinct().toList();
    Map<ItemId, Items.Named> named = items.named(ids);
    Parts known =
        specs.of(ids, named.values().stream().map(Items.Named::kind).collect(Collectors.toSet()));
    Map<ItemId, Part> parts = new LinkedHashMap<>();
    named.forEach(
        (id, item) -> {
          if (item.kind().isRigPart()) {
            parts.put(
                id,
                new Part(
                    id,
                    item.bareCode(),
                    item.kind(),
                    item.maker(),
                    item.model(),
                    known.risers().get(id),
                    known.limbs().get(id),
                    known.bows().get(id),
                    known.strings().get(id)));
          }
        });
    return parts;
  }
}
