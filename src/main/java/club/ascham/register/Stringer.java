package club.ascham.register;

import club.ascham.bow.StringerKind;
import club.ascham.bow.StringerSpec;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;

/** The cord that a bow is strung and unstrung with. */
@Entity
class Stringer extends Item {
  @Enumerated(EnumType.STRING)
  private StringerKind stringerKind;

  private int bowFromIn;
  private int bowToIn;

  @Override
  Particulars particulars(String model) {
    return new Particulars.OfStringer(new StringerSpec(stringerKind, bowFromIn, bowToIn));
  }

  @Override
  void describe(Particulars particulars) {
    StringerSpec spec = ((Particulars.OfStringer) particulars).spec();
    stringerKind = spec.kind();
    bowFromIn = spec.bowFromIn();
    bowToIn = spec.bowToIn();
  }
}
