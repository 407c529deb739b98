package club.ascham.register;

import club.ascham.bow.Band;
import club.ascham.bow.Build;
import club.ascham.bow.Known;
import club.ascham.bow.LimbSize;
import club.ascham.bow.LimbsSpec;
import club.ascham.units.Length;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;

/** A matched pair, upper and lower. */
@Entity
class Limbs extends Item {
  @Enumerated(EnumType.STRING)
  private Build build;

  @Enumerated(EnumType.STRING)
  private LimbSize size;

  private Integer bowLengthIn;
  private double markedLb;
  private double markedAtIn;
  private Integer markedRiserIn;
  private String limbFitting;
  private String serialUpper;
  private String serialLower;

  @Enumerated(EnumType.STRING)
  private Known hmpeTips;

  private Length braceLow;
  private Length braceHigh;

  @Override
  Particulars particulars(String model) {
    return new Particulars.OfLimbs(
        new LimbsSpec(
            build,
            size,
            bowLengthIn,
            limbFitting,
            model,
            markedLb,
            markedAtIn,
            markedRiserIn,
            hmpeTips,
            braceLow == null ? null : new Band(braceLow, braceHigh)),
        serialUpper,
        serialLower);
  }

  @Override
  void describe(Particulars particulars) {
    Particulars.OfLimbs of = (Particulars.OfLimbs) particulars;
    LimbsSpec spec = of.spec();
    build = spec.build();
    size = spec.size();
    bowLengthIn = spec.bowLengthIn();
    limbFitting = spec.fitting();
    markedLb = spec.markedLb();
    markedAtIn = spec.markedAtIn();
    markedRiserIn = spec.markedRiserIn();
    hmpeTips = spec.hmpeTips();
    braceLow = spec.makerBrace() == null ? null : spec.makerBrace().low();
    braceHigh = spec.makerBrace() == null ? null : spec.makerBrace().high();
    serialUpper = of.serialUpper();
    serialLower = of.serialLower();
  }
}
