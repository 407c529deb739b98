package club.ascham.assembly;

import club.ascham.bow.AgainstAdvice;
import club.ascham.concern.Against;
import club.ascham.concern.Concerns;
import club.ascham.form.Outcome;
import club.ascham.id.ItemId;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.people.Actor;
import club.ascham.rig.Obstacle;
import club.ascham.rig.Part;
import club.ascham.rig.Place;
import club.ascham.rig.Rig;
import club.ascham.rig.RigCard;
import club.ascham.rig.RigSpecs;
import club.ascham.rig.Rigs;
import club.ascham.rig.SetUps;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import club.ascham.undo.Moves;
import club.ascham.units.ItemCode;
import club.ascham.web.NoSuchThing;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

/**
 * Takes parts off a rig and fits others. A rig on loan stays on it: the line of the part taken off
 * ends as changed, and one for the new part begins.
 */
@ApplicationScoped
class ChangeParts {
  private final Rigs rigs;
  private final SetUps setUps;
  private final RigSpecs specs;
  private final PartsOnHand parts;
  private final LoanedParts loaned;
  private final Concerns concerns;
  private final ChangeMoment moments;
  private final Moves moves;
  private final Story story;
  private final Actor actor;
  private final ClubTime time;

  ChangeParts(
      Rigs rigs,
      SetUps setUps,
      RigSpecs specs,
      PartsOnHand parts,
      LoanedParts loaned,
      Concerns concerns,
      ChangeMoment moments,
      Moves moves,
      Story story,
      Actor actor,
      ClubTime time) {
    this.rigs = rigs;
    this.setUps = setUps;
    this.specs = specs;
    this.parts = parts;
    this.loaned = loaned;
    this.concerns = concerns;
    this.moments = moments;
    this.moves = moves;
    this.story = story;
    this.actor = actor;
    this.time = time;
  }

  /** One part that comes off, or goes on, or both. */
  private record Swap(Place place, Part off, Part on) {}

  @Writes
  Outcome<RigId> change(RigId id, PartsWish wish) {
    Map<Place, ItemCode> wanted = wish.parts();
    OptionalInt version = wish.version();
    Rig rig = rigs.findById(id.value());
    RigCard card =
        specs
            .of(id)
            .orElseThrow(() -> new NoSuchThing("There is no rig " + id.value() + " any more."));
    if (version.isPresent() && version.getAsInt() != card.version()) {
      return Obstacle.changedMeanwhile();
    }
    Map<ItemCode, PartOnHand> onHand = parts.coded(wanted.values());
    List<Obstacle> refusals = Fit.refusals(wanted, onHand, id);
    if (!refusals.isEmpty()) {
      return Obstacle.refused(refusals);
    }
    List<Swap> swaps = swaps(card, wanted, onHand);
    if (swaps.isEmpty()) {
      return Obstacle.refused("", "These are the parts that are fitted now.", "");
    }
    if (!wanted.containsKey(Place.BODY)) {
      return Obstacle.refused(
          Assembly.BODY,
          "A rig goes by its riser, or by its one-piece bow.",
          "Fit another, or take the rig apart.");
    }
    List<Part> moved =
        swaps.stream()
            .filter(swap -> swap.place() != Place.STRING)
            .flatMap(swap -> Stream.of(swap.off(), swap.on()))
            .filter(Objects::nonNull)
            .toList();
    Optional<Obstacle> hands = BoltHands.refusal(actor, time.today(), moved);
    if (!moved.isEmpty() && hands.isPresent()) {
      return Obstacle.refused(hands.get());
    }
    Optional<LoanId> loan = loaned.loanOf(id);
    List<Obstacle> unfit =
        loan.isEmpty() ? List.of() : unfit(card, wanted, onHand, moved, swaps, wish.given());
    if (!unfit.isEmpty()) {
      return Obstacle.refused(unfit);
    }
    ChangeMoment.Found moment =
        moments.of(
            wish.on(),
            id,
            swaps.stream().filter(swap -> swap.on() != null).map(swap -> swap.on().id()).toList());
    if (moment.refused() == null && loan.isPresent() && !wish.confirmed()) {
      return Obstacle.refused(
          PartsWish.CONFIRMED,
          "This bow is out with loan " + loan.get().value() + ".",
          "The loan goes on with the other part, and the bow is measured before it is shot.");
    }
    return moment.refused() == null
        ? apply(rig, card, swaps, wish.given(), moment.at())
        : Obstacle.refused(moment.refused());
  }

  /** What a bow that is out may not have, as if it were lent anew with what goes on. */
  private List<Obstacle> unfit(
      RigCard card,
      Map<Place, ItemCode> wanted,
      Map<ItemCode, PartOnHand> onHand,
      List<Part> moved,
      List<Swap> swaps,
      AgainstAdvice given) {
    List<Obstacle> refusals = new ArrayList<>();
    List<Part> on = swaps.stream().map(Swap::on).filter(Objects::nonNull).toList();
    Map<ItemId, Against> against = concerns.ofItems(on.stream().map(Part::id).toList());
    on.forEach(part -> refusals.addAll(BowOut.against(part, against.get(part.id()), given)));
    if (moved.isEmpty() && card.spec().isPresent()) {
      return refusals;
    }
    Map<Place, Part> parts = new EnumMap<>(Place.class);
    wanted.forEach((place, code) -> parts.put(place, onHand.get(code).part()));
    Part.together(
            parts.get(Place.BODY), parts.get(Place.LIMBS), parts.get(Place.STRING), card.style())
        .ifPresent(changed -> refusals.addAll(loaned.refusals(card.id(), changed, given)));
    return refusals;
  }

  private static List<Swap> swaps(
      RigCard card, Map<Place, ItemCode> wanted, Map<ItemCode, PartOnHand> onHand) {
    Map<Place, Part> now = new EnumMap<>(Place.class);
    card.parts().forEach(part -> now.put(part.place(), part));
    List<Swap> swaps = new ArrayList<>();
    for (Place place : Place.values()) {
      Part off = now.get(place);
      Part on = wanted.containsKey(place) ? onHand.get(wanted.get(place)).part() : null;
      boolean same = off == null ? on == null : on != null && off.id().equals(on.id());
      if (!same) {
        swaps.add(new Swap(place, off, on));
      }
    }
    return swaps;
  }

  private Outcome<RigId> apply(
      Rig rig, RigCard card, List<Swap> swaps, AgainstAdvice given, Instant at) {
    Optional<LoanId> loan = loaned.loanOf(card.id());
    Optional<Moves.Exchange> exchange =
        loan.map(
            l ->
                moves.exchangeOn(
                    l,
                    swaps.stream().map(Swap::on).filter(Objects::nonNull).map(Part::id).toList()));
    List<ItemId> touched = new ArrayList<>();
    StringBuilder said = new StringBuilder();
    // All that comes off comes off first: a one-piece bow can't meet limbs, nor a place two parts.
    for (Swap swap : swaps) {
      if (swap.off() != null) {
        rigs.takeOff(card.id(), swap.off().id(), at);
        loan.ifPresent(l -> loaned.takenOff(l, swap.off().id(), at));
        touched.add(swap.off().id());
        said.append(said.isEmpty() ? "" : " ")
            .append("Taken off: ")
            .append(swap.off().code())
            .append(".");
      }
    }
    for (Swap swap : swaps) {
      if (swap.on() != null) {
        rigs.fit(card.id(), swap.place(), swap.on().id(), at);
        loan.ifPresent(l -> loaned.fitted(l, card.id(), swap.on().id(), at));
        touched.add(swap.on().id());
        said.append(said.isEmpty() ? "" : " ")
            .append("Fitted: ")
            .append(swap.on().code())
            .append(".");
      }
    }
    rigs.changed(rig);
    setUps.openOf(card.id()).ifPresent(open -> open.beginAgain(actor.id(), time.now()));
    Story.Told told = Story.Told.ofRig(at, actor.id(), card.id(), touched, said.toString());
    if (given.why() != null) {
      loan.ifPresent(l -> loaned.agreed(l, given));
      told = told.because(given.said());
    }
    story.tell(loan.isPresent() ? told.on(loan.get()) : told);
    exchange.ifPresent(Moves.Exchange::made);
    return Outcome.done(
        card.id(),
        said
            + " The old figures no longer hold: the bow waits for its set-up."
            + (loan.isPresent()
                ? " It stays on loan; give out a new slip once it is measured."
                : ""));
  }
}
