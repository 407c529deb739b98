package club.ascham.home;

import club.ascham.concern.Against;
import club.ascham.concern.Concern;
import club.ascham.concern.Matter;
import club.ascham.fleet.FleetRig;
import club.ascham.fleet.OpenLoan;
import club.ascham.fleet.ReadyBows;
import club.ascham.fleet.Shown;
import club.ascham.fleet.Waiting;
import club.ascham.standing.State;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** What is on tonight: what can go out, what comes back, what waits on the bench. */
public record Tonight(
    List<ReadyBows> ready,
    int readyCount,
    int rigCount,
    Shown<OpenLoan> backNow,
    Shown<OpenLoan> backThisWeek,
    Shown<FleetRig> toCheck,
    Shown<FleetRig> toSetUp,
    Shown<Concern> keptIn,
    Shown<Concern> outOfUse,
    int withdrawn) {
  private static final int LINES = 8;
  private static final int FEW = 4;

  /**
   * @param loans with something out, due within the week or late
   * @param kept what stands against each thing that is kept in
   */
  static Tonight of(
      List<FleetRig> rigs, List<OpenLoan> loans, Collection<Against> kept, LocalDate today) {
    return new Tonight(
        ReadyBows.in(rigs),
        count(rigs, State.READY),
        rigs.size(),
        Shown.of(backNow(loans, today), LINES),
        Shown.of(loans.stream().filter(loan -> loan.dueOn().isAfter(today)).toList(), FEW),
        Shown.of(toCheck(rigs), LINES),
        Shown.of(rigs.stream().filter(rig -> rig.waiting() == Waiting.SET_UP).toList(), FEW),
        Shown.of(heaviest(kept, false), FEW),
        Shown.of(heaviest(kept, true), FEW),
        count(rigs, State.WITHDRAWN));
  }

  Stream<OpenLoan> loansShown() {
    return Stream.concat(backNow.first().stream(), backThisWeek.first().stream());
  }

  public boolean isNothingOut() {
    return backNow.first().isEmpty() && backThisWeek.first().isEmpty();
  }

  public boolean isBenchClear() {
    return toCheck.first().isEmpty()
        && toSetUp.first().isEmpty()
        && keptIn.first().isEmpty()
        && outOfUse.first().isEmpty()
        && withdrawn == 0;
  }

  /** Of each thing what weighs most, the longest standing first. */
  private static List<Concern> heaviest(Collection<Against> kept, boolean withdrawn) {
    return kept.stream()
        .filter(against -> against.has(Matter.WITHDRAWN) == withdrawn)
        .map(against -> of(against, withdrawn))
        .sorted(Comparator.comparing(Concern::since))
        .toList();
  }

  private static Concern of(Against against, boolean withdrawn) {
    return against.all().stream()
        .filter(one -> !withdrawn || one.matter() == Matter.WITHDRAWN)
        .findFirst()
        .orElseThrow();
  }

  /** Who is due today is the likeliest at the door; then the late ones, the longest first. */
  private static List<OpenLoan> backNow(List<OpenLoan> loans, LocalDate today) {
    Predicate<OpenLoan> dueToday = loan -> loan.dueOn().equals(today);
    return loans.stream()
        .filter(loan -> !loan.dueOn().isAfter(today))
        .sorted(Comparator.comparing((OpenLoan loan) -> !dueToday.test(loan)))
        .toList();
  }

  /** In the order in which they came back. An inspection alone stands in its own list. */
  private static List<FleetRig> toCheck(List<FleetRig> rigs) {
    return rigs.stream()
        .filter(
            rig ->
                switch (rig.waiting()) {
                  case CHECK, ADJUSTMENT, PUTTING_BACK -> true;
                  case NOTHING, INSPECTION, SET_UP -> false;
                })
        .sorted(
            Comparator.comparing(
                FleetRig::since, Comparator.nullsFirst(Comparator.<Instant>naturalOrder())))
        .toList();
  }

  private static int count(List<FleetRig> rigs, State state) {
    return (int) rigs.stream().filter(rig -> rig.state() == state).count();
  }
}
