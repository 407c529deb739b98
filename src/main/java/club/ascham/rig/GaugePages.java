package club.ascham.rig;

import club.ascham.bow.Gauge;
import club.ascham.bow.Target;
import club.ascham.form.Typed;
import club.ascham.id.RigId;
import club.ascham.measured.Measurement;
import club.ascham.people.Actor;
import club.ascham.people.Role;
import club.ascham.units.Length;
import club.ascham.units.LengthUnit;
import club.ascham.verdict.Reading;
import club.ascham.web.Forms;
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
    RigCard card = specs.known(new RigId(id));
    Typed typed = Forms.typed(uri.getQueryParameters());
    String last =
        typed.value("quantity").equals("tiller") ? "tillerLower" : typed.value("quantity");
    typed.with(last, typed.value("value")).with(last + "-unit", typed.value("unit"));
    typed.with("tillerUpper-unit", typed.value("unit"));
    Gauge gauge = card.targets() == null ? null : gauge(card, typed);
    return gauge == null
        ? Response.noContent().build()
        : Response.ok(new GaugeFragment(gauge))
            .type(MediaType.TEXT_HTML_TYPE.withCharset("UTF-8"))
            .build();
  }

  private Gauge gauge(RigCard card, Typed typed) {
    Reading setUp = Reading.of(card.setUp());
    LengthUnit unit = actor.unit();
    return switch (typed.value("quantity")) {
      case "brace" ->
          gauge(
              "Brace",
              card.targets().brace(),
              setUp.brace(),
              Measurement.BRACE.length(typed, unit));
      case "tiller" -> {
        Length upper = Measurement.TILLER_UPPER.length(typed, unit);
        Length lower = Measurement.TILLER_LOWER.length(typed, unit);
        yield upper == null || lower == null
            ? null
            : Gauge.of("Tiller", card.targets().tiller(), setUp.tiller(), upper.minus(lower), true);
      }
      case "nocking" ->
          gauge(
              "Nocking point",
              card.targets().nocking(),
              card.setUp() == null ? null : card.setUp().nocking(),
              Measurement.NOCKING.length(typed, unit));
      default -> null;
    };
  }

  private static Gauge gauge(String what, Target target, Length setUp, Length reading) {
    return reading == null ? null : Gauge.of(what, target, setUp, reading, false);
  }
}
