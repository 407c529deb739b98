package club.ascham.bow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.units.Length;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class ArrowLawsTest {

  @Property
  void shortestSafe_neverShorterForALongerDrawOrLessCertainty(
      @ForAll @DoubleRange(min = 14, max = 36) double drawIn,
      @ForAll @DoubleRange(min = 0, max = 4) double moreIn,
      @ForAll boolean estimated,
      @ForAll boolean beginner,
      @ForAll boolean junior) {
    Length shortest = ArrowLength.shortestSafe(drawIn, estimated, beginner, junior).length();
    assertTrue(shortest.compareTo(Length.ofInches(drawIn + 1)) >= 0);
    for (Length stricter :
        new Length[] {
          ArrowLength.shortestSafe(drawIn + moreIn, estimated, beginner, junior).length(),
          ArrowLength.shortestSafe(drawIn, true, beginner, junior).length(),
          ArrowLength.shortestSafe(drawIn, estimated, true, junior).length(),
          ArrowLength.shortestSafe(drawIn, estimated, beginner, true).length()
        }) {
      assertTrue(stricter.compareTo(shortest) >= 0);
    }
  }

  @Property
  void mass_isSoundExactlyUpToTheHeaviestBow_andItsRangeHoldsTheLikeliest(
      @ForAll @DoubleRange(min = 50, max = 1500) double massGr,
      @ForAll @DoubleRange(min = 5, max = 80) double lb,
      @ForAll @DoubleRange(min = 0, max = 5) double spreadLb) {
    WeightOnFingers weight =
        new WeightOnFingers(lb, Math.max(0, lb - spreadLb), lb + spreadLb, 0, "");
    ArrowMass mass = new ArrowMass(massGr, weight);
    double heaviest = ArrowMass.heaviestLb(massGr);
    if (Math.abs(heaviest - weight.highLb()) > 1e-6) {
      assertEquals(weight.highLb() < heaviest, mass.isSound());
    }
    assertTrue(mass.lowPerPound() <= mass.perPound() && mass.perPound() <= mass.highPerPound());
    assertTrue(new ArrowMass(mass.leastGr(), weight).isSound());
  }
}
