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
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Reads what parts are, for the rules that decide about them: one statement for each kind asked for
 * and one for what a bow scale showed, however many parts.
 */
@ApplicationScoped
public class PartSpecs {
  private static final Set<ItemKind> ALL =
      EnumSet.of(ItemKind.RISER, ItemKind.LIMBS, ItemKind.BOW, ItemKind.STRING, ItemKind.STRINGER);

  private final Rows rows;

  PartSpecs(Rows rows) {
    this.rows = rows;
  }

  /** What the items of these ids are; ids of other kinds, and null, are passed over. */
  public Parts of(Collection<ItemId> wanted) {
    return of(wanted, ALL);
  }

  /** As {@link #of(Collection)}, when all that are parts are known to be of these kinds. */
  public Parts of(Collection<ItemId> wanted, Set<ItemKind> kinds) {
    List<ItemId> ids = wanted.stream().filter(Objects::nonNull).distinct().toList();
    return ids.isEmpty()
        ? new Parts(Map.of(), Map.of(), Map.of(), Map.of(), Map.of())
        : read(kinds, " WHERE p.id IN " + Items.places(ids), ids.toArray());
  }

  private Parts read(Set<ItemKind> kinds, String where, Object... parameters) {
    Map<ItemId, List<ScaleReading>> weighed =
        rows
            .list(
                WeighedRow.class,
                """
                SELECT p.item_id, p.draw_in, p.force_lb, p.riser_in
                  FROM scale_reading p JOIN item i ON i.id = p.item_id"""
                    + where.replace("p.id", "p.item_id")
                    + " ORDER BY p.happened_at, p.id",
                parameters)
            .stream()
            .collect(
                Collectors.groupingBy(
                    WeighedRow::item,
                    Collectors.mapping(WeighedRow::reading, Collectors.toList())));
    return new Parts(
        byId(
            kinds.contains(ItemKind.RISER),
            RiserRow.class,
            RiserRow::id,
            RiserRow::spec,
            """
            SELECT p.id, p.build, p.hand, p.length_in, p.limb_fitting, p.limb_model, p.max_turns_out, p.lateral
              FROM riser p JOIN item i ON i.id = p.id"""
                + where,
            parameters),
        byId(
            kinds.contains(ItemKind.LIMBS),
            LimbsRow.class,
            LimbsRow::id,
            row -> row.spec(weighed.getOrDefault(row.id(), List.of())),
            """
            SELECT p.id, p.build, p.size, p.bow_length_in, p.limb_fitting, i.model, p.marked_lb,
                   p.marked_at_in, p.marked_riser_in, p.hmpe_tips, p.brace_low, p.brace_high
              FROM limbs p JOIN item i ON i.id = p.id"""
                + where,
            parameters),
        byId(
            kinds.contains(ItemKind.BOW),
            BowRow.class,
            BowRow::id,
            row -> row.spec(weighed.getOrDefault(row.id(), List.of())),
            """
            SELECT p.id, p.hand, p.bow_length_in, p.marked_lb, p.marked_at_in, p.hmpe_tips, p.brace_low, p.brace_high
              FROM bow p JOIN item i ON i.id = p.id"""
                + where,
            parameters),
        byId(
            kinds.contains(ItemKind.STRING),
            StringRow.class,
            StringRow::id,
            StringRow::spec,
            """
            SELECT p.id, p.for_bow_in, p.measured_length, p.material, p.strands, p.strand_diameter, p.twists
              FROM bowstring p JOIN item i ON i.id = p.id"""
                + where,
            parameters),
        byId(
            kinds.contains(ItemKind.STRINGER),
            StringerRow.class,
            StringerRow::id,
            StringerRow::spec,
            """
            SELECT p.id, p.stringer_kind, p.bow_from_in, p.bow_to_in
              FROM stringer p JOIN item i ON i.id = p.id"""
                + where,
            parameters));
  }

  private <R extends Record, S> Map<ItemId, S> byId(
      boolean wanted,
      Class<R> shape,
      Function<R, ItemId> id,
      Function<R, S> spec,
      String sql,
      Object... parameters) {
    Map<ItemId, S> specs = new LinkedHashMap<>();
    if (!wanted) {
      return specs;
    }
    rows.list(shape, sql, parameters).forEach(row -> specs.put(id.apply(row), spec.apply(row)));
    return specs;
  }

  private static Band band(Length low, Length high) {
    return low == null ? null : new Band(low, high);
  }

  record WeighedRow(ItemId item, double drawIn, double forceLb, Integer riserIn) {
    ScaleReading reading() {
      return new ScaleReading(drawIn, forceLb, riserIn);
    }
  }

  record RiserRow(
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

  record LimbsRow(
      ItemId id,
      Build build,
      LimbSize size,
      Integer bowLengthIn,
      String fitting,
      String model,
      double markedLb,
      double markedAtIn,
      Integer markedRiserIn,
      Known hmpeTips,
      Length braceLow,
      Length braceHigh) {
    LimbsSpec spec(List<ScaleReading> weighed) {
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

  record BowRow(
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

  record StringRow(
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

  record StringerRow(ItemId id, StringerKind kind, int bowFromIn, int bowToIn) {
    StringerSpec spec() {
      return new StringerSpec(kind, bowFromIn, bowToIn);
    }
  }
}
