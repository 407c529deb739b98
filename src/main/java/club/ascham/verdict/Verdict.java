package club.ascham.verdict;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What is to be done with a bow that was checked. Advice only: putting it back is a person's act.
 */
public sealed interface Verdict extends Judgement {

  /** The three verdicts, the stricter the later. */
  enum Kind {
    FIT,
    ADJUST,
    WITHDRAW
  }

  Kind kind();

  /** What to keep an eye on, one line each. */
  List<Remark> notes();

  /** Each quantity that was measured and could be compared. */
  List<Finding> findings();

  /** What the verdict rests on, one line each. */
  List<Remark> basis();

  /** Nothing speaks against issuing it. */
  record FitToIssue(List<Remark> notes, List<Finding> findings, List<Remark> basis)
      implements Verdict {
    public FitToIssue {
      notes = List.copyOf(notes);
      findings = List.copyOf(findings);
      basis = List.copyOf(basis);
    }

    @Override
    public Kind kind() {
      return Kind.FIT;
    }
  }

  /**
   * It goes out again once these steps are done and it was measured again.
   *
   * @param steps in the order that is safe
   * @param forWorkshop part of it is beyond the person who checked
   * @param twistAdvice the twists advised; null: none
   * @param boltAdvice the turns advised; null: none
   * @param expected what the bow should measure after these steps, and how sure that is; one line
   *     each
   */
  record AdjustFirst(
      List<Remark> reasons,
      List<BenchStep> steps,
      boolean forWorkshop,
      TwistAdvice twistAdvice,
      BoltAdvice boltAdvice,
      List<Remark> expected,
      List<Remark> notes,
      List<Finding> findings,
      List<Remark> basis)
      implements Verdict {
    public AdjustFirst {
      reasons = List.copyOf(reasons);
      steps = List.copyOf(steps);
      expected = List.copyOf(expected);
      notes = List.copyOf(notes);
      findings = List.copyOf(findings);
      basis = List.copyOf(basis);
    }

    boolean advises(BenchStep.Key key) {
      return steps.stream().anyMatch(step -> step.key() == key);
    }

    public Optional<TwistAdvice> twists() {
      return Optional.ofNullable(twistAdvice);
    }

    public Optional<BoltAdvice> bolts() {
      return Optional.ofNullable(boltAdvice);
    }

    @Override
    public Kind kind() {
      return Kind.ADJUST;
    }
  }

  /**
   * It is taken out of use until someone competent releases it.
   *
   * @param reasons why, one line each
   * @param work what it needs, one line each
   * @param parts the parts the reasons lie in: each is withdrawn
   */
  record Withdraw(
      List<Remark> reasons,
      List<Remark> work,
      Set<BowPart> parts,
      List<Remark> notes,
      List<Finding> findings,
      List<Remark> basis)
      implements Verdict {
    public Withdraw {
      reasons = List.copyOf(reasons);
      work = List.copyOf(work);
      parts = Set.copyOf(parts);
      notes = List.copyOf(notes);
      findings = List.copyOf(findings);
      basis = List.copyOf(basis);
    }

    @Override
    public Kind kind() {
      return Kind.WITHDRAW;
    }
  }
}
