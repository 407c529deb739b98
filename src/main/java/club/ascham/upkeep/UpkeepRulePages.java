package club.ascham.upkeep;

import club.ascham.form.Option;
import club.ascham.form.Outcome;
import club.ascham.form.Typed;
import club.ascham.id.RuleId;
import club.ascham.people.Role;
import club.ascham.web.Forms;
import club.ascham.web.NoSuchThing;
import club.ascham.web.Press;
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
import java.util.List;
import org.jboss.resteasy.reactive.RestPath;

/** One rule of upkeep: add it, change it, remove it. */
@Path("/rules/upkeep")
@RolesAllowed(Role.OFFICERS)
class UpkeepRulePages {
  @CheckedTemplate(basePath = "rules", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record UpkeepRulePage(UpkeepRules.Rule rule, Typed typed, List<Option> kinds, List<Option> works)
      implements TemplateInstance {}

  private final UpkeepRules rules;
  private final ChangeUpkeepRule changeUpkeepRule;
  private final Presses presses;

  UpkeepRulePages(UpkeepRules rules, ChangeUpkeepRule changeUpkeepRule, Presses presses) {
    this.rules = rules;
    this.changeUpkeepRule = changeUpkeepRule;
    this.presses = presses;
  }

  @GET
  @Path("/new")
  public TemplateInstance fresh() {
    return page(null, Typed.nothing().with("soonDays", "14"));
  }

  @POST
  @Path("/new")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response add(MultivaluedMap<String, String> form) {
    Typed typed = Forms.typed(form);
    return press(typed)
        .page(
            () -> Outcome.of(RuleDetails.parse(typed), changeUpkeepRule::add),
            () -> page(null, typed));
  }

  private Press<RuleId> press(Typed typed) {
    return presses.form(typed, RuleId::new, rule -> "/rules");
  }

  @GET
  @Path("/{id}")
  public TemplateInstance one(@RestPath long id) {
    UpkeepRules.Rule rule = rule(id);
    return page(rule, rule.typed());
  }

  @POST
  @Path("/{id}")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response change(@RestPath long id, MultivaluedMap<String, String> form) {
    Typed typed = Forms.typed(form);
    return press(typed)
        .page(
            () ->
                Outcome.of(
                    RuleDetails.parse(typed),
                    to -> changeUpkeepRule.change(rule(id).id(), typed.version(), to)),
            () -> page(rule(id), typed));
  }

  @POST
  @Path("/{id}/remove")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response remove(@RestPath long id, MultivaluedMap<String, String> form) {
    Typed typed = Forms.typed(form);
    return press(typed)
        .page(() -> changeUpkeepRule.remove(rule(id).id()), () -> page(rule(id), typed));
  }

  private static TemplateInstance page(UpkeepRules.Rule rule, Typed typed) {
    return new UpkeepRulePage(rule, typed, UpkeepPages.KINDS, UpkeepPages.WORKS);
  }

  private UpkeepRules.Rule rule(long id) {
    return rules.rule(id).orElseThrow(() -> new NoSuchThing("There is no such rule."));
  }
}
