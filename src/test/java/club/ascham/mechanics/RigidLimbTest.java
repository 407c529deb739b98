package club.ascham.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RigidLimbTest {
  private static final RigidLimb RL_1 = new RigidLimb(15, 17.5, 1.5, 560, -0.10, 30.6);

  @Test
  @DisplayName("case RL-1, by equilibrium and virtual work (rigid_limb.py): braced state to 1e-6")
  void braced_isInEquilibrium() {
    assertEquals(0.508793, RL_1.braceAngleRad(), 1e-6);
    assertEquals(8.806846, RL_1.braceIn(), 1e-6);
    assertEquals(-0.896420, RL_1.dBraceDString(), 1e-6);
    assertEquals(46.658135, RL_1.tensionLb(), 1e-6);
  }

  @ParameterizedTest(name = "drawn to {0} in: {1} lbf")
  @CsvSource({"10, 3.29917", "18, 17.66900", "26.25, 32.35552"})
  @DisplayName("case RL-1, by equilibrium and virtual work (rigid_limb.py): forces to 1e-5")
  void force_isTheSlopeOfTheEnergy(double draw, double force) {
    assertEquals(force, RL_1.forceLb(draw), 1e-5);
  }

  @Test
  @DisplayName(
      "case RL-1, by equilibrium and virtual work (rigid_limb.py): energy at full draw to 1e-4")
  void energy_isThatOfBothSprings() {
    assertEquals(293.1913, RL_1.energyInLb(26.25), 1e-4);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "halfStringIn, 15, 17.5, 1.5, 560, -0.1, 40",
    "halfStringIn, 15, 17.5, 1.5, 560, -0.1, 2",
    "limbIn, 0, 17.5, 1.5, 560, -0.1, 30.6",
    "stiffnessInLbPerRad, 15, 17.5, 1.5, NaN, -0.1, 30.6",
    "restAngleRad, 15, 17.5, 1.5, 560, 0.6, 30.6"
  })
  void whatCanNotBeStrung_isRefusedByItsName(
      String quantity, double a, double h, double d, double k, double rest, double s) {
    assertEquals(
        quantity,
        assertThrows(OutOfDomain.class, () -> new RigidLimb(a, h, d, k, rest, s)).quantity());
  }

  @ParameterizedTest
  @CsvSource({"8", "60", "NaN"})
  void aDraw_thatTheBowDoesNotReach_isRefused(double draw) {
    assertEquals("drawsIn", assertThrows(OutOfDomain.class, () -> RL_1.forceLb(draw)).quantity());
  }
}
