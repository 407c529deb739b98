package club.ascham.register;

import club.ascham.bow.Compatibility;
import club.ascham.bow.Misfit;
import club.ascham.bow.RigSpec;
import club.ascham.bow.Style;
import club.ascham.id.ItemId;
import club.ascham.id.RigId;
import club.ascham.store.Rows;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Asks what else is fitted to the rig that an item is part of, and whether it would still fit. */
@ApplicationScoped
class Fitted {
  private final Rows rows;
  private final PartSpecs specs;

  Fitted(Rows rows, PartSpecs specs) {
    this.rows = rows;
    this.specs = specs;
  }

  /** The rig that an item is fitted to. */
  record Rig(RigId id, Style style, ItemId body, ItemId limbs, ItemId string) {}

  Optional<Rig> rigOf(ItemId item) {
    return rows.one(
        Rig.class,
        """
        SELECT r.id, r.style,
               max(CASE WHEN f.place = 'BODY' THEN f.item_id END) AS body,
               max(CASE WHEN f.place = 'LIMBS' THEN f.item_id END) AS limbs,
               max(CASE WHEN f.place = 'STRING' THEN f.item_id END) AS string
          FROM fitting mine
          JOIN rig r ON r.id = mine.rig_id
          JOIN fitting f ON f.rig_id = r.id AND f.until_at IS NULL
         WHERE mine.item_id = ?1 AND mine.until_at IS NULL
         GROUP BY r.id, r.style""",
        item);
  }

  /** The first reason why a rig's parts would no longer fit each other, were this item so. */
  Optional<Misfit> misfit(Rig rig, ItemId item, Particulars changed) {
    if (rig.body() == null) {
      return Optional.empty();
    }
    Parts now = specs.of(Arrays.asList(rig.body(), rig.limbs(), rig.string()));
    List<Misfit> before = misfits(now, rig);
    return misfits(now.with(item, changed), rig).stream()
        .filter(misfit -> before.stream().noneMatch(known -> known.kind() == misfit.kind()))
        .findFirst();
  }

  private static List<Misfit> misfits(Parts parts, Rig rig) {
    RigSpec spec = parts.rig(rig.body(), rig.limbs(), rig.string(), rig.style());
    return spec.onePiece() == null && spec.limbs() == null
        ? List.of()
        : Compatibility.misfits(spec);
  }
}
