package club.ascham.rig;

import club.ascham.id.ItemId;
import club.ascham.people.Actor;
import club.ascham.store.Pressed;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import club.ascham.units.ItemCode;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Makes a rig of a riser with limbs, or of a one-piece bow, and a string. */
@ApplicationScoped
class AssembleRig {
  private final Rigs rigs;
  private final PartsOnHand parts;
  private final ChangeMoment moments;
  private final Story story;
  private final Pressed pressed;
  private final Actor actor;
  private final ClubTime time;

  AssembleRig(
      Rigs rigs,
      PartsOnHand parts,
      ChangeMoment moments,
      Story story,
      Pressed pressed,
      Actor actor,
      ClubTime time) {
    this.rigs = rigs;
    this.parts = parts;
    this.moments = moments;
    this.story = story;
    this.pressed = pressed;
    this.actor = actor;
    this.time = time;
  }

  @Writes
  Outcome assemble(Assembly wish, String formKey) {
    Optional<String> before = pressed.ledTo(formKey);
    if (before.isPresent()) {
      return new Outcome.PressedBefore(before.get());
    }
    Map<ItemCode, PartOnHand> onHand = parts.coded(wish.parts().values());
    List<Refusal> refusals = new ArrayList<>(Fit.refusals(wish.parts(), onHand, null));
    if (refusals.isEmpty() && needsLimbs(wish, onHand)) {
      refusals.add(new Refusal(Assembly.LIMBS, "A riser needs limbs.", "Which limbs?"));
    }
    if (!refusals.isEmpty()) {
      return new Outcome.Refused(refusals);
    }
    List<Part> fittedNow =
        wish.parts().values().stream().map(code -> onHand.get(code).part()).toList();
    Optional<Outcome.Refused> hands = BoltHands.refusal(actor, time.today(), fittedNow);
    if (hands.isPresent()) {
      return hands.get();
    }
    ChangeMoment.Found moment =
        moments.of(wish.on(), null, fittedNow.stream().map(Part::id).toList());
    if (moment.refused() != null) {
      return new Outcome.Refused(List.of(moment.refused()));
    }
    Instant at = moment.at();
    Rig rig = new Rig(wish.style(), wish.level(), at);
    rigs.persistAndFlush(rig);
    List<ItemId> fitted = new ArrayList<>();
    wish.parts()
        .forEach(
            (place, code) -> {
              ItemId part = onHand.get(code).part().id();
              rigs.fit(rig.id(), place, part, at);
              fitted.add(part);
            });
    String codes =
        wish.parts().values().stream().map(ItemCode::display).collect(Collectors.joining(", "));
    story.tell(Story.Told.ofRig(at, actor.id(), rig.id(), fitted, "Assembled: " + codes + "."));
    pressed.leads(formKey, RigPages.page(rig.id()));
    return new Outcome.Done(
        rig.id(), "Assembled: " + codes + ". It waits in the workshop for its set-up.");
  }

  private static boolean needsLimbs(Assembly wish, Map<ItemCode, PartOnHand> onHand) {
    Part body = onHand.get(wish.parts().get(Place.BODY)).part();
    return body.onePiece() == null && !wish.parts().containsKey(Place.LIMBS);
  }
}
