package club.ascham.register;

import static club.ascham.bow.Compatibility.LONGEST_BOW_IN;
import static club.ascham.bow.Compatibility.SHORTEST_BOW_IN;

import club.ascham.bow.Band;
import club.ascham.bow.Build;
import club.ascham.bow.Hand;
import club.ascham.bow.Known;
import club.ascham.bow.LimbSize;
import club.ascham.bow.LimbsSpec;
import club.ascham.bow.OnePieceSpec;
import club.ascham.bow.RiserSpec;
import club.ascham.form.Typed;
import club.ascham.units.Length;
import club.ascham.units.Plausible;

/** Reads risers, limbs and one-piece bows. */
final class BowReader {
  static final double USUAL_MARKED_AT_IN = 28;
  private static final Plausible THREAD_PITCH =
      new Plausible("thread pitch", Length.ofMm(0.2), Length.ofMm(5));

  private BowReader() {}

  static Particulars riser(Fields fields) {
    Typed typed = fields.typed();
    Build build = takeDown(fields);
    Hand hand = typed.requiredWord("hand", Hand.class, "Say which hand draws the string.");
    Integer lengthIn =
        fields.requiredWhole("lengthIn", 13, 32, "Give the riser's length in inches.");
    String fitting = typed.optional("limbFitting", ItemReader.LONGEST_MARK);
    String limbModel = typed.optional("limbModel", ItemReader.LONGEST_NAME);
    Double maxTurnsOut = typed.decimal("maxTurnsOut", 0, 12);
    boolean lateral = fields.yes("lateral");
    if (build == Build.ADJUSTABLE) {
      if (fitting == null) {
        typed.fault(
            "limbFitting",
            "Say which limb fitting it has: limbs of another fitting do not hold in it.");
      }
      fields.refuse("limbModel", "That is for screw-in risers; this one goes by its limb fitting.");
    }
    if (build == Build.SCREW_IN) {
      if (limbModel == null) {
        typed.fault(
            "limbModel",
            "Say which model of limbs it takes: screw-in limbs fit only their own model.");
      }
      fields.refuse(
          "limbFitting", "That is for slot-in limbs; a screw-in riser goes by the model.");
      fields.refuse("maxTurnsOut", "The tiller of a screw-in bow is fixed: leave this empty.");
      fields.refuse("lateral", "A screw-in riser has no sideways adjustment: leave this empty.");
    }
    Length threadPitch = fields.millimetres("threadPitch", THREAD_PITCH);
    Integer massG = fields.whole("massG", 100, 4000);
    return lengthIn == null
        ? null
        : new Particulars.OfRiser(
            new RiserSpec(build, hand, lengthIn, fitting, limbModel, maxTurnsOut, lateral),
            threadPitch,
            massG);
  }

  static Particulars limbs(Fields fields, String model) {
    Typed typed = fields.typed();
    Build build = takeDown(fields);
    LimbSize size = fields.wordOr("none", "size", LimbSize.class);
    Integer bowLengthIn = fields.whole("bowLengthIn", SHORTEST_BOW_IN, LONGEST_BOW_IN);
    boolean noSize = size == null && typed.messageAt("size") == null;
    if (noSize && !typed.has("bowLengthIn")) {
      typed.fault("size", "Give the size marked on the limbs, or the bow length they make.");
    } else if (size != null && bowLengthIn != null) {
      typed.fault(
          "bowLengthIn",
          "Size or bow length, not both: by size, they make another bow on another riser.");
    }
    Double markedLb = markedLb(fields);
    Double markedAtIn = markedAtIn(fields);
    Integer markedRiserIn = fields.whole("markedRiserIn", 13, 32);
    String fitting = typed.optional("limbFitting", ItemReader.LONGEST_MARK);
    if (build == Build.ADJUSTABLE && fitting == null) {
      typed.fault(
          "limbFitting",
          "Say which fitting they have: a riser of another fitting does not hold them.");
    }
    if (build == Build.SCREW_IN) {
      fields.refuse("limbFitting", "That is for slot-in limbs; screw-in limbs go by the model.");
      if (model == null) {
        typed.fault("model", "Give the model: screw-in limbs fit only risers of their own model.");
      }
    }
    Known hmpeTips = hmpeTips(typed);
    Band makerBrace = makerBrace(fields);
    String serialUpper = typed.optional("serialUpper", ItemReader.LONGEST_MARK);
    String serialLower = typed.optional("serialLower", ItemReader.LONGEST_MARK);
    return markedLb == null || markedAtIn == null
        ? null
        : new Particulars.OfLimbs(
            new LimbsSpec(
                build,
                size,
                bowLengthIn,
                fitting,
                model,
                markedLb,
                markedAtIn,
                markedRiserIn,
                hmpeTips,
                makerBrace),
            serialUpper,
            serialLower);
  }

  static Particulars bow(Fields fields) {
    Typed typed = fields.typed();
    Hand hand = fields.wordOr("either", "hand", Hand.class);
    Integer bowLengthIn =
        fields.requiredWhole(
            "bowLengthIn", SHORTEST_BOW_IN, LONGEST_BOW_IN, "Give the bow's length in inches.");
    Double markedLb = markedLb(fields);
    Double markedAtIn = markedAtIn(fields);
    Known hmpeTips = hmpeTips(typed);
    Band makerBrace = makerBrace(fields);
    Integer massG = fields.whole("massG", 100, 4000);
    return bowLengthIn == null || markedLb == null || markedAtIn == null
        ? null
        : new Particulars.OfBow(
            new OnePieceSpec(hand, bowLengthIn, markedLb, markedAtIn, hmpeTips, makerBrace), massG);
  }

  private static Build takeDown(Fields fields) {
    Build build =
        fields
            .typed()
            .requiredWord("build", Build.class, "Say whether limbs slot in or are screwed on.");
    if (build == Build.ONE_PIECE) {
      fields.typed().fault("build", "A one-piece bow is registered as one, not as its parts.");
      return null;
    }
    return build;
  }

  private static Double markedLb(Fields fields) {
    return fields.requiredDecimal("markedLb", 5, 80, "Give the marked weight in pounds.");
  }

  /** The AMO draw that the weight was marked at: null only where it was typed and unreadable. */
  private static Double markedAtIn(Fields fields) {
    return fields.typed().has("markedAtIn")
        ? fields.decimal("markedAtIn", 18, 32)
        : (Double) USUAL_MARKED_AT_IN;
  }

  private static Known hmpeTips(Typed typed) {
    Known known = typed.word("hmpeTips", Known.class);
    return known == null ? Known.UNKNOWN : known;
  }

  private static Band makerBrace(Fields fields) {
    Typed typed = fields.typed();
    Length low = fields.length("braceLow", Plausible.BRACE);
    Length high = fields.length("braceHigh", Plausible.BRACE);
    if (typed.has("braceLow") != typed.has("braceHigh")) {
      typed.fault(
          typed.has("braceLow") ? "braceHigh" : "braceLow",
          "The maker's range has two ends: give both, or neither.");
    }
    if (low == null || high == null) {
      return null;
    }
    if (low.compareTo(high) > 0) {
      typed.fault("braceHigh", "The upper end of the range is below the lower one.");
      return null;
    }
    return new Band(low, high);
  }
}
