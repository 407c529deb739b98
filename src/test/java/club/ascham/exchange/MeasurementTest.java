package club.ascham.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.form.Typed;
import club.ascham.measured.Measurement;
import club.ascham.units.Length;
import club.ascham.units.LengthText;
import club.ascham.units.LengthUnit;
import java.lang.reflect.RecordComponent;
import java.nio.file.Path;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What the table of measurements says is so wherever a measurement is typed, sent or kept. */
class MeasurementTest {
  private static final String AT = "'2026-02-01T10:00:00.000Z'";

  /** The tables that measurements are kept in, and what else a row of each needs. */
  private static final Map<String, String> ROWS =
      Map.of(
          "bow_check",
          "rig_id, kind, happened_at, recorded_at, checked_by, all_as_listed, verdict) VALUES (?, 1,"
              + " 'LOOK', %1$s, %1$s, 1, 1, 'ADJUST')",
          "set_up",
          "rig_id, begun_at, begun_by) VALUES (?, 1, %1$s, 1)",
          "adjustment",
          "rig_id, happened_at, recorded_at, done_by) VALUES (?, 1, %1$s, %1$s, 1)");

  private static final Map<String, String> LISTS =
      Map.of("bow_check", "checks", "set_up", "set-ups", "adjustment", "adjustments");

  @TempDir static Path folder;
  private static EmptyClub club;

  @BeforeAll
  static void aClubWithARig() throws SQLException {
    club = EmptyClub.in(folder);
    try (Statement statement = club.connection().createStatement()) {
      statement.execute(
          "INSERT INTO rig (id, style, level, assembled_at) VALUES (1, 'SPLIT_FINGER', 'BEGINNER', "
              + AT
              + ")");
    }
  }

  @AfterAll
  static void close() throws SQLException {
    club.close();
  }

  private static long low(Measurement one) {
    return one.isLength() ? one.kept().low().units() : one.low();
  }

  private static long high(Measurement one) {
    return one.isLength() ? one.kept().high().units() : one.high();
  }

  private static boolean holds(String table, Measurement one, long value) throws SQLException {
    String sql = "INSERT INTO %s (%s, %s".formatted(table, one.column(), ROWS.get(table));
    var before = club.connection().setSavepoint();
    try (PreparedStatement insert = club.connection().prepareStatement(sql.formatted(AT))) {
      insert.setLong(1, value);
      insert.execute();
      return true;
    } catch (SQLException refused) {
      assertTrue(refused.getMessage().contains("CHECK constraint"), refused.getMessage());
      return false;
    } finally {
      club.connection().rollback(before);
    }
  }

  private static List<Column> columns(Measurement one) {
    return Lists.all().stream()
        .filter(list -> LISTS.containsValue(list.name()))
        .flatMap(list -> list.columns().stream())
        .filter(column -> column.name().equals(one.field()))
        .toList();
  }

  private static boolean reads(Column column, Measurement one, long value) {
    String cell = one.isLength() ? LengthText.exact(new Length(value)) : Long.toString(value);
    return column.codec().read(cell, new Surroundings(EmptyClub.POUNDS, 0))
        instanceof CellReading.Value;
  }

  @ParameterizedTest
  @EnumSource
  void whatIsKept_isWhatTheDatabaseHolds_andWhatAFileMayBring(Measurement one) throws SQLException {
    List<Column> columns = columns(one);
    assertFalse(columns.isEmpty(), "no list has it");
    for (Column column : columns) {
      assertEquals(one.column(), column.field());
      for (long sound : new long[] {low(one), high(one)}) {
        assertTrue(holds(column.table(), one, sound), column.table() + " " + sound);
        assertTrue(reads(column, one, sound), column.table() + " " + sound);
      }
      for (long beyond : new long[] {low(one) - 1, high(one) + 1}) {
        assertFalse(holds(column.table(), one, beyond), column.table() + " " + beyond);
        assertFalse(reads(column, one, beyond), column.table() + " " + beyond);
      }
    }
  }

  private static Object typed(Measurement one, String text) {
    Typed typed = Typed.of(Map.of(one.field(), text));
    if (one.isLength()) {
      return one.length(typed, LengthUnit.MILLIMETRE);
    }
    return one.isWhole() ? (Object) one.count(typed) : one.number(typed);
  }

  @ParameterizedTest
  @EnumSource
  void whatIsAsked_isWhatAPersonMayType(Measurement one) {
    long low = one.isLength() ? one.asked().low().units() : one.low();
    long high = one.isLength() ? one.asked().high().units() : one.high();
    for (long value : new long[] {low, high, low - 1, high + 1}) {
      String text = one.isLength() ? LengthText.exact(new Length(value)) : Long.toString(value);
      assertEquals(value >= low && value <= high, typed(one, text) != null, text);
    }
  }

  @Test
  void historyMayHoldMore_ofTheTwoTillerDistancesAlone_andNeverLess() {
    Set<Measurement> wider = EnumSet.noneOf(Measurement.class);
    for (Measurement one : Measurement.values()) {
      if (one.isLength() && !one.kept().equals(one.asked())) {
        wider.add(one);
        assertTrue(one.kept().holds(one.asked().low()) && one.kept().holds(one.asked().high()));
      }
    }
    assertEquals(EnumSet.of(Measurement.TILLER_UPPER, Measurement.TILLER_LOWER), wider);
  }

  @ParameterizedTest
  @EnumSource
  void aBody_hasItByTheNameThatFormsAndFilesHave(Measurement one) throws ClassNotFoundException {
    Set<String> bodies = new TreeSet<>();
    for (String body :
        List.of(
            "check.CheckShapes$CheckBody",
            "check.CheckShapes$AdjustmentBody",
            "setup.SetUpApi$EntryBody")) {
      RecordComponent[] components = Class.forName("club.ascham." + body).getRecordComponents();
      if (Arrays.stream(components).anyMatch(field -> field.getName().equals(one.field()))) {
        bodies.add(body);
      }
    }
    assertFalse(bodies.isEmpty(), one.field() + " is sent by no call");
    assertEquals(
        columns(one).stream().map(Column::table).distinct().count(), bodies.size(), one.field());
  }

  @Test
  void braceWithoutItsPoint_isRefusedByAFileAsByAForm() {
    Typed form = Typed.of(Map.of("brace", "216 mm"));
    Measurement.reading(form, LengthUnit.MILLIMETRE, "From where?");
    assertEquals("From where?", form.messageAt(Measurement.FROM));
    MeasuredRules rules = new MeasuredRules();
    for (RowRules ofList : List.of(rules.checks(), rules.setUps())) {
      Typed row = Typed.of(Map.of("brace", "216 mm"));
      ofList.check(row);
      assertNotNull(row.messageAt(Measurement.FROM), ofList.list());
      Typed whole = Typed.of(Map.of("brace", "216 mm", "braceFrom", "button"));
      ofList.check(whole);
      assertTrue(whole.sound(), ofList.list());
    }
  }

  @Test
  void everyLength_hasThePlaceOfTheTextItWasReadFrom() {
    Stream.of(Measurement.values())
        .filter(Measurement::isLength)
        .forEach(
            one ->
                assertTrue(
                    Lists.all().stream()
                        .flatMap(list -> list.columns().stream())
                        .anyMatch(column -> column.name().equals(one.typedField())),
                    one.typedField()));
  }
}
