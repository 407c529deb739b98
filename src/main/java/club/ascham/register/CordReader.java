package club.ascham.register;

import static club.ascham.bow.Compatibility.LONGEST_BOW_IN;
import static club.ascham.bow.Compatibility.SHORTEST_BOW_IN;

import club.ascham.bow.Compatibility;
import club.ascham.bow.Misfit;
import club.ascham.bow.StringMaterial;
import club.ascham.bow.StringSpec;
import club.ascham.bow.StringerKind;
import club.ascham.bow.StringerSpec;
import club.ascham.form.Typed;
import club.ascham.units.Length;
import club.ascham.units.Plausible;
import java.time.LocalDate;
import java.util.Optional;

/** Reads strings and stringers. */
final class CordReader {
  private static final Plausible STRAND_DIAMETER =
      new Plausible("strand diameter", Length.ofMm(0.1), Length.ofMm(2));

  private CordReader() {}

  static Particulars string(Fields fields, LocalDate boughtOn) {
    Typed typed = fields.typed();
    Integer forBowIn =
        fields.requiredWhole(
            "forBowIn",
            SHORTEST_BOW_IN,
            LONGEST_BOW_IN,
            "Give the bow length in inches that its label says it is made for.");
    StringMaterial material =
        typed.requiredWord(
            "material",
            StringMaterial.class,
            "Say what it is made of: not every limb tip bears every material.");
    Length measured = fields.length("measuredLength", Plausible.STRING_LENGTH);
    Integer strands = typed.whole("strands", 4, 40);
    Length diameter = fields.millimetres("strandDiameter", STRAND_DIAMETER);
    Integer twists = typed.whole("twists", 0, 150);
    LocalDate firstUsed =
        fields.pastDay("firstUsed", "It can't have been used first in the future.");
    if (firstUsed != null && boughtOn != null && firstUsed.isBefore(boughtOn)) {
      typed.fault("firstUsed", "That is before it was bought: one of the two days is wrong.");
    }
    if (forBowIn == null || material == null) {
      return null;
    }
    StringSpec spec = new StringSpec(forBowIn, measured, material, strands, diameter, twists);
    Optional<Misfit> confused = Compatibility.measuredLength(spec);
    confused.ifPresent(
        misfit -> typed.fault("measuredLength", misfit.reason() + " " + misfit.remedy()));
    return new Particulars.OfString(spec, firstUsed);
  }

  static Particulars stringer(Fields fields) {
    StringerKind kind =
        fields
            .typed()
            .requiredWord(
                "stringerKind",
                StringerKind.class,
                "Say which kind it is: cups on both tips, or a cup and a saddle.");
    Integer from =
        fields.requiredWhole(
            "bowFromIn", 40, 72, "Give the shortest bow that it serves, in inches.");
    Integer to =
        fields.requiredWhole("bowToIn", 40, 72, "Give the longest bow that it serves, in inches.");
    if (from == null || to == null) {
      return null;
    }
    if (from > to) {
      fields.typed().fault("bowToIn", "The longest bow is shorter than the shortest one.");
    }
    return new Particulars.OfStringer(new StringerSpec(kind, from, to));
  }
}
