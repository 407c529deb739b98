package club.ascham.register;

import club.ascham.bow.Build;
import club.ascham.bow.Compatibility;
import club.ascham.form.Typed;
import club.ascham.units.Length;
import java.time.LocalDate;
import java.util.List;

/** What the fields of one item must be together; each alone is bounded by {@link ItemFields}. */
final class FieldsTogether {
  private final Fields fields;
  private final Typed typed;
  private final FieldValues values;

  private FieldsTogether(Fields fields, FieldValues values) {
    this.fields = fields;
    this.typed = fields.typed();
    this.values = values;
  }

  /** Leaves a fault at each field that is wrong beside the others. */
  static void hold(ItemKind kind, FieldValues values, Fields fields) {
    FieldsTogether rules = new FieldsTogether(fields, values);
    switch (kind) {
      case RISER -> rules.riser();
      case LIMBS -> rules.limbs();
      case BOW -> rules.band(BowFields.BOW_BRACE_LOW, BowFields.BOW_BRACE_HIGH);
      case STRING -> rules.string();
      case STRINGER -> rules.stringer();
      case ARROWS -> rules.arrows();
      default -> rules.worn(kind);
    }
  }

  private void riser() {
    Build build = takeDown(BowFields.RISER_BUILD);
    if (build == Build.ADJUSTABLE) {
      wants(
          BowFields.RISER_FITTING,
          "Say which limb fitting it has: limbs of another fitting do not hold in it.");
      fields.refuse("limbModel", "That is for screw-in risers; this one goes by its limb fitting.");
    }
    if (build == Build.SCREW_IN) {
      wants(
          BowFields.LIMB_MODEL,
          "Say which model of limbs it takes: screw-in limbs fit only their own model.");
      fields.refuse(
          "limbFitting", "That is for slot-in limbs; a screw-in riser goes by the model.");
      fields.refuse("maxTurnsOut", "The tiller of a screw-in bow is fixed: leave this empty.");
      fields.refuse("lateral", "A screw-in riser has no sideways adjustment: leave this empty.");
    }
  }

  private void limbs() {
    Build build = takeDown(BowFields.LIMBS_BUILD);
    boolean sized = values.get(BowFields.LIMB_SIZE) != null;
    if (!sized && typed.messageAt("size") == null && !typed.has("bowLengthIn")) {
      typed.fault("size", "Give the size marked on the limbs, or the bow length they make.");
    } else if (sized && values.get(BowFields.LIMBS_BOW_IN) != null) {
      typed.fault(
          "bowLengthIn",
          "Size or bow length, not both: by size, they make another bow on another riser.");
    }
    if (build == Build.ADJUSTABLE) {
      wants(
          BowFields.LIMBS_FITTING,
          "Say which fitting they have: a riser of another fitting does not hold them.");
    }
    if (build == Build.SCREW_IN) {
      fields.refuse("limbFitting", "That is for slot-in limbs; screw-in limbs go by the model.");
      wants(ItemFields.MODEL, "Give the model: screw-in limbs fit only risers of their own model.");
    }
    band(BowFields.LIMBS_BRACE_LOW, BowFields.LIMBS_BRACE_HIGH);
  }

  private Build takeDown(ItemField<Build> field) {
    Build build = values.get(field);
    if (build == Build.ONE_PIECE) {
      typed.fault("build", "A one-piece bow is registered as one, not as its parts.");
    }
    return build;
  }

  private void band(ItemField<Length> lowEnd, ItemField<Length> highEnd) {
    Length low = values.get(lowEnd);
    Length high = values.get(highEnd);
    if (typed.has("braceLow") != typed.has("braceHigh")) {
      typed.fault(
          typed.has("braceLow") ? "braceHigh" : "braceLow",
          "The maker's range has two ends: give both, or neither.");
    }
    if (low != null && high != null && low.compareTo(high) > 0) {
      typed.fault("braceHigh", "The upper end of the range is below the lower one.");
    }
  }

  private void string() {
    LocalDate firstUsed = values.get(ItemFields.FIRST_USED);
    LocalDate boughtOn = values.get(ItemFields.BOUGHT_ON);
    if (firstUsed != null && boughtOn != null && firstUsed.isBefore(boughtOn)) {
      typed.fault("firstUsed", "That is before it was bought: one of the two days is wrong.");
    }
    if (values.get(ItemFields.FOR_BOW_IN) != null && values.get(ItemFields.MATERIAL) != null) {
      Compatibility.measuredLength(ItemDetails.string(values))
          .ifPresent(
              confused ->
                  typed.fault("measuredLength", confused.reason() + " " + confused.remedy()));
    }
  }

  private void stringer() {
    Integer from = values.get(ItemFields.BOW_FROM_IN);
    Integer to = values.get(ItemFields.BOW_TO_IN);
    if (from != null && to != null && from > to) {
      typed.fault("bowToIn", "The longest bow is shorter than the shortest one.");
    }
  }

  private void arrows() {
    fields.refuse("hand", "Arrows are for either hand: leave this empty.");
    fields.refuse("size", "Arrows go by length and spine: leave this empty.");
    wants(
        ItemFields.ARROW_LENGTH,
        "Give the length, nock groove to the end of the shaft: it keeps the fingers safe.");
    Integer count = values.get(ItemFields.ARROW_COUNT);
    wants(ItemFields.ARROW_COUNT, "Say how many arrows there are.");
    if (count != null && count == 0 && !values.get(ItemFields.POOL)) {
      typed.fault("arrowCount", "A whole number from 1 to 2000, please: only a pool may be empty.");
    }
  }

  private void worn(ItemKind kind) {
    if (kind == ItemKind.TAB) {
      wants(ItemFields.KIT_HAND, "Say which hand draws the string.");
    }
    for (String field : List.of("arrowLength", "spine", "arrowMassGr", "arrowCount", "pool")) {
      fields.refuse(field, "Only arrows have that: leave this empty.");
    }
  }

  /** A fault that is there already says more. */
  private void wants(ItemField<?> field, String missing) {
    if (values.get(field) == null) {
      typed.fault(field.name(), missing);
    }
  }
}
