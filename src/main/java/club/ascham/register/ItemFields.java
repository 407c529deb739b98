package club.ascham.register;

import static club.ascham.bow.Compatibility.LONGEST_BOW_IN;
import static club.ascham.bow.Compatibility.SHORTEST_BOW_IN;

import club.ascham.bow.Band;
import club.ascham.bow.Build;
import club.ascham.bow.Hand;
import club.ascham.bow.Known;
import club.ascham.bow.LimbSize;
import club.ascham.bow.StringMaterial;
import club.ascham.bow.StringerKind;
import club.ascham.register.Values.ArrowGrains;
import club.ascham.register.Values.Decimal;
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
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;

/** All that is told of items, each field once: reading, writing, files and tables go by it. */
public final class ItemFields {
  private static final int LONGEST_NAME = 80;
  private static final int LONGEST_MARK = 60;
  private static final int LONGEST_SIZE = 40;
  static final int LONGEST_NOTES = 2000;
  private static final Line NAME = new Line(LONGEST_NAME);
  private static final Line MARK = new Line(LONGEST_MARK);
  private static final Whole BOW_IN = new Whole(SHORTEST_BOW_IN, LONGEST_BOW_IN);
  private static final Whole SERVED_IN = new Whole(40, 72);
  private static final Whole RISER_IN = new Whole(13, 32);
  private static final Whole GRAMS = new Whole(100, 4000);
  private static final Decimal POUNDS = new Decimal(5, 80);
  private static final Decimal DRAW_IN = new Decimal(18, 32);
  private static final Distance BRACE = new Distance(Plausible.BRACE, null);
  private static final double USUAL_DRAW_IN = 28;
  private static final Word<Build> TAKE_DOWN = new Word<>(Build.class, null);
  private static final Word<Hand> EITHER_HAND = new Word<>(Hand.class, "either");
  private static final Word<Known> KNOWN = new Word<>(Known.class, null);

  private static final Table<Particulars.OfRiser> RISER =
      new Table<>("riser", Particulars.OfRiser.class);
  private static final Table<Particulars.OfLimbs> LIMBS =
      new Table<>("limbs", Particulars.OfLimbs.class);
  private static final Table<Particulars.OfBow> BOW = new Table<>("bow", Particulars.OfBow.class);
  private static final Table<Particulars.OfString> STRING =
      new Table<>("bowstring", Particulars.OfString.class);
  private static final Table<Particulars.OfStringer> STRINGER =
      new Table<>("stringer", Particulars.OfStringer.class);
  private static final Table<Particulars.OfKitItem> KIT =
      new Table<>("kit_item", Particulars.OfKitItem.class);

  // ---- of every item

  static final ItemField<String> MAKER = from("maker", "maker", NAME, Provenance::maker);
  static final ItemField<String> MODEL = from("model", "model", NAME, Provenance::model);
  static final ItemField<String> BATCH = from("batch", "batch", MARK, Provenance::batch);
  static final ItemField<String> SERIAL = from("serial", "serial", MARK, Provenance::serial);
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

  // ---- of a riser

  static final ItemField<Build> RISER_BUILD =
      RISER
          .field("build", "build", TAKE_DOWN, riser -> riser.spec().build())
          .needed("Say whether limbs slot in or are screwed on.")
          .told("adjustable or screw-in", "adjustable");
  static final ItemField<Hand> RISER_HAND =
      RISER
          .field("hand", "hand", new Word<>(Hand.class, null), riser -> riser.spec().hand())
          .needed("Say which hand draws the string.")
          .told("the hand that draws the string", "right");
  static final ItemField<Integer> LENGTH_IN =
      RISER
          .field("lengthIn", "length (in)", RISER_IN, riser -> riser.spec().lengthIn())
          .needed("Give the riser's length in inches.")
          .told(null, "25");
  static final ItemField<String> RISER_FITTING =
      RISER
          .field("limbFitting", "limb fitting", MARK, riser -> riser.spec().fitting())
          .told("of an adjustable riser: ILF, or a maker's name and 'own fitting'", "ILF");
  static final ItemField<String> LIMB_MODEL =
      RISER
          .field("limbModel", "model of its limbs", NAME, riser -> riser.spec().limbModel())
          .told("of a screw-in riser", null);
  static final ItemField<Length> THREAD_PITCH =
      RISER
          .field(
              "threadPitch",
              "thread pitch",
              new Distance(
                  new Plausible("thread pitch", Length.ofMm(0.2), Length.ofMm(5)),
                  LengthUnit.MILLIMETRE),
              Particulars.OfRiser::threadPitch)
          .told(null, "1.25 mm");
  static final ItemField<Double> MAX_TURNS_OUT =
      RISER
          .field(
              "maxTurnsOut",
              "turns out allowed",
              new Decimal(0, 12),
              riser -> riser.spec().maxTurnsOut())
          .told("of a limb bolt, from bottomed-out, as the maker allows", null);
  static final ItemField<Boolean> LATERAL =
      RISER
          .field("lateral", "sideways adjustment", new YesNo(), riser -> riser.spec().lateral())
          .otherwise(false);
  static final ItemField<Integer> RISER_MASS_G =
      RISER.field("massG", "mass (g)", GRAMS, Particulars.OfRiser::massG);

  // ---- of a pair of limbs

  static final ItemField<Build> LIMBS_BUILD =
      LIMBS
          .field("build", "build", TAKE_DOWN, limbs -> limbs.spec().build())
          .needed("Say whether limbs slot in or are screwed on.")
          .told("adjustable or screw-in", "adjustable");
  static final ItemField<LimbSize> LIMB_SIZE =
      LIMBS
          .field("size", "size", new Word<>(LimbSize.class, "none"), l -> l.spec().size())
          .told("short, medium or long; or a bow length", "medium");
  static final ItemField<Integer> LIMBS_BOW_IN =
      LIMBS
          .field("bowLengthIn", "bow length (in)", BOW_IN, l -> l.spec().bowLengthIn())
          .told("where no size is marked", null);
  static final ItemField<Double> LIMBS_LB =
      LIMBS
          .field("markedLb", "marked weight (lb)", POUNDS, l -> l.spec().markedLb())
          .needed("Give the marked weight in pounds.")
          .told(null, "22");
  static final ItemField<Double> LIMBS_AT_IN =
      LIMBS
          .field("markedAtIn", "marked at (in)", DRAW_IN, l -> l.spec().markedAtIn())
          .otherwise(USUAL_DRAW_IN)
          .told("AMO draw in inches; 28 where left out", "28");
  static final ItemField<Integer> MARKED_RISER_IN =
      LIMBS
          .field(
              "markedRiserIn",
              "marked on a riser of (in)",
              RISER_IN,
              limbs -> limbs.spec().markedRiserIn())
          .told(null, "25");
  static final ItemField<String> LIMBS_FITTING =
      LIMBS
          .field("limbFitting", "limb fitting", MARK, limbs -> limbs.spec().fitting())
          .told("ILF, or a maker's name and 'own fitting'", "ILF");
  static final ItemField<String> SERIAL_UPPER =
      LIMBS.field(
          "serialUpper", "serial of the upper limb", MARK, Particulars.OfLimbs::serialUpper);
  static final ItemField<String> SERIAL_LOWER =
      LIMBS.field(
          "serialLower", "serial of the lower limb", MARK, Particulars.OfLimbs::serialLower);
  static final ItemField<Known> LIMBS_TIPS =
      LIMBS
          .field("hmpeTips", "tips fit for HMPE", KNOWN, limbs -> limbs.spec().hmpeTips())
          .otherwise(Known.UNKNOWN)
          .told("yes, no or unknown", "unknown");
  static final ItemField<Length> LIMBS_BRACE_LOW =
      LIMBS
          .field("braceLow", "maker's lowest brace", BRACE, limbs -> low(limbs.spec().makerBrace()))
          .told(null, "210 mm");
  static final ItemField<Length> LIMBS_BRACE_HIGH =
      LIMBS
          .field(
              "braceHigh", "maker's highest brace", BRACE, limbs -> high(limbs.spec().makerBrace()))
          .told(null, "228.6 mm");

  // ---- of a one-piece bow

  static final ItemField<Hand> BOW_HAND =
      BOW.field("hand", "hand", EITHER_HAND, bow -> bow.spec().hand())
          .told("right or left; left out: either", null);
  static final ItemField<Integer> BOW_LENGTH_IN =
      BOW.field("bowLengthIn", "bow length (in)", BOW_IN, b -> b.spec().bowLengthIn())
          .needed("Give the bow's length in inches.")
          .told(null, "54");
  static final ItemField<Double> BOW_LB =
      BOW.field("markedLb", "marked weight (lb)", POUNDS, bow -> bow.spec().markedLb())
          .needed("Give the marked weight in pounds.")
          .told(null, "12");
  static final ItemField<Double> BOW_AT_IN =
      BOW.field("markedAtIn", "marked at (in)", DRAW_IN, bow -> bow.spec().markedAtIn())
          .otherwise(USUAL_DRAW_IN)
          .told("AMO draw in inches; 28 where left out", "24");
  static final ItemField<Known> BOW_TIPS =
      BOW.field("hmpeTips", "tips fit for HMPE", KNOWN, bow -> bow.spec().hmpeTips())
          .otherwise(Known.UNKNOWN)
          .told(null, "no");
  static final ItemField<Length> BOW_BRACE_LOW =
      BOW.field("braceLow", "maker's lowest brace", BRACE, bow -> low(bow.spec().makerBrace()));
  static final ItemField<Length> BOW_BRACE_HIGH =
      BOW.field("braceHigh", "maker's highest brace", BRACE, bow -> high(bow.spec().makerBrace()));
  static final ItemField<Integer> BOW_MASS_G =
      BOW.field("massG", "mass (g)", GRAMS, Particulars.OfBow::massG);

  // ---- of a string

  static final ItemField<Integer> FOR_BOW_IN =
      STRING
          .field("forBowIn", "for a bow of (in)", BOW_IN, s -> s.spec().forBowIn())
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
      KIT.field("hand", "hand", EITHER_HAND, Particulars.OfKitItem::hand)
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
            RISER_BUILD,
            RISER_HAND,
            LENGTH_IN,
            RISER_FITTING,
            LIMB_MODEL,
            THREAD_PITCH,
            MAX_TURNS_OUT,
            LATERAL,
            RISER_MASS_G));
    BY_LIST.put(
        ItemKind.LIMBS.slug(),
        List.of(
            LIMBS_BUILD,
            LIMB_SIZE,
            LIMBS_BOW_IN,
            LIMBS_LB,
            LIMBS_AT_IN,
            MARKED_RISER_IN,
            LIMBS_FITTING,
            SERIAL_UPPER,
            SERIAL_LOWER,
            LIMBS_TIPS,
            LIMBS_BRACE_LOW,
            LIMBS_BRACE_HIGH));
    BY_LIST.put(
        ItemKind.BOW.slug(),
        List.of(
            BOW_HAND,
            BOW_LENGTH_IN,
            BOW_LB,
            BOW_AT_IN,
            BOW_TIPS,
            BOW_BRACE_LOW,
            BOW_BRACE_HIGH,
            BOW_MASS_G));
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
        name, label, place("item", name), values, details -> of.apply(details.provenance()));
  }

  /** The table of one kind of particulars. */
  private record Table<P extends Particulars>(String name, Class<P> particulars) {
    <T> ItemField<T> field(String field, String label, Values<T> values, Function<P, T> of) {
      return new ItemField<>(
          field,
          label,
          place(name, field),
          values,
          details -> of.apply(particulars.cast(details.particulars())));
    }
  }

  /** A column is called as its field is, but with underscores. */
  private static String place(String table, String field) {
    return table + "." + field.replaceAll("([A-Z])", "_$1").toLowerCase(Locale.ROOT);
  }

  private static Length low(Band brace) {
    return brace == null ? null : brace.low();
  }

  private static Length high(Band brace) {
    return brace == null ? null : brace.high();
  }
}
