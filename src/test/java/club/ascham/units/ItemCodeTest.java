package club.ascham.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ItemCodeTest {
  private static final ItemCode RISER_147 = new ItemCode("R0147J");

  // R = published; where each was read:
  // GRid: the release identifier's example A1-2425G-ABC1234002-M, as in python-stdnum,
  //   stdnum/iso7064/mod_37_36.py, and on packagist.org/packages/soundways/iso7064.
  // ISAN: 0000-0000-D07A-0090-Q-0000-0000-X, 0000-0001-8CFA-0000-I-0000-0000-K,
  //   0000-0001-8947-0000-8-0000-0000-D and 1881-66C7-3420-6541-Y-9F3A-0245-O (each two check
  //   characters, the second over everything before it but the first), as in python-stdnum,
  //   stdnum/isan.py.
  // Vendor: lobster-world.com/online/_data/docs/46/en/BasicISO7064Mod3736Checksum.html.
  @ParameterizedTest(name = "{0}: over {1} stands {2} (R, published example)")
  @CsvSource({
    "GRid (python-stdnum mod_37_36), A12425GABC1234002, M",
    "ISAN root (python-stdnum isan), 00000000D07A0090, Q",
    "ISAN whole (python-stdnum isan), 00000000D07A009000000000, X",
    "ISAN root (python-stdnum isan), 000000018CFA0000, I",
    "ISAN whole (python-stdnum isan), 000000018CFA000000000000, K",
    "ISAN root (python-stdnum isan), 0000000189470000, 8",
    "ISAN whole (python-stdnum isan), 000000018947000000000000, D",
    "ISAN root (python-stdnum isan), 188166C734206541, Y",
    "ISAN whole (python-stdnum isan), 188166C7342065419F3A0245, O",
    "a vendor's manual, 123AB, X",
    "a vendor's manual, DADPIDA3897722461, J",
  })
  void theCheckCharacterIsThatOfIso7064Mod37And36(String source, String payload, char check) {
    assertEquals(check, ItemCode.checkCharacter(payload), source);
  }

  @ParameterizedTest
  @ValueSource(strings = {"r0147", "R-147", "R 147", "Ä"})
  void noCheckCharacterStandsOverAnythingButDigitsAndCapitals(String payload) {
    assertThrows(IllegalArgumentException.class, () -> ItemCode.checkCharacter(payload));
  }

  @Test
  void aCodeIsShownWithHyphens() {
    assertEquals("R-0147-J", ItemCode.of('R', 147).orElseThrow().display());
  }

  @Test
  void aCodeKnowsItsKindAndNumber() {
    assertEquals('R', RISER_147.kindLetter());
    assertEquals(147, RISER_147.number());
  }

  @ParameterizedTest(name = "[{0}]")
  @ValueSource(
      strings = {
        "R-0147-J",
        "R0147J",
        "r0147j",
        " r-0147-j ",
        "R 0147 J",
        "R–0147–J",
        "RO147J",
        "R-OI47-J",
        "r-oi47-j",
      })
  void aCodeIsKnownHoweverItIsTyped(String typed) {
    assertEquals(new CodeParse.Whole(RISER_147), ItemCode.parse(typed));
  }

  @Test
  void aCheckCharacterTypedAsTheLetterOIsNought() {
    ItemCode endingInNought = codeEndingIn('0');
    String typed = endingInNought.bare().substring(0, 5) + "O";

    assertEquals(new CodeParse.Whole(endingInNought), ItemCode.parse(typed));
  }

  @Test
  void aLimbCarriesItsPairsCodeWithUOrL() {
    ItemCode pair = ItemCode.of('L', 23).orElseThrow();

    assertEquals(new CodeParse.LimbOfPair(pair, true), ItemCode.parse(pair.display() + "-U"));
    assertEquals(new CodeParse.LimbOfPair(pair, false), ItemCode.parse(pair.bare() + "l"));
    assertEquals(pair.display() + "-U", new CodeParse.LimbOfPair(pair, true).display());
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"R-0147-K", "R-0148-J", "S-0147-J", "R-0417-J", "R-0147-K-U"})
  void aMistypedCodeOpensNothing(String typed) {
    CodeParse.WrongCheck wrong =
        assertInstanceOf(CodeParse.WrongCheck.class, ItemCode.parse(typed));

    assertTrue(wrong.message().contains("Read the label again."), wrong.message());
  }

  @Test
  void theMessageForAMistypedCodeDoesNotGiveAwayTheRightOne() {
    CodeParse.WrongCheck wrong =
        assertInstanceOf(CodeParse.WrongCheck.class, ItemCode.parse("R-0147-K"));

    assertFalse(wrong.message().contains("R-0147-J"), wrong.message());
  }

  @ParameterizedTest(name = "[{0}]")
  @ValueSource(
      strings = {
        "",
        " ",
        "-",
        "Maple 66",
        "R-0147",
        "R-147-J",
        "1-0147-J",
        "I-0147-J",
        "O-0147-J",
        "R-0147-J-X",
        "R-0147-J-UL",
        "R-01A7-J",
        "R-0147-*",
        "R٠١٤٧J",
        "<script>",
      })
  void whatHasNoCodesShapeIsNoCode(String typed) {
    assertInstanceOf(CodeParse.NotACode.class, ItemCode.parse(typed));
  }

  @Test
  void aNumberWhoseCheckCharacterReadsLikeADigitIsNeverIssued() {
    Set<Character> issued = new TreeSet<>();
    boolean skipped = false;
    for (int number = 0; number <= 9999; number++) {
      Optional<ItemCode> code = ItemCode.of('R', number);
      code.ifPresent(c -> issued.add(c.bare().charAt(5)));
      char check = ItemCode.checkCharacter("R%04d".formatted(number));
      if (check == 'I' || check == 'O') {
        assertTrue(code.isEmpty(), () -> "issued: " + code);
        skipped = true;
      }
    }

    assertTrue(skipped);
    assertEquals(34, issued.size());
    assertFalse(issued.contains('I') || issued.contains('O'), issued.toString());
  }

  @Test
  void twoCodesThatDifferByASwapTheCheckMissesAreBothNeverIssued() {
    // MOD 37,36 gives A0289 and A0298 the same check character.
    assertEquals(ItemCode.checkCharacter("A0289"), ItemCode.checkCharacter("A0298"));
    assertTrue(ItemCode.of('A', 289).isEmpty());
    assertTrue(ItemCode.of('A', 298).isEmpty());
    assertInstanceOf(CodeParse.WrongCheck.class, ItemCode.parse("A0289J"));
  }

  @Test
  void noSwapOfNeighboursInAnyRisersCodeOpensAnotherItem() {
    for (int number = 0; number <= 9999; number++) {
      ItemCode.of('R', number).ifPresent(ItemCodeLawsTest::noSwapOpensAnotherItem);
    }
  }

  @Test
  void moreThanNineInTenNumbersCanBeIssued() {
    int issued = 0;
    for (int number = 0; number <= 9999; number++) {
      issued += ItemCode.of('R', number).isPresent() ? 1 : 0;
    }

    assertTrue(issued > 9000, "only " + issued);
  }

  @Test
  void theNextIssuableNumberPassesOverThoseThatAreNot() {
    assertEquals(OptionalInt.of(147), ItemCode.nextIssuable('R', 147));
    int next = ItemCode.nextIssuable('A', 289).orElseThrow();

    assertTrue(next > 289 && ItemCode.of('A', next).isPresent());
  }

  @Test
  void afterTheLastNumberThereIsNone() {
    assertEquals(OptionalInt.empty(), ItemCode.nextIssuable('R', 10_000));
  }

  @ParameterizedTest
  @ValueSource(chars = {'I', 'O', 'r', '1', 'Ä'})
  void someLettersStandForNoKind(char letter) {
    assertThrows(IllegalArgumentException.class, () -> ItemCode.of(letter, 1));
  }

  @ParameterizedTest
  @ValueSource(ints = {-1, 10_000})
  void aNumberHasFourDigits(int number) {
    assertThrows(IllegalArgumentException.class, () -> ItemCode.of('R', number));
  }

  @ParameterizedTest
  @ValueSource(strings = {"R0147K", "R-0147-J", "r0147j", ""})
  void aCodeCantBeMadeOfAnythingWrong(String bare) {
    assertThrows(IllegalArgumentException.class, () -> new ItemCode(bare));
  }

  private static ItemCode codeEndingIn(char check) {
    for (int number = 0; number <= 9999; number++) {
      Optional<ItemCode> code = ItemCode.of('R', number);
      if (code.isPresent() && code.get().bare().charAt(5) == check) {
        return code.get();
      }
    }
    throw new AssertionError("no riser's code ends in " + check);
  }
}
