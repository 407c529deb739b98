package club.ascham.rules;

import club.ascham.Settings;
import club.ascham.form.Outcome;
import club.ascham.form.Typed;
import club.ascham.form.Words;
import club.ascham.id.ClubId;
import club.ascham.people.Role;
import club.ascham.plan.Kind;
import club.ascham.upkeep.Work;
import club.ascham.web.Forms;
import club.ascham.web.NoSuchThing;
import club.ascham.web.Presses;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.Currency;
import java.util.List;
import org.jboss.resteasy.reactive.RestPath;

/** What the plan takes for granted: hours, courses, and what a new part costs and takes. */
@Path("/rules/plan")
@RolesAllowed(Role.OFFICERS)
class PlanRulePages {
  @CheckedTemplate(basePath = "rules", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record PlanBasisPage(int version, Typed typed, List<Work> works) implements TemplateInstance {}

  @CheckedTemplate(basePath = "rules", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record TermsPage(PlanRules.Terms terms, Typed typed) implements TemplateInstance {}

  private final PlanRules rules;
  private final ChangePlanRules changePlanRules;
  private final Presses presses;
  private final Currency currency;

  PlanRulePages(
      PlanRules rules, ChangePlanRules changePlanRules, Presses presses, Settings settings) {
    this.rules = rules;
    this.changePlanRules = changePlanRules;
    this.presses = presses;
    this.currency = Currency.getInstance(settings.currency());
  }

  @GET
  public TemplateInstance basis() {
    PlanRules.Basis basis = rules.basis();
    Typed typed = basis.typed();
    rules.minutes().forEach((work, minutes) -> typed.with(Words.of(work), minutes));
    return page(basis.version(), typed);
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response change(MultivaluedMap<String, String> form) {
    Typed typed = Forms.typed(form);
    return presses
        .form(typed, ClubId::new, club -> "/rules#plan")
        .page(
            () -> Outcome.of(PlanRuleDetails.parse(typed), changePlanRules::change),
            () -> page(rules.basis().version(), typed));
  }

  @GET
  @Path("/{kind}")
  public TemplateInstance terms(@RestPath String kind) {
    PlanRules.Terms terms = of(kind);
    return new TermsPage(terms, terms.typed(currency));
  }

  @POST
  @Path("/{kind}")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response change(@RestPath String kind, MultivaluedMap<String, String> form) {
    Kind of = of(kind).kind();
    Typed typed = Forms.typed(form);
    return presses
        .form(typed, ClubId::new, club -> "/rules#plan")
        .page(
            () ->
                Outcome.of(
                    PlanRuleDetails.Replacement.parse(typed, currency),
                    terms -> changePlanRules.change(of, terms)),
            () -> new TermsPage(of(kind), typed));
  }

  private static TemplateInstance page(int version, Typed typed) {
    return new PlanBasisPage(version, typed, List.of(Work.values()));
  }

  private PlanRules.Terms of(String kind) {
    return rules.terms().stream()
        .filter(terms -> Words.of(terms.kind()).equals(kind))
        .findFirst()
        .orElseThrow(() -> new NoSuchThing("The plan knows no such kind of part."));
  }
}
