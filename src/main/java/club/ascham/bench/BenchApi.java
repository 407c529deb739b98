package club.ascham.bench;

import club.ascham.bow.WeightOnFingers;
import club.ascham.form.Typed;
import club.ascham.form.Words;
import club.ascham.mechanics.BoltReckoning;
import club.ascham.mechanics.TwistReckoning;
import club.ascham.people.Role;
import club.ascham.web.Problem;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.Optional;
import java.util.function.Function;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** The bench's calculators as JSON; each number is in the unit of its name. Keeps nothing. */
@Path("/api/bench")
@Produces(MediaType.APPLICATION_JSON)
@Consumes(MediaType.APPLICATION_JSON)
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
@Tag(name = "Bench", description = "From a reading to the number, for any bow")
class BenchApi {
  private final ClubBands club;

  BenchApi(ClubBands club) {
    this.club = club;
  }

  /**
   * @param stringLengthMm untwisted
   * @param strands null: not known, and then a rule of thumb answers (likewise their diameter)
   * @param twists in the string now; null: not counted
   */
  record TwistBody(
      Double bowLengthIn,
      Double stringLengthMm,
      Integer strands,
      Double strandDiameterMm,
      Integer twists,
      Double braceMm,
      Double targetMm,
      Boolean sure) {}

  /**
   * @param turns whole turns to put in; negative: to take out; 0 unless {@code reach} is {@code
   *     this-string}
   * @param low the smallest number that may do it, and {@code high} the largest; null: no number
   *     does
   * @param room twists that may go that way; null: not counted
   * @param chance that this string gets there within its room, 0 to 1
   * @param stringChangeMm of the string's length; positive: longer
   * @param reach {@code leave-it}, {@code this-string}, {@code longer-string} or {@code
   *     shorter-string}
   * @param otherStringMm how much longer (untwisted) another string has to be; null: this one does
   *     it
   * @param expectedBraceMm after the turns, 9 times in 10 within {@code expectedLowMm} and {@code
   *     expectedHighMm}
   */
  record TwistAnswer(
      int turns,
      Integer low,
      Integer high,
      Integer room,
      double chance,
      double stringChangeMm,
      String reach,
      Double otherStringMm,
      double expectedBraceMm,
      double expectedLowMm,
      double expectedHighMm,
      String basis) {
    static TwistAnswer of(TwistReckoning twists) {
      boolean out = twists.stringChangeMm() > 0;
      return new TwistAnswer(
          twists.turns(),
          out ? twists.high() : twists.low(),
          out ? twists.low() : twists.high(),
          twists.room(),
          twists.chance(),
          twists.stringChangeMm(),
          Words.of(twists.reach()),
          twists.otherStringMm(),
          twists.expectedMm(),
          twists.lowMm(),
          twists.highMm(),
          twists.basis());
    }
  }

  /**
   * Tiller is upper minus lower distance; the three turns may be null: unknown.
   *
   * @param targetMm null: the middle of what the style asks for
   * @param style how the string is held; null: {@code split-finger}
   */
  record BoltBody(
      String style,
      Double tillerMm,
      Double targetMm,
      Double upperTurnsOut,
      Double lowerTurnsOut,
      Double maxTurnsOut) {}

  /** Turns of the two bolts; positive: tighten, the bolt goes in. */
  record BoltTurns(double upperTurns, double lowerTurns) {}

  /**
   * @param upperTurns expected in all, and {@code lowerTurns}
   * @param firstStep what to turn before measuring again
   * @param expectedTillerMm after the first step, within {@code low} and {@code high}
   * @param outcome {@code leave-it}, {@code turn}, {@code no-room}, {@code look-first} or {@code
   *     find-out-why}
   * @param reached whether the bolts have the room for all of it
   */
  record BoltAnswer(
      String outcome,
      double upperTurns,
      double lowerTurns,
      BoltTurns firstStep,
      double expectedTillerMm,
      double low,
      double high,
      boolean reached,
      String basis) {
    static BoltAnswer of(BoltReckoning bolts) {
      return new BoltAnswer(
          Words.of(bolts.outcome()),
          bolts.upper(),
          bolts.lower(),
          new BoltTurns(bolts.firstUpper(), bolts.firstLower()),
          bolts.expectedMm(),
          bolts.lowMm(),
          bolts.highMm(),
          bolts.reached(),
          bolts.basis());
    }
  }

  /**
   * @param markedAtIn AMO draw; null: 28
   * @param drawLengthIn AMO draw of the archer
   * @param braceMm measured; null: a common one
   */
  record DrawWeightBody(
      Double markedLb,
      Double markedAtIn,
      Integer markedRiserIn,
      Integer riserIn,
      Double drawLengthIn,
      Double braceMm,
      Boolean sure) {}

  /** Pounds-force on the fingers, and where they may well lie. */
  record DrawWeightAnswer(double onFingersLb, double low, double high, String basis) {
    static DrawWeightAnswer of(WeightOnFingers weight) {
      return new DrawWeightAnswer(weight.lb(), weight.lowLb(), weight.highLb(), weight.basis());
    }
  }

  @POST
  @Path("/twists")
  @Operation(summary = "How many twists bring brace to its aim")
  @RequestBody(
      content =
          @Content(
              examples =
                  @ExampleObject(
                      name = "a 68 in bow braced too high",
                      value =
                          "{\"bowLengthIn\": 68, \"stringLengthMm\": 1651, \"strands\": 14,"
                              + " \"strandDiameterMm\": 0.45, \"twists\": 35, \"braceMm\": 228.6,"
                              + " \"targetMm\": 222.25}")))
  public Response twists(TwistBody body) {
    Typed typed = Typed.of(body);
    return answer(typed, BenchQuestions.twists(typed, club), TwistAnswer::of);
  }

  @POST
  @Path("/bolts")
  @Operation(summary = "Which limb bolt, which way and how far")
  @RequestBody(
      content =
          @Content(
              examples =
                  @ExampleObject(
                      name = "tiller too large",
                      value =
                          "{\"tillerMm\": 9.5, \"targetMm\": 4.8, \"upperTurnsOut\": 2.0,"
                              + " \"lowerTurnsOut\": 2.0, \"maxTurnsOut\": 4.0}")))
  public Response bolts(BoltBody body) {
    Typed typed = Typed.of(body);
    return answer(typed, BenchQuestions.bolts(typed), BoltAnswer::of);
  }

  @POST
  @Path("/draw-weight")
  @Operation(summary = "The weight on an archer's fingers")
  @RequestBody(
      content =
          @Content(
              examples =
                  @ExampleObject(
                      name = "an inch beyond the mark",
                      value =
                          "{\"markedLb\": 30, \"markedAtIn\": 28, \"markedRiserIn\": 25,"
                              + " \"riserIn\": 25, \"drawLengthIn\": 29}")))
  public Response drawWeight(DrawWeightBody body) {
    Typed typed = Typed.of(body);
    return answer(typed, BenchQuestions.drawWeight(typed), DrawWeightAnswer::of);
  }

  @POST
  @Path("/statics")
  @Operation(summary = "Brace, tension, force and energy of a bow by either model")
  @RequestBody(
      content =
          @Content(
              examples = {
                @ExampleObject(
                    name = "rigid limbs",
                    value =
                        "{\"model\": \"rigid-limb\", \"limbIn\": 15, \"hingeHeightIn\": 17.5,"
                            + " \"hingeForwardIn\": 1.5, \"stiffnessInLbPerRad\": 560,"
                            + " \"restAngleRad\": -0.10, \"halfStringIn\": 30.6, \"drawsIn\": [10,"
                            + " 18, 26.25]}"),
                @ExampleObject(
                    name = "a straight bow of linear taper",
                    value =
                        "{\"model\": \"elastica\", \"limbLengthIn\": 32, \"rootHeightIn\": 4,"
                            + " \"rootStiffnessLbIn2\": 100000, \"tipFraction\": 0.0001,"
                            + " \"braceIn\": 6, \"drawsIn\": [10, 16, 28]}")
              }))
  public Response statics(StaticsQuestion body) {
    Typed typed = Typed.of(body);
    if (body == null) {
      typed.fault("model", "One of these, please: rigid-limb, elastica.");
      return Problem.of(typed);
    }
    return answer(typed, body.reckon(typed), Function.identity());
  }

  static <T> Response answer(
      Typed typed, Optional<T> reckoned, Function<T, ? extends Object> shape) {
    return reckoned
        .map(answer -> Response.ok(shape.apply(answer)).build())
        .orElseGet(() -> Problem.of(typed));
  }
}
