package club.ascham.register;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.bow.LimbsSpec;
import club.ascham.form.Typed;
import club.ascham.units.Length;
import club.ascham.units.LengthUnit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class ItemReaderTest {
  private static final Currency POUNDS = Currency.getInstance("GBP");
  private static final LocalDate TODAY = LocalDate.of(2026, 6, 1);

  private static final Map<ItemKind, String> ENOUGH =
      Map.of(
          ItemKind.RISER, "build=adjustable;hand=right;lengthIn=25;limbFitting=ILF",
          ItemKind.LIMBS, "build=adjustable;size=medium;markedLb=22;limbFitting=ILF",
          ItemKind.BOW, "bowLengthIn=54;markedLb=12",
          ItemKind.STRING, "forBowIn=68;material=polyester",
          ItemKind.STRINGER, "stringerKind=tip-to-tip;bowFromIn=60;bowToIn=70",
          ItemKind.ARROWS, "arrowLength=26 in;arrowCount=6",
          ItemKind.TAB, "hand=left",
          ItemKind.QUIVER, "");

  /** Each line: kind, what is changed in a sound form, the field at fault, words of the message. */
  @ParameterizedTest(name = "{0} with {1}: {2}")
  @CsvSource(
      delimiter = '|',
      value = {
        "RISER    | build=              | build         | slot in or are screwed on",
        "RISER    | build=one-piece     | build         | registered as one",
        "RISER    | hand=               | hand          | which hand draws",
        "RISER    | hand=both           | hand          | right, left",
        "RISER    | lengthIn=           | lengthIn      | length in inches",
        "RISER    | lengthIn=635        | lengthIn      | from 13 to 32",
        "RISER    | lengthIn=24.5       | lengthIn      | whole number",
        "RISER    | limbFitting=        | limbFitting   | which limb fitting",
        "RISER    | limbModel=Thatch    | limbModel     | goes by its limb fitting",
        "RISER    | maxTurnsOut=40      | maxTurnsOut   | from 0 to 12",
        "RISER    | threadPitch=12.5 cm | threadPitch   | can't be right",
        "RISER    | massG=12            | massG         | from 100 to 4000",
        "RISER    | lateral=perhaps     | lateral       | Yes or no",
        "RISER    | boughtOn=2026-06-02 | boughtOn      | in the future",
        "RISER    | boughtOn=31.2.2026  | boughtOn      | no such day",
        "RISER    | price=1,390         | price         | can't be read",
        "LIMBS    | size=               | size          | size marked on the limbs",
        "LIMBS    | bowLengthIn=68      | bowLengthIn   | not both",
        "LIMBS    | markedLb=           | markedLb      | marked weight",
        "LIMBS    | markedLb=220        | markedLb      | from 5 to 80",
        "LIMBS    | markedAtIn=71       | markedAtIn    | from 18 to 32",
        "LIMBS    | limbFitting=        | limbFitting   | which fitting",
        "LIMBS    | braceLow=210 mm     | braceHigh     | two ends",
        "LIMBS    | braceHigh=9         | braceLow      | two ends",
        "LIMBS    | braceLow=9;braceHigh=8.5 | braceHigh | below the lower",
        "LIMBS    | hmpeTips=maybe      | hmpeTips      | yes, no, unknown",
        "BOW      | bowLengthIn=         | bowLengthIn  | bow's length",
        "BOW      | bowLengthIn=44      | bowLengthIn   | from 48 to 72",
        "BOW      | markedLb=           | markedLb      | marked weight",
        "STRING   | forBowIn=           | forBowIn      | its label says",
        "STRING   | material=           | material      | what it is made of",
        "STRING   | material=dacron     | material      | polyester, hmpe, lcp, other",
        "STRING   | measuredLength=68   | measuredLength | label and the length seem to be confused",
        "STRING   | measuredLength=1727 mm | measuredLength | label and the length seem to be confused",
        "STRING   | measuredLength=60   | measuredLength | 2 1/2 to 5 in less",
        "STRING   | measuredLength=1650 | measuredLength | Did you mean 1650 mm",
        "STRING   | strands=2           | strands       | from 4 to 40",
        "STRING   | strandDiameter=45   | strandDiameter | can't be right",
        "STRING   | twists=-3           | twists        | from 0 to 150",
        "STRING   | firstUsed=2027-01-01 | firstUsed    | in the future",
        "STRING   | boughtOn=2026-05-01;firstUsed=2026-04-01 | firstUsed | before it was bought",
        "STRINGER | stringerKind=       | stringerKind  | which kind",
        "STRINGER | bowToIn=48          | bowToIn       | shorter than the shortest",
        "ARROWS   | arrowLength=        | arrowLength   | keeps the fingers safe",
        "ARROWS   | arrowLength=66      | arrowLength   | Did you mean 66 cm",
        "ARROWS   | arrowCount=0        | arrowCount    | from 1 to 2000",
        "ARROWS   | arrowCount=         | arrowCount    | how many arrows",
        "ARROWS   | spine=20            | spine         | from 200 to 3000",
        "ARROWS   | arrowMassGr=20      | arrowMassGr   | Did you mean 20 g (308.6 gr)",
        "ARROWS   | arrowMassGr=20 gr   | arrowMassGr   | from 50 to 1500",
        "ARROWS   | arrowMassGr=150 g   | arrowMassGr   | from 50 to 1500",
        "ARROWS   | arrowMassGr=light   | arrowMassGr   | from 50 to 1500",
        "ARROWS   | hand=right          | hand          | either hand",
        "TAB      | hand=               | hand          | which hand draws",
        "TAB      | arrowLength=26      | arrowLength   | Only arrows",
        "TAB      | arrowMassGr=300     | arrowMassGr   | Only arrows",
        "QUIVER   | pool=yes            | pool          | Only arrows",
      })
  void aFault_isSaidAtItsField(ItemKind kind, String changed, String field, String words) {
    Typed typed = typed(kind, changed);

    Optional<ItemDetails> details = read(kind, typed);

    assertTrue(details.isEmpty(), "nothing is read");
    assertNotNull(typed.messageAt(field), "faults are at " + typed.faults().keySet());
    assertTrue(typed.messageAt(field).contains(words), typed.messageAt(field));
    assertEquals(1, typed.faults().size(), "no other fault: " + typed.faults());
  }

  @ParameterizedTest
  @EnumSource(
      value = ItemKind.class,
      names = {"RISER", "LIMBS", "BOW", "STRING", "STRINGER", "ARROWS", "TAB", "QUIVER"})
  void theLeastThatIsEnough_isRead(ItemKind kind) {
    Typed typed = typed(kind, "");
    assertTrue(read(kind, typed).isPresent(), () -> typed.faults().toString());
  }

  @Test
  void aScrewInRiser_goesByTheModel_andHasNothingToAdjust() {
    Typed typed = typed(ItemKind.RISER, "build=screw-in;limbFitting=ILF;maxTurnsOut=3;lateral=yes");
    read(ItemKind.RISER, typed);
    assertEquals(
        Set.of("limbModel", "limbFitting", "maxTurnsOut", "lateral"), typed.faults().keySet());
    assertTrue(
        read(ItemKind.RISER, typed(ItemKind.RISER, "build=screw-in;limbFitting=;limbModel=Thatch"))
            .isPresent());
  }

  @Test
  void screwInLimbs_needTheirModel() {
    Typed typed = typed(ItemKind.LIMBS, "build=screw-in;limbFitting=;size=;bowLengthIn=66");
    read(ItemKind.LIMBS, typed);
    assertEquals(Set.of("model"), typed.faults().keySet());
    assertTrue(
        read(
                ItemKind.LIMBS,
                typed(
                    ItemKind.LIMBS,
                    "build=screw-in;limbFitting=;size=;bowLengthIn=66;model=Thatch"))
            .isPresent());
  }

  @Test
  void aWeight_isMarkedAt28Inches_unlessItSaysOtherwise() {
    assertEquals(28, limbs("").markedAtIn());
    assertEquals(24, limbs("markedAtIn=24").markedAtIn());
  }

  @Test
  void unitsThatPeopleWriteBehindANumber_doNoHarm() {
    Particulars.OfRiser riser =
        (Particulars.OfRiser)
            read(ItemKind.RISER, typed(ItemKind.RISER, "lengthIn=25\";massG=1150 g"))
                .orElseThrow()
                .particulars();
    assertEquals(25, riser.spec().lengthIn());
    assertEquals(1150, riser.massG());
    assertEquals(22.5, limbs("markedLb=22,5 lb").markedLb());
  }

  @Test
  void aUnitlessLength_isReadInThePersonsUnit_butASmallOneInMillimetres() {
    Particulars.OfString string =
        (Particulars.OfString)
            read(
                    ItemKind.STRING,
                    typed(ItemKind.STRING, "measuredLength=64 3/4;strandDiameter=0.45"))
                .orElseThrow()
                .particulars();
    assertEquals(Length.ofInches(64.75), string.spec().measured());
    assertEquals(Length.ofMm(0.45), string.spec().strandDiameter());
  }

  @Test
  void arrows_areLongInInches_whateverThePersonsUnit() {
    Typed typed = typed(ItemKind.ARROWS, "arrowLength=26");
    ItemDetails details =
        ItemReader.read(
                ItemKind.ARROWS,
                typed,
                new ItemReader.Setting(LengthUnit.MILLIMETRE, POUNDS, TODAY))
            .orElseThrow();
    assertEquals(
        Length.ofInches(26), ((Particulars.OfKitItem) details.particulars()).arrowLength());
  }

  @ParameterizedTest(name = "{0} is {1} gr")
  @CsvSource({"312, 312", "'312,5 gr', 312.5", "20.2 g, 311.7", "300 Grains, 300"})
  void arrowsAreWeighed_inGrains_orInGrams(String written, double grains) {
    Typed typed = typed(ItemKind.ARROWS, "arrowMassGr=" + written);
    ItemDetails details = read(ItemKind.ARROWS, typed).orElseThrow();
    assertEquals(grains, ((Particulars.OfKitItem) details.particulars()).arrowMassGr());
  }

  @Test
  void nothingThatTheDemoClubOwns_isRefused_andWhatIsWritten_isReadAsTheSame() throws IOException {
    Map<String, ItemKind> lists =
        Map.of(
            "risers", ItemKind.RISER,
            "limbs", ItemKind.LIMBS,
            "bows", ItemKind.BOW,
            "strings", ItemKind.STRING,
            "stringers", ItemKind.STRINGER);
    int items = 0;
    for (Map.Entry<String, ItemKind> list : lists.entrySet()) {
      items += readAll(list.getKey(), list.getValue());
    }
    items += readAll("kit-items", null);
    assertTrue(items > 300, "the demo club owns " + items + " items");
  }

  private static int readAll(String list, ItemKind only) throws IOException {
    int items = 0;
    try (CSVParser rows =
        CSVParser.parse(
            Files.newBufferedReader(Path.of("demo-data", list + ".csv")),
            CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get())) {
      for (CSVRecord row : rows) {
        Typed typed = Typed.of(row.toMap());
        ItemKind kind = only == null ? typed.word("kind", ItemKind.class) : only;
        Optional<ItemDetails> details =
            ItemReader.read(
                kind,
                typed,
                new ItemReader.Setting(LengthUnit.MILLIMETRE, POUNDS, LocalDate.of(2027, 1, 1)));
        assertTrue(details.isPresent(), () -> list + " " + row.get(0) + ": " + typed.faults());
        for (LengthUnit unit : LengthUnit.values()) {
          Typed again = Typed.of(ItemWriter.write(details.get(), unit, POUNDS));
          assertEquals(
              details,
              ItemReader.read(
                  kind, again, new ItemReader.Setting(unit, POUNDS, LocalDate.of(2027, 1, 1))),
              () -> list + " " + row.get(0) + ": " + again.faults());
        }
        items++;
      }
    }
    return items;
  }

  @Test
  void oneSerial_doesNotStandOnSeveral() {
    Typed twelve = typed(ItemKind.STRING, "copies=12;serial=A1");
    assertEquals(12, Copies.read(twelve));
    assertTrue(twelve.messageAt("serial").contains("12 of them"));
    assertEquals(1, Copies.read(typed(ItemKind.STRING, "serial=A1")));
    Typed tooMany = typed(ItemKind.STRING, "copies=51");
    Copies.read(tooMany);
    assertNotNull(tooMany.messageAt("copies"));
    Typed sound = typed(ItemKind.STRING, "copies=50");
    Copies.read(sound);
    assertNull(sound.messageAt("copies"));
  }

  private static LimbsSpec limbs(String changed) {
    return ((Particulars.OfLimbs)
            read(ItemKind.LIMBS, typed(ItemKind.LIMBS, changed)).orElseThrow().particulars())
        .spec();
  }

  private static Optional<ItemDetails> read(ItemKind kind, Typed typed) {
    return ItemReader.read(kind, typed, new ItemReader.Setting(LengthUnit.INCH, POUNDS, TODAY));
  }

  /** A sound form of a kind with some fields changed; an empty text empties a field. */
  private static Typed typed(ItemKind kind, String changed) {
    Map<String, String> texts = new LinkedHashMap<>();
    for (String pair : (ENOUGH.get(kind) + ";" + changed).split(";")) {
      if (!pair.isBlank()) {
        String[] parts = pair.strip().split("=", 2);
        texts.put(parts[0], parts[1]);
      }
    }
    return Typed.of(texts);
  }
}
