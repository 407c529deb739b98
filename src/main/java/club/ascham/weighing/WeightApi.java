package club.ascham.weighing;

import club.ascham.bow.WeightOnFingers;
import club.ascham.drawing.DrawForce;
import club.ascham.form.Outcome;
import club.ascham.form.Typed;
import club.ascham.id.RigId;
import club.ascham.people.Role;
import club.ascham.rig.RigCard;
import club.ascham.rig.RigRecords;
import club.ascham.rig.WeighedAs;
import club.ascham.web.NoSuchThing;
import club.ascham.web.Presses;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.BadRequestException;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.Instant;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestPath;

/** How strong a rig is, as JSON: pounds-force against AMO draw in inches. */
@Path("/api/rigs/{id}/weight")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Rigs")
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS})
class WeightApi {
  /**
   * @param readings of the bow scale that it rests on beside the mark
   */
  record Strength(
      double markedAtIn,
      double onFingersLb,
      double low,
      double high,
      int readings,
      String basis,
      List<AtDraw> curve,
      List<Reading> weighed) {}

  /** One draw, with the energy that is stored between brace and there. */
  record AtDraw(int drawIn, double onFingersLb, double low, double high, double storedFtLb) {}

  /** A reading of the bow scale. */
  record Reading(Instant happenedAt, double drawIn, double forceLb, Integer riserIn) {}

  /**
   * @param drawIn AMO draw
   */
  record ReadingBody(Double drawIn, Double forceLb, String onceKey) {}

  private final RigRecords records;
  private final WeighRig weighRig;
  private final Presses presses;

  WeightApi(RigRecords records, WeighRig weighRig, Presses presses) {
    this.records = records;
    this.weighRig = weighRig;
    this.presses = presses;
  }

  @GET
  @RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
  @Operation(summary = "Weight on the fingers and stored energy at each draw")
  public Strength strength(@RestPath RigId id) {
    RigCard card = records.known(id).card();
    DrawForce force =
        card.spec()
            .map(spec -> DrawForce.of(spec, card.setUp()))
            .orElseThrow(() -> new NoSuchThing("This rig is not whole: it has no weight yet."));
    WeightOnFingers weight = force.weight();
    return new Strength(
        force.markedAtIn(),
        weight.lb(),
        weight.lowLb(),
        weight.highLb(),
        weight.readings(),
        weight.basis(),
        force.rows().stream()
            .map(
                row ->
                    new AtDraw(row.drawIn(), row.lb(), row.lowLb(), row.highLb(), row.energyFtLb()))
            .toList(),
        records.weighings(card).stream()
            .map(w -> new Reading(w.happenedAt(), w.drawIn(), w.forceLb(), w.riserIn()))
            .toList());
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Keep a reading of the bow scale",
      description =
          "It stays with the limbs, on whatever riser; answers with the weight as it is then"
              + " known.")
  @RequestBody(
      content =
          @Content(
              examples =
                  @ExampleObject(
                      name = "at an archer's draw",
                      value = "{\"drawIn\": 26.5, \"forceLb\": 21}")))
  public Response weigh(@RestPath RigId id, ReadingBody body) {
    if (body == null) {
      throw new BadRequestException("A JSON body, please.");
    }
    Typed typed = Typed.of(body);
    return presses
        .body(body, typed, RigId::new)
        .json(
            201,
            () -> {
              WeighedAs weighing = WeighedAs.parse(typed);
              return typed.sound() ? weighRig.weigh(id, weighing) : Outcome.unread();
            },
            rig -> strength(id));
  }
}
