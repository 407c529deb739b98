package club.ascham.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.form.Typed;
import club.ascham.id.ItemId;
import club.ascham.units.ItemCode;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a person answers, as it is read at a check, an inspection and the report's own page. */
class AnsweringTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 5, 3);
  private static final PartChoice LIMBS = part('L', "LIMBS");
  private static final PartChoice STRING = part('S', "STRING");

  private static PartChoice part(char letter, String kind) {
    return new PartChoice(
        new ItemId(letter), ItemCode.of(letter, 105).orElseThrow().bare(), kind, null);
  }

  private static Optional<Answering> read(Typed typed, boolean dangerous, PartChoice... among) {
    return Answering.required(typed, dangerous, List.of(among), TODAY);
  }

  @Test
  void nothingSaid_leavesItOpen_andIsAskedForOnItsOwnPage() {
    Typed typed = Typed.nothing();
    assertTrue(
        Answering.parse(typed, Answering.Fields.of("7"), true, List.of(LIMBS), TODAY).isEmpty());
    assertTrue(typed.sound(), "at a check it may stay open");
    assertTrue(read(typed, true, LIMBS).isEmpty());
    assertEquals("What did you see? It stays open until someone says.", typed.messageAt("answer"));
  }

  @ParameterizedTest(name = "{0}, dangerous {1}, “{2}”, until {3}, part {4}: wrong at {5}")
  @CsvSource({
    "nothing-there, true,  both limbs are whole, ,           , ",
    "nothing-there, false, ,      ,           , ",
    "nothing-there, true,  ,      ,           , words",
    "nothing-there, true,  k,     ,           , words",
    "watch,         true,  x,     2026-05-04, , words",
    "watch,         false, a line in the lacquer,  2026-05-04, , ",
    "watch,         false, a line in the lacquer,  2027-05-03, , ",
    "watch,         false, a line in the lacquer,  2027-05-04, , until",
    "watch,         false, a line in the lacquer,  2026-05-03, , until",
    "watch,         false, a line in the lacquer,  ,           , until",
    "watch,         false, a line in the lacquer,  soon,       , until",
    "watch,         false, ,      2026-05-04, , words",
    "stop,          true,  the upper loop is gone,  ,      limbs, ",
    "stop,          true,  the upper loop is gone,  ,           , part",
    "stop,          true,  the upper loop is gone,  ,       tail, part",
    "stop,          true,  ,      ,      limbs, words",
    "maybe,         true,  the upper loop is gone,  ,           , answer",
  })
  void eachAnswer_needsWhatItNeeds(
      String answer, boolean dangerous, String words, String until, String part, String wrong) {
    Typed typed =
        Typed.nothing()
            .with("answer", answer)
            .with("words", words)
            .with("until", until)
            .with("part", part);
    Optional<Answering> read = read(typed, dangerous, LIMBS, STRING);
    assertEquals(wrong == null, read.isPresent());
    assertEquals(wrong == null ? List.of() : List.of(wrong), List.copyOf(typed.faults().keySet()));
  }

  @Test
  void theOnlyPart_needsNoNaming() {
    Typed typed = Typed.nothing().with("answer", "stop").with("words", "The loop is gone.");
    assertEquals(LIMBS, read(typed, true, LIMBS).orElseThrow().part());
  }
}
