package club.ascham.check;

import club.ascham.bow.AgainstAdvice;
import club.ascham.form.Typed;
import club.ascham.rig.Part;
import club.ascham.rig.RigCard;
import club.ascham.units.ItemCode;

/**
 * How a form asks for a code that is on a bow and not on its list, and what is to be done about it.
 *
 * @param card what is known of the part with that code; null: nothing was asked about it
 * @param error what is wrong with the answer; null: nothing
 */
public record StrangerAsked(StrangerBack.Fields fields, Card card, String error, Typed typed) {

  /**
   * Where a stranger belongs, and what it sits instead of.
   *
   * @param rigThere the rig that the record has it on; null: none
   */
  public record Card(String belongs, String insteadOf, String rigThere, boolean exchangeable) {
    public String correctHint() {
      return "it stays on this bow"
          + (rigThere == null ? "" : "; rig " + rigThere + " is then without")
          + "; a new set-up comes before the check";
    }

    public String exchangeHint() {
      return insteadOf + " is on rig " + rigThere + "; both bows are then set up anew";
    }
  }

  /**
   * @param stranger null: no code of a part that could be on it
   */
  static StrangerAsked of(
      StrangerBack.Fields fields, RigCard card, Stranger stranger, Typed typed) {
    if (stranger == null) {
      return new StrangerAsked(fields, null, null, typed);
    }
    String instead = stranger.insteadOf(card).map(Part::code).orElse(null);
    String there = stranger.rig() == null ? null : new ItemCode(stranger.rigCode()).display();
    String said = typed.messageAt(fields.answer());
    return new StrangerAsked(
        fields,
        new Card(
            stranger.belongs(card.id()),
            instead == null ? "nothing on the list" : instead,
            there,
            there != null && instead != null),
        // Where it belongs stands above the answers already.
        stranger.question(card).equals(said) ? "Say which, then save again." : said,
        typed);
  }

  public boolean open() {
    return card != null || typed.has(fields.code()) || typed.messageAt(fields.code()) != null;
  }

  /** Whether the bow is out, and advice speaks against it with this part. */
  public boolean asksWhy() {
    return isAsked(AgainstAdvice.WHY) || asksCoach();
  }

  public boolean asksCoach() {
    return isAsked(AgainstAdvice.COACH);
  }

  private boolean isAsked(String field) {
    return typed.has(field) || typed.messageAt(field) != null;
  }

  public String answer() {
    return typed.value(fields.answer());
  }
}
