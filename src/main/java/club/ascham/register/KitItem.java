package club.ascham.register;

import club.ascham.bow.Hand;
import club.ascham.units.Length;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;

/** One of the smaller things that go out with a bow. */
@Entity
class KitItem extends Item {
  @Enumerated(EnumType.STRING)
  private Hand hand;

  private String size;
  private Length arrowLength;
  private Integer spine;
  private Double arrowMassGr;
  private Integer arrowCount;
  private boolean pool;

  @Override
  Particulars particulars(String model) {
    return new Particulars.OfKitItem(hand, size, arrowLength, spine, arrowMassGr, arrowCount, pool);
  }

  @Override
  void describe(Particulars particulars) {
    Particulars.OfKitItem of = (Particulars.OfKitItem) particulars;
    hand = of.hand();
    size = of.size();
    arrowLength = of.arrowLength();
    spine = of.spine();
    arrowMassGr = of.arrowMassGr();
    arrowCount = of.arrowCount();
    pool = of.pool();
  }
}
