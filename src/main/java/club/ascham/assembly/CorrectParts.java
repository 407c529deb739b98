package club.ascham.assembly;

import club.ascham.bow.AgainstAdvice;
import club.ascham.concern.Concerns;
import club.ascham.form.Outcome;
import club.ascham.id.ItemId;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.people.Actor;
import club.ascham.rig.Obstacle;
import club.ascham.rig.Part;
import club.ascham.rig.Place;
import club.ascham.rig.RigCard;
import club.ascham.rig.RigSpecs;
import club.ascham.rig.Rigs;
import club.ascham.rig.SetUps;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import club.ascham.units.ItemCode;
import club.ascham.web.NoSuchThing;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Makes the record say what is true of a bow on which a part was found that belongs elsewhere: the
 * part comes off the rig that the record had it on, and is on this one.
 */
@ApplicationScoped
public class CorrectParts {
  static final String FOUND = "found";
  static final String EXCHANGED = "exchanged";

  private final Rigs rigs;
  private final SetUps setUps;
  private final RigSpecs specs;
  private final PartsOnHand parts;
  private final LoanedParts loaned;
  private final Concerns concerns;
  private final Story story;
  private final Actor actor;
  private final ClubTime time;

  CorrectParts(
      Rigs rigs,
      SetUps setUps,
      RigSpecs specs,
      PartsOnHand parts,
      LoanedParts loaned,
      Concerns concerns,
      Story story,
      Actor actor,
      ClubTime time) {
    this.rigs = rigs;
    this.setUps = setUps;
    this.specs = specs;
    this.parts = parts;
    this.loaned = loaned;
    this.concerns = concerns;
    this.story = story;
    this.actor = actor;
    this.time = time;
  }

  /**
   * What is to be written.
   *
   * @param off what the record had in its place; null: nothing
   * @param there the rig that the record had the part on; null: none
   * @param exchanged whether {@code off} is on that rig
   */
  private record Correction(RigCard here, Part on, Part off, RigCard there, boolean exchanged) {}

  /**
   * @param exchanged whether what the record has here is on the other rig; else it is on neither
   * @param version of the rig that the wish was made from; empty: whatever it is now
   * @param given why a bow that is out stays so although advice speaks against it with this part
   */
  @Writes
  public Outcome<RigId> correct(
      RigId id, ItemCode found, boolean exchanged, OptionalInt version, AgainstAdvice given) {
    RigCard here =
        specs
            .of(id)
            .orElseThrow(() -> new NoSuchThing("There is no rig " + id.value() + " any more."));
    if (version.isPresent() && version.getAsInt() != here.version()) {
      return Obstacle.changedMeanwhile();
    }
    Optional<PartOnHand> known = parts.coded(found);
    if (known.isEmpty()) {
      return Obstacle.refused(
          FOUND, "The club has no part of a bow with the code " + found.display() + ".", "");
    }
    PartOnHand hand = known.get();
    Part on = hand.part();
    if (id.equals(hand.fittedTo())) {
      return Obstacle.refused(FOUND, on.code() + " is on this rig by the record, too.", "");
    }
    if (on.place() == Place.BODY) {
      return Obstacle.refused(
          FOUND,
          "A rig goes by its riser, or by its one-piece bow.",
          "Check the rig of " + on.code() + " instead.");
    }
    Part off = here.parts().stream().filter(p -> p.place() == on.place()).findFirst().orElse(null);
    RigCard there = hand.fittedTo() == null ? null : specs.of(hand.fittedTo()).orElseThrow();
    Correction correction = new Correction(here, on, off, there, exchanged);
    List<Obstacle> refusals = refusals(correction, hand);
    if (!refusals.isEmpty()) {
      return Obstacle.refused(refusals);
    }
    // What is on the bow already is only said, not moved: no bolt is turned by it.
    Optional<Obstacle> hands = BoltHands.refusal(actor, time.today(), List.of());
    if (on.place() != Place.STRING && hands.isPresent()) {
      return Obstacle.refused(hands.get());
    }
    Optional<LoanId> loan = loaned.loanOf(id);
    List<Obstacle> unfit = loan.isEmpty() ? List.of() : unfit(correction, given);
    if (!unfit.isEmpty()) {
      return Obstacle.refused(unfit);
    }
    String said = write(correction, loan, given);
    return Outcome.done(
        id, said + " " + (there == null ? "It waits" : "Both bows wait") + " for a new set-up.");
  }

  private List<Obstacle> refusals(Correction correction, PartOnHand hand) {
    List<Obstacle> refusals = new ArrayList<>();
    hand.away(FOUND).ifPresent(refusals::add);
    misfits(correction.here(), correction.on(), FOUND).ifPresent(refusals::add);
    if (!correction.exchanged()) {
      return refusals;
    }
    if (correction.there() == null || correction.off() == null) {
      refusals.add(
          new Obstacle(
              EXCHANGED,
              "There is nothing that it could have been exchanged for.",
              "Correct this rig alone."));
      return refusals;
    }
    parts
        .coded(new ItemCode(correction.off().bareCode()))
        .flatMap(off -> off.away(EXCHANGED))
        .ifPresent(refusals::add);
    misfits(correction.there(), correction.off(), EXCHANGED).ifPresent(refusals::add);
    return refusals;
  }

  /** Why this part can't be on that rig, whatever was found: the first reason. */
  private static Optional<Obstacle> misfits(RigCard rig, Part part, String field) {
    return Fit.misfits(with(rig, part)).stream()
        .findFirst()
        .map(
            misfit ->
                new Obstacle(
                    field,
                    "It can't stay on " + rig.name() + ": " + misfit.reason(),
                    "Put it right, or withdraw both."));
  }

  /** What a bow that is out may not have, as if it were lent with this part now. */
  private List<Obstacle> unfit(Correction correction, AgainstAdvice given) {
    Part on = correction.on();
    List<Obstacle> refusals = new ArrayList<>(BowOut.against(on, concerns.of(on.id()), given));
    if (on.place() != Place.STRING || correction.here().spec().isEmpty()) {
      Map<Place, Part> parts = with(correction.here(), on);
      Part.together(
              parts.get(Place.BODY),
              parts.get(Place.LIMBS),
              parts.get(Place.STRING),
              correction.here().style())
          .ifPresent(
              changed -> refusals.addAll(loaned.refusals(correction.here().id(), changed, given)));
    }
    return refusals;
  }

  private static Map<Place, Part> with(RigCard rig, Part part) {
    Map<Place, Part> all = new EnumMap<>(Place.class);
    rig.parts().forEach(other -> all.put(other.place(), other));
    all.put(part.place(), part);
    return all;
  }

  private String write(Correction correction, Optional<LoanId> loan, AgainstAdvice given) {
    Instant now = time.now();
    RigId here = correction.here().id();
    Part on = correction.on();
    Part off = correction.off();
    RigCard there = correction.there();
    List<ItemId> items = new ArrayList<>(List.of(on.id()));
    List<RigId> touched = new ArrayList<>(List.of(here));
    StringBuilder said = new StringBuilder("Record corrected: " + on.code() + " is on this bow");
    if (there != null) {
      rigs.takeOff(there.id(), on.id(), now);
      touched.add(there.id());
      said.replace(0, said.length(), "Record corrected: ")
          .append(on.code() + " is on rig " + correction.here().name())
          .append(", not on rig " + there.name());
    }
    if (off != null) {
      rigs.takeOff(here, off.id(), now);
      loan.ifPresent(l -> loaned.takenOff(l, off.id(), now));
      items.add(off.id());
      said.append(
          correction.exchanged()
              ? "; " + off.code() + " is there in its place"
              : "; " + off.code() + " is not on it");
    }
    rigs.fit(here, on.place(), on.id(), now);
    loan.ifPresent(l -> loaned.fitted(l, here, on.id(), now));
    if (correction.exchanged()) {
      rigs.fit(there.id(), off.place(), off.id(), now);
    }
    touched.forEach(
        rig -> {
          rigs.changed(rigs.findById(rig.value()));
          setUps.openOf(rig).ifPresent(open -> open.beginAgain(actor.id(), now));
        });
    said.append(".");
    if (given.why() != null) {
      loan.ifPresent(l -> loaned.agreed(l, given));
    }
    story.tell(
        new Story.Told(
            now,
            actor.id(),
            said.toString(),
            loan.isPresent() ? given.said() : null,
            loan.orElse(null),
            items,
            touched));
    return said.toString();
  }
}
