package club.ascham.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.form.Typed;
import club.ascham.id.ItemId;
import club.ascham.id.RigId;
import club.ascham.report.Telling.Fields;
import club.ascham.report.Telling.WordsAlone;
import club.ascham.units.ItemCode;
import club.ascham.upkeep.Work;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What somebody tells, as it is read at every door. */
class TellingTest {
  private static final RigId RIG = new RigId(3);
  private static final List<PartChoice> BOW =
      List.of(part(1, 'R', "RISER"), part(2, 'L', "LIMBS"), part(3, 'S', "STRING"));

  private static PartChoice part(long id, char letter, String kind) {
    return new PartChoice(new ItemId(id), ItemCode.of(letter, 105).orElseThrow().bare(), kind, RIG);
  }

  private static Telling read(Typed typed) {
    return Telling.parse(typed, Fields.PLAIN, BOW, WordsAlone.ASK);
  }

  @ParameterizedTest(name = "signs “{0}”, dry {1}, strung {2}: {3}")
  @CsvSource({
    "crack,            , , CRACK",
    "'crack,bolt-loose', , , 'BOLT_LOOSE,CRACK'",
    "'fell, fell',     , , FELL",
    "'',             on, , 'FELL,LOOSED_WITHOUT_ARROW'",
    "fell,           on, , FELL",
    "'',               , on, CAME_BACK_STRUNG",
    "creak,          on, on, 'CAME_BACK_STRUNG,CREAK,FELL,LOOSED_WITHOUT_ARROW'",
  })
  void signs_areTheTicks_andTheOldOnesAmongThem(
      String signs, String dry, String strung, String read) {
    Typed typed =
        Typed.nothing()
            .with("signs", signs)
            .with("dryLooseOrFall", dry)
            .with("cameBackStrung", strung);
    assertEquals(
        Set.of(read.split(",")),
        read(typed).signs().stream().map(Enum::name).collect(Collectors.toSet()));
    assertTrue(typed.sound());
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({
    "not-known, ",
    "'', ",
    "rig-3, ",
    "limbs, LIMBS",
    "string, STRING",
    "r0105, RISER",
  })
  void thePart_isNamedByItsCodeOrItsKind_orNotKnown(String named, String kind) {
    String code = named.equals("r0105") ? BOW.get(0).code().toLowerCase() : named;
    Typed typed = Typed.nothing().with("signs", "crack").with("part", code);
    Telling told = read(typed);
    assertTrue(typed.sound());
    assertEquals(kind, told.part() == null ? null : told.part().kind());
  }

  @Test
  void whatCantBeRead_isSaidAtItsField() {
    Typed sign = Typed.nothing().with("signs", "crack,wobble");
    read(sign);
    assertTrue(sign.messageAt("signs").contains("wobble"));
    Typed part = Typed.nothing().with("signs", "crack").with("part", "tail");
    read(part);
    assertNotNull(part.messageAt("part"));
    Typed bare = Typed.nothing().with("signs", "something-else");
    read(bare);
    assertNotNull(bare.messageAt("words"));
    Typed untold = Typed.nothing();
    read(untold);
    assertNotNull(untold.messageAt("signs"));
  }

  @Test
  void wordsAlone_weighWhatTheDoorSays() {
    Typed asked = Typed.nothing().with("words", "it felt odd");
    assertTrue(read(asked).isNothing());
    assertNotNull(asked.messageAt("signs"));
    Typed seen = Typed.nothing().with("words", "it felt odd");
    assertEquals(
        Set.of(Noticed.SOMETHING_ELSE),
        Telling.parse(seen, Fields.PLAIN, BOW, WordsAlone.SOMETHING_ELSE).signs());
  }

  @ParameterizedTest(name = "“{0}” asks for {1}")
  @CsvSource({
    "there is a crack near the tip, crack",
    "'Cracked, I think', crack",
    "it split, crack",
    "a loud BANG, bang",
    "it creaks, creak",
    "a click at full draw, creak",
    "my son dry fired it, loosed-without-arrow",
    "let go without an arrow, loosed-without-arrow",
    "it fell on the gravel, fell",
    "I dropped it, fell",
    "there is a loose bolt, bolt-loose",
    "the lower limb bolt is loose, bolt-loose",
    "the limb looks twisted, limb-twisted",
    "one strand is gone, strand",
  })
  void ownWordsOnlyPrompt_theyAskOnce_andTakeEitherAnswer(String words, String sign) {
    Typed typed = Typed.nothing().with("signs", "rest").with("words", words);
    Telling told = read(typed);
    assertEquals(Set.of(Noticed.REST), told.signs(), "words decide nothing");
    assertTrue(typed.messageAt("words").startsWith("You wrote “"), typed.messageAt("words"));
    assertEquals(sign, typed.suggestionAt("words"));

    Typed yes = Typed.nothing().with("signs", "rest," + sign).with("words", words);
    assertTrue(read(yes).isDangerous());
    assertTrue(yes.sound());
    Typed no = Typed.nothing().with("signs", "rest").with("words", words).with("notSo", "on");
    assertEquals(Set.of(Noticed.REST), read(no).signs());
    assertTrue(no.sound());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"the grip is sticky", "foyer", "a feller came by", "laundry", "it works well"})
  void otherWords_askNothing(String words) {
    Typed typed = Typed.nothing().with("signs", "rest").with("words", words);
    read(typed);
    assertNull(typed.messageAt("words"));
  }

  @Test
  void ofSeveralBows_oneMustBeNamed() {
    List<PartChoice> two =
        List.of(
            BOW.get(0),
            new PartChoice(
                new ItemId(9), ItemCode.of('R', 106).orElseThrow().bare(), "RISER", new RigId(4)));
    Typed unnamed = Typed.nothing().with("signs", "crack");
    Telling.parse(unnamed, Fields.PLAIN, two, WordsAlone.ASK);
    assertNotNull(unnamed.messageAt("part"));
    Typed named = Typed.nothing().with("signs", "crack").with("part", "rig-4");
    assertEquals(new RigId(4), Telling.parse(named, Fields.PLAIN, two, WordsAlone.ASK).rig());
    assertTrue(named.sound());
  }

  @ParameterizedTest(name = "{1} of a {0}: {2}")
  @CsvSource({
    "RISER, CRACK, RISER_INSPECTION",
    "RISER, BOLT_LOOSE, BOLT_INSPECTION",
    "LIMBS, BOLT_LOOSE, LIMB_INSPECTION",
    "BOW, FELL, LIMB_INSPECTION",
    "STRING, STRAND, STRING_REPLACEMENT",
    "STRINGER, SOMETHING_ELSE, STRINGER_INSPECTION",
    "ARROWS, CRACK, ARROW_INSPECTION",
    "TAB, CRACK, ",
  })
  void eachKind_hasTheWorkThatTells(String kind, Noticed sign, Work work) {
    assertEquals(work == null ? List.of() : List.of(work), Remedy.of(kind, Set.of(sign)));
  }

  @Test
  void aLooseBoltAndAFall_askForBothOfTheRiser() {
    assertEquals(
        List.of(Work.BOLT_INSPECTION, Work.RISER_INSPECTION),
        Remedy.of("RISER", Set.of(Noticed.BOLT_LOOSE, Noticed.FELL)));
  }
}
