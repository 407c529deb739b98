package club.ascham.bench;

import club.ascham.form.Typed;
import club.ascham.mechanics.ElasticBow;
import club.ascham.mechanics.ElasticLimb;
import club.ascham.mechanics.LimbProfile;
import club.ascham.mechanics.OutOfDomain;
import club.ascham.mechanics.RigidLimb;
import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

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
 * @param lower elastica: the lower limb, what it leaves out as in the upper one above; null: both
 *     limbs are alike
 * @param braceIn elastica: this or the string's length
 * @param stringIn elastica, from limb end to limb end
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
    Limb lower,
    Double braceIn,
    Double stringIn,
    List<Double> drawsIn) {
  private static final int MESH = 200;
  private static final int MOST_DRAWS = 50;

  /** A small change of the string, for the slope of brace. */
  private static final double NUDGE_IN = 1e-3;

  /** One limb of the elastica; each figure as at the question. */
  record Limb(
      Double limbLengthIn,
      Double rootHeightIn,
      Double rootForwardIn,
      Double rootAngleRad,
      Double rootStiffnessLbIn2,
      Double tipFraction,
      Double restCurvaturePerIn,
      Double recurveFromPart,
      Double recurveCurvaturePerIn) {

    Limb orElse(Limb other) {
      return new Limb(
          or(limbLengthIn, other.limbLengthIn),
          or(rootHeightIn, other.rootHeightIn),
          or(rootForwardIn, other.rootForwardIn),
          or(rootAngleRad, other.rootAngleRad),
          or(rootStiffnessLbIn2, other.rootStiffnessLbIn2),
          or(tipFraction, other.tipFraction),
          or(restCurvaturePerIn, other.restCurvaturePerIn),
          or(recurveFromPart, other.recurveFromPart),
          or(recurveCurvaturePerIn, other.recurveCurvaturePerIn));
    }

    ElasticLimb made() {
      double from = or(recurveFromPart, 1.0);
      double recurve = from * limbLengthIn;
      double working = or(restCurvaturePerIn, 0.0);
      double tip = or(recurveCurvaturePerIn, 0.0);
      LimbProfile profile =
          LimbProfile.of(
              limbLengthIn,
              ElasticBow.linearTaper(rootStiffnessLbIn2, limbLengthIn, tipFraction),
              s -> s < recurve ? working : tip,
              MESH,
              from);
      return new ElasticLimb(profile, or(rootForwardIn, 0.0), rootHeightIn, or(rootAngleRad, 0.0));
    }
  }

  /**
   * What was reckoned; forces in lbf, energies in inch-pounds from brace on, in the order of the
   * draws.
   *
   * @param tillerUpperIn elastica: square from the string to the upper limb's root, and {@code
   *     tillerLowerIn}; null for rigid limbs
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  record Statics(
      double braceIn,
      double stringIn,
      double dBraceDString,
      double tensionLb,
      Double tillerUpperIn,
      Double tillerLowerIn,
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
      typed.decimal("braceIn", 1, 40);
      typed.decimal("stringIn", 10, 120);
      if (typed.sound() && (braceIn == null) == (stringIn == null)) {
        typed.fault("braceIn", "Either the brace or the string's length, please.");
      }
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
            or(hingeForwardIn, 0.0),
            stiffnessInLbPerRad,
            or(restAngleRad, 0.0),
            halfStringIn);
    List<Double> forces = new ArrayList<>();
    List<Double> energies = new ArrayList<>();
    for (double draw : draws()) {
      forces.add(bow.forceLb(draw));
      energies.add(bow.energyInLb(draw));
    }
    return new Statics(
        bow.braceIn(),
        2 * halfStringIn,
        bow.dBraceDString(),
        bow.tensionLb(),
        null,
        null,
        forces,
        energies);
  }

  private Statics elastica() {
    Limb limb =
        new Limb(
            limbLengthIn,
            rootHeightIn,
            rootForwardIn,
            rootAngleRad,
            rootStiffnessLbIn2,
            tipFraction,
            restCurvaturePerIn,
            recurveFromPart,
            recurveCurvaturePerIn);
    ElasticLimb above = limb.made();
    ElasticLimb below = lower == null ? above : lower.orElse(limb).made();
    ElasticBow bow = new ElasticBow(above, below);
    ElasticBow.Braced braced = stringIn == null ? bow.bracedAt(braceIn) : bow.strung(stringIn);
    List<Double> forces = new ArrayList<>();
    List<Double> energies = new ArrayList<>();
    for (double draw : draws()) {
      ElasticBow.Drawn drawn = bow.drawn(braced, draw);
      forces.add(drawn.forceLb());
      energies.add(drawn.energyInLb());
    }
    return new Statics(
        braced.braceIn(),
        braced.stringIn(),
        braceByString(bow, braced),
        braced.tensionLb(),
        braced.distanceIn(above.rootXIn(), above.rootYIn()),
        braced.distanceIn(below.rootXIn(), -below.rootYIn()),
        forces,
        energies);
  }

  /** To both sides of this brace; upward alone where a lower one would lie against the limbs. */
  private static double braceByString(ElasticBow bow, ElasticBow.Braced braced) {
    ElasticBow.Braced higher = bow.bracedAt(braced.braceIn() + NUDGE_IN);
    ElasticBow.Braced lower;
    try {
      lower = bow.bracedAt(braced.braceIn() - NUDGE_IN);
    } catch (OutOfDomain againstTheLimbs) {
      lower = braced;
    }
    return (higher.braceIn() - lower.braceIn()) / (higher.stringIn() - lower.stringIn());
  }

  private List<Double> draws() {
    return drawsIn == null ? List.of() : drawsIn;
  }

  private static Double or(Double value, Double otherwise) {
    if (value != null && !Double.isFinite(value)) {
      throw new OutOfDomain("model", "Finite numbers, please.");
    }
    return value == null ? otherwise : value;
  }
}
