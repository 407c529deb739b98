package club.ascham.check;

import club.ascham.concern.Against;
import club.ascham.concern.Concern;
import club.ascham.concern.Matter;
import club.ascham.form.Refusal;
import club.ascham.id.ItemId;
import club.ascham.learnt.Learnt;
import club.ascham.mechanics.TwistLimits;
import club.ascham.rig.Part;
import club.ascham.rig.Place;
import club.ascham.rig.RigCard;
import club.ascham.units.Length;
import club.ascham.upkeep.Work;
import club.ascham.verdict.AskAgain;
import club.ascham.verdict.BenchAdvice;
import club.ascham.verdict.Gravity;
import club.ascham.verdict.Judge;
import club.ascham.verdict.Judgement;
import club.ascham.verdict.OnRecord;
import club.ascham.verdict.Reading;
import club.ascham.verdict.Reported;
import club.ascham.verdict.Seen;
import club.ascham.verdict.Sign;
import club.ascham.verdict.Verdict;
import club.ascham.verdict.WorkDone;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * Brings a check and what is on record about its bow before the judge.
 *
 * <p>An adjustment is asked more than the rest: a string that is overdue, or was asked to be
 * replaced, takes no twists, and a bow whose readings change, or that lost brace, is looked at
 * before it is twisted.
 */
final class Judging {
  private final RigCard card;
  private final Learnt learnt;
  private final Length scatter;
  private final Supplier<Against> against;
  private final Predicate<Reading> changing;
  private final Judge judge;

  /**
   * @param learnt what the bow's own record says of it
   * @param limits the twists that this club takes as sound
   * @param scatter how far two readings by its people may lie apart without a change
   * @param against what stands against it: a danger leaves it unstrung, whatever it measures
   * @param changing whether its readings change, this one among them; asked for an adjustment alone
   */
  Judging(
      RigCard card,
      Learnt learnt,
      TwistLimits limits,
      Length scatter,
      Supplier<Against> against,
      Predicate<Reading> changing) {
    this.card = card;
    this.learnt = learnt;
    this.scatter = scatter;
    this.against = against;
    this.changing = changing;
    this.judge = new Judge(new BenchAdvice(limits, learnt.record()));
  }

  /** For those who ask which part an answer lies in, and take no advice from it. */
  Judging(RigCard card) {
    this(card, Against.NOTHING);
  }

  /** For those who ask what is open, and take no advice from it. */
  Judging(RigCard card, Against against) {
    this(
        card,
        Learnt.NOTHING,
        TwistLimits.IN_PRINT,
        Judge.READERS_SCATTER,
        () -> against,
        now -> false);
  }

  /** Whether there are figures to judge the bow by; without them it is still in the workshop. */
  static boolean isPossible(RigCard card) {
    return card.isWhole() && card.setUp() != null;
  }

  /**
   * @param done the adjustment before this measurement; null: none, or nothing measured before it
   */
  Judgement verdict(Seen seen, WorkDone done, boolean permit) {
    Against known = against.get();
    List<String> dangers = dangers(known);
    Judgement judged = judged(onRecord(false, null, dangers), seen, done, permit);
    if (!(judged instanceof Verdict.AdjustFirst) || !dangers.isEmpty()) {
      return judged;
    }
    boolean changes =
        known.has(Matter.CHANGING) || (seen.reading() != null && changing.test(seen.reading()));
    return judged(onRecord(changes, noTwists(known).orElse(null), dangers), seen, done, permit);
  }

  private Judgement judged(OnRecord bow, Seen seen, WorkDone done, boolean permit) {
    return done == null
        ? judge.verdict(bow, seen, permit)
        : judge.afterAdjustment(bow, done, seen, permit);
  }

  private OnRecord onRecord(boolean changing, String noTwists, List<String> dangers) {
    return new OnRecord(
        learnt.now(card.spec().orElseThrow()),
        learnt.now(card.setUp()),
        card.targets(),
        scatter,
        learnt.sinceBolts(),
        changing,
        noTwists,
        dangers);
  }

  /** What was told weighs by what this very check leaves unanswered of it. */
  private static List<String> dangers(Against known) {
    return known.dangers().stream()
        .filter(one -> one.matter() != Matter.REPORTED)
        .map(Concern::said)
        .toList();
  }

  /** Why its string is not twisted any further. */
  static Optional<String> noTwists(Against known) {
    return known.all().stream()
        .filter(one -> one.work() == Work.STRING_REPLACEMENT)
        .flatMap(
            one ->
                switch (one.matter()) {
                  case OVERDUE -> Stream.of("it is overdue");
                  case ASKED, WITHDRAWN -> Stream.of("it was asked to be replaced");
                  case CHANGING ->
                      Stream.of("it was asked to be replaced since the bow's readings change");
                  default -> Stream.<String>empty();
                })
        .findFirst();
  }

  /**
   * @param stranger the part that is on the bow and not on its list; null: none
   * @param told what was told and nobody has answered, this check included
   */
  Seen seen(CheckEntry entry, Stranger stranger, StillOpen told) {
    List<Sign> signs = new ArrayList<>(entry.signs());
    signs.addAll(told.stops());
    List<String> missing = new ArrayList<>();
    Optional<Place> taken = stranger == null ? Optional.empty() : stranger.place();
    for (Place place : entry.missing()) {
      if (taken.isEmpty() || taken.get() != place) {
        at(place).ifPresent(part -> missing.add(part.code() + " is not on it"));
      }
    }
    if (stranger != null) {
      if (entry.strangerAnswer() == StrangerAnswer.WITHDRAW_BOTH) {
        signs.add(new Sign(verdictPart(taken.orElseThrow()), Gravity.STOP, stranger.unclear(card)));
      } else {
        missing.add(stranger.found(card));
      }
    }
    return new Seen(
        entry.reading(), signs, told.reported(), missing, entry.assured(), told.unanswered());
  }

  /** What is still open about a check whose parts are not settled yet. */
  List<Refusal> questions(CheckEntry entry) {
    Seen seen =
        new Seen(
            entry.reading(),
            entry.signs(),
            new Reported(entry.dryLooseOrFall(), entry.cameBackStrung()),
            List.of(),
            entry.assured(),
            List.of());
    List<String> dangers = against.get().dangers().stream().map(Concern::said).toList();
    return judge.verdict(onRecord(false, null, dangers), seen, false) instanceof AskAgain ask
        ? Questions.of(ask, entry.reading(), entry.asTyped().keySet()).refusals()
        : List.of();
  }

  Optional<Part> at(Place place) {
    return card.parts().stream().filter(part -> part.place() == place).findFirst();
  }

  /** The items that these parts of the bow lie in. */
  Set<ItemId> items(Set<club.ascham.verdict.BowPart> parts) {
    Set<ItemId> items = new LinkedHashSet<>();
    parts.stream().sorted().forEach(part -> items.add(item(part).id()));
    return items;
  }

  /** The item that this part of the bow lies in. */
  Part item(club.ascham.verdict.BowPart part) {
    return switch (part) {
      case STRING -> card.string();
      case LIMBS -> card.limbs() != null ? card.limbs() : card.body();
      case BOLTS, RISER, REST -> card.body();
    };
  }

  static club.ascham.verdict.BowPart verdictPart(Place place) {
    return switch (place) {
      case BODY -> club.ascham.verdict.BowPart.RISER;
      case LIMBS -> club.ascham.verdict.BowPart.LIMBS;
      case STRING -> club.ascham.verdict.BowPart.STRING;
    };
  }
}
