package club.ascham.issue;

import club.ascham.bow.AgainstAdvice;
import club.ascham.bow.Ranking;
import club.ascham.bow.Suitability;
import club.ascham.bow.Unsuited;
import club.ascham.form.Refusal;
import club.ascham.loan.Archer;
import club.ascham.loan.ItemAsked;
import club.ascham.loan.ItemRules;
import club.ascham.loan.Offered;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Whether this kit may be issued to this archer. Hand, fitting parts, a ready rig and the length
 * and mass of the arrows are hard rules, and so is the most a junior beginner is given; else weight
 * and bow length are advice. A reason overrides it and what speaks against a thing, and for a
 * weight above the ceiling a coach who agreed.
 */
final class IssueRules {
  private IssueRules() {}

  /**
   * Everything that stands in the way, each at its field; empty when the kit may go out.
   *
   * @param rig null: there is none such
   * @param found the items asked for that exist, with what stands against them, by bare code
   * @param given why what is spoken against goes out all the same
   */
  static List<Refusal> refusals(
      Archer archer,
      RigOffer rig,
      List<ItemAsked> asked,
      Map<String, Offered> found,
      Instant issuedAt,
      AgainstAdvice given) {
    if (rig == null) {
      return List.of(new Refusal("rig", "That rig was taken apart. Choose another."));
    }
    List<Refusal> refusals = new ArrayList<>(rigRefusals(archer, rig, issuedAt, given));
    refusals.addAll(
        ItemRules.refusals(
            asked, found, ItemRules.Receiver.of(archer, rig.card(), issuedAt), given.why()));
    return refusals;
  }

  /**
   * What stands in the way of the rig alone.
   *
   * @param issuedAt null: now
   */
  static List<Refusal> rigRefusals(
      Archer archer, RigOffer rig, Instant issuedAt, AgainstAdvice given) {
    String notReady = notReady(rig, issuedAt);
    if (notReady != null) {
      return List.of(new Refusal("rig", notReady));
    }
    List<Refusal> refusals = new ArrayList<>(unsuited(archer, rig, given));
    ItemRules.askWhy(rig.spokenAgainst(), given.why()).ifPresent(refusals::add);
    return refusals;
  }

  private static String notReady(RigOffer rig, Instant issuedAt) {
    String name = rig.card().name();
    if (rig.against().blocks()) {
      return name + " stays in. " + rig.against().keptIn() + " Choose another.";
    }
    return switch (rig.state()) {
      case READY ->
          issuedAt != null && rig.readySince() != null && rig.readySince().isAfter(issuedAt)
              ? name + " was not ready yet on the day given: it was put back later."
              : null;
      case ON_LOAN ->
          name
              + " is on loan (loan "
              + rig.loan()
              + "): someone issued it a moment ago, or it is not received yet. Choose another.";
      case WITHDRAWN, IN_THE_WORKSHOP, TO_BE_CHECKED, RETIRED ->
          name + " is " + rig.state().said() + ". Choose another.";
    };
  }

  private static List<Refusal> unsuited(Archer archer, RigOffer rig, AgainstAdvice given) {
    if (rig.candidate().isEmpty()) {
      return List.of(new Refusal("rig", rig.card().name() + " is not complete."));
    }
    Ranking<RigOffer> ranking = Suitability.rank(archer.answers(), List.of(rig.candidate().get()));
    List<Refusal> refusals = new ArrayList<>();
    for (Unsuited<RigOffer> unsuited : ranking.unsuited()) {
      String why = String.join(" ", unsuited.why());
      if (!unsuited.adviceOnly()) {
        refusals.add(new Refusal("rig", why + " Choose another."));
      } else {
        given
            .lacking(why, ItemRules.SAY_WHY, unsuited.asksCoach())
            .forEach((field, message) -> refusals.add(new Refusal(field, message)));
      }
    }
    return refusals;
  }
}
