package club.ascham.bench;

import club.ascham.bench.NumberQuestions.LifeTold;
import club.ascham.bench.NumberQuestions.ReadingAsked;
import club.ascham.form.Typed;
import club.ascham.people.Role;
import club.ascham.statistics.Readers;
import club.ascham.statistics.WeibullFit;
import club.ascham.web.Problem;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** The statistics of upkeep as JSON, for whoever likes numbers. Keeps nothing. */
@Path("/api/bench")
@Produces(MediaType.APPLICATION_JSON)
@Consumes(MediaType.APPLICATION_JSON)
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
@Tag(name = "Bench")
class NumbersApi {
  /**
   * @param kind {@code ewma}, as where it is left out, or {@code cusum}
   * @param sigma ewma: standard deviation of one reading
   * @param lambda ewma: weight of the newest reading, to 1
   * @param width ewma: of the limits, in standard deviations of the average
   * @param k cusum: what a reading may lie off the centre for nothing, in the readings' unit
   * @param h cusum: what the sums may reach, in the readings' unit
   */
  record ChartBody(
      String kind,
      List<Double> readings,
      Double centre,
      Double sigma,
      Double lambda,
      Double width,
      Double k,
      Double h) {}

  /** Ages; {@code entered} null: all were watched from new. */
  record LifeBody(List<Double> failed, List<Double> suspended, List<Double> entered) {}

  /**
   * @param value share that reaches more than this age, within {@code low} and {@code high} 19
   *     times in 20
   * @param few it rests on fewer than 5 parts
   */
  record Survival(double time, double value, double low, double high, boolean few) {}

  /**
   * @param shape null, as the other numbers but the survival, where {@code refusal} says why
   * @param b10 age by which one in ten has failed
   */
  record LifeAnswer(
      Double shape,
      Double scale,
      Double logLikelihood,
      Double b10,
      Double median,
      Double mean,
      List<Survival> survival,
      String refusal) {
    static LifeAnswer of(LifeTold told) {
      List<Survival> survival =
          told.curve().steps().stream()
              .map(
                  step ->
                      new Survival(step.time(), step.value(), step.low(), step.high(), step.few()))
              .toList();
      WeibullFit fit = told.fit();
      return fit == null
          ? new LifeAnswer(null, null, null, null, null, null, survival, told.refusal())
          : new LifeAnswer(
              fit.life().shape(),
              fit.life().scale(),
              fit.logLikelihood(),
              fit.life().quantile(0.1),
              fit.life().quantile(0.5),
              fit.life().mean(),
              survival,
              null);
    }
  }

  /** Costs of a replacement at its age, and of one after a failure. */
  record ReplacementBody(Double shape, Double scale, Double plannedCost, Double unplannedCost) {}

  record ReadersBody(List<ReadingAsked> readings) {}

  /** Standard deviations, and what each reader reads more than their common mean. */
  record ReadersAnswer(
      double mean,
      double repeatability,
      double between,
      double reproducibility,
      Map<String, Double> offsets) {
    static ReadersAnswer of(Readers readers) {
      Map<String, Double> offsets = new LinkedHashMap<>();
      readers.offsets().forEach((reader, offset) -> offsets.put(reader, offset.mean()));
      return new ReadersAnswer(
          readers.mean(),
          readers.repeatability(),
          readers.between(),
          readers.reproducibility(),
          offsets);
    }
  }

  @POST
  @Path("/chart")
  @Operation(
      summary = "Whether readings have left their centre",
      description = "Signals are readings counted from 1.")
  @RequestBody(
      content =
          @Content(
              examples = {
                @ExampleObject(
                    name = "weighted average",
                    value =
                        "{\"readings\": [52.0, 47.0, 53.0, 49.3, 50.1], \"centre\": 50, \"sigma\":"
                            + " 2.0539, \"lambda\": 0.3, \"width\": 3}"),
                @ExampleObject(
                    name = "cumulative sums",
                    value =
                        "{\"kind\": \"cusum\", \"readings\": [324.6, 325.1, 328.3, 327.2],"
                            + " \"centre\": 325, \"k\": 0.3175, \"h\": 4.1959}")
              }))
  public Response chart(ChartBody body) {
    Typed typed = Typed.of(body);
    String kind = body == null || body.kind() == null ? "ewma" : body.kind();
    List<Double> readings = body == null ? null : body.readings();
    return switch (kind) {
      case "ewma" ->
          BenchApi.answer(typed, NumberQuestions.ewma(typed, readings), Function.identity());
      case "cusum" ->
          BenchApi.answer(typed, NumberQuestions.cusum(typed, readings), Function.identity());
      default -> {
        typed.fault("kind", "One of these, please: ewma, cusum.");
        yield Problem.of(typed);
      }
    };
  }

  @POST
  @Path("/life")
  @Operation(summary = "How long parts last, from those that failed and those that have not yet")
  @RequestBody(
      content =
          @Content(
              examples =
                  @ExampleObject(
                      name = "ten failed, ten in use at 500",
                      value =
                          "{\"failed\": [54, 187, 216, 240, 244, 335, 361, 373, 375, 386],"
                              + " \"suspended\": [500, 500, 500, 500, 500, 500, 500, 500, 500,"
                              + " 500]}")))
  public Response life(LifeBody body) {
    Typed typed = Typed.nothing();
    LifeBody asked = body == null ? new LifeBody(null, null, null) : body;
    return BenchApi.answer(
        typed,
        NumberQuestions.life(typed, asked.failed(), asked.suspended(), asked.entered()),
        LifeAnswer::of);
  }

  @POST
  @Path("/replacement-age")
  @Operation(summary = "At which age replacing costs least; null where no age pays")
  @RequestBody(
      content =
          @Content(
              examples =
                  @ExampleObject(
                      name = "a failure costs five times as much",
                      value =
                          "{\"shape\": 2, \"scale\": 1000, \"plannedCost\": 1, \"unplannedCost\":"
                              + " 5}")))
  public Response replacementAge(ReplacementBody body) {
    Typed typed = Typed.of(body);
    return BenchApi.answer(typed, NumberQuestions.replacementAge(typed), Function.identity());
  }

  @POST
  @Path("/readers")
  @Operation(summary = "What one person's repeat scatters by, and what people differ by")
  @RequestBody(
      content =
          @Content(
              examples =
                  @ExampleObject(
                      name = "two people, twice each",
                      value =
                          "{\"readings\": [{\"reader\": \"a\", \"value\": 220.0}, {\"reader\":"
                              + " \"a\", \"value\": 221.0}, {\"reader\": \"b\", \"value\": 222.5},"
                              + " {\"reader\": \"b\", \"value\": 223.0}]}")))
  public Response readers(ReadersBody body) {
    Typed typed = Typed.nothing();
    return BenchApi.answer(
        typed,
        NumberQuestions.readers(typed, body == null ? null : body.readings()),
        ReadersAnswer::of);
  }
}
