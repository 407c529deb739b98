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

  /** All that it says. */
  Given given();

  /** Each quantity that was measured and could be compared. */
  List<Finding> findings();

  default Kind kind() {
    return given().kind();
  }

  default List<Remark> reasons() {
    return given().reasons();
  }

  default List<Remark> notes() {
    return given().notes();
  }

  default List<Remark> basis() {
    return given().basis();
  }

  /** Nothing speaks against issuing it. */
  record FitToIssue(Given given, List<Finding> findings) implements Verdict {}

  /**
   * It goes out again once its steps are done and it was measured again.
   *
   * @param forWorkshop part of it is beyond the person who checked
   * @param twistAdvice the twists advised; null: none
   * @param boltAdvice the turns advised; null: none
   */
  record AdjustFirst(
      Given given,
      boolean forWorkshop,
      TwistAdvice twistAdvice,
      BoltAdvice boltAdvice,
      List<Finding> findings)
      implements Verdict {
    public List<BenchStep> steps() {
      return given.steps();
    }

    public List<Remark> expected() {
      return given.expected();
    }

    public Optional<TwistAdvice> twists() {
      return Optional.ofNullable(twistAdvice);
    }

    public Optional<BoltAdvice> bolts() {
      return Optional.ofNullable(boltAdvice);
    }
  }

  /**
   * It is taken out of use until someone competent releases it.
   *
   * @param parts the parts the reasons lie in: each is withdrawn
   */
  record Withdraw(Given given, Set<BowPart> parts, List<Finding> findings) implements Verdict {
    public List<Remark> work() {
      return given.work();
    }
  }
}
