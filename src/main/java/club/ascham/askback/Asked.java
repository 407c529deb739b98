package club.ascham.askback;

import club.ascham.concern.Against;
import club.ascham.concern.Concern;
import club.ascham.id.LoanId;
import io.quarkus.qute.TemplateData;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;

/**
 * A loan of which something must come back at once.
 *
 * @param who the borrower or the session's leader; null where the reader is not to see names
 *     (likewise contact and guardian)
 * @param contact null for a session
 * @param guardian null for a grown-up
 * @param things of this loan that must not be shot, those of one rig together
 */
@TemplateData
public record Asked(
    LoanId loan,
    boolean session,
    String who,
    String contact,
    String guardian,
    LocalDate dueOn,
    List<Thing> things) {

  public Asked withoutNames() {
    return new Asked(loan, session, null, null, null, dueOn, things);
  }

  /** All that says so, of whatever thing of it. */
  public Against against() {
    return things.stream().map(Thing::against).reduce(Against.NOTHING, Against::and);
  }

  /** The first day from which something of it must not be shot. */
  public LocalDate since() {
    return days().min(LocalDate::compareTo).orElseThrow();
  }

  /** The day of the newest thing that is known. */
  LocalDate newest() {
    return days().max(LocalDate::compareTo).orElseThrow();
  }

  private Stream<LocalDate> days() {
    return things.stream().flatMap(thing -> thing.against().all().stream()).map(Concern::since);
  }

  /** How many things are to be asked back. */
  public static int things(List<Asked> asked) {
    return asked.stream().mapToInt(one -> one.things().size()).sum();
  }
}
