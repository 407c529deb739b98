package club.ascham.register;

import club.ascham.bow.StringMaterial;
import club.ascham.bow.StringSpec;
import club.ascham.units.Length;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Table;
import java.time.LocalDate;

/** A string. */
@Entity
@Table(name = "bowstring")
class BowString extends Item {
  private int forBowIn;
  private Length measuredLength;

  @Enumerated(EnumType.STRING)
  private StringMaterial material;

  private Integer strands;
  private Length strandDiameter;
  private Integer twists;
  private LocalDate firstUsed;

  @Override
  Particulars particulars(String model) {
    return new Particulars.OfString(
        new StringSpec(forBowIn, measuredLength, material, strands, strandDiameter, twists),
        firstUsed);
  }

  @Override
  void describe(Particulars particulars) {
    Particulars.OfString of = (Particulars.OfString) particulars;
    forBowIn = of.spec().forBowIn();
    measuredLength = of.spec().measured();
    material = of.spec().material();
    strands = of.spec().strands();
    strandDiameter = of.spec().strandDiameter();
    twists = of.spec().twists();
    firstUsed = of.firstUsed();
  }
}
