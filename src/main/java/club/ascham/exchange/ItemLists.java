package club.ascham.exchange;

import static club.ascham.exchange.Codecs.code;
import static club.ascham.exchange.Codecs.decimal;
import static club.ascham.exchange.Codecs.length;
import static club.ascham.exchange.Codecs.money;
import static club.ascham.exchange.Codecs.text;
import static club.ascham.exchange.Codecs.whole;
import static club.ascham.exchange.Codecs.word;
import static club.ascham.exchange.Codecs.yesNo;
import static club.ascham.exchange.Column.optional;
import static club.ascham.exchange.Column.required;
import static club.ascham.exchange.Column.usually;
import static club.ascham.exchange.DayCodecs.day;

import club.ascham.bow.Hand;
import club.ascham.bow.Known;
import club.ascham.bow.LimbSize;
import club.ascham.bow.StringMaterial;
import club.ascham.bow.StringerKind;
import club.ascham.units.Plausible;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The files of what the club owns. */
final class ItemLists {
  private static final Codec TAKE_DOWN = word("ADJUSTABLE", "SCREW_IN");
  private static final Codec LB = decimal(5, 80);
  private static final Codec DRAW_IN = decimal(18, 32);
  private static final Codec RISER_IN = whole(13, 32);
  private static final Codec BOW_IN = whole(40, 72);
  private static final Codec BRACE = length(Plausible.BRACE);
  private static final Codec MASS_G = whole(100, 4000);

  private ItemLists() {}

  static List<CsvList> all() {
    return List.of(risers(), limbs(), bows(), strings(), stringers(), kitItems());
  }

  private static CsvList risers() {
    return items(
        "risers",
        "Risers",
        "riser",
        "RISER",
        required("build", "riser.build", TAKE_DOWN),
        required("hand", "riser.hand", word(Hand.class)),
        required("lengthIn", "riser.length_in", RISER_IN),
        optional("limbFitting", "riser.limb_fitting", text(60)),
        optional("limbModel", "riser.limb_model", text(80)),
        optional("threadPitch", "riser.thread_pitch", length("thread pitch", 0.2, 5)),
        optional("maxTurnsOut", "riser.max_turns_out", decimal(0, 12)),
        usually(0, "lateral", "riser.lateral", yesNo()),
        optional("massG", "riser.mass_g", MASS_G));
  }

  private static CsvList limbs() {
    return items(
        "limbs",
        "Limbs",
        "limbs",
        "LIMBS",
        required("build", "limbs.build", TAKE_DOWN),
        optional("size", "limbs.size", word(LimbSize.class)),
        optional("bowLengthIn", "limbs.bow_length_in", whole(48, 72)),
        required("markedLb", "limbs.marked_lb", LB),
        usually(28, "markedAtIn", "limbs.marked_at_in", DRAW_IN),
        optional("markedRiserIn", "limbs.marked_riser_in", RISER_IN),
        optional("limbFitting", "limbs.limb_fitting", text(60)),
        optional("serialUpper", "limbs.serial_upper", text(60)),
        optional("serialLower", "limbs.serial_lower", text(60)),
        usually("UNKNOWN", "hmpeTips", "limbs.hmpe_tips", word(Known.class)),
        optional("braceLow", "limbs.brace_low", BRACE),
        optional("braceHigh", "limbs.brace_high", BRACE));
  }

  private static CsvList bows() {
    return items(
        "bows",
        "One-piece bows",
        "bow",
        "BOW",
        optional("hand", "bow.hand", word(Hand.class)),
        required("bowLengthIn", "bow.bow_length_in", BOW_IN),
        required("markedLb", "bow.marked_lb", LB),
        usually(28, "markedAtIn", "bow.marked_at_in", DRAW_IN),
        usually("UNKNOWN", "hmpeTips", "bow.hmpe_tips", word(Known.class)),
        optional("braceLow", "bow.brace_low", BRACE),
        optional("braceHigh", "bow.brace_high", BRACE),
        optional("massG", "bow.mass_g", MASS_G));
  }

  private static CsvList strings() {
    return items(
        "strings",
        "Strings",
        "bowstring",
        "STRING",
        required("forBowIn", "bowstring.for_bow_in", BOW_IN),
        optional("measuredLength", "bowstring.measured_length", length(Plausible.STRING_LENGTH)),
        required("material", "bowstring.material", word(StringMaterial.class)),
        optional("strands", "bowstring.strands", whole(4, 40)),
        optional("strandDiameter", "bowstring.strand_diameter", length("strand", 0.1, 2)),
        optional("twists", "bowstring.twists", whole(0, 150)),
        optional("firstUsed", "bowstring.first_used", day()));
  }

  private static CsvList stringers() {
    return items(
        "stringers",
        "Stringers",
        "stringer",
        "STRINGER",
        required("stringerKind", "stringer.stringer_kind", word(StringerKind.class)),
        required("bowFromIn", "stringer.bow_from_in", BOW_IN),
        required("bowToIn", "stringer.bow_to_in", BOW_IN));
  }

  /** The one list of items of several kinds, so the kind has a column. */
  private static CsvList kitItems() {
    List<Column> columns = new ArrayList<>(firstColumns());
    columns.add(
        1,
        required(
            "kind",
            "item.kind",
            word(
                "ARROWS",
                "TAB",
                "BRACER",
                "CHESTGUARD",
                "QUIVER",
                "CASE",
                "REST",
                "SIGHT",
                "BUTTON",
                "STABILISER",
                "CLICKER")));
    columns.add(optional("hand", "kit_item.hand", word(Hand.class)));
    columns.add(optional("size", "kit_item.size", text(40)));
    columns.add(optional("arrowLength", "kit_item.arrow_length", length(Plausible.ARROW_LENGTH)));
    columns.add(optional("spine", "kit_item.spine", whole(200, 3000)));
    columns.add(optional("arrowMassGr", "kit_item.arrow_mass_gr", decimal(50, 1500)));
    columns.add(optional("arrowCount", "kit_item.arrow_count", whole(0, 2000)));
    columns.add(usually(0, "pool", "kit_item.pool", yesNo()));
    columns.addAll(lastColumns());
    return CsvList.ofItems("kit-items", "Smaller things of a kit", "kit_item", Map.of(), columns);
  }

  private static CsvList items(
      String name, String title, String table, String kind, Column... own) {
    List<Column> columns = new ArrayList<>(firstColumns());
    columns.addAll(List.of(own));
    columns.addAll(lastColumns());
    return CsvList.ofItems(name, title, table, Map.of("item.kind", kind), columns);
  }

  private static List<Column> firstColumns() {
    return List.of(
        // Left empty, the next code is given.
        optional("code", "item.code", code()),
        optional("maker", "item.maker", text(80)),
        optional("model", "item.model", text(80)),
        optional("batch", "item.batch", text(60)),
        optional("serial", "item.serial", text(60)),
        optional("boughtOn", "item.bought_on", day()),
        optional("price", "item.price_minor", money()),
        optional("notes", "item.notes", text(2000)));
  }

  private static List<Column> lastColumns() {
    return List.of(
        // Left empty, it is today.
        optional("registeredOn", "item.registered_on", day()),
        optional("retiredOn", "item.retired_on", day()),
        optional("retiredWhy", "item.retired_why", word("SCRAPPED", "SOLD", "LOST")),
        optional("retiredNote", "item.retired_note", text(2000)));
  }
}
