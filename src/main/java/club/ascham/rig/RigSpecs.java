package club.ascham.rig;

import club.ascham.bow.Band;
import club.ascham.bow.BraceTable;
import club.ascham.bow.Level;
import club.ascham.bow.RigSpec;
import club.ascham.bow.SetUpFigures;
import club.ascham.bow.Style;
import club.ascham.bow.Targets;
import club.ascham.id.ItemId;
import club.ascham.id.RigId;
import club.ascham.rules.Club;
import club.ascham.store.Rows;
import club.ascham.units.Length;
import club.ascham.web.NoSuchThing;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Reads the cards of assembled rigs, in as many statements for all as for one. */
@ApplicationScoped
public class RigSpecs {
  private static final String COLUMNS =
      """
      SELECT p.rig_id AS id, p.style, p.level, r.version, p.body_id, p.limbs_id, p.string_id,
             u.id AS set_up_id, u.brace, u.brace_from, u.tiller_upper, u.tiller_lower, u.nocking,
             u.screws_seen AS locking_screws_seen, u.turns_upper, u.turns_lower, u.twists
        FROM rig_parts p JOIN rig r ON r.id = p.rig_id LEFT JOIN set_up u ON u.id = p.set_up_id
      """;

  private final Rows rows;
  private final RigParts parts;
  private final Club club;

  RigSpecs(Rows rows, RigParts parts, Club club) {
    this.rows = rows;
    this.parts = parts;
    this.club = club;
  }

  /** The cards of these rigs by id; one that was taken apart, or never was, is left out. */
  public Map<RigId, RigCard> of(Collection<RigId> rigs) {
    String ids =
        rigs.stream()
            .map(rig -> Long.toString(rig.value()))
            .collect(Collectors.joining(",", "[", "]"));
    return cards(
        rows.list(
            Row.class,
            COLUMNS + "WHERE p.rig_id IN (SELECT value FROM json_each(?1)) ORDER BY p.rig_id",
            ids));
  }

  /** The card of one rig; empty when it was taken apart, or never was. */
  public Optional<RigCard> of(RigId rig) {
    return Optional.ofNullable(
        cards(rows.list(Row.class, COLUMNS + "WHERE p.rig_id = ?1", rig)).get(rig));
  }

  /**
   * @throws NoSuchThing it was taken apart, or never was
   */
  public RigCard known(RigId rig) {
    return of(rig).orElseThrow(() -> noSuch(rig));
  }

  public static NoSuchThing noSuch(RigId rig) {
    return new NoSuchThing("There is no assembled rig " + rig.value() + ".");
  }

  /** Every assembled rig. */
  public Map<RigId, RigCard> all() {
    return cards(rows.list(Row.class, COLUMNS + "ORDER BY p.rig_id"));
  }

  private Map<RigId, RigCard> cards(List<Row> found) {
    List<ItemId> ids = new ArrayList<>();
    found.forEach(row -> row.addPartIds(ids));
    Map<ItemId, Part> known = parts.of(ids);
    Map<Integer, Band> clubBands = clubBands();
    Map<RigId, RigCard> cards = new LinkedHashMap<>();
    found.forEach(row -> cards.put(row.id(), card(row, known, clubBands)));
    return cards;
  }

  private RigCard card(Row row, Map<ItemId, Part> known, Map<Integer, Band> clubBands) {
    Part body = known.get(row.body());
    Part limbs = known.get(row.limbs());
    Part string = known.get(row.string());
    SetUpFigures setUp = row.setUp();
    Optional<RigSpec> spec = Part.together(body, limbs, string, row.style());
    return new RigCard(
        row.id(),
        row.style(),
        row.level(),
        row.version(),
        body,
        limbs,
        string,
        row.setUpId(),
        setUp,
        spec.map(s -> targets(s, clubBands, setUp)).orElse(null),
        spec.map(s -> targets(s, clubBands, null)).orElse(null));
  }

  private Targets targets(RigSpec spec, Map<Integer, Band> clubBands, SetUpFigures setUp) {
    Band own = spec.bowLengthIn().isPresent() ? clubBands.get(spec.bowLengthIn().getAsInt()) : null;
    return Targets.of(spec, BraceTable.valueOf(club.rules().braceTable()), own, setUp);
  }

  /** The brace band that this club has put in force for bows of this length; empty: none speaks. */
  public Optional<Band> braceInForce(int bowLengthIn) {
    Optional<Band> own = Optional.ofNullable(clubBands().get(bowLengthIn));
    return own.isPresent() ? own : BraceTable.valueOf(club.rules().braceTable()).band(bowLengthIn);
  }

  private Map<Integer, Band> clubBands() {
    return rows
        .list(ClubBand.class, "SELECT bow_length_in, low, high FROM club_brace_band")
        .stream()
        .collect(Collectors.toMap(ClubBand::bowLengthIn, b -> new Band(b.low(), b.high())));
  }

  private record ClubBand(int bowLengthIn, Length low, Length high) {}

  private record Row(
      RigId id,
      Style style,
      Level level,
      int version,
      ItemId body,
      ItemId limbs,
      ItemId string,
      Long setUpId,
      SetUpFigures setUp) {

    void addPartIds(List<ItemId> ids) {
      for (ItemId id : new ItemId[] {body, limbs, string}) {
        if (id != null) {
          ids.add(id);
        }
      }
    }
  }
}
