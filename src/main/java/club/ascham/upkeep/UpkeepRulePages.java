package club.ascham.upkeep;

import club.ascham.form.Typed;
import club.ascham.people.Role;
import club.ascham.web.Forms;
import club.ascham.web.Go;
import club.ascham.web.NoSuchThing;
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

  UpkeepRulePages(UpkeepRules rules, ChangeUpkeepRule changeUpkeepRule) {
    this.rules = rules;
    this.changeUpkeepRule = changeUpkeepRule;
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
    Optional<RuleDetails> details = RuleDetails.parse(typed);
    if (details.isEmpty()) {
      return Go.again(page(null, typed));
    }
    changeUpkeepRule.add(details.get(), typed.value("once-key"));
    return Go.to("/rules", "The rule is added; what it asks for stands in the upkeep list.");
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
