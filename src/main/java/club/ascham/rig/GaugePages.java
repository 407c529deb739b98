package club.ascham.rig;

import club.ascham.bow.Gauge;
import club.ascham.bow.SetUpFigures;
import club.ascham.form.Typed;
import club.ascham.id.RigId;
import club.ascham.people.Actor;
import club.ascham.people.Role;
import club.ascham.units.Length;
import club.ascham.units.Plausible;
import club.ascham.web.Forms;
import club.ascham.web.NoSuchThing;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;

/**
 * The gauge of one reading, for the script that asks while someone types. Without the script the
 * page after saving shows the same.
 */
@Path("/rigs/{id:\\d+}/gauge")
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS})
class GaugePages {
  @CheckedTemplate(basePath = "rig", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record GaugeFragment(Gauge gauge) implements TemplateInstance {}

  private final RigSpecs specs;
  private final Actor actor;

  GaugePages(RigSpecs specs, Actor actor) {
    this.specs = specs;
    this.actor = actor;
  }

  /**
   * Query: {@code quantity} is brace, tiller or nocking; {@code value} as typed, {@code unit} as
   * switched. For tiller, {@code value} is the lower distance and {@code tillerUpper} the upper.
   * Answers 204 for what can't be read yet.
   */
  @GET
  public Response gauge(@PathParam("id") long id, @Context UriInfo uri) {
    RigCard card =
        specs
            .of(new RigId(id))
            .orElseThrow(() -> new NoSuchThing("There is no assembled rig " + id + "."));
    Typed typed = Forms.typed(uri.getQueryParameters());
    typed.with("value-unit", typed.value("unit")).with("tillerUpper-unit", typed.value("unit"));
    Gauge gauge = card.targets() == null ? null : gauge(card, typed);
    return gauge == null
        ? Response.noContent().build()
        : Response.ok(new GaugeFragment(gauge))
            .type(MediaType.TEXT_HTML_TYPE.withCharset("UTF-8"))
            .build();
  }

  private Gauge gauge(RigCard card, Typed typed) {
    SetUpFigures setUp = card.setUp();
    return switch (typed.value("quantity")) {
      case "brace" -> {
        Length brace = typed.length("value", actor.unit(), Plausible.BRACE);
        yield brace == null
            ? null
            : Gauge.of(
                "Brace",
                card.targets().brace(),
                setUp == null ? null : setUp.brace(),
                brace,
                false);
      }
      case "tiller" -> {
        Length upper = typed.length("tillerUpper", actor.unit(), Plausible.TILLER_DISTANCE);
        Length lower = typed.length("value", actor.unit(), Plausible.TILLER_DISTANCE);
        yield upper == null || lower == null
            ? null
            : Gauge.of(
                "Tiller",
                card.targets().tiller(),
                setUp == null ? null : setUp.tiller(),
                upper.minus(lower),
                true);
      }
      case "nocking" -> {
        Length nocking = typed.length("value", actor.unit(), Plausible.NOCKING);
        yield nocking == null
            ? null
            : Gauge.of(
                "Nocking point",
                card.targets().nocking(),
                setUp == null ? null : setUp.nocking(),
                nocking,
                false);
      }
      default -> null;
    };
  }
}
