package club.ascham.loan;

import club.ascham.bow.Compatibility;
import club.ascham.bow.Hand;
import club.ascham.bow.Misfit;
import club.ascham.bow.Newcomer;
import club.ascham.bow.RigSpec;
import club.ascham.bow.ShortestArrow;
import club.ascham.bow.WeightOnFingers;
import club.ascham.form.Refusal;
import club.ascham.form.Words;
import club.ascham.rig.RigCard;
import club.ascham.units.LengthText;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;

/** Whether things may go out beside a bow to this archer, and why not. */
public final class ItemRules {
  public static final String SAY_WHY =
      " To give it all the same, say why in whole words; it is kept with the loan.";

  /**
   * What the things go out to.
   *
   * @param bow the rig they go beside; null: none is in the loan
   * @param shortest the shortest arrow that this archer may be given
   * @param weight of that rig on this archer's fingers; null: it can't be reckoned
   * @param at when they are handed over
   */
  public record Receiver(
      Hand hand, RigSpec bow, ShortestArrow shortest, WeightOnFingers weight, Instant at) {

    /**
     * An archer with a bow.
     *
     * @param card null: none is in the loan
     */
    public static Receiver of(Archer archer, RigCard card, Instant at) {
      return new Receiver(
          archer.hand(),
          card == null ? null : card.spec().orElse(null),
          Newcomer.fit(archer.answers()).shortestArrow(),
          card == null ? null : archer.weightOf(card).orElse(null),
          at);
    }
  }

  private ItemRules() {}

  /**
   * What stands in the way, each at the field of its item.
   *
   * @param overrideWhy why what is spoken against goes out all the same; null: no reason given
   */
  public static List<Refusal> refusals(
      List<ItemAsked> asked, Map<String, Offered> found, Receiver receiver, String overrideWhy) {
    List<Refusal> refusals = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (ItemAsked one : asked) {
      Offered offered = found.get(one.code().bare());
      Optional<String> why =
          offered == null
              ? Optional.of("The club has no item " + one.code().display() + ".")
              : seen.add(offered.item().bareCode())
                  ? refusal(offered, one.count(), receiver)
                  : Optional.of(offered.item().code() + " is asked for twice.");
      why.ifPresentOrElse(
          message -> refusals.add(new Refusal(one.field(), message)),
          () -> askWhy(offered.spokenAgainst(), overrideWhy).ifPresent(refusals::add));
    }
    return refusals;
  }

  private static Optional<String> refusal(Offered offered, Integer count, Receiver receiver) {
    Lendable item = offered.item();
    if (item.isBowPart()) {
      return Optional.of(item.said() + " goes out as part of a rig, not beside one.");
    }
    if (item.fittedTo() != null) {
      return Optional.of(item.said() + " is fitted to a rig. Give out a spare one.");
    }
    return notReady(offered)
        .or(() -> notBackYet(item, receiver.at()))
        .or(() -> wrongCount(item, count))
        .or(() -> wrongHand(item, receiver.hand()))
        .or(() -> tooShort(item, receiver.shortest()))
        .or(() -> tooLight(item, receiver.weight()))
        .or(() -> bowMisfit(item, receiver.bow()));
  }

  private static Optional<String> notReady(Offered offered) {
    Lendable item = offered.item();
    if (offered.against().blocks()) {
      return Optional.of(
          item.said() + " stays in. " + offered.against().keptIn() + " Choose another.");
    }
    return switch (item.state()) {
      case READY -> Optional.empty();
      case ON_LOAN ->
          Optional.of(
              item.said()
                  + (item.isArrows() ? " are" : " is")
                  + " out with loan "
                  + item.loan()
                  + ". Choose another, or receive it first.");
      case RETIRED, WITHDRAWN, IN_THE_WORKSHOP, TO_BE_CHECKED ->
          Optional.of(item.said() + " is " + Words.said(item.state()) + ". Choose another.");
    };
  }

  private static Optional<String> notBackYet(Lendable item, Instant at) {
    return item.lastBack() != null && item.lastBack().isAfter(at)
        ? Optional.of(item.said() + " had not come back yet on the day given.")
        : Optional.empty();
  }

  private static Optional<String> wrongCount(Lendable item, Integer count) {
    if (!item.pool()) {
      return count == null || count.equals(item.arrowCount())
          ? Optional.empty()
          : Optional.of(item.said() + " goes out whole: leave the number empty.");
    }
    if (count == null) {
      return Optional.of("How many arrows out of " + item.code() + "?");
    }
    return count > item.left()
        ? Optional.of("Only " + item.left() + " arrows of " + item.code() + " are left.")
        : Optional.empty();
  }

  private static Optional<String> wrongHand(Lendable item, Hand hand) {
    return item.hand() != null && hand != null && item.hand() != hand
        ? Optional.of(
            item.said()
                + " is for the "
                + Words.said(item.hand())
                + " hand. Choose one for the "
                + Words.said(hand)
                + " hand.")
        : Optional.empty();
  }

  private static Optional<String> tooShort(Lendable item, ShortestArrow shortest) {
    if (!item.isArrows() || shortest == null) {
      return Optional.empty();
    }
    if (item.arrowLength() == null) {
      return Optional.of(
          "The length of "
              + item.code()
              + " is not recorded. Measure an arrow from the floor of the nock to the end of the"
              + " shaft and enter it first.");
    }
    return shortest.allows(item.arrowLength())
        ? Optional.empty()
        : Optional.of(
            "Too short: "
                + item.code()
                + " is "
                + LengthText.both(item.arrowLength())
                + ", and the shortest safe arrow for this archer is "
                + shortest.said()
                + ". Choose longer ones; nobody overrides this.");
  }

  private static Optional<String> tooLight(Lendable item, WeightOnFingers weight) {
    return item.against(weight)
        .filter(mass -> !mass.isSound())
        .map(
            mass ->
                "Too light: "
                    + item.code()
                    + " is "
                    + mass.shortfall()
                    + ". Choose heavier arrows, or a bow with lighter limbs; nobody overrides"
                    + " this.");
  }

  /**
   * What went out without being looked at, as one more sentence for whoever gave it; empty when
   * nothing did.
   */
  public static String unchecked(Collection<Offered> given, Receiver receiver) {
    String codes =
        given.stream()
            .map(Offered::item)
            .filter(item -> item.isArrows() && item.arrowMassGr() == null)
            .map(Lendable::code)
            .sorted()
            .collect(Collectors.joining(", "));
    return codes.isEmpty() || receiver.weight() == null ? "" : " " + notWeighed(codes);
  }

  /** That arrows of unknown mass were not held against the bow. */
  public static String notWeighed(String codes) {
    return "The mass of "
        + codes
        + " is not recorded, so it was not checked against this bow. Weigh an arrow and enter it.";
  }

  private static Optional<String> bowMisfit(Lendable item, RigSpec bow) {
    OptionalInt bowIn = bow == null ? OptionalInt.empty() : bow.bowLengthIn();
    if (bowIn.isEmpty()) {
      return Optional.empty();
    }
    if (item.stringer() != null) {
      return Compatibility.misfit(item.stringer(), bowIn.getAsInt()).map(ItemRules::said);
    }
    if (item.string() != null) {
      RigSpec withIt =
          new RigSpec(bow.riser(), bow.limbs(), bow.onePiece(), item.string(), bow.style());
      return Compatibility.misfits(withIt).stream().findFirst().map(ItemRules::said);
    }
    return Optional.empty();
  }

  private static String said(Misfit misfit) {
    return misfit.reason() + " " + misfit.remedy();
  }

  /** What speaks against it asks for a reason; nothing does, or one was given: empty. */
  public static Optional<Refusal> askWhy(String spokenAgainst, String overrideWhy) {
    return spokenAgainst.isEmpty() || overrideWhy != null
        ? Optional.empty()
        : Optional.of(new Refusal("overrideWhy", spokenAgainst + SAY_WHY));
  }
}
