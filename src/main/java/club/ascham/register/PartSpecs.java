package club.ascham.register;

import club.ascham.bow.Band;
import club.ascham.bow.Build;
import club.ascham.bow.Hand;
import club.ascham.bow.Known;
import club.ascham.bow.LimbSize;
import club.ascham.bow.LimbsSpec;
import club.ascham.bow.OnePieceSpec;
import club.ascham.bow.RiserSpec;
import club.ascham.bow.ScaleReading;
import club.ascham.bow.StringMaterial;
import club.ascham.bow.StringSpec;
import club.ascham.bow.StringerKind;
import club.ascham.bow.StringerSpec;
import club.ascham.id.ItemId;
import club.ascham.store.Rows;
import club.ascham.units.Length;
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
  private static final String PARTS =
      """
      SELECT i.id, i.kind, i.code, i.maker, i.model,
             r.id, r.build, r.hand, r.length_in, r.limb_fitting, r.limb_model, r.max_turns_out, r.lateral,
             l.id, l.build, l.size, l.bow_length_in, l.limb_fitting, l.marked_lb, l.marked_at_in,
             l.marked_riser_in, l.hmpe_tips, l.brace_low, l.brace_high,
             b.id, b.hand, b.bow_length_in, b.marked_lb, b.marked_at_in, b.hmpe_tips, b.brace_low, b.brace_high,
             s.id, s.for_bow_in, s.measured_length, s.material, s.strands, s.strand_diameter, s.twists,
             e.id, e.stringer_kind, e.bow_from_in, e.bow_to_in,
             EXISTS (SELECT 1 FROM scale_reading w WHERE w.item_id = i.id)
        FROM item i
        LEFT JOIN riser r ON r.id = i.id
        LEFT JOIN limbs l ON l.id = i.id
        LEFT JOIN bow b ON b.id = i.id
        LEFT JOIN bowstring s ON s.id = i.id
        LEFT JOIN stringer e ON e.id = i.id
       WHERE i.id IN\s""";

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
    Map<ItemId, Row> found =
        rows.list(Row.class, PARTS + among, ids.toArray()).stream()
            .collect(Collectors.toMap(row -> row.item().id(), row -> row));
    Map<ItemId, List<ScaleReading>> weighed =
        found.values().stream().anyMatch(Row::weighed) ? weighed(among, ids) : Map.of();
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

  private static Band band(Length low, Length high) {
    return low == null ? null : new Band(low, high);
  }

  private record Row(
      Items.Named item,
      RiserRow riser,
      LimbsRow limbs,
      BowRow bow,
      StringRow string,
      StringerRow stringer,
      boolean weighed) {
    Described described(List<ScaleReading> readings) {
      return new Described(
          item,
          riser == null ? null : riser.spec(),
          limbs == null ? null : limbs.spec(item.model(), readings),
          bow == null ? null : bow.spec(readings),
          string == null ? null : string.spec(),
          stringer == null ? null : stringer.spec());
    }
  }

  private record WeighedRow(ItemId item, double drawIn, double forceLb, Integer riserIn) {
    ScaleReading reading() {
      return new ScaleReading(drawIn, forceLb, riserIn);
    }
  }

  private record RiserRow(
      ItemId id,
      Build build,
      Hand hand,
      int lengthIn,
      String fitting,
      String limbModel,
      Double maxTurnsOut,
      boolean lateral) {
    RiserSpec spec() {
      return new RiserSpec(build, hand, lengthIn, fitting, limbModel, maxTurnsOut, lateral);
    }
  }

  private record LimbsRow(
      ItemId id,
      Build build,
      LimbSize size,
      Integer bowLengthIn,
      String fitting,
      double markedLb,
      double markedAtIn,
      Integer markedRiserIn,
      Known hmpeTips,
      Length braceLow,
      Length braceHigh) {
    LimbsSpec spec(String model, List<ScaleReading> weighed) {
      return new LimbsSpec(
          build,
          size,
          bowLengthIn,
          fitting,
          model,
          markedLb,
          markedAtIn,
          markedRiserIn,
          hmpeTips,
          band(braceLow, braceHigh),
          weighed);
    }
  }

  private record BowRow(
      ItemId id,
      Hand hand,
      int bowLengthIn,
      double markedLb,
      double markedAtIn,
      Known hmpeTips,
      Length braceLow,
      Length braceHigh) {
    OnePieceSpec spec(List<ScaleReading> weighed) {
      return new OnePieceSpec(
          hand, bowLengthIn, markedLb, markedAtIn, hmpeTips, band(braceLow, braceHigh), weighed);
    }
  }

  private record StringRow(
      ItemId id,
      int forBowIn,
      Length measured,
      StringMaterial material,
      Integer strands,
      Length strandDiameter,
      Integer twists) {
    StringSpec spec() {
      return new StringSpec(forBowIn, measured, material, strands, strandDiameter, twists);
    }
  }

  private record StringerRow(ItemId id, StringerKind kind, int bowFromIn, int bowToIn) {
    StringerSpec spec() {
      return new StringerSpec(kind, bowFromIn, bowToIn);
    }
  }
}
