package club.ascham.fleet;

import club.ascham.askback.Asked;
import java.util.List;

/** The rows that a figure counts: those of one list, the others empty. */
public record FleetRows(
    FleetList list,
    RigChoice choice,
    List<FleetRig> rigs,
    List<OpenLoan> loans,
    List<DueNow> work,
    List<OpenWithdrawal> withdrawals,
    List<Asked> askBack,
    List<Trouble> troubles) {

  static FleetRows rigs(FleetList list, RigChoice choice, List<FleetRig> rigs) {
    return new FleetRows(list, choice, rigs, List.of(), List.of(), List.of(), List.of(), List.of());
  }

  static FleetRows loans(FleetList list, List<OpenLoan> loans) {
    return new FleetRows(
        list, RigChoice.ALL, List.of(), loans, List.of(), List.of(), List.of(), List.of());
  }

  static FleetRows work(FleetList list, List<DueNow> work) {
    return new FleetRows(
        list, RigChoice.ALL, List.of(), List.of(), work, List.of(), List.of(), List.of());
  }

  static FleetRows withdrawals(FleetList list, List<OpenWithdrawal> withdrawals) {
    return new FleetRows(
        list, RigChoice.ALL, List.of(), List.of(), List.of(), withdrawals, List.of(), List.of());
  }

  static FleetRows askBack(FleetList list, List<Asked> askBack) {
    return new FleetRows(
        list, RigChoice.ALL, List.of(), List.of(), List.of(), List.of(), askBack, List.of());
  }

  static FleetRows troubles(FleetList list, List<Trouble> troubles) {
    return new FleetRows(
        list, RigChoice.ALL, List.of(), List.of(), List.of(), List.of(), List.of(), troubles);
  }

  public int count() {
    return rigs.size()
        + loans.size()
        + work.size()
        + withdrawals.size()
        + Asked.things(askBack)
        + troubles.size();
  }

  public String title() {
    return list.title();
  }

  /** What the rigs are narrowed to; nothing where all are meant. */
  public String narrowedTo() {
    return choice.said();
  }
}
