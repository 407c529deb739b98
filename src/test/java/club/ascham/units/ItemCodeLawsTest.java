package club.ascham.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.fail;

import java.time.Duration;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.StringLength;

class ItemCodeLawsTest {
  private static final String CHARACTERS = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";

  @Property
  void aCodeSurvivesBeingShownAndRead(@ForAll("codes") ItemCode code) {
    assertEquals(new CodeParse.Whole(code), ItemCode.parse(code.display()));
    assertEquals(new CodeParse.Whole(code), ItemCode.parse(code.bare()));
    assertEquals(code, ItemCode.of(code.kindLetter(), code.number()).orElseThrow());
  }

  @Property
  void aLimbsCodeSurvivesBeingShownAndRead(@ForAll("codes") ItemCode pair, @ForAll boolean upper) {
    CodeParse.LimbOfPair limb = new CodeParse.LimbOfPair(pair, upper);

    assertEquals(limb, ItemCode.parse(limb.display()));
  }

  @Property
  void noSingleWrongCharacterOpensAnotherItem(@ForAll("codes") ItemCode code) {
    for (int at = 0; at < 6; at++) {
      for (char wrong : CHARACTERS.toCharArray()) {
        String typed = code.bare().substring(0, at) + wrong + code.bare().substring(at + 1);
        opensNothingElse(code, typed);
        opensNothingElse(code, typed + "U");
      }
    }
  }

  @Property
  void noSwapOfNeighboursOpensAnotherItem(@ForAll("codes") ItemCode code) {
    noSwapOpensAnotherItem(code);
  }

  @Property
  void noTextWhateverIsMetWithAnythingButAnAnswer(@ForAll @StringLength(max = 12) String text) {
    CodeParse parse = ItemCode.parse(text);
    if (parse instanceof CodeParse.Whole whole) {
      assertEquals(parse, ItemCode.parse(whole.item().display()));
    }
  }

  @Property(tries = 100)
  void noLongTextTakesLong(
      @ForAll("codes") ItemCode code, @ForAll @StringLength(max = 5) String text) {
    assertTimeoutPreemptively(
        Duration.ofSeconds(2),
        () ->
            assertInstanceOf(
                CodeParse.NotACode.class, ItemCode.parse((code.display() + text).repeat(4_000))));
  }

  @Provide
  Arbitrary<ItemCode> codes() {
    return Combinators.combine(
            Arbitraries.chars().with("ABCDEFGHJKLMNPQRSTUVWXYZ"),
            Arbitraries.integers().between(0, 9999))
        .as(ItemCode::of)
        .filter(Optional::isPresent)
        .map(Optional::orElseThrow);
  }

  static void noSwapOpensAnotherItem(ItemCode code) {
    for (String right : new String[] {code.bare(), code.bare() + "U", code.bare() + "L"}) {
      for (int at = 0; at + 1 < right.length(); at++) {
        opensNothingElse(
            code,
            right.substring(0, at)
                + right.charAt(at + 1)
                + right.charAt(at)
                + right.substring(at + 2));
      }
    }
  }

  /** O and I stand for 0 and 1, so the same item may be opened, and two equal neighbours swap. */
  private static void opensNothingElse(ItemCode code, String typed) {
    CodeParse parse = ItemCode.parse(typed);
    ItemCode opened = code;
    if (parse instanceof CodeParse.Whole whole) {
      opened = whole.item();
    } else if (parse instanceof CodeParse.LimbOfPair limb) {
      opened = limb.item();
    }
    if (!opened.equals(code)) {
      fail("%s typed as %s opens %s".formatted(code.display(), typed, opened.display()));
    }
    boolean sameReading = typed.replace('O', '0').replace('I', '1').startsWith(code.bare());
    assertEquals(
        sameReading,
        parse instanceof CodeParse.Whole || parse instanceof CodeParse.LimbOfPair,
        typed);
  }
}
