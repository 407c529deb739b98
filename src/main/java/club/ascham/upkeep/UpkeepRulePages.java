package club.ascham.upkeep;

import club.ascham.form.Outcome;
import club.ascham.form.Typed;
import club.ascham.id.RuleId;
import club.ascham.people.Role;
import club.ascham.web.Forms;
import club.ascham.web.Go;
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
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.jboss.resteasy.reactive.RestPath;

/** One rule of upkeep: add it, change it, remove it. */
@Path("/rules/upkeep")
@RolesAllowed(Role.OFFICERS)
class UpkeepRulePages {
  @CheckedTemplate(basePath = "rules", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record UpkeepRulePage(
      UpkeepRules.Rule rule,
      Typed typed,
      List<UpkeepPages.Option> kinds,
      List<UpkeepPages.Option> works)
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
    return presses
        .form(typed, RuleId::new, rule -> "/rules")
        .page(() -> added(typed), () -> page(null, typed));
  }

  private Outcome<RuleId> added(Typed typed) {
    return RuleDetails.parse(typed)
        .map(changeUpkeepRule::add)
        .map(
            rule ->
                Outcome.done(
                    rule, "The rule is added; what it asks for stands in the upkeep list."))
        .orElseGet(Outcome::unread);
  }

  @GET
  @Path("/{id}")
  public TemplateInstance one(@RestPath String id) {
    UpkeepRules.Rule rule = rule(id);
    return page(rule, rule.typed());
  }

  @POST
  @Path("/{id}")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response change(@RestPath String id, MultivaluedMap<String, String> form) {
    UpkeepRules.Rule rule = rule(id);
    Typed typed = Forms.typed(form);
    Optional<RuleDetails> details = RuleDetails.parse(typed);
    OptionalInt version = typed.version();
    boolean changed =
        details.isPresent()
            && version.isPresent()
            && changeUpkeepRule.change(rule.id(), version.getAsInt(), details.get());
    if (!changed) {
      if (details.isPresent()) {
        typed.fault(
            "version",
            "Someone changed this rule since you opened it. Below is what you typed; saving again"
                + " puts it in the place of theirs.");
      }
      return Go.again(page(rule(id), typed));
    }
    return Go.to("/rules", "The rule is changed; what is due follows it.");
  }

  @POST
  @Path("/{id}/remove")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response remove(@RestPath String id, MultivaluedMap<String, String> form) {
    changeUpkeepRule.remove(rule(id).id());
    return Go.to("/rules", "The rule is removed. What was done under it stays on record.");
  }

  private static TemplateInstance page(UpkeepRules.Rule rule, Typed typed) {
    return new UpkeepRulePage(rule, typed, UpkeepPages.KINDS, UpkeepPages.WORKS);
  }

  private UpkeepRules.Rule rule(String id) {
    return (id.matches("\\d{1,9}")
            ? rules.rule(Long.parseLong(id))
            : Optional.<UpkeepRules.Rule>empty())
        .orElseThrow(() -> new NoSuchThing("There is no such rule."));
  }
}
