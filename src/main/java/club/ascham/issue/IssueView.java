package club.ascham.issue;

import club.ascham.borrower.Borrowers;
import club.ascham.bow.NewcomerFit;
import club.ascham.concern.Against;
import club.ascham.form.Option;
import club.ascham.form.Typed;
import club.ascham.id.RigId;
import java.util.List;

/**
 * What the page of an issue shows, as far as the questions are answered.
 *
 * @param carried the answers so far, for the next form
 * @param person the answers in one line; null before the person is known
 * @param draw the draw length in both units; null before the person is known
 * @param fit null before the person is known
 * @param chosen null before the person is known, or where no ready rig suits
 * @param proposed whether it is the first of those that suit, and nobody chose it yet
 * @param who null where no rig is chosen
 */
record IssueView(
    Typed typed,
    List<Option> carried,
    String person,
    String draw,
    Fit fit,
    Chosen chosen,
    boolean proposed,
    Who who) {

  /** Whether advice speaks against the chosen rig, so that it goes out only with a reason. */
  boolean needsReason() {
    return chosen != null && chosen.advice() != null;
  }

  /** Whether the chosen rig's weight takes a coach who agreed, too. */
  boolean needsCoach() {
    return chosen != null && chosen.asksCoach();
  }

  /**
   * A rig on offer.
   *
   * @param about bow length, marked weight, maker
   * @param weight on these fingers, in words; empty where it can't be said
   * @param why it stands where it stands, or what advice speaks against it
   * @param against what is known that bears on letting it go
   * @param href this page with the rig chosen
   */
  record RigChoice(
      RigId id,
      String name,
      String about,
      String weight,
      List<String> why,
      Against against,
      String href) {}

  /**
   * What suits the person, and which rigs do.
   *
   * @param best the first few ready rigs
   * @param more the other ready rigs that suit
   * @param against ready rigs that advice, or something known, speaks against: given with a reason
   * @param refused ready rigs too heavy for a junior beginner: given by nobody
   * @param assembly what could be assembled, where no ready rig suits
   */
  record Fit(
      NewcomerFit suits,
      String bowLengths,
      String weights,
      String shortestArrow,
      List<RigChoice> best,
      List<RigChoice> more,
      List<RigChoice> against,
      List<RigChoice> refused,
      List<RigChoice> assembly) {
    public boolean noneReady() {
      return best.isEmpty();
    }
  }

  /**
   * The rig that is to go out, and what goes out beside it.
   *
   * @param problem why it can't go out now; null: it can
   * @param advice what speaks against it, so that a reason is needed; null: nothing
   * @param asksCoach whether its weight takes a coach who agreed
   */
  record Chosen(
      RigChoice rig, String problem, String advice, boolean asksCoach, List<KitSlot> slots) {}

  /**
   * One kind of thing beside the bow.
   *
   * @param chosen the code taken; empty: none
   * @param note what is to be known of it; null: nothing
   * @param against what stands against what is chosen
   * @param counted whether some of it is given out by count
   */
  record KitSlot(
      String field,
      String label,
      List<Option> options,
      String chosen,
      String note,
      Against against,
      boolean counted,
      String count) {
    public String countField() {
      return field + ".count";
    }
  }

  /**
   * Whose kit it is.
   *
   * @param known who borrowed before; null: someone new
   * @param someoneElse this page without whoever is known
   * @param matches whoever has the name looked for
   */
  record Who(
      Borrowers.Row known,
      boolean junior,
      String someoneElse,
      String lookedFor,
      List<Match> matches) {
    record Match(Borrowers.Row borrower, String href) {}
  }
}
