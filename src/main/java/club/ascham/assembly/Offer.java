package club.ascham.assembly;

import club.ascham.id.RigId;
import club.ascham.rig.Obstacle;
import club.ascham.rig.Part;
import club.ascham.rig.PartWords;
import club.ascham.rig.Place;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * A part that might go to one place of a rig, with what keeps it from there.
 *
 * @param address where choosing it leads
 */
record Offer(PartOnHand hand, String facts, String address, List<Obstacle> refusals) {

  public boolean isPossible() {
    return refusals.isEmpty();
  }

  public String code() {
    return hand.part().code();
  }

  public String name() {
    return hand.part().name();
  }

  /** Why not, in one line. */
  public String whyNot() {
    return refusals.isEmpty() ? "" : refusals.get(0).message();
  }

  /** Where choosing a part leads. */
  interface Choosing {
    String address(Part part);
  }

  /**
   * All these parts as offers for one place beside the parts already chosen: those that fit first.
   *
   * @param rig where they are to go; null: a new one
   */
  static List<Offer> of(
      List<PartOnHand> onHand, Map<Place, Part> chosen, RigId rig, Choosing choosing) {
    return onHand.stream()
        .map(part -> offer(part, chosen, rig, choosing))
        .sorted(Comparator.comparing(offer -> !offer.isPossible()))
        .toList();
  }

  private static Offer offer(
      PartOnHand hand, Map<Place, Part> chosen, RigId rig, Choosing choosing) {
    Part part = hand.part();
    Map<Place, Part> together = new EnumMap<>(Place.class);
    together.putAll(chosen);
    together.put(part.place(), part);
    List<Obstacle> refusals = new ArrayList<>(Fit.misfits(together));
    // What never fits is said before what is only not free today.
    hand.refusal(Assembly.field(part.place()), rig).ifPresent(refusals::add);
    return new Offer(hand, PartWords.facts(part), choosing.address(part), List.copyOf(refusals));
  }
}
