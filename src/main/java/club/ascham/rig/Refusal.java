package club.ascham.rig;

/**
 * Why something can't be done with a rig, and what would make it possible.
 *
 * @param field the answer it is about; empty: the whole
 * @param reason a sentence
 * @param remedy a sentence
 */
public record Refusal(String field, String reason, String remedy) {
  public String message() {
    return remedy.isEmpty() ? reason : reason + " " + remedy;
  }
}
