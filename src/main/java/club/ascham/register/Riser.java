package club.ascham.register;

import club.ascham.bow.Build;
import club.ascham.bow.Hand;
import club.ascham.bow.RiserSpec;
import club.ascham.units.Length;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;

/** The handle part that limbs are fitted to. */
@Entity
class Riser extends Item {
  @Enumerated(EnumType.STRING)
  private Build build;

  @Enumerated(EnumType.STRING)
  private Hand hand;

  private int lengthIn;
  private String limbFitting;
  private String limbModel;
  private Length threadPitch;
  private Double maxTurnsOut;
  private boolean lateral;

  @Column(name = "mass_g")
  private Integer massG;

  @Override
  Particulars particulars(String model) {
    return new Particulars.OfRiser(
        new RiserSpec(build, hand, lengthIn, limbFitting, limbModel, maxTurnsOut, lateral),
        threadPitch,
        massG);
  }

  @Override
  void describe(Particulars particulars) {
    Particulars.OfRiser of = (Particulars.OfRiser) particulars;
    build = of.spec().build();
    hand = of.spec().hand();
    lengthIn = of.spec().lengthIn();
    limbFitting = of.spec().fitting();
    limbModel = of.spec().limbModel();
    maxTurnsOut = of.spec().maxTurnsOut();
    lateral = of.spec().lateral();
    threadPitch = of.threadPitch();
    massG = of.massG();
  }
}
