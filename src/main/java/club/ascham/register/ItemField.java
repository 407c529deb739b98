package club.ascham.register;

import java.util.function.Function;

/**
 * What is told of an item under one name: in forms and JSON, as a column of a file and of a table,
 * and in the words of a change.
 *
 * @param name in forms, JSON and files: {@code maxTurnsOut}
 * @param label as a change is told: {@code turns out allowed}
 * @param place table and column: {@code riser.max_turns_out}
 * @param of what is recorded of an item; null: nothing
 * @param otherwise what holds where nothing is told; null: it is not known
 * @param missing what to say where it has to be told and is not; null: it may be left open
 * @param description for programs; null: its name says all
 * @param example for programs; null: none is needed
 */
public record ItemField<T>(
    String name,
    String label,
    String place,
    Values<T> values,
    Function<ItemDetails, T> of,
    T otherwise,
    String missing,
    String description,
    String example) {

  ItemField(
      String name, String label, String place, Values<T> values, Function<ItemDetails, T> of) {
    this(name, label, place, values, of, null, null, null, null);
  }

  ItemField<T> otherwise(T value) {
    return new ItemField<>(name, label, place, values, of, value, missing, description, example);
  }

  ItemField<T> needed(String saidWhereMissing) {
    return new ItemField<>(
        name, label, place, values, of, otherwise, saidWhereMissing, description, example);
  }

  /** What programs are told of it. */
  ItemField<T> told(String words, String value) {
    return new ItemField<>(name, label, place, values, of, otherwise, missing, words, value);
  }

  public String table() {
    return place.substring(0, place.indexOf('.'));
  }

  String column() {
    return place.substring(place.indexOf('.') + 1);
  }

  /** As the file keeps it. */
  Object stored(ItemDetails details) {
    T value = of.apply(details);
    return value == null ? otherwise : value;
  }
}
