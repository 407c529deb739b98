package club.ascham.planning;

import club.ascham.Settings;
import club.ascham.concern.Concern;
import club.ascham.concern.Concerns;
import club.ascham.form.Option;
import club.ascham.form.Typed;
import club.ascham.form.Words;
import club.ascham.people.Role;
import club.ascham.plan.Kind;
import club.ascham.plan.Plan;
import club.ascham.rules.PlanRules;
import club.ascham.story.Seal;
import club.ascham.story.SealedEntries;
import club.ascham.time.ClubTime;
import club.ascham.upkeep.Work;
import club.ascham.web.Forms;
import club.ascham.web.Go;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What will have to be done and bought, when, and what will it cost? */
@Path("/plan")
@RolesAllowed({Role.OFFICERS, Role.COMMITTEES})
class PlanPages {
  /** Most plans are reckoned while the page is asked for; then nobody sees the waiting. */
  private static final Duration PATIENCE = Duration.ofMillis(1500);

  /**
   * @param compared empty where nothing is asked
   */
  @CheckedTemplate(basePath = "planning", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record PlanPage(
      PlanView plan,
      WhatIf whatIf,
      List<Compared> compared,
      Typed typed,
      List<Option> kinds,
      List<Option> works,
      String seal)
      implements TemplateInstance {}

  /** The form again, while an answer needs another look. */
  @CheckedTemplate(basePath = "planning", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record AskAgainPage(Typed typed, List<Option> kinds, List<Option> works)
      implements TemplateInstance {}

  @CheckedTemplate(basePath = "planning", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record ReckoningPage(WhatIf whatIf, long run, int done, int of) implements TemplateInstance {}

  @CheckedTemplate(basePath = "planning", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record StoppedPage() implements TemplateInstance {}

  @CheckedTemplate(basePath = "planning", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record InsurancePage(InsuranceList list, LocalDate today, String seal)
      implements TemplateInstance {}

  @CheckedTemplate(basePath = "planning", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record AboutToPage(List<PlanBrief.Soon> parts, int days) implements TemplateInstance {}

  private final PlanDesk desk;
  private final PlanBrief brief;
  private final Insurance insurance;
  private final SealedEntries sealed;
  private final Concerns concerns;
  private final ClubTime time;
  private final Amounts amounts;

  PlanPages(
      PlanDesk desk,
      PlanBrief brief,
      Insurance insurance,
      SealedEntries sealed,
      Concerns concerns,
      ClubTime time,
      Settings settings) {
    this.desk = desk;
    this.brief = brief;
    this.insurance = insurance;
    this.sealed = sealed;
    this.concerns = concerns;
    this.time = time;
    this.amounts = new Amounts(Currency.getInstance(settings.currency()));
  }

  @GET
  public Response plan(@Context UriInfo uri) {
    Typed typed = Forms.typed(uri.getQueryParameters());
    Optional<WhatIf> asked = WhatIf.parse(typed);
    if (asked.isEmpty()) {
      return Go.again(new AskAgainPage(typed, kinds(), works()));
    }
    WhatIf whatIf = asked.get();
    PlanRun standing = desk.ask(whatIf.base());
    PlanRun other = whatIf.changesNothing() ? standing : desk.ask(whatIf);
    Optional<Plan> now = standing.within(PATIENCE);
    Optional<Plan> then = now.isEmpty() ? now : other.within(PATIENCE);
    if (then.isEmpty()) {
      PlanRun waitedFor = now.isEmpty() ? standing : other;
      return Response.ok(
              new ReckoningPage(whatIf, waitedFor.number(), waitedFor.done(), WhatIf.REPLICATIONS))
          .type(MediaType.TEXT_HTML_TYPE.withCharset("UTF-8"))
          .header("Refresh", 2)
          .build();
    }
    return Response.ok(
            new PlanPage(
                new PlanView(then.get(), other.read(), amounts, kept()),
                whatIf,
                whatIf.changesNothing()
                    ? List.of()
                    : Compared.of(now.orElseThrow(), then.get(), amounts),
                typed,
                kinds(),
                works(),
                seal()))
        .type(MediaType.TEXT_HTML_TYPE.withCharset("UTF-8"))
        .build();
  }

  @POST
  @Path("/stop")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response stop(MultivaluedMap<String, String> form) {
    Integer run = Forms.typed(form).whole("run", 0, Integer.MAX_VALUE);
    if (run != null) {
      desk.stop(run);
    }
    return Go.to("/plan/stopped");
  }

  @GET
  @Path("/stopped")
  public TemplateInstance stopped() {
    return new StoppedPage();
  }

  @GET
  @Path("/about-to")
  public TemplateInstance aboutTo() {
    return new AboutToPage(brief.aboutTo(), PlanBrief.DAYS);
  }

  @GET
  @Path("/insurance")
  public TemplateInstance insurance() {
    return new InsurancePage(insurance.list(time.today(), amounts), time.today(), seal());
  }

  /** What weighs most of each thing that is kept in, by its code. */
  private Map<String, Concern> kept() {
    return concerns.keptIn().values().stream()
        .map(against -> against.heaviest().orElseThrow())
        .collect(Collectors.toMap(Concern::code, Function.identity()));
  }

  private String seal() {
    return Seal.shortened(sealed.newest().orElse(null));
  }

  private static List<Option> kinds() {
    return Arrays.stream(Kind.values())
        .map(kind -> new Option(Words.of(kind), PlanRules.kindSaid(kind)))
        .toList();
  }

  private static List<Option> works() {
    return Arrays.stream(Work.values()).map(work -> new Option(work.word(), work.said())).toList();
  }
}
