package club.ascham.rig;

import club.ascham.concern.ConcernJson;
import club.ascham.concern.Concerns;
import club.ascham.form.Outcome;
import club.ascham.form.Typed;
import club.ascham.form.Words;
import club.ascham.id.RigId;
import club.ascham.web.Press;
import club.ascham.web.Presses;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.BadRequestException;
import jakarta.ws.rs.core.Response;
import java.util.function.Supplier;

/** What a call about a rig is answered with: the rig in full, as it stands afterwards. */
@ApplicationScoped
public class RigAnswers {
  /** A press upon a rig or its set-up as it was seen. */
  public record PressBody(Integer version, String onceKey) {}

  private final RigRecords records;
  private final Concerns concerns;
  private final Presses presses;

  RigAnswers(RigRecords records, Concerns concerns, Presses presses) {
    this.records = records;
    this.concerns = concerns;
    this.presses = presses;
  }

  RigJson.Whole whole(RigId id) {
    RigRow row = known(id);
    RigCard card = row.card();
    return new RigJson.Whole(
        id.value(),
        card.name(),
        card.version(),
        row.state().word(),
        Words.of(card.style()),
        Words.of(card.level()),
        row.bowLengthIn().isPresent() ? row.bowLengthIn().getAsInt() : null,
        card.parts().stream().map(RigJson.FittedPart::of).toList(),
        records.kept(card.id()).stream().map(RigRecords.Kept::code).toList(),
        row.loanId(),
        card.setUp() == null ? null : RigJson.Figures.of(card.setUp()),
        records.openSetUp(card.id()).map(open -> RigJson.Open.of(open, card.sheet())).orElse(null),
        RigJson.Bands.of(card.targets()),
        ConcernJson.of(concerns.of(card.id())));
  }

  public RigRow known(RigId id) {
    return records.known(id);
  }

  /** What was sent; without a body there is nothing to say what is missing of. */
  public static Typed typed(Record body) {
    if (body == null) {
      throw new BadRequestException("A JSON body, please.");
    }
    return Typed.of(body);
  }

  public Response answer(Record body, Typed typed, int status, Supplier<Outcome<RigId>> work) {
    Press<RigId> press = presses.body(body, typed, RigId::new);
    if (status == 201) {
      press.at(rig -> "/api/rigs/" + rig.value());
    }
    // Nothing is shown of a rig that was taken apart.
    return press.json(status, work, rig -> status == 204 ? null : whole(rig));
  }
}
