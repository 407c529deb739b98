package club.ascham.undo;

import club.ascham.id.AccountId;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import io.quarkus.qute.TemplateData;
import java.time.Instant;

/**
 * One press that moved things.
 *
 * @param loan null: it was no matter of a loan
 * @param check that was put back on; null: nothing was
 * @param rig of that check
 * @param undoneAt null: it stands
 */
@TemplateData
public record Move(
    long id,
    MoveKind kind,
    LoanId loan,
    boolean session,
    Long check,
    RigId rig,
    Instant madeAt,
    AccountId madeBy,
    String by,
    Instant undoneAt,
    String undoneBy) {

  public boolean isUndone() {
    return undoneAt != null;
  }

  /** Where it is looked at and undone. */
  public String page() {
    return "/undo/" + id;
  }

  /** Where whoever undoes it goes on. */
  String after() {
    if (kind == MoveKind.PUT_BACK) {
      return "/check/" + rig.value() + "/" + check;
    }
    return (session ? "/sessions/" : "/loans/") + loan.value();
  }
}
