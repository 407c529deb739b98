package club.ascham.rig;

import club.ascham.bow.Band;
import club.ascham.bow.Build;
import club.ascham.bow.Hand;
import club.ascham.bow.Known;
import club.ascham.bow.LimbSize;
import club.ascham.bow.LimbsSpec;
import club.ascham.bow.OnePieceSpec;
import club.ascham.bow.RiserSpec;
import club.ascham.bow.StringMaterial;
import club.ascham.bow.StringSpec;
import club.ascham.id.ItemId;
import club.ascham.store.Rows;
import club.ascham.units.Length;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Reads what decides about fitting parts to each other. */
@ApplicationScoped
public class PartSpecs {
  private static final String COLUMNS =
      """
      SELECT i.id, i.code, i.kind, i.maker, i.model,
             coalesce(r.build, l.build), coalesce(r.hand, b.hand), r.length_in,
             coalesce(r.limb_fitting, l.limb_fitting), r.limb_model, r.max_turns_out, coalesce(r.lateral, 0),
             l.size, coalesce(l.bow_length_in, b.bow_length_in), coalesce(l.marked_lb, b.marked_lb, 0),
             coalesce(l.marked_at_in, b.marked_at_in, 0), l.marked_riser_in, coalesce(l.hmpe_tips, b.hmpe_tips),
             coalesce(l.brace_low, b.brace_low), coalesce(l.brace_high, b.brace_high),
             coalesce(s.for_bow_in, 0), s.measured_length, s.material, s.strands, s.strand_diameter, s.twists
        FROM item i
        LEFT JOIN riser r ON r.id = i.id
        LEFT JOIN limbs l ON l.id = i.id
        LEFT JOIN bow b ON b.id = i.id
        LEFT JOIN bowstring s ON s.id = i.id
       """;

  private final Rows rows;

  PartSpecs(Rows rows) {
    this.rows = rows;
  }

  /** The parts among these items by id, in one statement; an item of another kind is left out. */
  public Map<ItemId, Part> of(Collection<ItemId> items) {
    String ids =
        items.stream()
            .map(item -> Long.toString(item.value()))
            .collect(Collectors.joining(",", "[", "]"));
    return byId(
        rows.list(
            Row.class,
            COLUMNS
                + "WHERE i.id IN (SELECT value FROM json_each(?1))"
                + " AND i.kind IN ('RISER', 'BOW', 'LIMBS', 'STRING')",
            ids));
  }

  /** Every part that is not retired, in one statement, by code. */
  public Map<ItemId, Part> inUse() {
    return byId(
        rows.list(
            Row.class,
            COLUMNS
                + "WHERE i.retired_on IS NULL"
                + " AND i.kind IN ('RISER', 'BOW', 'LIMBS', 'STRING') ORDER BY i.code"));
  }

  private static Map<ItemId, Part> byId(List<Row> found) {
    Map<ItemId, Part> parts = new LinkedHashMap<>();
    found.forEach(row -> parts.put(row.id(), row.part()));
    return parts;
  }

  private record Row(
      ItemId id,
      String code,
      String kind,
      String maker,
      String model,
      Build build,
      Hand hand,
      Integer riserLengthIn,
      String fitting,
      String limbModel,
      Double maxTurnsOut,
      boolean lateral,
      LimbSize size,
      Integer bowLengthIn,
      double markedLb,
      double markedAtIn,
      Integer markedRiserIn,
      Known hmpeTips,
      Length braceLow,
      Length braceHigh,
      int forBowIn,
      Length measured,
      StringMaterial material,
      Integer strands,
      Length strandDiameter,
      Integer twists) {

    Part part() {
      return new Part(id, code, kind, maker, model, riser(), limbs(), onePiece(), string());
    }

    private RiserSpec riser() {
      return kind.equals("RISER")
          ? new RiserSpec(build, hand, riserLengthIn, fitting, limbModel, maxTurnsOut, lateral)
          : null;
    }

    private LimbsSpec limbs() {
      return kind.equals("LIMBS")
          ? new LimbsSpec(
              build,
              size,
              bowLengthIn,
              fitting,
              model,
              markedLb,
              markedAtIn,
              markedRiserIn,
              hmpeTips,
              makerBrace())
          : null;
    }

    private OnePieceSpec onePiece() {
      return kind.equals("BOW")
          ? new OnePieceSpec(hand, bowLengthIn, markedLb, markedAtIn, hmpeTips, makerBrace())
          : null;
    }

    private StringSpec string() {
      return kind.equals("STRING")
          ? new StringSpec(forBowIn, measured, material, strands, strandDiameter, twists)
          : null;
    }

    private Band makerBrace() {
      return braceLow == null ? null : new Band(braceLow, braceHigh);
    }
  }
}
