package club.ascham.report;

import club.ascham.form.Words;
import club.ascham.id.ItemId;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.units.ItemCode;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/**
 * What somebody told of a bow, and what was answered.
 *
 * @param rig null: it is about a thing beside a bow (likewise rigBareCode)
 * @param words in their own; null: none
 * @param answer null: nobody has answered yet (likewise answeredAt to answerWords)
 * @param watchUntil the last day of being watched; null: it is not
 * @param check that answered it; null: none did
 * @param record the inspection that answered it; null: none did
 * @param signList the names of its signs, by commas
 * @param partList its things as {@code id:code:kind}, by commas
 * @param out whether any of them is with somebody now
 */
public record Report(
    long id,
    RigId rig,
    String rigBareCode,
    LoanId loan,
    Long receipt,
    About.ToldAt toldAt,
    Instant happenedAt,
    Instant recordedAt,
    String toldTo,
    boolean partKnown,
    boolean dangerous,
    String words,
    Answer answer,
    Instant answeredAt,
    String answeredBy,
    String answerWords,
    LocalDate watchUntil,
    Long check,
    Long record,
    String signList,
    String partList,
    boolean out) {

  static final String DANGER = "Don’t shoot it. Unstring it, with the stringer. Bring it.";
  static final String DANGER_IN_THE_ROOM =
      "Don’t shoot it. Unstring it, with the stringer. Lay it aside.";
  static final String STRUNG = "Unstring it now, with the stringer.";

  public boolean isOpen() {
    return answer == null;
  }

  public String page() {
    return Reports.page(id);
  }

  public List<Noticed> signs() {
    return signList == null
        ? List.of()
        : Arrays.stream(signList.split(",")).map(Noticed::valueOf).sorted().toList();
  }

  /** The things it stands against: the named one, or all that were on the bow. */
  public List<PartChoice> parts() {
    return partList == null
        ? List.of()
        : Arrays.stream(partList.split(","))
            .map(part -> part.split(":"))
            .map(p -> new PartChoice(new ItemId(Long.parseLong(p[0])), p[1], p[2], rig))
            .toList();
  }

  public String rigName() {
    return rig == null
        ? null
        : rigBareCode == null ? "rig " + rig.value() : new ItemCode(rigBareCode).display();
  }

  /** What it is about, for a heading: the bow, or the thing beside one. */
  public String name() {
    return rig != null
        ? rigName()
        : parts().stream().map(PartChoice::code).collect(Collectors.joining(", "));
  }

  public String namePage() {
    return rig != null ? "/rigs/" + rig.value() : "/items/" + parts().get(0).code();
  }

  /** {@code it fell, or was knocked hard; “on the gravel”}. */
  public String said() {
    return Telling.said(signs())
        + (words == null ? "" : "; “" + words.replaceFirst("\\.$", "") + "”");
  }

  /** Whether anyone must act at once, and how: one line each. */
  public List<String> cautions() {
    if (!isOpen()) {
      return List.of();
    }
    return dangerous
        ? List.of(out ? DANGER : DANGER_IN_THE_ROOM)
        : signs().contains(Noticed.CAME_BACK_STRUNG) ? List.of(STRUNG) : List.of();
  }

  public boolean tellsOfShock() {
    return signs().stream().anyMatch(Noticed::isShock);
  }

  public boolean tellsOfStrung() {
    return signs().contains(Noticed.CAME_BACK_STRUNG);
  }

  public String toldAtSaid() {
    return switch (toldAt) {
      case RECEIVING -> "when it was received";
      case SESSION -> "when a session came back";
      case LOAN -> "while it was out";
      case BOW -> "of the bow";
      case CHECK -> "at a check";
    };
  }

  /** Null where no check answered it. */
  public String checkPage() {
    return check == null || rig == null ? null : "/check/" + rig.value() + "/" + check;
  }

  public String answerSaid() {
    return answer == null ? "" : answer.said();
  }

  public String answerWord() {
    return Words.of(answer);
  }
}
