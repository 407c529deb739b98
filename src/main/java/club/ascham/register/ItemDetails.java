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
                  told.get(BowFields.RISER_BUILD),
                  told.get(BowFields.RISER_HAND),
                  told.get(BowFields.LENGTH_IN),
                  told.get(BowFields.RISER_FITTING),
                  told.get(BowFields.LIMB_MODEL),
                  told.get(BowFields.MAX_TURNS_OUT),
                  told.get(BowFields.LATERAL)),
              told.get(BowFields.THREAD_PITCH),
              told.get(BowFields.RISER_MASS_G));
      case LIMBS ->
          new Particulars.OfLimbs(
              new LimbsSpec(
                  told.get(BowFields.LIMBS_BUILD),
                  told.get(BowFields.LIMB_SIZE),
                  told.get(BowFields.LIMBS_BOW_IN),
                  told.get(BowFields.LIMBS_FITTING),
                  told.get(ItemFields.MODEL),
                  told.get(BowFields.LIMBS_LB),
                  told.get(BowFields.LIMBS_AT_IN),
                  told.get(BowFields.MARKED_RISER_IN),
                  told.get(BowFields.LIMBS_TIPS),
                  band(told.get(BowFields.LIMBS_BRACE_LOW), told.get(BowFields.LIMBS_BRACE_HIGH))),
              told.get(BowFields.SERIAL_UPPER),
              told.get(BowFields.SERIAL_LOWER));
      case BOW ->
          new Particulars.OfBow(
              new OnePieceSpec(
                  told.get(BowFields.BOW_HAND),
                  told.get(BowFields.BOW_LENGTH_IN),
                  told.get(BowFields.BOW_LB),
                  told.get(BowFields.BOW_AT_IN),
                  told.get(BowFields.BOW_TIPS),
                  band(told.get(BowFields.BOW_BRACE_LOW), told.get(BowFields.BOW_BRACE_HIGH))),
              told.get(BowFields.BOW_MASS_G));
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
