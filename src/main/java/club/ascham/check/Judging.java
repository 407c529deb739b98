package club.ascham.check;

import club.ascham.concern.Against;
import club.ascham.concern.Concern;
import club.ascham.concern.Concerns;
import club.ascham.concern.Matter;
import club.ascham.drift.ClubScatter;
import club.ascham.drift.Drifts;
import club.ascham.form.Refusal;
import club.ascham.id.ItemId;
import club.ascham.learnt.Learnt;
import club.ascham.learnt.SecondMeasurement;
import club.ascham.mechanics.TwistLimits;
import club.ascham.people.Actor;
import club.ascham.rig.OwnRecords;
import club.ascham.rig.Part;
import club.ascham.rig.Place;
import club.ascham.rig.RigCard;
import club.ascham.rules.Club;
import club.ascham.statistics.Drift;
import club.ascham.time.ClubTime;
import club.ascham.units.Length;
import club.ascham.upkeep.Work;
import club.ascham.verdict.AskAgain;
import club.ascham.verdict.BenchAdvice;
import club.ascham.verdict.BowPart;
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
import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Brings a check and what is on record about its bow before the judge.
 *
 * <p>An adjustment is asked more than the rest: a string that is overdue, or was asked to be
 * replaced, takes no twists, and a bow whose readings change, or that lost brace, is looked at
 * before it is twisted.
 */
@ApplicationScoped
class Judging {
  private final OwnRecords records;
  private final Club club;
  private final ClubScatter scatter;
  private final Concerns concerns;
  private final Drifts drifts;
  private final Actor actor;
  private final ClubTime time;

  Judging(
      OwnRecords records,
      Club club,
      ClubScatter scatter,
      Concerns concerns,
      Drifts drifts,
      Actor actor,
      ClubTime time) {
    this.records = records;
    this.club = club;
    this.scatter = scatter;
    this.concerns = concerns;
    this.drifts = drifts;
    this.actor = actor;
    this.time = time;
  }

  /** Whether there are figures to judge the bow by; without them it is still in the workshop. */
  static boolean isPossible(RigCard card) {
    return card.isWhole() && card.setUp() != null;
  }

  /** How far two readings by this club's people may lie apart without a change. */
  Length scatter() {
    return scatter.today().change();
  }

  /**
   * @param second the measurement after an adjustment that is to be judged; null: none
   * @param done the adjustment before this measurement; null: none, or nothing measured before it
   */
  Judgement verdict(
      RigCard card, Seen seen, SecondMeasurement second, WorkDone done, boolean permit) {
    Learnt learnt = records.of(card, second);
    Judge judge = new Judge(new BenchAdvice(club.rules().twistLimits(), learnt.record()));
    Against known = concerns.of(card.id());
    List<String> dangers = dangers(known);
    Length apart = scatter();
    Function<OnRecord, Judgement> judged =
        bow ->
            done == null
                ? judge.verdict(bow, seen, permit)
                : judge.afterAdjustment(bow, done, seen, permit);
    Judgement first = judged.apply(onRecord(card, learnt, apart, false, null, dangers));
    if (!(first instanceof Verdict.AdjustFirst) || !dangers.isEmpty()) {
      return first;
    }
    boolean changes =
        known.has(Matter.CHANGING) || (seen.reading() != null && isChanging(card, seen.reading()));
    return judged.apply(
        onRecord(card, learnt, apart, changes, noTwists(known).orElse(null), dangers));
  }

  private static OnRecord onRecord(
      RigCard card,
      Learnt learnt,
      Length scatter,
      boolean changing,
      String noTwists,
      List<String> dangers) {
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

  /** Whether the readings before say so together with this one, which is not kept yet. */
  private boolean isChanging(RigCard card, Reading now) {
    Drift.Measured typed =
        new Drift.Measured(
            time.now(), Long.toString(actor.id().value()), now.brace().mm(), now.tiller().mm());
    boolean bolts = card.spec().orElseThrow().tillerAdjusts();
    return drifts.of(card.setUpId(), bolts, typed).answer() == Drift.Answer.CHANGING;
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
  static Seen seen(RigCard card, CheckEntry entry, Stranger stranger, StillOpen told) {
    List<Sign> signs = new ArrayList<>(entry.signs());
    signs.addAll(told.stops());
    List<String> missing = new ArrayList<>();
    Optional<Place> taken = stranger == null ? Optional.empty() : stranger.place();
    for (Place place : entry.missing()) {
      if (taken.isEmpty() || taken.get() != place) {
        at(card, place).ifPresent(part -> missing.add(part.code() + " is not on it"));
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

  /**
   * What is still open about a check whose parts are not settled yet, each at its field: no advice
   * is taken from it.
   */
  List<Refusal> questions(RigCard card, CheckEntry entry) {
    Seen seen =
        new Seen(
            entry.reading(),
            entry.signs(),
            new Reported(entry.dryLooseOrFall(), entry.cameBackStrung()),
            List.of(),
            entry.assured(),
            List.of());
    List<String> dangers = concerns.of(card.id()).dangers().stream().map(Concern::said).toList();
    Judge judge = new Judge(new BenchAdvice(TwistLimits.IN_PRINT, Learnt.NOTHING.record()));
    OnRecord bow = onRecord(card, Learnt.NOTHING, Judge.READERS_SCATTER, false, null, dangers);
    return judge.verdict(bow, seen, false) instanceof AskAgain ask
        ? Questions.of(ask, entry.reading(), entry.asTyped().keySet()).refusals()
        : List.of();
  }

  private static Optional<Part> at(RigCard card, Place place) {
    return card.parts().stream().filter(part -> part.place() == place).findFirst();
  }

  /** The items that these parts of the bow lie in. */
  static Set<ItemId> items(RigCard card, Set<BowPart> parts) {
    Set<ItemId> items = new LinkedHashSet<>();
    parts.stream().sorted().forEach(part -> items.add(item(card, part).id()));
    return items;
  }

  /** The item that this part of the bow lies in. */
  static Part item(RigCard card, BowPart part) {
    return switch (part) {
      case STRING -> card.string();
      case LIMBS -> card.limbs() != null ? card.limbs() : card.body();
      case BOLTS, RISER, REST -> card.body();
    };
  }

  static BowPart verdictPart(Place place) {
    return switch (place) {
      case BODY -> BowPart.RISER;
      case LIMBS -> BowPart.LIMBS;
      case STRING -> BowPart.STRING;
    };
  }
}
