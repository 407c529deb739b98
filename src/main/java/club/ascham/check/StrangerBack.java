package club.ascham.check;

import club.ascham.form.Typed;
import club.ascham.id.RigId;
import club.ascham.rig.RigCard;

/**
 * A part that was found on a bow and is not on its list, and what is to be done about it.
 *
 * @param card the bow as the record has it
 */
public record StrangerBack(RigCard card, Stranger stranger, StrangerAnswer answer) {

  /** The names of the fields, the same at every door but for what tells bows apart. */
  public record Fields(String code, String answer) {
    public static final Fields PLAIN = new Fields("stranger", "strangerAnswer");

    /** Those of one bow in a list of several. */
    public static Fields of(RigId rig) {
      return new Fields("stranger-" + rig.value(), "strangerAnswer-" + rig.value());
    }

    /** Where somebody else was quicker: the code is told in words, so that it is not lost. */
    public Typed inWords(Typed typed, String words) {
      String found = typed.value(code);
      return found.isEmpty()
          ? typed
          : typed.with(
              words, (typed.value(words) + " " + found + " is on it, not on its list.").strip());
    }
  }

  /** What was found, in half a sentence. */
  public String found() {
    return stranger.found(card);
  }

  /** Whether this bow is what the answer is about. */
  public boolean isOn(RigId rig) {
    return card.id().equals(rig);
  }
}
