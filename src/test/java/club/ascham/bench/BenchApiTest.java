package club.ascham.bench;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.closeTo;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.lessThan;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.config.JsonConfig;
import io.restassured.config.RestAssuredConfig;
import io.restassured.path.json.config.JsonPathConfig.NumberReturnType;
import io.restassured.response.ValidatableResponse;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@QuarkusTest
class BenchApiTest {
  private static ValidatableResponse ask(String who, String calculator, String body) {
    return given()
        .config(
            RestAssuredConfig.config()
                .jsonConfig(JsonConfig.jsonConfig().numberReturnType(NumberReturnType.DOUBLE)))
        .auth()
        .preemptive()
        .basic(who, "demo-fleet")
        .contentType("application/json")
        .body(body.replace('\'', '"'))
        .post("/api/bench/" + calculator)
        .then();
  }

  @Test
  void twists_answerWithARange_thatHoldsTheNumber() {
    ask(
            "volunteer",
            "twists",
            "{'bowLengthIn':68,'stringLengthMm':1651,'strands':14,'strandDiameterMm':0.45,'twists':35,'braceMm':228.6,'targetMm':222.25}")
        .statusCode(200)
        .body("turns", allOf(greaterThan(-20), lessThan(-8)))
        .body("low", lessThan(-14))
        .body("high", greaterThan(-14))
        .body("stringChangeMm", closeTo(6.2, 0.3))
        .body("reach", equalTo("this-string"))
        .body("basis", containsString("the string's geometry"));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "strands"
            + " unknown|{'bowLengthIn':68,'stringLengthMm':1651,'twists':35,'braceMm':228.6,'targetMm':222.25}",
        "not counted|{'bowLengthIn':68,'stringLengthMm':1651,'strands':14,'strandDiameterMm':0.45,'braceMm':228.6,'targetMm':222.25}",
        "an odd"
            + " length|{'bowLengthIn':74,'stringLengthMm':1803,'strands':14,'strandDiameterMm':0.45,'twists':35,'braceMm':228.6,'targetMm':222.25}"
      })
  @DisplayName("outside the model's domain the rule of thumb answers: 13 to 19 twists for 6.35 mm")
  void twists_byTheRuleOfThumb_sayingSo(String why, String body) {
    ask("volunteer", "twists", body)
        .statusCode(200)
        .body("turns", allOf(greaterThan(-20), lessThan(-12)))
        .body("basis", containsString("a rule of thumb"));
  }

  @Test
  void twists_ofAStringAtItsFewest_tellTheLengthOfAnother() {
    ask(
            "volunteer",
            "twists",
            "{'bowLengthIn':68,'stringLengthMm':1651,'strands':14,'strandDiameterMm':0.45,'twists':10,'braceMm':228.6,'targetMm':219}")
        .statusCode(200)
        .body("reach", equalTo("longer-string"))
        .body("otherStringMm", closeTo(14.4, 0.6));
  }

  @Test
  void bolts_answerWithAFirstStep() {
    ask(
            "officer",
            "bolts",
            "{'tillerMm':9.5,'targetMm':4.8,'upperTurnsOut':2.0,'lowerTurnsOut':2.0,'maxTurnsOut':4.0}")
        .statusCode(200)
        .body("firstStep.upperTurns", equalTo(0.25))
        .body("firstStep.lowerTurns", equalTo(-0.25))
        .body("expectedTillerMm", allOf(greaterThan(4.8), lessThan(9.5)));
    ask("officer", "bolts", "{'tillerMm':9.5,'targetMm':4.8,'upperTurnsOut':null}")
        .statusCode(200)
        .body("lowerTurns", equalTo(0.0));
  }

  @Test
  void drawWeight_ofThirtyPoundsAnInchBeyondTheMark() {
    ask(
            "committee",
            "draw-weight",
            "{'markedLb':30,'markedAtIn':28,'markedRiserIn':25,'riserIn':25,'drawLengthIn':29}")
        .statusCode(200)
        .body("onFingersLb", closeTo(31.7, 0.3))
        .body("low", lessThan(31.0))
        .body("high", greaterThan(32.0));
  }

  @Test
  @DisplayName("16 lb limbs at a child's 22 in: 9 to 12 lb, not the 4 of two pounds an inch")
  void drawWeight_ofAChild() {
    ask("officer", "draw-weight", "{'markedLb':16,'drawLengthIn':22}")
        .statusCode(200)
        .body("onFingersLb", closeTo(10.5, 1.5));
  }

  @Test
  @DisplayName("rigid limbs, case RL-1 (mechanics/rigid_limb.py)")
  void statics_ofRigidLimbs() {
    ask(
            "officer",
            "statics",
            "{'model':'rigid-limb','limbIn':15,'hingeHeightIn':17.5,'hingeForwardIn':1.5,'stiffnessInLbPerRad':560,'restAngleRad':-0.10,'halfStringIn':30.6,'drawsIn':[10,18,26.25]}")
        .statusCode(200)
        .body("braceIn", closeTo(8.806846, 1e-6))
        .body("dBraceDString", closeTo(-0.896420, 1e-6))
        .body("tensionLb", closeTo(46.658135, 1e-6))
        .body("forcesLb[2]", closeTo(32.35552, 1e-5))
        .body("energiesInLb[2]", closeTo(293.1913, 1e-4));
  }

  @Test
  @DisplayName("elastica, the straight bow of linear taper (mechanics/elastica.py)")
  void statics_ofElasticLimbs() {
    ask(
            "officer",
            "statics",
            "{'model':'elastica','limbLengthIn':32,'rootHeightIn':4,'rootStiffnessLbIn2':100010,'tipFraction':0.000099990001,'braceIn':6,'drawsIn':[10,16,28]}")
        .statusCode(200)
        .body("stringIn", closeTo(70.3437, 1e-4))
        .body("forcesLb[0]", closeTo(21.1815, 1e-3))
        .body("forcesLb[2]", closeTo(86.8687, 1e-3))
        .body("energiesInLb[2]", closeTo(990.838, 1e-2));
  }

  @Test
  @DisplayName("elastica from the string's length: the same straight bow (mechanics/elastica.py)")
  void statics_ofAStringsLength() {
    ask(
            "officer",
            "statics",
            "{'model':'elastica','limbLengthIn':32,'rootHeightIn':4,'rootStiffnessLbIn2':100010,'tipFraction':0.000099990001,'stringIn':70.3437,'drawsIn':[28]}")
        .statusCode(200)
        .body("braceIn", closeTo(6, 1e-3))
        .body("forcesLb[0]", closeTo(86.8687, 1e-2));
  }

  @Test
  void statics_ofUnlikeLimbs_leanTowardTheStiffer() {
    ask(
            "officer",
            "statics",
            "{'model':'elastica','limbLengthIn':32,'rootHeightIn':4,'rootStiffnessLbIn2':100000,'tipFraction':0.01,'lower':{'rootStiffnessLbIn2':105000},'stringIn':70.3,'drawsIn':[10,28]}")
        .statusCode(200)
        .body("tillerUpperIn", greaterThan(6.0))
        .body("tillerLowerIn", lessThan(6.1))
        .body("energiesInLb[1]", greaterThan(900.0));
  }

  @ParameterizedTest(name = "{0}: {2}")
  @CsvSource(
      delimiter = '|',
      value = {
        "twists|{}|braceMm",
        "twists|{'bowLengthIn':68,'stringLengthMm':1651,'strands':2,'twists':35,'braceMm':228,'targetMm':222}|strands",
        "twists|{'bowLengthIn':88,'stringLengthMm':1651,'twists':35,'braceMm':228,'targetMm':222}|bowLengthIn",
        "twists|{'bowLengthIn':68,'stringLengthMm':1651,'braceMm':8.75,'targetMm':222}|braceMm",
        "bolts|{'tillerMm':9.5,'targetMm':4.8,'upperTurnsOut':5,'maxTurnsOut':4}|upperTurnsOut",
        "draw-weight|{'markedLb':30,'drawLengthIn':10}|drawLengthIn",
        "draw-weight|{'markedLb':-3,'drawLengthIn':28}|markedLb",
        "statics|{}|model",
        "statics|{'model':'rigid-limb','limbIn':15,'hingeHeightIn':17.5,'stiffnessInLbPerRad':560,'halfStringIn':99}|halfStringIn",
        "statics|{'model':'rigid-limb','limbIn':15,'hingeHeightIn':17.5,'stiffnessInLbPerRad':560,'halfStringIn':30.6,'drawsIn':[99]}|drawsIn",
        "statics|{'model':'elastica','limbLengthIn':32,'rootHeightIn':4,'rootStiffnessLbIn2':100000,'tipFraction':0.01,'braceIn':31}|braceIn",
        "statics|{'model':'elastica','limbLengthIn':32,'rootHeightIn':4,'rootStiffnessLbIn2':100000,'tipFraction':0.01,'stringIn':90}|stringIn",
        "statics|{'model':'elastica','limbLengthIn':32,'rootHeightIn':4,'rootStiffnessLbIn2':100000,'tipFraction':0.01}|braceIn"
      })
  void outsideItsDomain_itSaysSoAtTheField(String calculator, String body, String field) {
    ask("officer", calculator, body).statusCode(422).body("errors.field", hasItem(field));
  }
}
