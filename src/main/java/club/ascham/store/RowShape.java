package club.ascham.store;

import club.ascham.units.Length;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/**
 * How a row becomes a record: the n-th column is the n-th component, read by the component's type.
 * A component that is a record itself takes as many columns as it has components: where all of them
 * are null, nothing was joined or measured, and the record is null.
 */
final class RowShape<R extends Record> {
  private static final Map<Class<?>, RowShape<?>> KNOWN = new ConcurrentHashMap<>();

  private static final Map<Class<?>, Cell> CELLS = new ConcurrentHashMap<>();

  /** How the one component of a typed id is had, looked up once for each type of id. */
  private static final Map<Class<?>, Method> ONLY = new ConcurrentHashMap<>();

  private final Constructor<R> constructor;
  private final Cell[] cells;
  private final int width;

  private RowShape(Class<R> shape) {
    RecordComponent[] components = shape.getRecordComponents();
    Class<?>[] types = new Class<?>[components.length];
    cells = new Cell[components.length];
    for (int i = 0; i < components.length; i++) {
      types[i] = components[i].getType();
      cells[i] = cell(types[i]);
    }
    try {
      constructor = shape.getDeclaredConstructor(types);
      constructor.setAccessible(true);
    } catch (NoSuchMethodException impossible) {
      throw new IllegalStateException(impossible);
    }
    width = Arrays.stream(cells).mapToInt(Cell::width).sum();
  }

  @SuppressWarnings("unchecked")
  static <R extends Record> RowShape<R> of(Class<R> shape) {
    return (RowShape<R>) KNOWN.computeIfAbsent(shape, s -> new RowShape<>(shape));
  }

  R read(ResultSet row) throws SQLException {
    int columns = row.getMetaData().getColumnCount();
    if (columns != width) {
      throw new IllegalStateException(
          columns
              + " columns for the "
              + width
              + " components of "
              + constructor.getDeclaringClass());
    }
    return read(row, 1);
  }

  private R read(ResultSet row, int first) throws SQLException {
    Object[] values = new Object[cells.length];
    int at = first;
    for (int i = 0; i < cells.length; i++) {
      values[i] = cells[i].read(row, at);
      at += cells[i].width();
    }
    return made(constructor, values);
  }

  /** The values of whichever row the set stands at. */
  static Rows.Row valuesOf(ResultSet found) {
    return new Rows.Row() {
      @Override
      @SuppressWarnings("unchecked")
      public <T> T value(int column, Class<T> type) {
        try {
          return (T) CELLS.computeIfAbsent(type, t -> orNull(cell(t))).read(found, column);
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

  private static Cell cell(Class<?> type) {
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
      Cell inner = orNull(cell(type.getRecordComponents()[0].getType()));
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
    if (type.isRecord()) {
      return joined(new RowShape<>(type.asSubclass(Record.class)));
    }
    throw new IllegalArgumentException("no way to read a column as " + type);
  }

  private static Cell joined(RowShape<?> shape) {
    return new Cell() {
      @Override
      public Object read(ResultSet row, int at) throws SQLException {
        for (int i = at; i < at + shape.width; i++) {
          if (row.getObject(i) != null) {
            return shape.read(row, at);
          }
        }
        return null;
      }

      @Override
      public int width() {
        return shape.width;
      }
    };
  }

  @SuppressWarnings({"unchecked", "rawtypes"})
  private static Object enumNamed(Class<?> type, String word) {
    return Enum.valueOf((Class) type, word);
  }

  private static Cell orNull(Cell cell) {
    return (row, at) -> {
      Object value = cell.read(row, at);
      return row.wasNull() ? null : value;
    };
  }

  private static Cell text(Function<String, Object> reading) {
    return (row, at) -> {
      String text = row.getString(at);
      return text == null ? null : reading.apply(text);
    };
  }

  private interface Cell {
    Object read(ResultSet row, int at) throws SQLException;

    /** How many columns it takes. */
    default int width() {
      return 1;
    }
  }
}
