package club.ascham.bench;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.closeTo;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.lessThan;
import static org.hamcrest.Matchers.nullValue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.config.JsonConfig;
import io.restassured.config.RestAssuredConfig;
import io.restassured.path.json.config.JsonPathConfig.NumberReturnType;
import io.restassured.response.ValidatableResponse;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@QuarkusTest
class NumbersApiTest {
  private static ValidatableResponse ask(String calculator, String body) {
    return given()
        .config(
            RestAssuredConfig.config()
                .jsonConfig(JsonConfig.jsonConfig().numberReturnType(NumberReturnType.DOUBLE)))
        .auth()
        .preemptive()
        .basic("committee", "demo-fleet")
        .contentType("application/json")
        .body(body.replace('\'', '"'))
        .post("/api/bench/" + calculator)
        .then();
  }

  @Test
  @DisplayName("EWMA of NIST/SEMATECH e-Handbook 6.3.2.4")
  void chart_averages() {
    ask(
            "chart",
            "{'readings':[52.0,47.0,53.0,49.3,50.1,47.0,51.0,50.1,51.2,50.5,49.6,47.6,49.9,51.3,47.8,51.2,52.6,52.4,53.6,52.1],'centre':50,'sigma':2.0539,'lambda':0.3,'width':3}")
        .statusCode(200)
        .body("ewma", hasSize(20))
        .body("ewma[0]", closeTo(50.60, 0.005))
        .body("ewma[19]", closeTo(51.99, 0.005))
        .body("upper[0]", closeTo(51.8485, 5e-5))
        .body("upper[19]", closeTo(52.5884, 1e-4))
        .body("lower[19]", closeTo(47.4115, 1e-4))
        .body("signals", hasSize(0));
  }

  @Test
  @DisplayName("CUSUM of NIST/SEMATECH e-Handbook 6.3.2.3")
  void chart_sums() {
    ask(
            "chart",
            "{'kind':'cusum','readings':[324.925,324.675,324.725,324.350,325.350,325.225,324.125,324.525,325.225,324.600,324.625,325.150,328.325,327.250,327.825,328.500,326.675,327.775,326.875,328.350],'centre':325,'k':0.3175,'h':4.1959}")
        .statusCode(200)
        .body("firstSignal", equalTo(14))
        .body("high[12]", closeTo(3.0075, 1e-9))
        .body("high[19]", closeTo(19.035, 1e-9))
        .body("low", hasSize(20));
    ask("chart", "{'kind':'cusum','readings':[325],'centre':325,'k':0.3175,'h':4.1959}")
        .statusCode(200)
        .body("firstSignal", nullValue());
    ask("chart", "{'readings':[1,9,9],'centre':1,'sigma':1,'lambda':0.5,'width':3}")
        .body("signals", equalTo(List.of(2, 3)));
  }

  @Test
  @DisplayName("Weibull of NIST/SEMATECH e-Handbook 8.4.1.3")
  void life_ofTheHandbook() {
    ask(
            "life",
            "{'failed':[54,187,216,240,244,335,361,373,375,386],'suspended':[500,500,500,500,500,500,500,500,500,500]}")
        .statusCode(200)
        .body("shape", closeTo(1.720797, 1e-6))
        .body("scale", closeTo(606.5276, 1e-4))
        .body("logLikelihood", closeTo(-75.13462, 1e-5))
        .body("b10", closeTo(164.02, 5e-3))
        .body("median", closeTo(490.17, 5e-3))
        .body("mean", closeTo(540.74, 5e-3))
        .body("survival", hasSize(10))
        .body("survival[0].time", equalTo(54.0))
        .body("survival[0].value", closeTo(0.95, 1e-9))
        .body("survival.few", everyItem(equalTo(false)))
        .body("refusal", nullValue());
  }

  @Test
  void life_thatCantBeTold_isRefusedInWords_withItsCurve() {
    ask("life", "{'failed':[30,40],'suspended':[50,60],'entered':[0,10,20,0]}")
        .statusCode(200)
        .body("shape", nullValue())
        .body("survival", hasSize(2))
        .body("survival[0].value", closeTo(0.75, 1e-9))
        .body("survival.few", everyItem(equalTo(true)))
        .body("survival[0].size()", equalTo(5))
        .body("refusal", containsString("2 of 4 parts failed"));
    ask("life", "{'failed':[],'suspended':[50,60]}")
        .statusCode(200)
        .body("survival", hasSize(0))
        .body("refusal", containsString("None of 2 parts failed"));
  }

  @Test
  void life_withDelayedEntry_isShorterThanWithout() {
    String parts = "{'failed':[500,620,700,710,800],'suspended':[750,900]%s}";
    double without = ask("life", parts.formatted("")).extract().path("median");
    ask("life", parts.formatted(",'entered':[450,600,500,640,700,650,800]"))
        .statusCode(200)
        .body("median", lessThan(without));
  }

  @Test
  void life_ofTenThousand_fitsABody() {
    String ages =
        IntStream.range(0, 10_000)
            .mapToObj(i -> Integer.toString(100 + i % 937))
            .collect(Collectors.joining(","));
    ask("life", "{'failed':[" + ages + "]}").statusCode(200).body("refusal", nullValue());
  }

  @Test
  @DisplayName(
      "age replacement, shape 2, scale 1000, costs 1 and 5 (statistics/replacement_age.py)")
  void replacementAge() {
    ask("replacement-age", "{'shape':2,'scale':1000,'plannedCost':1,'unplannedCost':5}")
        .statusCode(200)
        .body("age", closeTo(510.655224, 1e-6))
        .body("costRate", closeTo(0.00408524, 5e-9))
        .body("runToFailureCostRate", closeTo(0.00564190, 5e-9));
    ask("replacement-age", "{'shape':0.9,'scale':1000,'plannedCost':1,'unplannedCost':5}")
        .statusCode(200)
        .body("age", nullValue())
        .body("costRate", closeTo(0.00475, 1e-4));
  }

  @Test
  @DisplayName("readers by hand: 220 and 222, 224 and 226: repeat 2, between 16/2 - 1")
  void readers() {
    ask(
            "readers",
            "{'readings':[{'reader':'a','value':220},{'reader':'a','value':222},{'reader':'b','value':224},{'reader':'b','value':226}]}")
        .statusCode(200)
        .body("mean", closeTo(223, 1e-9))
        .body("repeatability", closeTo(Math.sqrt(2), 1e-9))
        .body("between", closeTo(Math.sqrt(7), 1e-9))
        .body("reproducibility", closeTo(3, 1e-9))
        .body("offsets.a", closeTo(-2 * 14 / 16.0, 1e-9))
        .body("offsets.b", closeTo(2 * 14 / 16.0, 1e-9));
  }

  @ParameterizedTest(name = "{0}: {2}")
  @CsvSource(
      delimiter = '|',
      value = {
        "chart|{}|readings",
        "chart|{'readings':[1,null],'centre':1,'sigma':1,'lambda':0.3,'width':3}|readings",
        "chart|{'readings':['NaN'],'centre':1,'sigma':1,'lambda':0.3,'width':3}|readings",
        "chart|{'readings':[1e300],'centre':1,'sigma':1,'lambda':0.3,'width':3}|readings",
        "chart|{'readings':[],'centre':1,'sigma':1,'lambda':0.3,'width':3}|readings",
        "chart|{'readings':[1],'centre':1,'sigma':0,'lambda':0.3,'width':3}|sigma",
        "chart|{'readings':[1],'centre':1,'sigma':1,'lambda':1.5,'width':3}|lambda",
        "chart|{'readings':[1],'centre':1,'sigma':1,'lambda':0.3}|width",
        "chart|{'kind':'other','readings':[1]}|kind",
        "chart|{'kind':'cusum','readings':[1],'centre':1,'k':-1,'h':1}|k",
        "chart|{'kind':'cusum','readings':[1],'centre':1,'k':1}|h",
        "life|{}|failed",
        "life|{'failed':[],'suspended':[]}|failed",
        "life|{'failed':[0,1,2]}|failed",
        "life|{'failed':[-4]}|failed",
        "life|{'failed':[4],'suspended':[-1]}|suspended",
        "life|{'failed':[4],'suspended':[5],'entered':[1]}|entered",
        "life|{'failed':[4],'suspended':[5],'entered':[1,5]}|entered",
        "life|{'failed':[4],'suspended':[5],'entered':[-1,0]}|entered",
        "replacement-age|{}|shape",
        "replacement-age|{'shape':2,'scale':0,'plannedCost':1,'unplannedCost':5}|scale",
        "replacement-age|{'shape':2,'scale':1000,'plannedCost':0,'unplannedCost':5}|plannedCost",
        "replacement-age|{'shape':2,'scale':1000,'plannedCost':1,'unplannedCost':-5}|unplannedCost",
        "readers|{}|readings",
        "readers|{'readings':[null]}|readings",
        "readers|{'readings':[{'reader':'a'}]}|readings",
        "readers|{'readings':[{'value':3}]}|readings",
        "readers|{'readings':[{'reader':'a','value':3},{'reader':'b','value':3}]}|readings",
        "readers|{'readings':[{'reader':'a','value':3},{'reader':'a','value':4}]}|readings"
      })
  void outsideItsDomain_itSaysSoAtTheField(String calculator, String body, String field) {
    ask(calculator, body)
        .statusCode(422)
        .contentType("application/problem+json")
        .body("errors.field", hasItem(field));
  }

  @Test
  void allFaults_areToldAtOnce() {
    ask("replacement-age", "{'shape':-1,'scale':-1,'plannedCost':1,'unplannedCost':5}")
        .statusCode(422)
        .body("errors.field", hasItems("shape", "scale"));
  }
}
