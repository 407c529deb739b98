package club.ascham.bench;

import club.ascham.form.Typed;
import club.ascham.mechanics.ElasticBow;
import club.ascham.mechanics.ElasticLimb;
import club.ascham.mechanics.OutOfDomain;
import club.ascham.mechanics.RigidLimb;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * The statics of one bow, by either model.
 *
 * @param model {@code rigid-limb} or {@code elastica}
 * @param limbIn rigid: lever of the limb, in inches
 * @param hingeHeightIn rigid
 * @param hingeForwardIn rigid
 * @param stiffnessInLbPerRad rigid: of one limb
 * @param restAngleRad rigid: of the unstrung limb
 * @param halfStringIn rigid
 * @param limbLengthIn elastica: of the bending limb, root to tip
 * @param rootHeightIn elastica: of the root from the draw axis
 * @param rootForwardIn elastica: of the root toward the string; 0 where left out
 * @param rootAngleRad elastica: of the limb at its root, positive toward the string; 0 where left
 *     out
 * @param rootStiffnessLbIn2 elastica: W at the root, falling evenly to the tip
 * @param tipFraction elastica: part of it that is left at the tip
 * @param restCurvaturePerIn elastica: of the unstrung working limb; 0 where left out
 * @param recurveFromPart elastica: where along the limb the recurve begins, 0 to 1; 1 where left
 *     out
 * @param recurveCurvaturePerIn elastica: of the unstrung recurve, negative away from the archer
 * @param braceIn elastica
 * @param drawsIn both: of the nock from the line that brace is measured from
 */
record StaticsQuestion(
    String model,
    Double limbIn,
    Double hingeHeightIn,
    Double hingeForwardIn,
    Double stiffnessInLbPerRad,
    Double restAngleRad,
    Double halfStringIn,
    Double limbLengthIn,
    Double rootHeightIn,
    Double rootForwardIn,
    Double rootAngleRad,
    Double rootStiffnessLbIn2,
    Double tipFraction,
    Double restCurvaturePerIn,
    Double recurveFromPart,
    Double recurveCurvaturePerIn,
    Double braceIn,
    List<Double> drawsIn) {
  private static final int MESH = 200;
  private static final int MOST_DRAWS = 50;

  /** A small change of the string, for the slope of brace. */
  private static final double NUDGE_IN = 1e-3;

  /**
   * What was reckoned; forces in lbf, energies in inch-pounds from brace on, in the order of the
   * draws.
   */
  record Statics(
      double braceIn,
      double stringIn,
      double dBraceDString,
      double tensionLb,
      List<Double> forcesLb,
      List<Double> energiesInLb) {}

  Optional<Statics> reckon(Typed typed) {
    if (drawsIn != null
        && (drawsIn.size() > MOST_DRAWS || drawsIn.stream().anyMatch(Objects::isNull))) {
      typed.fault("drawsIn", "At most " + MOST_DRAWS + " numbers, please.");
    }
    if ("rigid-limb".equals(model)) {
      for (String field :
          List.of("limbIn", "hingeHeightIn", "stiffnessInLbPerRad", "halfStringIn")) {
        BenchQuestions.needed(typed, field, 0, 1e6);
      }
      return BenchQuestions.reckoned(typed, this::rigid);
    }
    if ("elastica".equals(model)) {
      BenchQuestions.needed(typed, "limbLengthIn", 5, 60);
      BenchQuestions.needed(typed, "rootHeightIn", 0, 40);
      BenchQuestions.needed(typed, "rootStiffnessLbIn2", 1, 1e7);
      BenchQuestions.needed(typed, "tipFraction", 1e-6, 10);
      BenchQuestions.needed(typed, "braceIn", 1, 40);
      return BenchQuestions.reckoned(typed, this::elastica);
    }
    typed.fault("model", "One of these, please: rigid-limb, elastica.");
    return Optional.empty();
  }

  private Statics rigid() {
    RigidLimb bow =
        new RigidLimb(
            limbIn,
            hingeHeightIn,
            or(hingeForwardIn, 0),
            stiffnessInLbPerRad,
            or(restAngleRad, 0),
            halfStringIn);
    List<Double> forces = new ArrayList<>();
    List<Double> energies = new ArrayList<>();
    for (double draw : draws()) {
      forces.add(bow.forceLb(draw));
      energies.add(bow.energyInLb(draw));
    }
    return new Statics(
        bow.braceIn(), 2 * halfStringIn, bow.dBraceDString(), bow.tensionLb(), forces, energies);
  }

  private Statics elastica() {
    double recurve = or(recurveFromPart, 1) * limbLengthIn;
    double working = or(restCurvaturePerIn, 0);
    double tip = or(recurveCurvaturePerIn, 0);
    DoubleUnaryOperator rest = s -> s < recurve ? working : tip;
    ElasticBow bow =
        ElasticBow.symmetric(
            new ElasticLimb(
                limbLengthIn,
                or(rootForwardIn, 0),
                rootHeightIn,
                or(rootAngleRad, 0),
                ElasticBow.linearTaper(rootStiffnessLbIn2, limbLengthIn, tipFraction),
                rest,
                MESH));
    ElasticBow.Braced braced = bow.bracedAt(braceIn);
    ElasticBow.Braced higher = bow.bracedAt(braceIn + NUDGE_IN);
    List<Double> forces = new ArrayList<>();
    List<Double> energies = new ArrayList<>();
    for (double draw : draws()) {
      ElasticBow.Drawn drawn = bow.drawn(braced, draw);
      forces.add(drawn.forceLb());
      energies.add(drawn.energyInLb());
    }
    return new Statics(
        braceIn,
        braced.stringIn(),
        NUDGE_IN / (higher.stringIn() - braced.stringIn()),
        braced.upper().tensionLb(),
        forces,
        energies);
  }

  private List<Double> draws() {
    return drawsIn == null ? List.of() : drawsIn;
  }

  private static double or(Double value, double otherwise) {
    if (value != null && !Double.isFinite(value)) {
      throw new OutOfDomain("model", "Finite numbers, please.");
    }
    return value == null ? otherwise : value;
  }
}
