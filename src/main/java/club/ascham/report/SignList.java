package club.ascham.report;

import club.ascham.form.Typed;
import club.ascham.id.RigId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * The signs to tick with the words beside them, as a form shows them at any door.
 *
 * @param dangers the dangerous signs
 * @param others what should be looked at
 * @param asked the sign that the words sound like and nobody ticked; null: nothing is asked
 * @param parts which part it may be; empty: it is not asked here
 */
public record SignList(
    Telling.Fields fields,
    List<Tick> dangers,
    List<Tick> others,
    Tick asked,
    List<Part> parts,
    Typed typed) {

  /** One sign to tick. */
  public record Tick(String id, String name, String value, String label, String hint, boolean on) {}

  /** A part to choose. */
  public record Part(String value, String label) {}

  /** The signs of one bow, or of a loan, with the part to choose among these. */
  public static SignList of(Telling.Fields fields, List<PartChoice> among, Typed typed) {
    List<RigId> rigs =
        among.stream().map(PartChoice::rig).filter(Objects::nonNull).distinct().toList();
    List<Part> parts = new ArrayList<>();
    if (rigs.size() > 1) {
      rigs.forEach(
          rig ->
              parts.add(
                  new Part(Telling.whole(rig), "bow " + code(among, rig) + ", part not known")));
    } else {
      parts.add(new Part(Telling.NOT_KNOWN, "not known"));
    }
    among.forEach(part -> parts.add(new Part(part.code(), part.label())));
    return of(fields, typed, parts);
  }

  private static String code(List<PartChoice> among, RigId rig) {
    return among.stream()
        .filter(part -> rig.equals(part.rig()))
        .map(PartChoice::code)
        .findFirst()
        .orElseThrow();
  }

  /** The signs of one bow in a list of several, by the kinds of part that every bow has. */
  public static SignList ofBow(RigId rig, Typed typed) {
    return of(
        Telling.Fields.of(rig),
        typed,
        List.of(
            new Part(Telling.NOT_KNOWN, "not known"),
            new Part("riser", "riser"),
            new Part("limbs", "limbs"),
            new Part("string", "string")));
  }

  private static SignList of(Telling.Fields fields, Typed typed, List<Part> parts) {
    Set<String> ticked = new HashSet<>(Arrays.asList(typed.value(fields.signs()).split("[,\\s]+")));
    List<Tick> dangers = new ArrayList<>();
    List<Tick> others = new ArrayList<>();
    for (Noticed sign : Noticed.values()) {
      (sign.isDangerous() ? dangers : others)
          .add(tick(fields, sign, "sign", ticked.contains(sign.word())));
    }
    // The parser's own question, where it was asked.
    Optional<Noticed> asked =
        Arrays.stream(Noticed.values())
            .filter(sign -> sign.word().equals(typed.suggestionAt(fields.words())))
            .findFirst();
    return new SignList(
        fields,
        dangers,
        others,
        asked.map(sign -> tick(fields, sign, "asked", false)).orElse(null),
        parts,
        typed);
  }

  private static Tick tick(Telling.Fields fields, Noticed sign, String id, boolean on) {
    return new Tick(
        id + "-" + fields.signs() + "-" + sign.word(),
        fields.signs(),
        sign.word(),
        capital(sign.said()),
        sign.mayMean(),
        on);
  }

  private static String capital(String said) {
    return Character.toUpperCase(said.charAt(0)) + said.substring(1);
  }

  public String wordsError() {
    return typed.messageAt(fields.words());
  }

  public String signsError() {
    return typed.messageAt(fields.signs());
  }

  public String partError() {
    return typed.messageAt(fields.part());
  }

  public String words() {
    return typed.value(fields.words());
  }

  public String part() {
    return typed.value(fields.part());
  }

  /** Whether anything was ticked, typed, or is asked. */
  public boolean open() {
    return typed.has(fields.words())
        || typed.has(fields.signs())
        || typed.ticked(fields.dry())
        || typed.ticked(fields.strung())
        || wordsError() != null
        || signsError() != null
        || partError() != null;
  }
}
