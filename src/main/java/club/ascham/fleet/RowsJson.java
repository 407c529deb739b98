package club.ascham.fleet;

import club.ascham.askback.Asked;
import club.ascham.askback.ThingJson;
import club.ascham.concern.ConcernJson;
import club.ascham.form.Words;
import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;

/** The rows of one list in JSON; the other lists are left out. */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
record RowsJson(
    String list,
    int count,
    List<RigJson> rigs,
    List<LoanJson> loans,
    List<WorkJson> work,
    List<WithdrawalJson> withdrawals,
    List<AskedJson> askBack,
    List<TroubleJson> troubles) {

  /** A rig. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  record RigJson(
      long id,
      String code,
      String name,
      String hand,
      Integer bowLengthIn,
      Double markedLb,
      String state,
      Long loan,
      LocalDate dueOn,
      String course,
      String because,
      List<ConcernJson> concerns) {
    static RigJson of(FleetRig rig) {
      return new RigJson(
          rig.id().value(),
          rig.code() == null ? null : rig.code().display(),
          rig.name(),
          Trait.HAND.of(rig),
          rig.bowLengthIn(),
          rig.markedLb(),
          rig.state().word(),
          rig.loan() == null ? null : rig.loan().value(),
          rig.dueOn(),
          Trait.COURSE.of(rig),
          Trait.BECAUSE.of(rig),
          ConcernJson.of(rig.against()));
    }
  }

  /** A loan that is late. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  record LoanJson(long id, String kind, String who, LocalDate dueOn, int linesOut, String what) {
    static LoanJson of(OpenLoan loan) {
      return new LoanJson(
          loan.id().value(),
          loan.session() ? "session" : "kit",
          loan.who(),
          loan.dueOn(),
          loan.linesOut(),
          loan.what());
    }
  }

  /** Upkeep that is due. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  record WorkJson(
      String code,
      String kind,
      String name,
      String work,
      LocalDate dueOn,
      String because,
      Integer forBowIn,
      boolean onLoan) {
    static WorkJson of(DueNow due) {
      return new WorkJson(
          due.code().display(),
          due.kindWord(),
          due.name(),
          Naming.word(due.work()),
          due.dueOn(),
          due.because(),
          due.forBowIn(),
          due.onLoan());
    }
  }

  /** A part out of use. */
  record WithdrawalJson(
      String code, String kind, String name, Instant since, String why, boolean onLoan) {
    static WithdrawalJson of(OpenWithdrawal withdrawal) {
      return new WithdrawalJson(
          withdrawal.code().display(),
          withdrawal.kindWord(),
          withdrawal.name(),
          withdrawal.since(),
          withdrawal.why(),
          withdrawal.onLoan());
    }
  }

  /** A thing to be asked back; who has it stands at the loan, for those who lend. */
  record AskedJson(long loan, LocalDate dueOn, ThingJson thing) {
    static Stream<AskedJson> of(Asked asked) {
      return asked.things().stream()
          .map(thing -> new AskedJson(asked.loan().value(), asked.dueOn(), ThingJson.of(thing)));
    }
  }

  /** Something that went wrong with a rig. */
  record TroubleJson(long rig, String code, Instant at, String what, String said) {
    static TroubleJson of(Trouble trouble) {
      return new TroubleJson(
          trouble.rig().value(), trouble.title(), trouble.at(), trouble.what(), trouble.said());
    }
  }

  static RowsJson of(FleetRows rows) {
    return new RowsJson(
        Words.of(rows.list()),
        rows.count(),
        rows.rigs().stream().map(RigJson::of).toList(),
        rows.loans().stream().map(LoanJson::of).toList(),
        rows.work().stream().map(WorkJson::of).toList(),
        rows.withdrawals().stream().map(WithdrawalJson::of).toList(),
        rows.askBack().stream().flatMap(AskedJson::of).toList(),
        rows.troubles().stream().map(TroubleJson::of).toList());
  }

  static final String EXAMPLE =
      """
      {"list": "rigs", "count": 1, "rigs": [
        {"id": 12, "code": "R-0101-E", "name": "Alderfen Fenlight 25", "hand": "right",
         "bowLengthIn": 68, "markedLb": 20.0, "state": "ready", "course": "as-it-is",
         "because": "as-it-is", "concerns": []}]}
      """;
}
