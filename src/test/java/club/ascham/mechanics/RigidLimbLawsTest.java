package club.ascham.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Laws that every bow of rigid limbs keeps, whatever its figures. */
class RigidLimbLawsTest {
  @Provide
  Arbitrary<RigidLimb> bows() {
    return Combinators.combine(
            Arbitraries.doubles().between(10, 18),
            Arbitraries.doubles().between(12, 20),
            Arbitraries.doubles().between(0, 3),
            Arbitraries.doubles().between(100, 900),
            Arbitraries.doubles().between(-0.4, 0.1),
            Arbitraries.doubles().between(0.35, 0.6))
        .as(
            (a, h, d, k, rest, braced) ->
                new RigidLimb(a, h, d, k, rest, h + a * Math.cos(braced)));
  }

  @Property
  void theFingersWork_isTheEnergyStored(@ForAll("bows") RigidLimb bow) {
    double from = bow.braceIn();
    double to = from + 14;
    int steps = 400;
    double work = 0;
    for (int i = 0; i < steps; i++) {
      double left = from + (to - from) * i / steps;
      double right = from + (to - from) * (i + 1) / steps;
      work +=
          (right - left)
              / 6
              * (bow.forceLb(left) + 4 * bow.forceLb((left + right) / 2) + bow.forceLb(right));
    }
    assertEquals(bow.energyInLb(to), work, 1e-5 * work);
  }

  @Property
  void theForce_risesWithTheDraw(@ForAll("bows") RigidLimb bow) {
    double last = 0;
    for (double beyond = 0.5; beyond <= 14; beyond += 0.5) {
      double force = bow.forceLb(bow.braceIn() + beyond);
      assertTrue(force > last, "at " + beyond);
      last = force;
    }
  }

  @Property
  void theSlopeOfBrace_isItsDifferenceQuotient(@ForAll("bows") RigidLimb bow) {
    double nudge = 1e-5;
    double shorter = withString(bow, bow.halfStringIn() - nudge / 2).braceIn();
    double longer = withString(bow, bow.halfStringIn() + nudge / 2).braceIn();
    // The whole string is twice the half.
    assertEquals((longer - shorter) / (2 * nudge), bow.dBraceDString(), 1e-5);
  }

  private static RigidLimb withString(RigidLimb bow, double half) {
    return new RigidLimb(
        bow.limbIn(),
        bow.hingeHeightIn(),
        bow.hingeForwardIn(),
        bow.stiffnessInLbPerRad(),
        bow.restAngleRad(),
        half);
  }
}
