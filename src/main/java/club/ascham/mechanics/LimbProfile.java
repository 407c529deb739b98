package club.ascham.mechanics;

import java.util.function.DoubleUnaryOperator;

/**
 * How one limb is made, asked for once at the points that the integration needs: bending stiffness
 * and unstrung curvature along its length. Three values a step, at its start, middle and end; those
 * of the ends are taken from inside the step, so that a kink on a mesh point costs no accuracy.
 *
 * <p>A step of the mesh ends where the recurve begins: a jump of curvature within a step costs
 * three digits.
 */
public final class LimbProfile {
  /** Inside a step by this part of it. */
  private static final double INSIDE = 1e-9;

  final double lengthIn;
  final int mesh;

  /** Where the steps begin and end, along the limb. */
  final double[] nodesIn;

  /** 1 / W, in 1/(lbf in2), three a step. */
  final double[] compliance;

  /** k0 of the unstrung limb, per inch, three a step; negative: away from the archer. */
  final double[] curvature;

  private LimbProfile(double[] nodesIn, double[] compliance, double[] curvature) {
    this.nodesIn = nodesIn;
    this.mesh = nodesIn.length - 1;
    this.lengthIn = nodesIn[mesh];
    this.compliance = compliance;
    this.curvature = curvature;
  }

  /**
   * @param lengthIn of the bending limb, s from 0 at its root to this at its tip
   * @param stiffnessLbIn2 W(s)
   * @param restCurvaturePerIn k0(s); negative: away from the archer
   * @param mesh steps of the integration
   * @param kinkPart part of the length where k0 or W jumps: a step ends there; 1: nowhere
   * @throws OutOfDomain for a limb that is nowhere or has no stiffness somewhere
   */
  public static LimbProfile of(
      double lengthIn,
      DoubleUnaryOperator stiffnessLbIn2,
      DoubleUnaryOperator restCurvaturePerIn,
      int mesh,
      double kinkPart) {
    Domain.positive("limbLengthIn", lengthIn);
    double[] compliance = new double[3 * mesh];
    double[] curvature = new double[3 * mesh];
    double[] nodes = nodes(lengthIn, mesh, Domain.within("recurveFromPart", kinkPart, 0, 1));
    for (int i = 0; i < mesh; i++) {
      double[] parts = {INSIDE, 0.5, 1 - INSIDE};
      for (int j = 0; j < 3; j++) {
        double at = nodes[i] + parts[j] * (nodes[i + 1] - nodes[i]);
        double stiffness = Domain.positive("rootStiffnessLbIn2", stiffnessLbIn2.applyAsDouble(at));
        compliance[3 * i + j] = 1 / stiffness;
        curvature[3 * i + j] =
            Domain.finite("restCurvaturePerIn", restCurvaturePerIn.applyAsDouble(at));
      }
    }
    return new LimbProfile(nodes, compliance, curvature);
  }

  /** Even steps up to the kink, and even ones beyond it. */
  private static double[] nodes(double lengthIn, int mesh, double kinkPart) {
    int before =
        kinkPart <= 0 || kinkPart >= 1
            ? mesh
            : (int) Math.min(mesh - 1, Math.max(1, Math.round(kinkPart * mesh)));
    double kink = before == mesh ? lengthIn : kinkPart * lengthIn;
    double[] nodes = new double[mesh + 1];
    for (int i = 0; i <= mesh; i++) {
      nodes[i] =
          i <= before
              ? kink * i / before
              : kink + (lengthIn - kink) * (i - before) / (mesh - before);
    }
    return nodes;
  }

  /**
   * The same limb, so many times as stiff: under so many times the tension it takes the same shape,
   * so every force and energy of a bow grows with it.
   */
  LimbProfile stiffer(double factor) {
    double[] scaled = new double[compliance.length];
    for (int i = 0; i < scaled.length; i++) {
      scaled[i] = compliance[i] / factor;
    }
    return new LimbProfile(nodesIn, scaled, curvature);
  }
}
