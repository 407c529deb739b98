package club.ascham.life;

import club.ascham.life.LifeDesk.Group;
import club.ascham.life.LifeDesk.Lasting;
import club.ascham.life.LifeDesk.Ruled;
import club.ascham.people.Role;
import club.ascham.statistics.Interval;
import club.ascham.statistics.KaplanMeier;
import club.ascham.statistics.WeibullFit;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;

/** How long parts last, as JSON. */
@Path("/api/lives")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Upkeep")
class LivesApi {
  private static final double LIKELY = 0.9;

  /**
   * A Weibull life.
   *
   * @param median with the ends between which it lies 9 times in 10 (likewise the others)
   */
  public record LifeJson(Interval shape, Interval scale, Interval b10, Interval median) {
    static LifeJson of(WeibullFit fit) {
      return fit == null
          ? null
          : new LifeJson(
              fit.shape(LIKELY),
              fit.scale(LIKELY),
              fit.quantile(0.1, LIKELY),
              fit.quantile(0.5, LIKELY));
    }
  }

  /**
   * @param life null: the record carries none
   */
  public record GroupJson(
      String name, int parts, long failed, long inUse, long leftOtherwise, LifeJson life) {
    static GroupJson of(Group group) {
      return new GroupJson(
          group.name(),
          group.parts().size(),
          group.failed(),
          group.inUse(),
          group.leftOtherwise(),
          LifeJson.of(group.fit()));
    }
  }

  /**
   * A step of the survival curve.
   *
   * @param few it rests on fewer than 5 parts: one that fails moves it far
   */
  public record StepJson(
      double time,
      int watched,
      int failed,
      double value,
      double standardError,
      double low,
      double high,
      boolean few) {
    static StepJson of(KaplanMeier.Step step) {
      return new StepJson(
          step.time(),
          step.watched(),
          step.failed(),
          step.value(),
          step.standardError(),
          step.low(),
          step.high(),
          step.few());
    }
  }

  /**
   * @param shortenTo days that the record proposes; null: it proposes nothing
   */
  public record RuleJson(long id, String items, int everyDays, Integer shortenTo, String words) {
    static RuleJson of(Ruled ruled) {
      return new RuleJson(
          ruled.rule().id(),
          ruled.rule().items(),
          ruled.rule().everyDays(),
          ruled.proposal() instanceof Proposal.Shorten to ? to.days() : null,
          LifeWords.proposal(ruled));
    }
  }

  /**
   * @param in days, loans or shots: what every age and life is counted in
   * @param refusal why no life is told; null: one is
   * @param survival share that reaches an age, with its band at 95 %
   */
  public record LivesJson(
      String kind,
      String in,
      List<GroupJson> groups,
      LifeJson together,
      String refusal,
      List<StepJson> survival,
      List<RuleJson> rules) {}

  private final LifeDesk desk;

  LivesApi(LifeDesk desk) {
    this.desk = desk;
  }

  @GET
  @Path("/{kind}")
  @RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
  @Operation(summary = "How long the parts of a kind last, and what its rules could take from it")
  @Parameter(name = "kind", description = "string, limbs, riser, bow, stringer or arrows")
  @Parameter(name = "in", description = "days (also if left out), loans or shots")
  public LivesJson lives(@RestPath String kind, @RestQuery String in) {
    Lasting lasting = desk.of(LifePages.kind(kind), LifePages.measure(in));
    return new LivesJson(
        kind,
        lasting.measure().said(),
        lasting.groups().stream().map(GroupJson::of).toList(),
        LifeJson.of(lasting.together()),
        lasting.refusal(),
        lasting.survival().steps().stream().map(StepJson::of).toList(),
        desk.ruled(lasting).stream().map(RuleJson::of).toList());
  }
}
