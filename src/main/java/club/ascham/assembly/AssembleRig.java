package club.ascham.assembly;

import club.ascham.form.Outcome;
import club.ascham.id.ItemId;
import club.ascham.id.RigId;
import club.ascham.people.Actor;
import club.ascham.rig.Obstacle;
import club.ascham.rig.Part;
import club.ascham.rig.Place;
import club.ascham.rig.Rig;
import club.ascham.rig.Rigs;
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
  private final Actor actor;
  private final ClubTime time;

  AssembleRig(
      Rigs rigs, PartsOnHand parts, ChangeMoment moments, Story story, Actor actor, ClubTime time) {
    this.rigs = rigs;
    this.parts = parts;
    this.moments = moments;
    this.story = story;
    this.actor = actor;
    this.time = time;
  }

  @Writes
  Outcome<RigId> assemble(Assembly wish) {
    Map<ItemCode, PartOnHand> onHand = parts.coded(wish.parts().values());
    List<Obstacle> refusals = new ArrayList<>(Fit.refusals(wish.parts(), onHand, null));
    if (refusals.isEmpty() && needsLimbs(wish, onHand)) {
      refusals.add(new Obstacle(Assembly.LIMBS, "A riser needs limbs.", "Which limbs?"));
    }
    if (!refusals.isEmpty()) {
      return Obstacle.refused(refusals);
    }
    List<Part> fittedNow =
        wish.parts().values().stream().map(code -> onHand.get(code).part()).toList();
    Optional<Obstacle> hands = BoltHands.refusal(actor, time.today(), fittedNow);
    if (hands.isPresent()) {
      return Obstacle.refused(hands.get());
    }
    ChangeMoment.Found moment =
        moments.of(wish.on(), null, fittedNow.stream().map(Part::id).toList());
    if (moment.refused() != null) {
      return Obstacle.refused(moment.refused());
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
    return Outcome.done(
        rig.id(), "Assembled: " + codes + ". It waits in the workshop for its set-up.");
  }

  private static boolean needsLimbs(Assembly wish, Map<ItemCode, PartOnHand> onHand) {
    Part body = onHand.get(wish.parts().get(Place.BODY)).part();
    return body.onePiece() == null && !wish.parts().containsKey(Place.LIMBS);
  }
}
