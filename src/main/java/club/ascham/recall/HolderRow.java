package club.ascham.recall;

import club.ascham.units.ItemCode;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;

/**
 * One time that somebody had a thing that a recall names, as a line of the file for the telephone.
 *
 * @param rigBareCode on the body of the rig it was fitted to when it went out; null: it went beside
 *     one, or the rig had no body
 * @param who the borrower or the session's leader
 * @param contact null for a session
 * @param guardian null for a grown-up
 * @param until null: has it now
 */
record HolderRow(
    String bareCode,
    String maker,
    String model,
    String batch,
    String rigBareCode,
    long loan,
    boolean session,
    String who,
    String contact,
    String guardian,
    Instant from,
    Instant until) {
  static final List<String> HEADER =
      List.of(
          "item",
          "maker",
          "model",
          "batch",
          "rig then",
          "loan",
          "kind",
          "who",
          "contact",
          "guardian",
          "from",
          "until",
          "has it now");

  List<String> cells(Function<Instant, LocalDate> dayOf) {
    return Arrays.asList(
        new ItemCode(bareCode).display(),
        maker,
        model,
        batch,
        rigBareCode == null ? null : new ItemCode(rigBareCode).display(),
        Long.toString(loan),
        session ? "session" : "kit",
        who,
        contact,
        guardian,
        dayOf.apply(from).toString(),
        until == null ? null : dayOf.apply(until).toString(),
        until == null ? "yes" : "no");
  }
}
