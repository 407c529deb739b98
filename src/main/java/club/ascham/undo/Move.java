package club.ascham.undo;

import club.ascham.id.AccountId;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.units.ItemCode;
import io.quarkus.qute.TemplateData;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;

/**
 * One press that moved things.
 *
 * @param loan null: it was no matter of a loan
 * @param check that was put back on; null: nothing was
 * @param rig of that check
 * @param undoneAt null: it stands
 * @param bareCodes of what it moved, by commas; null: of nothing but a check
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
    String undoneBy,
    String bareCodes) {

  /** What it moved. */
  public List<String> codes() {
    return bareCodes == null
        ? List.of()
        : Arrays.stream(bareCodes.split(",")).map(code -> new ItemCode(code).display()).toList();
  }

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
