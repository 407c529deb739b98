package club.ascham.story;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NameInTextTest {
  @ParameterizedTest(name = "{0} in “{1}”: {2}")
  @CsvSource(
      delimiter = '|',
      value = {
        "Ann Lee | Seen by ann  LEE. | Seen by X.",
        "Ann Lee | Seen by Ann Leeson. | Seen by Ann Leeson.",
        "Ann Lee | Joann Lee did. | Joann Lee did.",
        "Ann Lee | Ann and Lee | Ann and Lee",
        "Lee | Lee’s bow; Lee-Enfield; lee | X’s bow; X-Enfield; X",
        "Émile Çelik | ÉMILE ÇELIK | X",
        "A.+ (x) | A.+ (x), Abb (x) | X, Abb (x)",
        "07700 900555 | call 07700 900555! | call X!"
      })
  void aName_isItsWholeWords_inAnyCase(String name, String text, String without) {
    NameInText named = new NameInText(name);
    assertEquals(!text.equals(without), named.isIn(text));
    assertEquals(without, named.replacedIn(text, "X"));
  }

  @Test
  void aFullName_isSure_aNameOfOneWordAnybodys() {
    assertEquals(
        new Forgotten(List.of("Ann van Lee", "ann@lee.example"), List.of("Lee")),
        Forgotten.of("Ann van Lee", "ann@lee.example", null));
    assertEquals(new Forgotten(List.of(), List.of("anna")), Forgotten.of("anna"));
  }
}
