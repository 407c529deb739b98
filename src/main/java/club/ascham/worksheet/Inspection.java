package club.ascham.worksheet;

import club.ascham.form.Typed;
import club.ascham.report.Answering;
import club.ascham.report.Report;
import club.ascham.time.ClubTime;
import club.ascham.verdict.Gravity;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * An inspection as a person gives it.
 *
 * @param happened now, or noon of a day before today: paper first, typed later
 * @param answers to what was told of the item, by the number of the report
 */
record Inspection(Inspected found, Instant happened, Map<Long, Answering> answers) {
  private static final int LONGEST = 1000;
  private static final double MOST_TURNS = 12;

  /**
   * Reads one answer for each look by its key, {@code upperTurnsOut}, {@code lowerTurnsOut}, {@code
   * words}, {@code partsUsed}, {@code on}, and an answer to each report that is answered.
   *
   * @param open what was told of it and nobody has answered
   */
  static Optional<Inspection> parse(
      Typed typed, Subject subject, InspectionList list, List<Report> open, ClubTime time) {
    Map<String, Gravity> seen = new LinkedHashMap<>();
    for (Look look : list.looks()) {
      Gravity answer = typed.word(look.key(), Gravity.class);
      if (answer == null) {
        typed.fault(look.key(), "Fine, note or stop? Each look needs its answer.");
      } else {
        seen.put(look.key(), answer);
      }
    }
    Double upper = list.asksTurns() ? turns(typed, "upperTurnsOut") : null;
    Double lower = list.asksTurns() ? turns(typed, "lowerTurnsOut") : null;
    String words = words(typed, seen.values());
    String parts = typed.optional("partsUsed", LONGEST);
    Instant happened = happened(typed, subject, time);
    Map<Long, Answering> answers = answers(typed, subject, open, time.today());
    return typed.sound()
        ? Optional.of(
            new Inspection(new Inspected(seen, upper, lower, words, parts), happened, answers))
        : Optional.empty();
  }

  /** What was found in whole words; of what is fine throughout, whatever is noted. */
  private static String words(Typed typed, Collection<Gravity> answers) {
    if (answers.contains(Gravity.STOP)) {
      return typed.reason("words", LONGEST, "What was wrong? Whoever mends it reads this.");
    }
    return answers.contains(Gravity.NOTE)
        ? typed.reason("words", LONGEST, "What was noted, or put right? A few words.")
        : typed.text("words", LONGEST);
  }

  /** Whoever inspects one part stops that part. */
  private static Map<Long, Answering> answers(
      Typed typed, Subject subject, List<Report> open, LocalDate today) {
    Map<Long, Answering> answers = new LinkedHashMap<>();
    for (Report report : open) {
      Answering.parse(
              typed,
              Answering.Fields.of(Long.toString(report.id())),
              report.dangerous(),
              report.parts().stream().filter(part -> part.item().equals(subject.id())).toList(),
              today)
          .ifPresent(answer -> answers.put(report.id(), answer));
    }
    return answers;
  }

  /** Now, or noon of the day typed at {@code on}. */
  private static Instant happened(Typed typed, Subject subject, ClubTime time) {
    LocalDate on = typed.day("on");
    LocalDate today = time.today();
    if (on == null || on.equals(today)) {
      return time.now();
    }
    if (on.isAfter(today)) {
      typed.fault("on", "That day is still to come.");
    }
    subject.notYetHere(on).ifPresent(message -> typed.fault("on", message));
    return time.momentOf(on.atTime(LocalTime.NOON));
  }

  private static Double turns(Typed typed, String field) {
    if (!typed.has(field)) {
      return null;
    }
    OptionalDouble turns = TurnsText.read(typed.value(field));
    if (turns.isEmpty() || turns.getAsDouble() > MOST_TURNS) {
      typed.fault(field, "Turns such as 2, 2 1/4 or 2.25, please; at most 12.");
      return null;
    }
    return turns.getAsDouble();
  }
}
