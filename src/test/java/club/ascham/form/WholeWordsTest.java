package club.ascham.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WholeWordsTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "Found behind the net.",
        "Scratch in the lacquer only",
        "It can’t be the limbs.",
        "12 dry looses last night",
        "Bulletin 2026-04 names this batch",
        "Elle était derrière la cible.",
        "Риска только в лаке",
        "Βρέθηκε πίσω από το δίχτυ",
        "נבדק ולא נמצא סדק",
        "فحص ولم يوجد أي شرخ",
        "जाँच में कोई दरार नहीं मिली",
        "弓臂没有裂纹",
        "リムにひびなし",
        "ตรวจแล้วไม่มีรอยร้าว",
        "균열이 없어서 다시 사용함",
        "Bị nứt ở cánh dưới"
      })
  void whatAPersonWouldCallASentence_isAReason(String text) {
    assertTrue(WholeWords.isReason(text), text);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "x",
        "ok",
        "Cracked.",
        "all good",
        "aaaaaaaaaaaaaaaa",
        "aaa aaaa aaaaa aaaaaa",
        "ababab bababa abab baba",
        "asdf asdf asdf asdf",
        "x x x x x x x x x x x x x x",
        "a b c d e f g h i j k l m n",
        ". . . . . . . . . . . .",
        "1234 5678 9012 3456",
        "........................",
        "--- !!! ???",
        "it is so",
        "да",
        "да да да да да да",
        "坏",
        "坏坏坏坏坏坏坏坏",
        "ชชชชชชชชชชชช",
        "🏹🏹🏹 🏹🏹🏹 🏹🏹🏹"
      })
  void aLetterAWordOrTheSameAgain_isNone(String text) {
    assertFalse(WholeWords.isReason(text), text);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "judged",
        "Judged.",
        "Common practice",
        "common practice.",
        "Maker's manual",
        "The club's coach, by eye, March 2026",
        "教练手册第三页"
      })
  void aBookAPersonOrThatThereIsNone_isASource(String text) {
    assertTrue(WholeWords.isSource(text), text);
  }

  @ParameterizedTest
  @ValueSource(strings = {"x", "me", "book", "judgedjudged", "aaaa aaaa", "p. 3"})
  void aLetterOrAWord_isNoSource(String text) {
    assertFalse(WholeWords.isSource(text), text);
  }

  @Test
  @DisplayName("an empty field is asked for in its own words, a letter in those of all reasons")
  void theMessage_standsAtItsField() {
    Typed empty = Typed.of(Map.of("why", "  "));
    assertNull(empty.reason("why", 500, "Why is it out?"));
    assertEquals("Why is it out?", empty.messageAt("why"));

    Typed letter = Typed.of(Map.of("why", "x"));
    assertNull(letter.reason("why", 500, "Why is it out?"));
    assertEquals(WholeWords.WANTED, letter.messageAt("why"));
    assertEquals("x", letter.value("why"));

    Typed whole = Typed.of(Map.of("why", " Found behind the net. "));
    assertEquals("Found behind the net.", whole.reason("why", 500, "Why is it out?"));
    assertTrue(whole.sound());
  }

  @Test
  void aReasonThatNeedNotBeGiven_mayBeLeftOutButNotBeALetter() {
    Typed empty = Typed.nothing();
    assertNull(empty.reasonIfAny("why", 500));
    assertTrue(empty.sound());

    Typed letter = Typed.of(Map.of("why", "x"));
    assertNull(letter.reasonIfAny("why", 500));
    assertEquals(WholeWords.WANTED, letter.messageAt("why"));
  }

  @Test
  void aSource_mayBeThatNobodyPrintedIt() {
    Typed judged = Typed.of(Map.of("source", "judged"));
    assertEquals("judged", judged.source("source", 500, "Whence?"));
    assertTrue(judged.sound());

    Typed letter = Typed.of(Map.of("source", "x"));
    assertNull(letter.source("source", 500, "Whence?"));
    assertEquals(WholeWords.WANTED, letter.messageAt("source"));
  }
}
