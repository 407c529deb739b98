package club.ascham.issue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.bow.AgeBand;
import club.ascham.bow.Build;
import club.ascham.bow.DrawLength;
import club.ascham.bow.Experience;
import club.ascham.bow.Hand;
import club.ascham.bow.Known;
import club.ascham.bow.LimbSize;
import club.ascham.bow.LimbsSpec;
import club.ascham.bow.OnePieceSpec;
import club.ascham.bow.RiserSpec;
import club.ascham.bow.StringMaterial;
import club.ascham.bow.StringSpec;
import club.ascham.bow.Suited;
import club.ascham.id.ItemId;
import club.ascham.loan.Archer;
import club.ascham.register.ItemKind;
import club.ascham.rig.Part;
import club.ascham.units.ItemCode;
import club.ascham.units.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What could be assembled for an archer when no rig is ready. */
class AssemblyOfferTest {
  private static final Archer ADULT =
      new Archer(
          Hand.RIGHT,
          null,
          new DrawLength(Length.ofInches(27), false),
          AgeBand.ADULT,
          Experience.BEGINNER);
  private int next = 300;

  @Test
  void riserLimbsAndString_thatFit_makeAnOffer() {
    Part riser = riser(Hand.RIGHT);
    Part limbs = limbs(20);
    Part string = string(68);
    List<Suited<AssemblyOffer>> offers =
        AssemblyOffer.suited(ADULT, List.of(riser, limbs, string(66), string));
    assertEquals(1, offers.size());
    AssemblyOffer offer = offers.get(0).rig();
    assertEquals(
        List.of(riser, limbs, string), List.of(offer.body(), offer.limbs(), offer.string()));
    assertEquals(
        "/rigs/new?body=" + riser.code() + "&limbs=" + limbs.code() + "&string=" + string.code(),
        offer.page());
  }

  @Test
  void otherHand_noString_tooHeavy_makeNone() {
    assertTrue(
        AssemblyOffer.suited(ADULT, List.of(riser(Hand.LEFT), limbs(20), string(68))).isEmpty());
    assertTrue(AssemblyOffer.suited(ADULT, List.of(riser(Hand.RIGHT), limbs(20))).isEmpty());
    assertTrue(
        AssemblyOffer.suited(ADULT, List.of(riser(Hand.RIGHT), limbs(40), string(68))).isEmpty());
  }

  @Test
  void noRiserAndNoLimbs_areNamedTwice() {
    List<Suited<AssemblyOffer>> offers =
        AssemblyOffer.suited(
            ADULT,
            List.of(
                riser(Hand.RIGHT),
                riser(Hand.RIGHT),
                limbs(20),
                limbs(18),
                string(68),
                string(68)));
    assertEquals(2, offers.size());
    assertEquals(2, offers.stream().map(one -> one.rig().body()).distinct().count());
    assertEquals(2, offers.stream().map(one -> one.rig().limbs()).distinct().count());
    assertTrue(offers.get(0).misfitScore() <= offers.get(1).misfitScore());
  }

  @Test
  void onePieceBow_takesNoLimbs() {
    Archer child =
        new Archer(
            Hand.RIGHT,
            null,
            new DrawLength(Length.ofInches(20), false),
            AgeBand.UP_TO_12,
            Experience.BEGINNER);
    Part bow =
        new Part(
            new ItemId(next),
            bare('B'),
            ItemKind.BOW,
            null,
            null,
            null,
            null,
            new OnePieceSpec(null, 58, 16, 24, Known.NO, null),
            null);
    List<Suited<AssemblyOffer>> offers = AssemblyOffer.suited(child, List.of(bow, string(58)));
    assertEquals(1, offers.size());
    assertTrue(!offers.get(0).rig().page().contains("limbs"));
  }

  private Part riser(Hand hand) {
    return new Part(
        new ItemId(next),
        bare('R'),
        ItemKind.RISER,
        null,
        null,
        new RiserSpec(Build.ADJUSTABLE, hand, 25, "ILF", null, null, false),
        null,
        null,
        null);
  }

  private Part limbs(double markedLb) {
    return new Part(
        new ItemId(next),
        bare('L'),
        ItemKind.LIMBS,
        null,
        null,
        null,
        new LimbsSpec(
            Build.ADJUSTABLE, LimbSize.MEDIUM, null, "ILF", null, markedLb, 28, 25, Known.NO, null),
        null,
        null);
  }

  private Part string(int forBowIn) {
    return new Part(
        new ItemId(next),
        bare('S'),
        ItemKind.STRING,
        null,
        null,
        null,
        null,
        null,
        new StringSpec(forBowIn, null, StringMaterial.POLYESTER, 12, null, null));
  }

  private String bare(char letter) {
    int number = ItemCode.nextIssuable(letter, next).orElseThrow();
    next = number + 1;
    return ItemCode.of(letter, number).orElseThrow().bare();
  }
}
