package club.ascham.issue;

import club.ascham.bow.Newcomer;
import club.ascham.bow.NewcomerFit;
import club.ascham.bow.Ranking;
import club.ascham.bow.WeightOnFingers;
import club.ascham.concern.ConcernJson;
import club.ascham.form.Typed;
import club.ascham.loan.Archer;
import club.ascham.loan.Lending;
import club.ascham.loan.LendingTerms;
import club.ascham.people.Role;
import club.ascham.units.LengthText;
import club.ascham.web.Problem;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** The fitting of an archer as JSON: what suits, and which ready rigs do. Keeps nothing. */
@Path("/api/fit")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Fit", description = "From four answers about an archer to the rigs that suit")
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
class FitApi {
  /**
   * The answers. Lengths are texts such as {@code 26 in} or {@code 660 mm}; without a unit the
   * account's own holds. Either {@code drawLength} or {@code armSpan}.
   */
  record FitBody(
      String hand,
      String dominantEye,
      String drawLength,
      Boolean drawEstimated,
      String armSpan,
      String ageBand,
      String experience) {}

  /**
   * What suits; weights in lbf, bow lengths in inches.
   *
   * @param ceilingLb up to it no reason is asked
   * @param mostLb the most that is meant to go out with a reason and a coach who agreed
   * @param refusedAboveLb above it a junior beginner is given nothing; null: a coach decides
   */
  record FitAnswer(
      String drawLength,
      boolean drawEstimated,
      int bowFromIn,
      int bowToIn,
      int bowPreferredIn,
      String bowBasis,
      double leastLb,
      double aimLb,
      double ceilingLb,
      double mostLb,
      Double refusedAboveLb,
      String weightBasis,
      String shortestArrow,
      String shortestArrowWhy,
      List<String> remarks,
      List<RigSuited> rigs,
      List<RigUnsuited> unsuited) {}

  /** A ready rig that suits, best first; the weight on these fingers in lbf. */
  record RigSuited(
      long rig,
      String name,
      double weightLb,
      double lowLb,
      double highLb,
      List<String> why,
      List<ConcernJson> concerns) {}

  /**
   * A ready rig that does not; advice can be overridden with a reason, the rest can't.
   *
   * @param asksCoach whether its weight takes a coach who agreed, too
   */
  record RigUnsuited(
      long rig,
      String name,
      List<String> why,
      boolean adviceOnly,
      boolean asksCoach,
      List<ConcernJson> concerns) {}

  private final IssueDesk desk;
  private final Lending lending;

  FitApi(IssueDesk desk, Lending lending) {
    this.desk = desk;
    this.lending = lending;
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "What suits this archer, and the ready rigs, best first")
  @RequestBody(
      content =
          @Content(
              examples =
                  @ExampleObject(
                      name = "a beginner",
                      value =
                          "{\"hand\": \"right\", \"dominantEye\": \"right\", \"drawLength\": \"27"
                              + " in\", \"ageBand\": \"adult\", \"experience\": \"beginner\"}")))
  public Response fit(FitBody body) {
    LendingTerms terms = lending.terms();
    Typed typed = Typed.of(body);
    Optional<Archer> archer = Archer.parse(typed, terms.unit());
    if (archer.isEmpty()) {
      return Problem.of(typed);
    }
    return Response.ok(answer(archer.get(), desk.ranking(archer.get(), terms.today()))).build();
  }

  private static FitAnswer answer(Archer archer, Ranking<RigOffer> ranking) {
    NewcomerFit fit = Newcomer.fit(archer.answers());
    return new FitAnswer(
        LengthText.exact(archer.draw().amo()),
        archer.draw().estimated(),
        fit.bowFromIn(),
        fit.bowToIn(),
        fit.bowPreferredIn(),
        fit.bowBasis(),
        fit.leastLb(),
        fit.aimLb(),
        fit.ceiling().freeLb(),
        fit.ceiling().mostLb(),
        fit.ceiling().refusedAboveLb(),
        fit.weightBasis(),
        LengthText.exact(fit.shortestArrow().length()),
        fit.shortestArrow().why(),
        fit.remarks(),
        ranking.suited().stream().map(one -> suited(one.rig(), one.weight(), one.why())).toList(),
        ranking.unsuited().stream()
            .map(
                one ->
                    new RigUnsuited(
                        one.rig().card().id().value(),
                        one.rig().card().name(),
                        one.why(),
                        one.adviceOnly(),
                        one.asksCoach(),
                        ConcernJson.of(one.rig().against())))
            .toList());
  }

  private static RigSuited suited(RigOffer rig, WeightOnFingers weight, List<String> why) {
    return new RigSuited(
        rig.card().id().value(),
        rig.card().name(),
        tenth(weight.lb()),
        tenth(weight.lowLb()),
        tenth(weight.highLb()),
        why,
        ConcernJson.of(rig.against()));
  }

  private static double tenth(double lb) {
    return Math.round(lb * 10) / 10.0;
  }
}
