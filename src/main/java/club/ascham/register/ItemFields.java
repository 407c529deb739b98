package club.ascham.register;

import club.ascham.bow.Hand;
import club.ascham.bow.StringMaterial;
import club.ascham.bow.StringerKind;
import club.ascham.register.Values.ArrowGrains;
import club.ascham.register.Values.Distance;
import club.ascham.register.Values.Line;
import club.ascham.register.Values.PastDay;
import club.ascham.register.Values.Price;
import club.ascham.register.Values.Prose;
import club.ascham.register.Values.Whole;
import club.ascham.register.Values.Word;
import club.ascham.register.Values.YesNo;
import club.ascham.units.Length;
import club.ascham.units.LengthUnit;
import club.ascham.units.Money;
import club.ascham.units.Plausible;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** All that is told of items, each field once: reading, writing, files and tables go by it. */
public final class ItemFields {
  private static final int LONGEST_SIZE = 40;
  static final int LONGEST_NOTES = 2000;
  private static final Whole SERVED_IN = new Whole(40, 72);

  private static final FieldTable<Particulars.OfString> STRING =
      new FieldTable<>("bowstring", Particulars.OfString.class);
  private static final FieldTable<Particulars.OfStringer> STRINGER =
      new FieldTable<>("stringer", Particulars.OfStringer.class);
  private static final FieldTable<Particulars.OfKitItem> KIT =
      new FieldTable<>("kit_item", Particulars.OfKitItem.class);

  // ---- of every item

  static final ItemField<String> MAKER = from("maker", "maker", FieldTable.NAME, Provenance::maker);
  static final ItemField<String> MODEL = from("model", "model", FieldTable.NAME, Provenance::model);
  static final ItemField<String> BATCH = from("batch", "batch", FieldTable.MARK, Provenance::batch);
  static final ItemField<String> SERIAL =
      from("serial", "serial", FieldTable.MARK, Provenance::serial);
  static final ItemField<LocalDate> BOUGHT_ON =
      new ItemField<>(
          "boughtOn",
          "bought on",
          "item.bought_on",
          new PastDay("It can't have been bought in the future."),
          details -> details.provenance().boughtOn());
  static final ItemField<Money> PRICE =
      new ItemField<>(
              "price",
              "price",
              "item.price_minor",
              new Price(),
              details -> details.provenance().price())
          .told("in the club's currency", "139.00");
  static final ItemField<String> NOTES =
      from("notes", "notes", new Prose(LONGEST_NOTES), Provenance::notes);

  // ---- of a string

  static final ItemField<Integer> FOR_BOW_IN =
      STRING
          .field("forBowIn", "for a bow of (in)", FieldTable.BOW_IN, s -> s.spec().forBowIn())
          .needed("Give the bow length in inches that its label says it is made for.")
          .told("the bow length on its label", "68");
  static final ItemField<Length> MEASURED_LENGTH =
      STRING
          .field(
              "measuredLength",
              "measured length",
              new Distance(Plausible.STRING_LENGTH, null),
              string -> string.spec().measured())
          .told("its own length, loop to loop", "1647 mm");
  static final ItemField<StringMaterial> MATERIAL =
      STRING
          .field(
              "material",
              "material",
              new Word<>(StringMaterial.class, null),
              string -> string.spec().material())
          .needed("Say what it is made of: not every limb tip bears every material.")
          .told("polyester, hmpe, lcp or other", "polyester");
  static final ItemField<Integer> STRANDS =
      STRING
          .field("strands", "strands", new Whole(4, 40), s -> s.spec().strands())
          .told(null, "16");
  static final ItemField<Length> STRAND_DIAMETER =
      STRING
          .field(
              "strandDiameter",
              "strand diameter",
              new Distance(
                  new Plausible("strand diameter", Length.ofMm(0.1), Length.ofMm(2)),
                  LengthUnit.MILLIMETRE),
              string -> string.spec().strandDiameter())
          .told(null, "0.45 mm");
  static final ItemField<Integer> TWISTS =
      STRING.field("twists", "twists", new Whole(0, 150), string -> string.spec().twists());
  static final ItemField<LocalDate> FIRST_USED =
      STRING.field(
          "firstUsed",
          "first used",
          new PastDay("It can't have been used first in the future."),
          Particulars.OfString::firstUsed);

  // ---- of a stringer

  static final ItemField<StringerKind> STRINGER_KIND =
      STRINGER
          .field(
              "stringerKind",
              "kind of stringer",
              new Word<>(StringerKind.class, null),
              stringer -> stringer.spec().kind())
          .needed("Say which kind it is: cups on both tips, or a cup and a saddle.")
          .told("tip-to-tip or tip-and-saddle", "tip-to-tip");
  static final ItemField<Integer> BOW_FROM_IN =
      STRINGER
          .field("bowFromIn", "shortest bow (in)", SERVED_IN, s -> s.spec().bowFromIn())
          .needed("Give the shortest bow that it serves, in inches.")
          .told(null, "60");
  static final ItemField<Integer> BOW_TO_IN =
      STRINGER
          .field("bowToIn", "longest bow (in)", SERVED_IN, s -> s.spec().bowToIn())
          .needed("Give the longest bow that it serves, in inches.")
          .told(null, "70");

  // ---- of the smaller things of a kit

  static final ItemField<Hand> KIT_HAND =
      KIT.field("hand", "hand", FieldTable.EITHER_HAND, Particulars.OfKitItem::hand)
          .told("right or left; left out: either", null);
  static final ItemField<String> KIT_SIZE =
      KIT.field("size", "size", new Line(LONGEST_SIZE), Particulars.OfKitItem::size)
          .told(null, "M");
  // Inches for every unit a person may prefer: arrows are sold and cut by the inch.
  static final ItemField<Length> ARROW_LENGTH =
      KIT.field(
              "arrowLength",
              "arrow length",
              new Distance(Plausible.ARROW_LENGTH, LengthUnit.INCH),
              Particulars.OfKitItem::arrowLength)
          .told("of arrows", "660.4 mm");
  static final ItemField<Integer> SPINE =
      KIT.field("spine", "spine", new Whole(200, 3000), Particulars.OfKitItem::spine)
          .told("of arrows", null);
  static final ItemField<Double> ARROW_MASS_GR =
      KIT.field(
              "arrowMassGr",
              "mass of an arrow (gr)",
              new ArrowGrains(50, 1500),
              Particulars.OfKitItem::arrowMassGr)
          .told("of one whole arrow in grains, the lightest of them", "312");
  static final ItemField<Integer> ARROW_COUNT =
      KIT.field(
              "arrowCount",
              "number of arrows",
              new Whole(0, 2000),
              Particulars.OfKitItem::arrowCount)
          .told("of arrows", null);
  static final ItemField<Boolean> POOL =
      KIT.field(
              "pool",
              "given out by count",
              new YesNo(),
              kit -> kit.arrowLength() == null ? null : kit.pool())
          .otherwise(false)
          .told("of arrows: given out by count", null);

  private static final List<ItemField<?>> ORIGIN =
      List.of(MAKER, MODEL, BATCH, SERIAL, BOUGHT_ON, PRICE);
  private static final Map<String, List<ItemField<?>>> BY_LIST = new LinkedHashMap<>();

  static {
    BY_LIST.put(
        ItemKind.RISER.slug(),
        List.of(
            BowFields.RISER_BUILD,
            BowFields.RISER_HAND,
            BowFields.LENGTH_IN,
            BowFields.RISER_FITTING,
            BowFields.LIMB_MODEL,
            BowFields.THREAD_PITCH,
            BowFields.MAX_TURNS_OUT,
            BowFields.LATERAL,
            BowFields.RISER_MASS_G));
    BY_LIST.put(
        ItemKind.LIMBS.slug(),
        List.of(
            BowFields.LIMBS_BUILD,
            BowFields.LIMB_SIZE,
            BowFields.LIMBS_BOW_IN,
            BowFields.LIMBS_LB,
            BowFields.LIMBS_AT_IN,
            BowFields.MARKED_RISER_IN,
            BowFields.LIMBS_FITTING,
            BowFields.SERIAL_UPPER,
            BowFields.SERIAL_LOWER,
            BowFields.LIMBS_TIPS,
            BowFields.LIMBS_BRACE_LOW,
            BowFields.LIMBS_BRACE_HIGH));
    BY_LIST.put(
        ItemKind.BOW.slug(),
        List.of(
            BowFields.BOW_HAND,
            BowFields.BOW_LENGTH_IN,
            BowFields.BOW_LB,
            BowFields.BOW_AT_IN,
            BowFields.BOW_TIPS,
            BowFields.BOW_BRACE_LOW,
            BowFields.BOW_BRACE_HIGH,
            BowFields.BOW_MASS_G));
    BY_LIST.put(
        ItemKind.STRING.slug(),
        List.of(
            FOR_BOW_IN, MEASURED_LENGTH, MATERIAL, STRANDS, STRAND_DIAMETER, TWISTS, FIRST_USED));
    BY_LIST.put(ItemKind.STRINGER.slug(), List.of(STRINGER_KIND, BOW_FROM_IN, BOW_TO_IN));
    BY_LIST.put(
        ItemKind.ARROWS.slug(),
        List.of(KIT_HAND, KIT_SIZE, ARROW_LENGTH, SPINE, ARROW_MASS_GR, ARROW_COUNT, POOL));
  }

  private ItemFields() {}

  /** What every item has, in the order of the files. */
  public static List<ItemField<?>> ofAll() {
    List<ItemField<?>> all = new ArrayList<>(ORIGIN);
    all.add(NOTES);
    return all;
  }

  /** What the items of one list have beside that. */
  public static List<ItemField<?>> own(String list) {
    return BY_LIST.get(list);
  }

  /** Of every kind, each once. */
  static List<ItemField<?>> everything() {
    List<ItemField<?>> all = ofAll();
    BY_LIST.values().forEach(all::addAll);
    return all;
  }

  /** What the rules look at of parts and stringers; limbs go by their model, too. */
  static List<ItemField<?>> ofParts() {
    List<ItemField<?>> parts = new ArrayList<>(List.of(MODEL));
    for (ItemKind kind :
        List.of(ItemKind.RISER, ItemKind.LIMBS, ItemKind.BOW, ItemKind.STRING, ItemKind.STRINGER)) {
      parts.addAll(own(kind.slug()));
    }
    return parts;
  }

  /** All that is told of an item of this kind, in the order in which it is written. */
  static List<ItemField<?>> of(ItemKind kind) {
    List<ItemField<?>> all = new ArrayList<>(ORIGIN);
    all.addAll(own(kind.slug()));
    all.add(NOTES);
    return all;
  }

  // ---- where they stand

  private static ItemField<String> from(
      String name, String label, Values<String> values, Function<Provenance, String> of) {
    return new ItemField<>(
        name,
        label,
        FieldTable.place("item", name),
        values,
        details -> of.apply(details.provenance()));
  }
}
