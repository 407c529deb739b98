package club.ascham.register;

import club.ascham.bow.LimbsSpec;
import club.ascham.bow.OnePieceSpec;
import club.ascham.bow.RiserSpec;
import club.ascham.bow.ScaleReading;
import club.ascham.bow.StringSpec;
import club.ascham.bow.StringerSpec;
import club.ascham.id.ItemId;
import club.ascham.store.Rows;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Reads what parts are, for the rules that decide about them: two statements at most for all. */
@ApplicationScoped
public class PartSpecs {
  private static final ItemColumns TOLD = new ItemColumns(ItemFields.ofParts(), 6);
  private static final String PARTS =
      "SELECT item.id, item.kind, item.code, item.maker, item.model,"
          + " EXISTS (SELECT 1 FROM scale_reading w WHERE w.item_id = item.id), "
          + TOLD.selected()
          + " FROM item"
          + TOLD.joins()
          + " WHERE item.id IN ";

  private final Rows rows;

  PartSpecs(Rows rows) {
    this.rows = rows;
  }

  /**
   * An item and what it is; all but one of the specs are null, and that one too for an item that is
   * no part of a bow and no stringer.
   */
  public record Described(
      Items.Named item,
      RiserSpec riser,
      LimbsSpec limbs,
      OnePieceSpec bow,
      StringSpec string,
      StringerSpec stringer) {}

  /** What the items of these ids are; ids of other kinds, and null, are passed over. */
  public Parts of(Collection<ItemId> wanted) {
    Map<ItemId, Described> known = described(wanted);
    return new Parts(
        only(known, Described::riser),
        only(known, Described::limbs),
        only(known, Described::bow),
        only(known, Described::string),
        only(known, Described::stringer));
  }

  private static <S> Map<ItemId, S> only(
      Map<ItemId, Described> known, Function<Described, S> spec) {
    Map<ItemId, S> specs = new LinkedHashMap<>();
    known.forEach(
        (id, item) -> Optional.ofNullable(spec.apply(item)).ifPresent(s -> specs.put(id, s)));
    return specs;
  }

  /** The items of these ids that exist, in the order of the ids; null is passed over. */
  public Map<ItemId, Described> described(Collection<ItemId> wanted) {
    List<ItemId> ids = wanted.stream().filter(Objects::nonNull).distinct().toList();
    if (ids.isEmpty()) {
      return Map.of();
    }
    String among = Items.places(ids);
    Map<ItemId, Found> found =
        rows.list(Found::of, PARTS + among, ids.toArray()).stream()
            .collect(Collectors.toMap(row -> row.item().id(), row -> row));
    Map<ItemId, List<ScaleReading>> weighed =
        found.values().stream().anyMatch(Found::weighed) ? weighed(among, ids) : Map.of();
    Map<ItemId, Described> described = new LinkedHashMap<>();
    for (ItemId id : ids) {
      Optional.ofNullable(found.get(id))
          .ifPresent(row -> described.put(id, row.described(weighed.getOrDefault(id, List.of()))));
    }
    return described;
  }

  private Map<ItemId, List<ScaleReading>> weighed(String among, List<ItemId> ids) {
    return rows
        .list(
            WeighedRow.class,
            "SELECT item_id, draw_in, force_lb, riser_in FROM scale_reading WHERE item_id IN "
                + among
                + " ORDER BY happened_at, id",
            ids.toArray())
        .stream()
        .collect(
            Collectors.groupingBy(
                WeighedRow::item, Collectors.mapping(WeighedRow::reading, Collectors.toList())));
  }

  private record Found(Items.Named item, boolean weighed, Particulars particulars) {
    static Found of(Rows.Row row) {
      ItemKind kind = row.value(2, ItemKind.class);
      return new Found(
          new Items.Named(
              row.value(1, ItemId.class),
              kind,
              row.value(3, String.class),
              row.value(4, String.class),
              row.value(5, String.class)),
          row.value(6, Boolean.class),
          kind.isKitItem() ? null : ItemDetails.particulars(kind, TOLD.read(row, kind)));
    }

    Described described(List<ScaleReading> readings) {
      return new Described(
          item,
          particulars instanceof Particulars.OfRiser riser ? riser.spec() : null,
          particulars instanceof Particulars.OfLimbs limbs ? limbs.spec().weighed(readings) : null,
          particulars instanceof Particulars.OfBow bow ? bow.spec().weighed(readings) : null,
          particulars instanceof Particulars.OfString string ? string.spec() : null,
          particulars instanceof Particulars.OfStringer stringer ? stringer.spec() : null);
    }
  }

  private record WeighedRow(ItemId item, double drawIn, double forceLb, Integer riserIn) {
    ScaleReading reading() {
      return new ScaleReading(drawIn, forceLb, riserIn);
    }
  }
}
