package club.ascham.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.mechanics.ElasticBow.Braced;
import club.ascham.mechanics.ElasticBow.Drawn;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/**
 * Laws that every bow of elastic limbs keeps, whatever its figures; alike limbs and unlike ones.
 */
class ElasticBowLawsTest {
  private static final int MESH = 80;
  private static final double TO_BEYOND_BRACE_IN = 15;

  /** What makes a limb; the length and place of both limbs of a bow are the same. */
  record Made(
      double length,
      double height,
      double forward,
      double angle,
      double strength,
      double tip,
      double recurveFrom,
      double recurve) {

    ElasticLimb limb() {
      LimbProfile profile =
          LimbProfile.of(
              length,
              ElasticBow.linearTaper(strength, length, tip),
              s -> s < recurveFrom * length ? 0 : recurve,
              MESH,
              recurveFrom);
      return new ElasticLimb(profile, forward, height, angle);
    }

    Made differing(double strong, double lean, double taper) {
      return new Made(
          length,
          height,
          forward,
          angle + lean,
          strength * strong,
          tip * taper,
          recurveFrom,
          recurve);
    }
  }

  @Provide
  Arbitrary<Made> limbs() {
    return Combinators.combine(
            Arbitraries.doubles().between(15, 21).ofScale(4),
            Arbitraries.doubles().between(10, 14).ofScale(4),
            Arbitraries.doubles().between(1.5, 3).ofScale(4),
            Arbitraries.doubles().between(-0.1, 0.06).ofScale(4),
            Arbitraries.doubles().between(3_000, 15_000).ofScale(4),
            Arbitraries.doubles().between(0.3, 1.2).ofScale(4),
            Arbitraries.doubles().between(0.6, 0.85).ofScale(4),
            Arbitraries.doubles().between(-0.22, 0).ofScale(4))
        .as(Made::new);
  }

  /** Part of strength, lean and part of taper by which a lower limb differs. */
  record Unlike(double strong, double lean, double taper) {}

  @Provide
  Arbitrary<Unlike> unlike() {
    return Combinators.combine(
            Arbitraries.doubles().between(0.98, 1.02).ofScale(4),
            Arbitraries.doubles().between(-0.005, 0.005).ofScale(4),
            Arbitraries.doubles().between(0.96, 1.04).ofScale(4))
        .as(Unlike::new);
  }

  private static ElasticBow bow(Made made, Unlike by) {
    return new ElasticBow(made.limb(), made.differing(by.strong(), by.lean(), by.taper()).limb());
  }

  /**
   * Five inches beyond where the limbs begin to bend: a brace that suits each bow. A few pairs are
   * too unlike to stand in one string; they are no bows.
   */
  private static Braced braced(ElasticBow bow) {
    double tip = 0;
    for (ElasticLimb limb : List.of(bow.upper(), bow.lower())) {
      for (double x : limb.unstrung().xs()) {
        tip = Math.max(tip, x);
      }
    }
    try {
      return bow.bracedAt(tip + 5);
    } catch (OutOfDomain tooUnlike) {
      Assume.that(bow.upper() == bow.lower());
      throw tooUnlike;
    }
  }

  /** Braced higher, a pair may be too unlike that one string held at a lower brace. */
  private static Braced strung(ElasticBow bow, double stringIn) {
    try {
      return bow.strung(stringIn);
    } catch (OutOfDomain tooUnlike) {
      Assume.that(bow.upper() == bow.lower());
      throw tooUnlike;
    }
  }

  @Property(tries = 60)
  void theFingersWork_isTheEnergyStored_toAThousandth(
      @ForAll("limbs") Made made, @ForAll("unlike") Unlike by, @ForAll boolean alike) {
    ElasticBow bow = alike ? ElasticBow.symmetric(made.limb()) : bow(made, by);
    Braced braced = braced(bow);
    ElasticBow.Drawing drawing = bow.drawing(braced);
    int steps = 60;
    double width = TO_BEYOND_BRACE_IN / steps;
    double work = 0;
    double before = 0;
    Drawn end = null;
    for (int i = 0; i < steps; i++) {
      double from = braced.braceIn() + i * width;
      double middle = drawing.to(from + width / 2).forceLb();
      end = drawing.to(from + width);
      work += width / 6 * (before + 4 * middle + end.forceLb());
      before = end.forceLb();
    }
    assertEquals(end.energyInLb(), work, 1e-3 * work);
  }

  @Property(tries = 60)
  void theForce_risesWithTheDraw(
      @ForAll("limbs") Made made, @ForAll("unlike") Unlike by, @ForAll boolean alike) {
    ElasticBow bow = alike ? ElasticBow.symmetric(made.limb()) : bow(made, by);
    Braced braced = braced(bow);
    ElasticBow.Drawing drawing = bow.drawing(braced);
    double last = 0;
    for (double beyond = 0.25; beyond <= TO_BEYOND_BRACE_IN; beyond += 0.25) {
      double force = drawing.to(braced.braceIn() + beyond).forceLb();
      assertTrue(force > last, "at " + beyond);
      last = force;
    }
  }

  @Property(tries = 60)
  void limbsAlike_haveNoTiller_evenWhenSolvedAsTwo(@ForAll("limbs") Made made) {
    Braced one = braced(ElasticBow.symmetric(made.limb()));
    Braced two = new ElasticBow(made.limb(), made.limb()).strung(one.stringIn());
    assertEquals(0, two.tillerIn(0, 12), 1e-8);
    assertEquals(one.braceIn(), two.braceIn(), 1e-8);
    assertEquals(one.tensionLb(), two.tensionLb(), 1e-6 * one.tensionLb());
  }

  @Property(tries = 40)
  void limbsExchanged_turnTheTillerAround_andLeaveTheForce(
      @ForAll("limbs") Made made, @ForAll("unlike") Unlike by) {
    ElasticBow bow = bow(made, by);
    ElasticBow mirrored = new ElasticBow(bow.lower(), bow.upper());
    double string = braced(bow).stringIn();
    Braced one = strung(bow, string);
    Braced other = strung(mirrored, string);
    assertEquals(one.tillerIn(0, 12), -other.tillerIn(0, 12), 1e-7);
    assertEquals(one.braceIn(), other.braceIn(), 1e-7);
    double draw = one.braceIn() + 12;
    double force = bow.drawn(one, draw).forceLb();
    assertEquals(force, mirrored.drawn(other, draw).forceLb(), 1e-6 * force);
  }

  @Property(tries = 60)
  void aLongerString_neverRaisesTheBrace(
      @ForAll("limbs") Made made, @ForAll("unlike") Unlike by, @ForAll boolean alike) {
    ElasticBow bow = alike ? ElasticBow.symmetric(made.limb()) : bow(made, by);
    double string = braced(bow).stringIn();
    double last = Double.POSITIVE_INFINITY;
    for (double more = -1.5; more <= 0; more += 0.25) {
      double brace = strung(bow, string + more).braceIn();
      assertTrue(brace < last, "string " + (string + more));
      last = brace;
    }
  }

  @Property(tries = 40)
  void theStringOfABrace_braceItSoAgain(@ForAll("limbs") Made made, @ForAll("unlike") Unlike by) {
    ElasticBow bow = bow(made, by);
    Braced braced = braced(bow);
    Braced again = strung(bow, braced.stringIn());
    assertEquals(braced.braceIn(), again.braceIn(), 1e-7);
    assertEquals(braced.leanRad(), again.leanRad(), 1e-8);
    assertEquals(again.upper().tensionLb(), again.lower().tensionLb(), 1e-12);
  }

  @Property(tries = 30)
  void soManyTimesAsStiff_isSoManyTimesTheForce_atTheSameShape(@ForAll("limbs") Made made) {
    ElasticBow bow = ElasticBow.symmetric(made.limb());
    Braced braced = braced(bow);
    Braced stiffer = bow.stiffer(1.7).strung(braced.stringIn());
    assertEquals(braced.braceIn(), stiffer.braceIn(), 1e-7);
    double draw = braced.braceIn() + 12;
    assertEquals(
        1.7 * bow.drawn(braced, draw).forceLb(),
        bow.stiffer(1.7).drawn(stiffer, draw).forceLb(),
        1e-6 * bow.drawn(braced, draw).forceLb());
  }

  @Property(tries = 30)
  void aFinerMesh_hardlyChangesTheForce(@ForAll("limbs") Made made) {
    List<Double> forces = new ArrayList<>();
    double brace = Double.NaN;
    for (int mesh : new int[] {40, 80, 160}) {
      LimbProfile profile =
          LimbProfile.of(
              made.length(),
              ElasticBow.linearTaper(made.strength(), made.length(), made.tip()),
              s -> s < made.recurveFrom() * made.length() ? 0 : made.recurve(),
              mesh,
              made.recurveFrom());
      ElasticBow bow =
          ElasticBow.symmetric(
              new ElasticLimb(profile, made.forward(), made.height(), made.angle()));
      brace = Double.isNaN(brace) ? braced(bow).braceIn() : brace;
      forces.add(bow.drawn(bow.bracedAt(brace), brace + 15).forceLb());
    }
    double fine = forces.get(2);
    assertEquals(fine, forces.get(1), 1e-5 * fine);
    assertEquals(fine, forces.get(0), 1e-4 * fine);
  }
}
