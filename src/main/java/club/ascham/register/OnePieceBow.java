package club.ascham.register;

import club.ascham.bow.Band;
import club.ascham.bow.Hand;
import club.ascham.bow.Known;
import club.ascham.bow.OnePieceSpec;
import club.ascham.units.Length;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Table;

/** Riser and limbs in one item, as juniors' bows often are. */
@Entity
@Table(name = "bow")
class OnePieceBow extends Item {
  @Enumerated(EnumType.STRING)
  private Hand hand;

  private int bowLengthIn;
  private double markedLb;
  private double markedAtIn;

  @Enumerated(EnumType.STRING)
  private Known hmpeTips;

  private Length braceLow;
  private Length braceHigh;

  @Column(name = "mass_g")
  private Integer massG;

  @Override
  Particulars particulars(String model) {
    return new Particulars.OfBow(
        new OnePieceSpec(
            hand,
            bowLengthIn,
            markedLb,
            markedAtIn,
            hmpeTips,
            braceLow == null ? null : new Band(braceLow, braceHigh)),
        massG);
  }

  @Override
  void describe(Particulars particulars) {
    Particulars.OfBow of = (Particulars.OfBow) particulars;
    OnePieceSpec spec = of.spec();
    hand = spec.hand();
    bowLengthIn = spec.bowLengthIn();
    markedLb = spec.markedLb();
    markedAtIn = spec.markedAtIn();
    hmpeTips = spec.hmpeTips();
    braceLow = spec.makerBrace() == null ? null : spec.makerBrace().low();
    braceHigh = spec.makerBrace() == null ? null : spec.makerBrace().high();
    massG = of.massG();
  }
}
