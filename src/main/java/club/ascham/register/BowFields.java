package club.ascham.register;

import club.ascham.bow.Band;
import club.ascham.bow.Build;
import club.ascham.bow.Hand;
import club.ascham.bow.Known;
import club.ascham.bow.LimbSize;
import club.ascham.register.Values.Decimal;
import club.ascham.register.Values.Distance;
import club.ascham.register.Values.Whole;
import club.ascham.register.Values.Word;
import club.ascham.register.Values.YesNo;
import club.ascham.units.Length;
import club.ascham.units.LengthUnit;
import club.ascham.units.Plausible;

/** What is told of risers, limbs and one-piece bows. */
final class BowFields {
  private static final Whole RISER_IN = new Whole(13, 32);
  private static final Whole GRAMS = new Whole(100, 4000);
  private static final Decimal POUNDS = new Decimal(5, 80);
  private static final Decimal DRAW_IN = new Decimal(18, 32);
  private static final Distance BRACE = new Distance(Plausible.BRACE, null);
  private static final double USUAL_DRAW_IN = 28;
  private static final Word<Build> TAKE_DOWN = new Word<>(Build.class, null);
  private static final Word<Known> KNOWN = new Word<>(Known.class, null);

  private static final FieldTable<Particulars.OfRiser> RISER =
      new FieldTable<>("riser", Particulars.OfRiser.class);
  private static final FieldTable<Particulars.OfLimbs> LIMBS =
      new FieldTable<>("limbs", Particulars.OfLimbs.class);
  private static final FieldTable<Particulars.OfBow> BOW =
      new FieldTable<>("bow", Particulars.OfBow.class);

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
          .field("limbFitting", "limb fitting", FieldTable.MARK, riser -> riser.spec().fitting())
          .told("of an adjustable riser: ILF, or a maker's name and 'own fitting'", "ILF");
  static final ItemField<String> LIMB_MODEL =
      RISER
          .field(
              "limbModel", "model of its limbs", FieldTable.NAME, riser -> riser.spec().limbModel())
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
          .field("bowLengthIn", "bow length (in)", FieldTable.BOW_IN, l -> l.spec().bowLengthIn())
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
          .field("limbFitting", "limb fitting", FieldTable.MARK, limbs -> limbs.spec().fitting())
          .told("ILF, or a maker's name and 'own fitting'", "ILF");
  static final ItemField<String> SERIAL_UPPER =
      LIMBS.field(
          "serialUpper",
          "serial of the upper limb",
          FieldTable.MARK,
          Particulars.OfLimbs::serialUpper);
  static final ItemField<String> SERIAL_LOWER =
      LIMBS.field(
          "serialLower",
          "serial of the lower limb",
          FieldTable.MARK,
          Particulars.OfLimbs::serialLower);
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
      BOW.field("hand", "hand", FieldTable.EITHER_HAND, bow -> bow.spec().hand())
          .told("right or left; left out: either", null);
  static final ItemField<Integer> BOW_LENGTH_IN =
      BOW.field("bowLengthIn", "bow length (in)", FieldTable.BOW_IN, b -> b.spec().bowLengthIn())
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

  private BowFields() {}

  private static Length low(Band brace) {
    return brace == null ? null : brace.low();
  }

  private static Length high(Band brace) {
    return brace == null ? null : brace.high();
  }
}
