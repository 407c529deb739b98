package club.ascham.store;

import club.ascham.units.Length;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/**
 * How rows become records: a column goes to the component of its name ({@code back_at} to {@code
 * backAt}, and {@code rig_id} to {@code rig} too), read by the component's type, in whichever order
 * the columns stand. A component that is a record itself takes a column for each of its own
 * components, named with its own name before ({@code item_code}) or, where no other is named so,
 * without; where all of them are null, nothing was joined or measured, and the record is null. A
 * single column goes to a single component, however either is called.
 */
final class RowShape<R extends Record> {
  private static final Map<Class<?>, RowShape<?>> KNOWN = new ConcurrentHashMap<>();

  /** A shape is read by a few statements, or by a few hundred forms of one with filters. */
  private static final int MOST_KNOWN = 500;

  private static final Map<Class<?>, Column> COLUMNS = new ConcurrentHashMap<>();

  /** How the one component of a typed id is had, looked up once for each type of id. */
  private static final Map<Class<?>, Method> ONLY = new ConcurrentHashMap<>();

  private final Constructor<R> constructor;
  private final List<Cell> cells = new ArrayList<>();

  /** Of each column's component, those of a joined record as {@code item.code}. */
  private final List<String> names = new ArrayList<>();

  private final List<List<String>> labels;

  /** The places for each statement that was read so. */
  private final Map<String, int[]> known = new ConcurrentHashMap<>();

  private RowShape(Class<R> shape) {
    RecordComponent[] components = shape.getRecordComponents();
    Class<?>[] types = new Class<?>[components.length];
    for (int i = 0; i < components.length; i++) {
      types[i] = components[i].getType();
      String name = inSql(components[i].getName());
      int at = names.size();
      if (types[i].isRecord() && types[i].getRecordComponents().length > 1) {
        RowShape<?> joined = new RowShape<>(types[i].asSubclass(Record.class));
        cells.add((row, places, first) -> joined.readIfAny(row, places, first + at));
        joined.names.forEach(inner -> names.add(name + "." + inner));
      } else {
        Column column = column(types[i]);
        cells.add((row, places, first) -> column.read(row, places[first + at]));
        names.add(name);
      }
    }
    labels = names.stream().map(this::labels).toList();
    try {
      constructor = shape.getDeclaredConstructor(types);
      constructor.setAccessible(true);
    } catch (NoSuchMethodException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  @SuppressWarnings("unchecked")
  static <R extends Record> RowShape<R> of(Class<R> shape) {
    return (RowShape<R>) KNOWN.computeIfAbsent(shape, s -> new RowShape<>(shape));
  }

  /** {@code backAt} as {@code back_at}. */
  private static String inSql(String name) {
    return name.replaceAll("([A-Z])", "_$1").toLowerCase(Locale.ROOT);
  }

  List<R> all(String statement, ResultSet found) throws SQLException {
    int[] places = known.get(statement);
    if (places == null) {
      places = places(found.getMetaData());
      if (known.size() < MOST_KNOWN) {
        known.put(statement, places);
      }
    }
    List<R> rows = new ArrayList<>();
    while (found.next()) {
      rows.add(read(found, places, 0));
    }
    return rows;
  }

  /** The number of the column that goes to each component. */
  int[] places(ResultSetMetaData columns) throws SQLException {
    Map<String, Integer> labelled = new HashMap<>();
    for (int i = 1; i <= columns.getColumnCount(); i++) {
      labelled.put(columns.getColumnLabel(i), i);
    }
    int[] places = new int[names.size()];
    if (places.length == 1 && labelled.size() == 1) {
      return new int[] {1};
    }
    for (int i = 0; i < places.length; i++) {
      places[i] = place(i, labelled);
    }
    if (!labelled.isEmpty() || columns.getColumnCount() != places.length) {
      throw new IllegalStateException(
          "columns without a component of " + constructor.getDeclaringClass() + ": " + labelled);
    }
    return places;
  }

  private int place(int component, Map<String, Integer> labelled) {
    for (String label : labels.get(component)) {
      Integer place = labelled.remove(label);
      if (place != null) {
        return place;
      }
    }
    throw new IllegalStateException(
        "no column for %s of %s in %s"
            .formatted(names.get(component), constructor.getDeclaringClass(), labelled));
  }

  /** What the column of a component may be called. */
  private List<String> labels(String name) {
    String whole = name.replace('.', '_');
    String last = last(name);
    boolean alone = names.stream().filter(other -> last(other).equals(last)).count() == 1;
    return alone && !last.equals(whole)
        ? List.of(whole, whole + "_id", last, last + "_id")
        : List.of(whole, whole + "_id");
  }

  private static String last(String name) {
    return name.substring(name.lastIndexOf('.') + 1);
  }

  private R read(ResultSet row, int[] places, int first) throws SQLException {
    Object[] values = new Object[cells.size()];
    for (int i = 0; i < values.length; i++) {
      values[i] = cells.get(i).read(row, places, first);
    }
    return made(constructor, values);
  }

  private R readIfAny(ResultSet row, int[] places, int first) throws SQLException {
    for (int i = first; i < first + names.size(); i++) {
      if (row.getObject(places[i]) != null) {
        return read(row, places, first);
      }
    }
    return null;
  }

  /** The values of whichever row the set stands at. */
  static Rows.Row valuesOf(ResultSet found) {
    return new Rows.Row() {
      @Override
      @SuppressWarnings("unchecked")
      public <T> T value(int column, Class<T> type) {
        try {
          return (T) COLUMNS.computeIfAbsent(type, t -> orNull(column(t))).read(found, column);
        } catch (SQLException failure) {
          throw new IllegalStateException("column " + column + " as " + type, failure);
        }
      }
    };
  }

  /** A Java value as the file keeps it. */
  static Object stored(Object value) {
    if (value instanceof Instant moment) {
      return Stored.moment(moment);
    }
    if (value instanceof LocalDate day) {
      return Stored.day(day);
    }
    if (value instanceof Length length) {
      return length.units();
    }
    if (value instanceof Enum<?> word) {
      return word.name();
    }
    if (value instanceof Boolean yes) {
      return yes ? 1 : 0;
    }
    if (value instanceof Record id) {
      return onlyComponent(id);
    }
    return value;
  }

  private static Object onlyComponent(Record id) {
    try {
      return ONLY.computeIfAbsent(id.getClass(), RowShape::onlyAccessor).invoke(id);
    } catch (IllegalAccessException | InvocationTargetException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  private static Method onlyAccessor(Class<?> type) {
    RecordComponent[] components = type.getRecordComponents();
    if (components.length != 1) {
      throw new IllegalArgumentException("not a stored value: " + type);
    }
    Method accessor = components[0].getAccessor();
    accessor.setAccessible(true);
    return accessor;
  }

  private static <T> T made(Constructor<T> constructor, Object... values) {
    try {
      return constructor.newInstance(values);
    } catch (ReflectiveOperationException failure) {
      throw new IllegalStateException("can't make a " + constructor.getDeclaringClass(), failure);
    }
  }

  private static Column column(Class<?> type) {
    if (type == String.class) {
      return ResultSet::getString;
    }
    if (type == long.class) {
      return ResultSet::getLong;
    }
    if (type == int.class) {
      return ResultSet::getInt;
    }
    if (type == double.class) {
      return ResultSet::getDouble;
    }
    if (type == boolean.class || type == Boolean.class) {
      return ResultSet::getBoolean;
    }
    if (type == Long.class) {
      return orNull(ResultSet::getLong);
    }
    if (type == Integer.class) {
      return orNull(ResultSet::getInt);
    }
    if (type == Double.class) {
      return orNull(ResultSet::getDouble);
    }
    if (type == Instant.class) {
      return text(Stored::moment);
    }
    if (type == LocalDate.class) {
      return text(Stored::day);
    }
    if (type.isEnum()) {
      return text(word -> enumNamed(type, word));
    }
    if (type.isRecord() && type.getRecordComponents().length == 1) {
      Column inner = orNull(column(type.getRecordComponents()[0].getType()));
      try {
        Constructor<?> constructor =
            type.getDeclaredConstructor(type.getRecordComponents()[0].getType());
        constructor.setAccessible(true);
        return (row, at) -> {
          Object value = inner.read(row, at);
          return value == null ? null : made(constructor, value);
        };
      } catch (NoSuchMethodException impossible) {
        throw new IllegalStateException(impossible);
      }
    }
    throw new IllegalArgumentException("no way to read a column as " + type);
  }

  @SuppressWarnings({"unchecked", "rawtypes"})
  private static Object enumNamed(Class<?> type, String word) {
    return Enum.valueOf((Class) type, word);
  }

  private static Column orNull(Column column) {
    return (row, at) -> {
      Object value = column.read(row, at);
      return row.wasNull() ? null : value;
    };
  }

  private static Column text(Function<String, Object> reading) {
    return (row, at) -> {
      String text = row.getString(at);
      return text == null ? null : reading.apply(text);
    };
  }

  private interface Column {
    Object read(ResultSet row, int at) throws SQLException;
  }

  private interface Cell {
    /**
     * @param first where the record's own places begin
     */
    Object read(ResultSet row, int[] places, int first) throws SQLException;
  }
}
