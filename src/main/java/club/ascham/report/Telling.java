package club.ascham.report;

import club.ascham.form.Typed;
import club.ascham.id.RigId;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What somebody tells, soundly read.
 *
 * @param words in their own; null: none
 * @param part the one that was named; null: nobody knows which
 * @param rig the bow that was named where there are several; null: none was
 */
public record Telling(Set<Noticed> signs, String words, PartChoice part, RigId rig) {
  private static final int LONGEST_WORDS = 400;
  static final String NOT_KNOWN = "not-known";
  private static final String RIG = "rig-";

  public Telling {
    signs = signs.isEmpty() ? Set.of() : EnumSet.copyOf(signs);
  }

  /** What own words mean where no sign is ticked. */
  public enum WordsAlone {
    /** They are not enough: a sign is asked for. */
    ASK,
    /** Something was seen, and this is what. */
    SOMETHING_ELSE
  }

  /**
   * The names of the fields, which are the same at every door but for what tells bows apart.
   *
   * @param dry one tick for two signs, kept for forms and programs that know no other
   * @param notSo the answer that no sign belongs to the words
   */
  public record Fields(
      String signs, String words, String part, String dry, String strung, String notSo) {
    public static final Fields PLAIN =
        new Fields("signs", "words", "part", "dryLooseOrFall", "cameBackStrung", "notSo");

    /** Those of one bow in a list of several. */
    public static Fields of(RigId rig) {
      String end = "-" + rig.value();
      return new Fields(
          "signs" + end, "words" + end, "part" + end, "dry" + end, "strung" + end, "notSo" + end);
    }
  }

  /** What is asked of own words at a door that has no list of signs; empty: nothing is. */
  public static Optional<String> askedOf(String words) {
    return HeardInWords.asked(words);
  }

  /** Whether nothing was told. */
  public boolean isNothing() {
    return signs.isEmpty();
  }

  public boolean isDangerous() {
    return signs.stream().anyMatch(Noticed::isDangerous);
  }

  public boolean tellsOfShock() {
    return signs.stream().anyMatch(Noticed::isShock);
  }

  public boolean tellsOfStrung() {
    return signs.contains(Noticed.CAME_BACK_STRUNG);
  }

  /** The signs as one list: {@code it fell, or was knocked hard; it stood strung}. */
  public static String said(Collection<Noticed> signs) {
    return signs.stream().sorted().map(Noticed::said).collect(Collectors.joining("; "));
  }

  /**
   * Reads signs (their words, by commas), words and part; ask {@code typed.sound()} before using
   * it.
   *
   * @param among the things it may be about
   */
  public static Telling parse(
      Typed typed, Fields fields, List<PartChoice> among, WordsAlone wordsAlone) {
    Set<Noticed> signs = signs(typed, fields);
    String words = typed.text(fields.words(), LONGEST_WORDS);
    if (signs.contains(Noticed.SOMETHING_ELSE) && words == null) {
      typed.fault(fields.words(), "What was it? A few words help whoever looks.");
    }
    if (!typed.ticked(fields.notSo())) {
      HeardInWords.unanswered(words, signs)
          .ifPresent(heard -> typed.fault(fields.words(), heard.asked(), heard.sign().word()));
    }
    if (signs.isEmpty()) {
      if (words != null && wordsAlone == WordsAlone.SOMETHING_ELSE) {
        signs.add(Noticed.SOMETHING_ELSE);
      } else if (wordsAlone == WordsAlone.ASK) {
        typed.fault(
            fields.signs(), "Tick what was noticed; “something else” where none of these is it.");
      }
    }
    String named = typed.value(fields.part());
    Optional<RigId> rig = rig(named, among);
    PartChoice part =
        named.isEmpty() || named.equals(NOT_KNOWN) || rig.isPresent()
            ? null
            : part(typed, fields.part(), named, among);
    if (part == null && rig.isEmpty() && wordsAlone == WordsAlone.ASK && severalBows(among)) {
      typed.fault(fields.part(), "Which of these bows?");
    }
    return new Telling(signs, words, part, rig.orElse(part == null ? null : part.rig()));
  }

  private static Set<Noticed> signs(Typed typed, Fields fields) {
    Set<Noticed> signs = EnumSet.noneOf(Noticed.class);
    for (String word : typed.value(fields.signs()).split("[,\\s]+")) {
      if (!word.isEmpty()) {
        Typed one = Typed.nothing().with("sign", word);
        Noticed sign = one.word("sign", Noticed.class);
        if (sign == null) {
          typed.fault(fields.signs(), "\"" + word + "\": " + one.messageAt("sign"));
        } else {
          signs.add(sign);
        }
      }
    }
    if (typed.ticked(fields.dry()) && signs.stream().noneMatch(Noticed::isShock)) {
      // Which of the two it was is not said: whoever looks, looks for what either does.
      signs.add(Noticed.LOOSED_WITHOUT_ARROW);
      signs.add(Noticed.FELL);
    }
    if (typed.ticked(fields.strung())) {
      signs.add(Noticed.CAME_BACK_STRUNG);
    }
    return signs;
  }

  private static Optional<RigId> rig(String named, List<PartChoice> among) {
    return among.stream()
        .map(PartChoice::rig)
        .filter(rig -> rig != null && named.equals(RIG + rig.value()))
        .findFirst();
  }

  private static boolean severalBows(List<PartChoice> among) {
    return among.stream().map(PartChoice::rig).filter(rig -> rig != null).distinct().count() > 1;
  }

  private static PartChoice part(Typed typed, String field, String named, List<PartChoice> among) {
    List<PartChoice> meant = among.stream().filter(part -> part.isMeantBy(named)).toList();
    if (meant.size() != 1) {
      typed.fault(
          field,
          "One of these, please: "
              + among.stream()
                  .map(PartChoice::code)
                  .collect(Collectors.joining(", ", "", ", or not-known.")));
      return null;
    }
    return meant.get(0);
  }

  /** The value of the choice of a whole bow, its part not known. */
  static String whole(RigId rig) {
    return RIG + rig.value();
  }

  /** Ticks of one name, as a program lists them. */
  public static String joined(Collection<String> ticks) {
    return ticks == null
        ? null
        : ticks.stream().filter(Objects::nonNull).collect(Collectors.joining(","));
  }
}
