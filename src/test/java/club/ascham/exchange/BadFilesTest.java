package club.ascham.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.exchange.Import.CsvFile;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is wrong with a file is named by line and column, in words. */
class BadFilesTest {
  private static final String STRINGERS =
      "code,maker,model,batch,serial,boughtOn,price,notes,stringerKind,bowFromIn,bowToIn,"
          + "registeredOn,retiredOn,retiredWhy,retiredNote\n";
  private static final String STRINGER =
      ",Marlwick,Club cord,,,2025-02-25,11.00,,tip-to-tip,62,70,,,,";
  private static final String BORROWERS = "number,name,contact,memberNo,ageBand,guardian\n";

  @TempDir Path folder;
  private EmptyClub club;

  @BeforeEach
  void open() throws SQLException {
    club = EmptyClub.in(folder);
  }

  @AfterEach
  void close() throws SQLException {
    club.close();
  }

  @Test
  void aSoundRow_withoutACode_isGivenTheNextOne() throws SQLException {
    ImportReport report = take(STRINGERS + STRINGER + "\n" + STRINGER + "\n");

    assertEquals(List.of(), report.bad());
    assertEquals(2, report.rows());
    assertTrue(club.csv("stringers").contains("\r\nT-0001-"), club.csv("stringers"));
    assertEquals(2, club.count("SELECT count(DISTINCT code) FROM item"));
    assertEquals(
        2, club.count("SELECT count(*) FROM item WHERE registered_on = '" + EmptyClub.TODAY + "'"));
  }

  @Test
  void aByteOrderMark_asSpreadsheetsWriteIt_isPassedOver() throws SQLException {
    assertEquals(List.of(), take("\uFEFF" + STRINGERS + STRINGER).bad());
  }

  @Test
  void linesEndingInLineFeeds_orBlankLines_areNoHindrance() throws SQLException {
    assertEquals(List.of(), take(STRINGERS + "\n" + STRINGER + "\n\n").bad());
  }

  @Test
  void aFileOfChecks_withTheTextOfAnEarlierVersion_isTurnedAway_andSaysWhereItsWordsGo()
      throws SQLException {
    assertWhole(
        "Its columns come nearest to “checks”, but this list does not know “verdictText”. What a"
            + " verdict says is a list of its own now, “verdict-lines”",
        ("number,rig,kind,happenedAt,recordedAt,by,setUp,allAsListed,brace,braceTyped,braceFrom,"
                + "tillerUpper,upperTyped,tillerLower,lowerTyped,dryLooseOrFall,cameBackStrung,"
                + "verdict,verdictText,corrects,correctionWhy,releasedAt,releasedBy\n")
            .getBytes(StandardCharsets.UTF_8));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "as-said | [\"Worn.\"] | LOOKS | “LOOKS” is none of look-along, same-point",
        "nothing-known | [\"Worn.\"] | | “nothing-known” is none of as-said",
      })
  void whatNoVerdictSays_isRefusedAtItsColumn(
      String saying, String saidOf, String step, String refusal) throws SQLException {
    String said =
        take("number,check,place,kind,saying,saidOf,step,byWhom,thousandths\n1,1,1,reason,"
                + saying
                + ",\""
                + saidOf.replace("\"", "\"\"")
                + "\","
                + (step == null ? "" : step)
                + ",,\n")
            .bad()
            .toString();
    assertTrue(said.contains(refusal), said);
  }

  @Test
  void anEmptyFile_saysSo() throws SQLException {
    assertWhole("It is empty.", new byte[0]);
  }

  @Test
  void latin1_isToldFromUtf8_byLineAndByte() throws SQLException {
    String text = STRINGERS + STRINGER + "\n" + STRINGER.replace("Marlwick", "Märlwick");
    assertWhole("line 3 holds the byte E4", text.getBytes(StandardCharsets.ISO_8859_1));
  }

  @ParameterizedTest
  @CsvSource({"UTF-16LE, UTF-16", "UTF-16BE, UTF-16", "UTF-16, UTF-16"})
  void utf16_isNamed(String charset, String said) throws SQLException {
    assertWhole(said, STRINGERS.getBytes(Charset.forName(charset)));
  }

  @Test
  void aSpreadsheet_isToldFromAFile() throws SQLException {
    assertWhole("spreadsheet", new byte[] {'P', 'K', 3, 4, 0, 0});
  }

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '~',
      value = {"~;~, “;”", "~\t~, tabs", "|, “|”"})
  void otherSeparators_areNamed(String separator, String said) throws SQLException {
    assertWhole(said, STRINGERS.replace(",", separator).getBytes(StandardCharsets.UTF_8));
  }

  @Test
  void aFileTooLarge_saysHowLarge() throws SQLException {
    assertWhole("at most 8,000,000", new byte[CsvText.MOST_BYTES + 1]);
  }

  @Test
  void tooManyLines_areRefused() throws SQLException {
    String text = BORROWERS + ",A,b,,adult,\n".repeat(CsvText.MOST_LINES + 1);
    assertWhole("more than 10,000 lines", text.getBytes(StandardCharsets.UTF_8));
  }

  @Test
  void tooManyLinesInAllFilesTogether_areRefused_andTheOrderOfSeveralGoesIsSaid() {
    Sheets read =
        Sheets.read(
            List.of(
                EmptyClub.file("them.csv", BORROWERS + ",A,b@c,,adult,\n".repeat(4)),
                EmptyClub.file("cords.csv", STRINGERS + (STRINGER + "\n").repeat(2))),
            new Surroundings(EmptyClub.POUNDS, 0),
            Map.of());
    assertEquals(2, read.atMost(6).sheets().size());
    assertEquals(List.of(), read.atMost(5).sheets());
    String said = read.atMost(5).unreadable().get(0).message();
    assertTrue(said.contains("6 lines, and 5 are taken at once"), said);
    assertTrue(said.contains("in this order: cords.csv, them.csv."), said);
  }

  @Test
  void howManyLinesAreTaken_isOneNumberWhereverItIsTold() throws IOException {
    assertTrue(
        Files.readString(Path.of("src", "docs", "security-verification.md"))
            .contains("%,d lines an import".formatted(CsvText.MOST_LINES)));
  }

  @Test
  void aLineBreakInAName_isRefusedAtItsCell() throws SQLException {
    ImportReport report = take(BORROWERS + ",\"Ann\r\nOther\",b@c,,adult,\n");
    assertEquals("it holds a line break; it stands on one line", report.bad().get(0).message());
    assertEquals("name", report.bad().get(0).column());
  }

  @Test
  void aQuotationMarkNeverClosed_isFound() throws SQLException {
    assertWhole(
        "quotation mark", (BORROWERS + ",\"A,b,,adult,\n").getBytes(StandardCharsets.UTF_8));
  }

  @Test
  void aMissingColumn_andAnUnknownOne_areNamedBesideTheNearestList() throws SQLException {
    ImportReport report = take(STRINGERS.replace("bowToIn", "bowUpTo") + STRINGER);
    String said = report.bad().get(0).message();
    assertTrue(said.contains("“stringers”"), said);
    assertTrue(said.contains("lacks “bowToIn”"), said);
    assertTrue(said.contains("does not know “bowUpTo”"), said);
  }

  @Test
  void columnsOfNoList_areShown() throws SQLException {
    String said = take("colour,mood\nred,fine\n").bad().get(0).message();
    assertTrue(said.contains("None of its columns is known") && said.contains("colour,mood"), said);
  }

  @Test
  void theSameColumnTwice_isRefused() throws SQLException {
    String said =
        take(BORROWERS.replace("memberNo", "name") + ",A,b,c,adult,").bad().get(0).message();
    assertTrue(said.contains("named “name”"), said);
  }

  @Test
  void columnsInAnotherOrder_areTakenByTheirNames() throws SQLException {
    assertEquals(
        List.of(), take("guardian,ageBand,memberNo,contact,name,number\n,adult,,b,A,\n").bad());
    assertEquals(1, club.count("SELECT count(*) FROM borrower WHERE name = 'A' AND contact = 'b'"));
  }

  @ParameterizedTest(name = "{0} = {1}: {2}")
  @CsvSource(
      delimiter = '|',
      value = {
        "code|T-0033-X|nobody's code",
        "code|nonsense|is not a code",
        "code|R-0101-E|begins with T",
        "boughtOn|2025-02-30|not a day",
        "boughtOn|02/25/2025|not a day",
        "price|11,5|can't be read as an amount",
        "price|-3|can't be read as an amount",
        "stringerKind|tip to saddle|none of tip-to-tip, tip-and-saddle",
        "bowFromIn|6 2|not a whole number",
        "bowFromIn|39|outside 40 to 72",
        "bowFromIn|''|every row needs it",
        "retiredWhy|broken|none of scrapped, sold, lost",
        "retiredWhy|lost|",
      })
  void aBadCell_isNamedByLineAndColumn(String column, String cell, String said)
      throws SQLException {
    List<String> header = List.of(STRINGERS.strip().split(","));
    String[] cells = STRINGER.split(",", -1);
    cells[header.indexOf(column)] = "\"" + cell + "\"";

    ImportReport report = take(STRINGERS + STRINGER + "\n" + String.join(",", cells) + "\n");

    assertEquals(1, report.badInAll(), report.bad().toString());
    BadCell bad = report.bad().get(0);
    assertEquals(3, bad.line());
    if (said == null) {
      assertEquals("retiredOn and retiredWhy belong together: give both or neither", bad.message());
    } else {
      assertEquals(column, bad.column());
      assertTrue(bad.message().contains(said), bad.message());
    }
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "212|has no unit",
        "8.5|Did you mean",
        "8.75 mm|Did you mean",
        "2120 mm|can't be right",
        "about 8 in|begin with a number",
      })
  void aBadLength_isAskedBack(String cell, String said) throws SQLException {
    ImportReport report = take("bowLengthIn,low,high,source\n54," + cell + ",230 mm,Measured\n");
    assertEquals("low", report.bad().get(0).column());
    assertTrue(report.bad().get(0).message().contains(said), report.bad().get(0).message());
  }

  @Test
  void inches_areTaken_andKeptExactly() throws SQLException {
    assertEquals(
        List.of(), take("bowLengthIn,low,high,source\n54,6 1/2 in,7.5 in,Measured\n").bad());
    assertEquals(
        "bowLengthIn,low,high,source\r\n54,165.1 mm,190.5 mm,Measured\r\n",
        club.csv("brace-bands"));
  }

  @Test
  void everyBadRow_isNamed_notOnlyTheFirst() throws SQLException {
    ImportReport report =
        take(
            BORROWERS
                + ",,b,,adult,\n,A,b,,grown-up,\n,A,b,,adult\n,Child,b,,up-to-12,\n,A,b,,adult,\n");
    assertEquals(
        List.of("line 2, “name”", "line 3, “ageBand”", "line 4", "line 5"),
        report.bad().stream().map(b -> b.where().replace("a.csv, ", "")).toList());
    assertEquals(
        "it has 5 cells and the first line names 6 columns", report.bad().get(2).message());
    assertEquals("a junior needs a guardian", report.bad().get(3).message());
  }

  @Test
  void lines_areCountedAsAnEditorCountsThem_whateverACellHolds() throws SQLException {
    ImportReport report =
        take(
            STRINGERS
                + STRINGER.replace("11.00,", "11.00,\"two\nlines\"")
                + "\n\n"
                + STRINGER.replace("tip", "tap")
                + "\n");
    assertEquals(5, report.bad().get(0).line());
  }

  @Test
  void whatSpreadsheetsMakeOfDaysAndAmounts_isUnderstood() throws SQLException {
    take(STRINGERS + STRINGER.replace("2025-02-25,11.00", "25/02/2025,11.5") + "\n");
    assertTrue(club.csv("stringers").contains(",2025-02-25,11.50,"), club.csv("stringers"));
  }

  @Test
  void theSameKeyTwice_pointsToTheFirst() throws SQLException {
    ImportReport report = take(BORROWERS + "7,A,b,,adult,\n7,B,c,,adult,\n");
    assertEquals("7 stands on line 2 already", report.bad().get(0).message());
  }

  @Test
  void aRowThatIsThereAlready_andDiffers_isRefused_sinceAnImportOnlyAdds() throws SQLException {
    take(BORROWERS + "7,A,b,,adult,\n");
    ImportReport report = take(BORROWERS + "7,A,c,,adult,\n");
    assertEquals("contact", report.bad().get(0).column());
    assertTrue(report.bad().get(0).message().contains("with “b” and not “c”"));
  }

  @Test
  void aRuleThatIsThereAlready_isChanged() throws SQLException {
    String rules = club.csv("upkeep-rules");
    ImportReport report = take(rules.replace(",730,", ",700,"));
    assertEquals(List.of(), report.bad());
    assertEquals(1, report.lists().get(0).changed());
    assertEquals(1, club.count("SELECT count(*) FROM upkeep_rule WHERE every_days = 700"));
  }

  @Test
  void aReferenceToNothing_isNamed() throws SQLException {
    ImportReport report =
        take(
            "number,rig,item,place,fromAt,untilAt\n"
                + "1,9,S-0201-B,string,2026-01-01T10:00:00Z,\n");
    assertEquals(
        List.of("there is no rig 9", "no item has the code S-0201-B"),
        report.bad().stream().map(BadCell::message).toList());
  }

  @Test
  void anUnknownPerson_isNamed() throws SQLException {
    String said =
        take("number,item,work,openedAt,by,why,blocks,cause,closedBy\n"
                + "1,S-0201-B,string-replacement,2026-01-01T10:00:00Z,nobody,Old,no,,\n")
            .bad()
            .get(1)
            .message();
    assertTrue(said.contains("no account is named “nobody”"), said);
  }

  @Test
  void whatTheDatabaseRefuses_isSaidInItsWords() throws SQLException {
    club.take(EmptyClub.file("s.csv", STRINGERS + STRINGER));
    String code = club.csv("stringers").split("\r\n")[1].split(",")[0];
    club.take(
        EmptyClub.file(
            "r.csv",
            "number,style,level,assembledAt,dissolvedAt\n"
                + "1,split-finger,beginner,2026-01-01T10:00:00Z,\n"));
    ImportReport report =
        take(
            "number,rig,item,place,fromAt,untilAt\n1,1," + code + ",limbs,2026-01-01T10:00:00Z,\n");
    assertEquals("That kind of part doesn't go there.", report.bad().get(0).message());
  }

  private ImportReport take(String text) throws SQLException {
    return club.take(EmptyClub.file("a.csv", text));
  }

  private void assertWhole(String said, byte[] bytes) throws SQLException {
    ImportReport report = club.take(new CsvFile("a.csv", bytes));
    assertEquals(1, report.badInAll());
    assertEquals(0, report.bad().get(0).line());
    assertTrue(report.bad().get(0).message().contains(said), report.bad().get(0).message());
  }
}
