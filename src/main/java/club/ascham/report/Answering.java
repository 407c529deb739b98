package club.ascham.report;

import club.ascham.form.Typed;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What a person answers to a report, soundly read.
 *
 * @param words what was seen
 * @param part the one that is stopped; null: none is
 * @param until the last day of being watched; null: it is not
 */
public record Answering(Answer answer, String words, PartChoice part, LocalDate until) {
  private static final int LONGEST_WORDS = 400;
  static final String NOTHING = "Looked: nothing there.";

  /** The names of the fields; in a form with several reports each has its own. */
  public record Fields(String answer, String words, String part, String until) {
    public static final Fields PLAIN = new Fields("answer", "words", "part", "until");

    /** Those of one report, or of the one that is told in the same breath. */
    public static Fields of(String key) {
      String start = "report-" + key;
      return new Fields(start, start + "-words", start + "-part", start + "-until");
    }
  }

  /** Reads one that must be given; empty: the faults are at their fields. */
  static Optional<Answering> required(
      Typed typed, boolean dangerous, List<PartChoice> among, LocalDate today) {
    Optional<Answering> read = parse(typed, Fields.PLAIN, dangerous, among, today);
    if (read.isEmpty() && typed.sound()) {
      typed.fault(Fields.PLAIN.answer(), "What did you see? It stays open until someone says.");
    }
    return typed.sound() ? read : Optional.empty();
  }

  /**
   * Reads an answer; empty where none was given or something is wrong, which is then at its field.
   *
   * @param among the things that the report stands against
   */
  public static Optional<Answering> parse(
      Typed typed, Fields fields, boolean dangerous, List<PartChoice> among, LocalDate today) {
    Answer answer = typed.word(fields.answer(), Answer.class);
    if (answer == null) {
      return Optional.empty();
    }
    String words = typed.reasonIfAny(fields.words(), LONGEST_WORDS);
    if (words == null) {
      if (answer == Answer.NOTHING_THERE && !dangerous) {
        words = NOTHING;
      } else {
        typed.fault(fields.words(), "What did you see? A few words: others will go by them.");
      }
    }
    PartChoice part = answer == Answer.STOP ? part(typed, fields, among) : null;
    LocalDate until = answer == Answer.WATCH ? until(typed, fields, today) : null;
    boolean whole =
        words != null
            && (answer != Answer.STOP || part != null)
            && (answer != Answer.WATCH || until != null);
    return whole ? Optional.of(new Answering(answer, words, part, until)) : Optional.empty();
  }

  private static PartChoice part(Typed typed, Fields fields, List<PartChoice> among) {
    String named = typed.value(fields.part());
    List<PartChoice> meant =
        named.isEmpty() ? among : among.stream().filter(part -> part.isMeantBy(named)).toList();
    if (meant.size() == 1) {
      return meant.get(0);
    }
    typed.fault(
        fields.part(),
        "Which part is stopped? One of "
            + among.stream().map(PartChoice::code).collect(Collectors.joining(", "))
            + ".");
    return null;
  }

  private static LocalDate until(Typed typed, Fields fields, LocalDate today) {
    LocalDate until = typed.day(fields.until());
    if (until == null) {
      typed.fault(fields.until(), "Until which day is it watched?");
    } else if (!until.isAfter(today)) {
      typed.fault(fields.until(), "A day to come, please.");
      return null;
    } else if (until.isAfter(today.plusYears(1))) {
      typed.fault(fields.until(), "At most a year: then someone looks again.");
      return null;
    }
    return until;
  }
}
