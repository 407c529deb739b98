package club.ascham.undo;

import club.ascham.id.LoanId;

/** A fact that rests on a press, so that the press stands. */
enum Resting {
  LENT("was lent again since, with loan %2$s.", true),
  BODY("The bow goes by that part: exchange it back on the bow’s own page.", false),
  EXCHANGED("came back, or was exchanged again, since: undo that first.", false),
  RETIRED("was retired since, or reported lost.", false),
  CHECKED("The bow was checked or put back since: it was in somebody’s hands here.", true),
  SET_UP("Its set-up was begun or finished since.", true),
  PARTS("Parts of the bow were changed since.", true),
  FITTED("is fitted to another bow since.", false),
  ADJUSTED("The bow was adjusted since.", true),
  INSPECTED("was inspected or worked on since.", false),
  WITHDRAWN("was withdrawn, decided on or released since.", false),
  TOLD("Something was told of it since: it stands with the bow as it is now.", false),
  ANSWERED("What was told as it came back is answered since: somebody looked at it.", false),
  SETTLED(
      "Its deposit was settled since, as the rest of loan %2$s came back: undo that first.", false),
  FORGOTTEN("Whoever had it was forgotten since, as they asked.", false);

  private final String words;
  private final boolean restsOnPutBack;

  Resting(String words, boolean restsOnPutBack) {
    this.words = words;
    this.restsOnPutBack = restsOnPutBack;
  }

  /** Whether a bow that was put back stays so for it; the rest only keeps it in. */
  boolean restsOnPutBack() {
    return restsOnPutBack;
  }

  /**
   * @param code of the thing; null: the bow as a whole
   * @param loan that the words name; null: none
   */
  String said(String code, LoanId loan) {
    String of = words.formatted(code, loan == null ? "" : loan.value());
    if (Character.isUpperCase(of.charAt(0))) {
      return of;
    }
    return (code == null ? "The bow" : code) + " " + of;
  }
}
