package club.ascham.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.bow.Build;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class SignsTest {

  // jordansequillion.wordpress.com, "damage", and olympicarcheryinschools.org, "equipment safety"
  // (both R): one strand gone, change the string. tesar-karasek.eu (R) would still shoot it.
  @Test
  @DisplayName("one broken strand is a stop (Olympic Archery in Schools, Equipment Safety)")
  void oneBrokenStrand_isAStop() {
    assertEquals(Gravity.STOP, gravity("string-strand-broken"));
  }

  // leithcommunityarchers.org.uk (R): frayed strands, loose or frayed serving, wrong nocking point,
  // wrong length; limbs twisted, worn tips, cracked or delaminated: withdraw, report.
  @ParameterizedTest
  @DisplayName("a club's published list of what is withdrawn (Leith Community Archers)")
  @CsvSource({
    "string-frayed",
    "string-serving-loose",
    "string-nocking-point",
    "string-wrong",
    "limbs-twisted",
    "limbs-tip-worn",
    "limbs-delaminated",
    "limbs-crack-across"
  })
  void whatAClubWithdraws_isAStop(String key) {
    assertEquals(Gravity.STOP, gravity(key));
  }

  // archersgueretois.kazeo.com (R): a serving like a coil spring means a failed strand, urgent.
  @Test
  @DisplayName("a serving like a coil spring is a stop (Archers Guéretois)")
  void coiledServing_isAStop() {
    assertEquals(Gravity.STOP, gravity("string-serving-coiled"));
  }

  // sca.org.nz, equipment inspection guidelines (R): if unsure, do not pass.
  @Test
  @DisplayName("an uncertain crack is a stop (SCA New Zealand, guidelines)")
  void uncertainCrack_isAStop() {
    assertEquals(Gravity.STOP, gravity("limbs-unsure"));
  }

  // ballisticbowstrings.com (R): wax when fuzzy, never on the servings.
  @Test
  @DisplayName("a fuzzy string is waxed and goes out (Olympic Archery in Schools)")
  void fuzzyString_isANote() {
    assertEquals(Gravity.NOTE, gravity("string-fuzzy"));
  }

  @Test
  void keys_areUnique() {
    assertFalse(Signs.all().isEmpty());
    List<String> keys = Signs.all().stream().map(KnownSign::key).toList();
    assertEquals(keys.size(), keys.stream().distinct().count());
  }

  @Test
  void everySign_saysWhatItIsAndWhere() {
    for (KnownSign sign : Signs.all()) {
      assertFalse(sign.words().isBlank(), sign.key());
      assertFalse(sign.source().isBlank(), sign.key());
      assertEquals(sign.words(), sign.seen().words());
      assertEquals(sign.gravity(), sign.seen().gravity());
      assertEquals(sign.part(), sign.seen().part());
      assertEquals(sign.source(), sign.seen().source());
    }
  }

  @ParameterizedTest
  @EnumSource(Build.class)
  void everyPart_offersTheSoundOneFirstAndThenByGravity(Build build) {
    for (BowPart part : Signs.parts(build)) {
      List<Gravity> gravities = Signs.of(part, build).stream().map(KnownSign::gravity).toList();
      assertEquals(Gravity.FINE, gravities.get(0));
      assertEquals(gravities.stream().sorted().toList(), gravities);
      assertTrue(gravities.contains(Gravity.STOP));
    }
  }

  @Test
  void mustAnswer_stringLimbsAndBoltsWhereThereAreAny() {
    List<BowPart> all = List.of(BowPart.STRING, BowPart.LIMBS, BowPart.BOLTS);
    assertEquals(all, Signs.mustAnswer(Build.ADJUSTABLE));
    assertEquals(all, Signs.mustAnswer(Build.SCREW_IN));
    assertEquals(List.of(BowPart.STRING, BowPart.LIMBS), Signs.mustAnswer(Build.ONE_PIECE));
  }

  @Test
  void screwIn_knowsNoLockingScrewsAndNoTurnsOut() {
    for (KnownSign sign : Signs.of(BowPart.BOLTS, Build.SCREW_IN)) {
      assertFalse(sign.words().contains("locking"), sign.key());
      assertFalse(sign.words().contains("further out"), sign.key());
    }
  }

  @Test
  void byKey_unknown_isEmpty() {
    assertTrue(Signs.byKey("string-enchanted").isEmpty());
  }

  private static Gravity gravity(String key) {
    return Signs.byKey(key).orElseThrow().gravity();
  }
}
