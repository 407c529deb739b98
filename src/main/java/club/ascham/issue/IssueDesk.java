package club.ascham.issue;

import club.ascham.borrower.BorrowerId;
import club.ascham.borrower.Borrowers;
import club.ascham.bow.AgainstAdvice;
import club.ascham.bow.Candidate;
import club.ascham.bow.Hand;
import club.ascham.bow.Heaviness;
import club.ascham.bow.Newcomer;
import club.ascham.bow.NewcomerFit;
import club.ascham.bow.Ranking;
import club.ascham.bow.RigSpec;
import club.ascham.bow.Suitability;
import club.ascham.bow.Suited;
import club.ascham.bow.Unsuited;
import club.ascham.bow.WeightCeiling;
import club.ascham.concern.Against;
import club.ascham.form.Refusal;
import club.ascham.form.Typed;
import club.ascham.form.Words;
import club.ascham.id.RigId;
import club.ascham.loan.AgeWords;
import club.ascham.loan.Archer;
import club.ascham.loan.ItemRules;
import club.ascham.loan.RigWords;
import club.ascham.standing.State;
import club.ascham.units.LengthText;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Lays out what an issue needs next, from what has been answered so far. */
@ApplicationScoped
class IssueDesk {
  private static final int BEST = 5;
  private static final int MATCHES = 8;

  /** What no reason changes is a problem; the rest is asked for in the form. */
  private static final AgainstAdvice ASKED_BELOW = new AgainstAdvice("asked", "asked");

  private final RigsOnOffer rigs;
  private final ReadyParts parts;
  private final KitSlots slots;
  private final Borrowers borrowers;

  IssueDesk(RigsOnOffer rigs, ReadyParts parts, KitSlots slots, Borrowers borrowers) {
    this.rigs = rigs;
    this.parts = parts;
    this.slots = slots;
    this.borrowers = borrowers;
  }

  /**
   * @param archer null before the questions about the person are answered
   */
  IssueView view(Typed typed, Archer archer, LocalDate today) {
    if (archer == null) {
      return new IssueView(typed, IssueAddress.carried(typed), null, null, null, null, false, null);
    }
    List<RigOffer> ready = rigs.ready(today);
    IssueView.Fit fit = fit(typed, archer, ready, today);
    boolean proposed = !typed.has("rig") && !typed.has("once-key") && !fit.noneReady();
    if (proposed) {
      typed.with("rig", fit.best().get(0).id().value());
    }
    IssueView.Chosen chosen = chosen(typed, archer, fit, ready, today);
    return new IssueView(
        typed,
        IssueAddress.carried(typed),
        said(archer),
        LengthText.both(archer.draw().amo()) + (archer.draw().estimated() ? ", estimated" : ""),
        fit,
        chosen,
        proposed,
        chosen == null ? null : who(typed, archer));
  }

  /**
   * Of whoever borrowed before: what was answered last is there to be looked at, not typed again.
   */
  void answerAsLastTime(Typed typed) {
    Integer known = Typed.of(typed.all()).whole("borrower", 1, Integer.MAX_VALUE);
    if (known == null) {
      return;
    }
    borrowers
        .lastAnswers(new BorrowerId(known))
        .ifPresent(
            last -> {
              typed.with("hand", Words.of(last.hand())).with("ageBand", Words.of(last.age()));
              typed.with("experience", Words.of(last.experience()));
              // Who grows, or was estimated, is measured again.
              if (!last.age().junior() && !last.drawEstimated()) {
                typed.with("drawLength", LengthText.exact(last.draw()));
              }
            });
  }

  /** Every ready rig with how it suits, for programs. */
  Ranking<RigOffer> ranking(Archer archer, LocalDate today) {
    return Suitability.rank(archer.answers(), candidates(rigs.ready(today)));
  }

  private IssueView.Fit fit(Typed typed, Archer archer, List<RigOffer> ready, LocalDate today) {
    NewcomerFit suits = Newcomer.fit(archer.answers());
    Ranking<RigOffer> ranking = Suitability.rank(archer.answers(), candidates(ready));
    List<IssueView.RigChoice> suited = new ArrayList<>();
    List<IssueView.RigChoice> against = new ArrayList<>();
    List<IssueView.RigChoice> refused = new ArrayList<>();
    for (Suited<RigOffer> one : ranking.suited()) {
      (one.rig().against().speaks() ? against : suited)
          .add(choice(typed, one.rig(), RigWords.weight(one.weight()), one.why()));
    }
    for (Unsuited<RigOffer> one : ranking.unsuited()) {
      if (one.adviceOnly()) {
        against.add(choice(typed, one.rig(), weight(one.rig(), archer), one.why()));
      } else if (isTooHeavy(archer, one.rig())) {
        refused.add(choice(typed, one.rig(), weight(one.rig(), archer), one.why()));
      }
    }
    int best = Math.min(BEST, suited.size());
    return new IssueView.Fit(
        suits,
        suits.bowFromIn() == suits.bowToIn()
            ? suits.bowToIn() + " in"
            : suits.bowFromIn()
                + " to "
                + suits.bowToIn()
                + " in, "
                + suits.bowPreferredIn()
                + " in first",
        weights(suits),
        suits.shortestArrow().said(),
        suited.subList(0, best),
        suited.subList(best, suited.size()),
        against,
        refused,
        suited.isEmpty() ? assembly(archer, today) : List.of());
  }

  /**
   * {@code 10 to 14 lb, 12 lb first; heavier with a reason and a coach who agreed (a course ends at
   * 16 lb); over 20 lb to nobody of this age}.
   */
  private static String weights(NewcomerFit suits) {
    WeightCeiling ceiling = suits.ceiling();
    return RigWords.lb(suits.leastLb())
        + " to "
        + RigWords.lb(ceiling.freeLb())
        + ", "
        + RigWords.lb(suits.aimLb())
        + " first"
        + (ceiling.mostLb() > ceiling.freeLb()
            ? "; heavier with a reason and a coach who agreed (a course ends at "
                + RigWords.lb(ceiling.mostLb())
                + ")"
            : "")
        + (ceiling.refusedAboveLb() == null
            ? ""
            : "; over " + RigWords.lb(ceiling.refusedAboveLb()) + " to nobody of this age");
  }

  /** Whether it would do but for a weight that this archer is never given. */
  private static boolean isTooHeavy(Archer archer, RigOffer rig) {
    Hand hand = rig.card().spec().map(RigSpec::hand).orElse(null);
    return (hand == null || hand == archer.hand())
        && archer
            .weightOf(rig.card())
            .filter(weight -> archer.ceiling().of(weight) == Heaviness.REFUSED)
            .isPresent();
  }

  /** {@code right hand, draw 27 in, adult, beginner}. */
  private static String said(Archer archer) {
    return Words.said(archer.hand())
        + " hand, draw "
        + LengthText.inches(archer.draw().amo())
        + ", "
        + AgeWords.said(archer.age())
        + ", "
        + Words.said(archer.experience());
  }

  private static List<Candidate<RigOffer>> candidates(List<RigOffer> ready) {
    return ready.stream().map(RigOffer::candidate).flatMap(Optional::stream).toList();
  }

  private List<IssueView.RigChoice> assembly(Archer archer, LocalDate today) {
    return AssemblyOffer.suited(archer, parts.on(today)).stream()
        .map(
            one ->
                new IssueView.RigChoice(
                    null,
                    one.rig().name(),
                    RigWords.about(one.rig().spec()),
                    RigWords.weight(one.weight()),
                    one.why(),
                    Against.NOTHING,
                    one.rig().page()))
        .toList();
  }

  private static IssueView.RigChoice choice(
      Typed typed, RigOffer rig, String weight, List<String> why) {
    return new IssueView.RigChoice(
        rig.card().id(),
        rig.card().name(),
        rig.card().spec().map(RigWords::about).orElse(""),
        weight,
        why,
        rig.against(),
        IssueAddress.withRig(typed, rig.card().id().value()));
  }

  private static String weight(RigOffer rig, Archer archer) {
    return archer.weightOf(rig.card()).map(RigWords::weight).orElse("");
  }

  private IssueView.Chosen chosen(
      Typed typed, Archer archer, IssueView.Fit fit, List<RigOffer> ready, LocalDate today) {
    Integer asked = Typed.of(typed.all()).whole("rig", 1, Integer.MAX_VALUE);
    if (asked == null) {
      return null;
    }
    RigId id = new RigId(asked);
    RigOffer rig =
        ready.stream()
            .filter(one -> one.card().id().equals(id))
            .findFirst()
            .or(() -> rigs.of(id, today))
            .orElse(null);
    if (rig == null) {
      return new IssueView.Chosen(
          new IssueView.RigChoice(id, "Rig " + asked, "", "", List.of(), Against.NOTHING, ""),
          "There is no such rig, or it was taken apart. Choose another.",
          null,
          false,
          List.of());
    }
    IssueView.RigChoice among = among(fit.best(), id).or(() -> among(fit.more(), id)).orElse(null);
    IssueView.RigChoice against = among(fit.against(), id).orElse(null);
    if (rig.state() != State.READY || (among == null && against == null)) {
      return new IssueView.Chosen(
          choice(typed, rig, "", List.of()), problem(archer, rig), null, false, List.of());
    }
    return new IssueView.Chosen(
        among != null ? among : against,
        null,
        against == null ? null : advice(archer, rig),
        asksCoach(archer, rig),
        slots.of(typed, archer, fit.suits(), rig, today));
  }

  private static Optional<IssueView.RigChoice> among(List<IssueView.RigChoice> some, RigId id) {
    return some.stream().filter(one -> one.id().equals(id)).findFirst();
  }

  /** What a reason must answer: what advice says, and what is known. */
  private static String advice(Archer archer, RigOffer rig) {
    return IssueRules.rigRefusals(archer, rig, null, AgainstAdvice.NOTHING_SAID).stream()
        .filter(refusal -> refusal.field().equals(AgainstAdvice.WHY))
        .map(Refusal::words)
        .map(message -> message.replace(ItemRules.SAY_WHY, ""))
        .collect(Collectors.joining(" "));
  }

  private static boolean asksCoach(Archer archer, RigOffer rig) {
    return IssueRules.rigRefusals(archer, rig, null, AgainstAdvice.NOTHING_SAID).stream()
        .anyMatch(refusal -> refusal.field().equals(AgainstAdvice.COACH));
  }

  private static String problem(Archer archer, RigOffer rig) {
    return IssueRules.rigRefusals(archer, rig, null, ASKED_BELOW).stream()
        .map(Refusal::words)
        .findFirst()
        .orElse("It does not suit.");
  }

  private IssueView.Who who(Typed typed, Archer archer) {
    Integer known = Typed.of(typed.all()).whole("borrower", 1, Integer.MAX_VALUE);
    String lookedFor = typed.value("who");
    return new IssueView.Who(
        known == null ? null : borrowers.row(new BorrowerId(known)).orElse(null),
        archer.age().junior(),
        IssueAddress.withoutBorrower(typed),
        lookedFor,
        lookedFor.isEmpty()
            ? List.of()
            : borrowers.named(lookedFor, 0, MATCHES).stream()
                .map(
                    one ->
                        new IssueView.Who.Match(
                            one, IssueAddress.withBorrower(typed, one.id().value())))
                .toList());
  }
}
