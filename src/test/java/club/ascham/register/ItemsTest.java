package club.ascham.register;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.bow.Band;
import club.ascham.bow.Build;
import club.ascham.bow.Hand;
import club.ascham.bow.Known;
import club.ascham.bow.LimbSize;
import club.ascham.bow.LimbsSpec;
import club.ascham.bow.OnePieceSpec;
import club.ascham.bow.RigSpec;
import club.ascham.bow.RiserSpec;
import club.ascham.bow.StringMaterial;
import club.ascham.bow.StringSpec;
import club.ascham.bow.StringerKind;
import club.ascham.bow.StringerSpec;
import club.ascham.bow.Style;
import club.ascham.fixture.ClubFixture;
import club.ascham.id.ItemId;
import club.ascham.store.StatementCount;
import club.ascham.units.ItemCode;
import club.ascham.units.Length;
import club.ascham.units.Money;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@QuarkusTest
@DisplayName("Items in the file")
class ItemsTest {
  private static final LocalDate DAY = LocalDate.of(2025, 4, 6);
  private static final Provenance FROM =
      new Provenance("Alderfen", "Sedge", "SG-1", "A1", DAY, new Money(7900), "first pair");

  @Inject ClubFixture fixture;
  @Inject Items items;
  @Inject PartSpecs specs;

  /** Adds and reads in a transaction of its own, as a use case does. */
  @ApplicationScoped
  static class ClubFixture {
    @Inject Items items;
    @Inject ItemRecords records;

    @Transactional
    public ItemId add(ItemDetails details) {
      int number =
          ItemCode.nextIssuable(
                  details.kind().letter(), items.lastNumber(details.kind().letter()) + 1)
              .orElseThrow();
      Item item = Item.of(ItemCode.of(details.kind().letter(), number).orElseThrow(), details, DAY);
      records.add(item, details);
      return item.id();
    }

    @Transactional
    public ItemDetails read(ItemId id) {
      return items.registered(List.of(id)).get(0).details();
    }
  }

  @Test
  void anItem_ofEachKind_isReadBackAsItWasRecorded() {
    for (ItemDetails details : everyKind()) {
      assertEquals(details, fixture.read(fixture.add(details)), details.kind().said());
    }
  }

  @Test
  void partsOfARig_makeItsSpec() {
    List<ItemDetails> kinds = everyKind();
    ItemId riser = fixture.add(kinds.get(0));
    ItemId limbs = fixture.add(kinds.get(1));
    ItemId bow = fixture.add(kinds.get(2));
    ItemId string = fixture.add(kinds.get(3));
    ItemId stringer = fixture.add(kinds.get(4));
    Parts parts = specs.of(List.of(riser, limbs, bow, string, stringer));

    RigSpec rig = parts.rig(riser, limbs, string, Style.SPLIT_FINGER);
    assertEquals(((Particulars.OfRiser) kinds.get(0).particulars()).spec(), rig.riser());
    assertEquals(((Particulars.OfLimbs) kinds.get(1).particulars()).spec(), rig.limbs());
    assertEquals(((Particulars.OfString) kinds.get(3).particulars()).spec(), rig.string());
    assertEquals(
        ((Particulars.OfBow) kinds.get(2).particulars()).spec(),
        parts.rig(bow, null, string, Style.SPLIT_FINGER).onePiece());
    assertEquals(
        ((Particulars.OfStringer) kinds.get(4).particulars()).spec(),
        parts.stringers().get(stringer));
  }

  @Test
  void specs_needOneStatement_howeverManyParts() {
    List<ItemId> many = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      many.add(fixture.add(everyKind().get(3)));
    }
    long before = StatementCount.run();
    assertEquals(12, specs.of(many).strings().size());
    assertEquals(1, StatementCount.run() - before);
    assertTrue(specs.of(List.of()).strings().isEmpty());
  }

  private static List<ItemDetails> everyKind() {
    return List.of(
        new ItemDetails(
            ItemKind.RISER,
            FROM,
            new Particulars.OfRiser(
                new RiserSpec(Build.ADJUSTABLE, Hand.LEFT, 25, "ILF", null, 4.5, true),
                Length.ofMm(1.25),
                1150)),
        new ItemDetails(
            ItemKind.LIMBS,
            FROM,
            new Particulars.OfLimbs(
                new LimbsSpec(
                    Build.ADJUSTABLE,
                    LimbSize.MEDIUM,
                    null,
                    "ILF",
                    "Sedge",
                    22.5,
                    28,
                    25,
                    Known.YES,
                    Band.ofInches(8.25, 9)),
                "A1U",
                "A1L")),
        new ItemDetails(
            ItemKind.BOW,
            FROM,
            new Particulars.OfBow(new OnePieceSpec(null, 54, 12, 24, Known.NO, null), 520)),
        new ItemDetails(
            ItemKind.STRING,
            FROM,
            new Particulars.OfString(
                new StringSpec(
                    68, Length.ofMm(1647), StringMaterial.HMPE, 16, Length.ofMm(0.45), 20),
                DAY)),
        new ItemDetails(
            ItemKind.STRINGER,
            FROM,
            new Particulars.OfStringer(new StringerSpec(StringerKind.TIP_TO_TIP, 48, 60))),
        new ItemDetails(
            ItemKind.ARROWS,
            FROM,
            new Particulars.OfKitItem(null, null, Length.ofInches(26), 1300, 217.5, 36, true)),
        new ItemDetails(
            ItemKind.TAB,
            FROM,
            new Particulars.OfKitItem(Hand.RIGHT, "M", null, null, null, null, false)));
  }
}
