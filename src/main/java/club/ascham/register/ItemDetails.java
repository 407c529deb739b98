package club.ascham.register;

import club.ascham.bow.Band;
import club.ascham.bow.LimbsSpec;
import club.ascham.bow.OnePieceSpec;
import club.ascham.bow.RiserSpec;
import club.ascham.bow.StringSpec;
import club.ascham.bow.StringerSpec;
import club.ascham.units.Length;

/** All that a person tells the register about an item: what it is and where it came from. */
public record ItemDetails(ItemKind kind, Provenance provenance, Particulars particulars) {

  /** Of fields that are sound by themselves and together. */
  static ItemDetails of(ItemKind kind, FieldValues told) {
    return new ItemDetails(
        kind,
        new Provenance(
            told.get(ItemFields.MAKER),
            told.get(ItemFields.MODEL),
            told.get(ItemFields.BATCH),
            told.get(ItemFields.SERIAL),
            told.get(ItemFields.BOUGHT_ON),
            told.get(ItemFields.PRICE),
            told.get(ItemFields.NOTES)),
        particulars(kind, told));
  }

  /** What is recorded because of the kind. */
  static Particulars particulars(ItemKind kind, FieldValues told) {
    return switch (kind) {
      case RISER ->
          new Particulars.OfRiser(
              new RiserSpec(
                  told.get(ItemFields.RISER_BUILD),
                  told.get(ItemFields.RISER_HAND),
                  told.get(ItemFields.LENGTH_IN),
                  told.get(ItemFields.RISER_FITTING),
                  told.get(ItemFields.LIMB_MODEL),
                  told.get(ItemFields.MAX_TURNS_OUT),
                  told.get(ItemFields.LATERAL)),
              told.get(ItemFields.THREAD_PITCH),
              told.get(ItemFields.RISER_MASS_G));
      case LIMBS ->
          new Particulars.OfLimbs(
              new LimbsSpec(
                  told.get(ItemFields.LIMBS_BUILD),
                  told.get(ItemFields.LIMB_SIZE),
                  told.get(ItemFields.LIMBS_BOW_IN),
                  told.get(ItemFields.LIMBS_FITTING),
                  told.get(ItemFields.MODEL),
                  told.get(ItemFields.LIMBS_LB),
                  told.get(ItemFields.LIMBS_AT_IN),
                  told.get(ItemFields.MARKED_RISER_IN),
                  told.get(ItemFields.LIMBS_TIPS),
                  band(
                      told.get(ItemFields.LIMBS_BRACE_LOW), told.get(ItemFields.LIMBS_BRACE_HIGH))),
              told.get(ItemFields.SERIAL_UPPER),
              told.get(ItemFields.SERIAL_LOWER));
      case BOW ->
          new Particulars.OfBow(
              new OnePieceSpec(
                  told.get(ItemFields.BOW_HAND),
                  told.get(ItemFields.BOW_LENGTH_IN),
                  told.get(ItemFields.BOW_LB),
                  told.get(ItemFields.BOW_AT_IN),
                  told.get(ItemFields.BOW_TIPS),
                  band(told.get(ItemFields.BOW_BRACE_LOW), told.get(ItemFields.BOW_BRACE_HIGH))),
              told.get(ItemFields.BOW_MASS_G));
      case STRING -> new Particulars.OfString(string(told), told.get(ItemFields.FIRST_USED));
      case STRINGER ->
          new Particulars.OfStringer(
              new StringerSpec(
                  told.get(ItemFields.STRINGER_KIND),
                  told.get(ItemFields.BOW_FROM_IN),
                  told.get(ItemFields.BOW_TO_IN)));
      default ->
          new Particulars.OfKitItem(
              told.get(ItemFields.KIT_HAND),
              told.get(ItemFields.KIT_SIZE),
              told.get(ItemFields.ARROW_LENGTH),
              told.get(ItemFields.SPINE),
              told.get(ItemFields.ARROW_MASS_GR),
              told.get(ItemFields.ARROW_COUNT),
              told.get(ItemFields.POOL));
    };
  }

  static StringSpec string(FieldValues told) {
    return new StringSpec(
        told.get(ItemFields.FOR_BOW_IN),
        told.get(ItemFields.MEASURED_LENGTH),
        told.get(ItemFields.MATERIAL),
        told.get(ItemFields.STRANDS),
        told.get(ItemFields.STRAND_DIAMETER),
        told.get(ItemFields.TWISTS));
  }

  private static Band band(Length low, Length high) {
    return low == null ? null : new Band(low, high);
  }
}
