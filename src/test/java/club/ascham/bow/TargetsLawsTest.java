package club.ascham.bow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.units.Length;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

class TargetsLawsTest {

  @Property
  void aim_liesInTheInnerBand(
      @ForAll @IntRange(min = -300, max = 3000) int lowTenths,
      @ForAll @IntRange(min = 0, max = 400) int widthTenths,
      @ForAll @IntRange(min = -500, max = 3500) int setUpTenths) {
    Target target = target(lowTenths, widthTenths);
    assertTrue(target.inner().holds(target.aim(tenths(setUpTenths)).orElseThrow()));
  }

  @Property
  void aim_aimedForAgain_staysWhereItIs(
      @ForAll @IntRange(min = -300, max = 3000) int lowTenths,
      @ForAll @IntRange(min = 0, max = 400) int widthTenths,
      @ForAll @IntRange(min = -500, max = 3500) int setUpTenths) {
    Target target = target(lowTenths, widthTenths);
    Length aim = target.aim(tenths(setUpTenths)).orElseThrow();
    assertEquals(aim, target.aim(aim).orElseThrow());
  }

  @Property
  void nockingStart_isAlwaysInThePublishedWindow(
      @ForAll @IntRange(min = -300, max = 300) int tillerTenths) {
    Length start = Targets.nockingStart(tenths(tillerTenths));
    assertTrue(Band.ofInches(0, 0.5).holds(start));
  }

  private static Target target(int lowTenths, int widthTenths) {
    return new Target(new Band(tenths(lowTenths), tenths(lowTenths + widthTenths)), null, "a band");
  }

  private static Length tenths(int tenthsOfMm) {
    return Length.ofMm(tenthsOfMm / 10.0);
  }
}
