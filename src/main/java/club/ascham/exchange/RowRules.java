package club.ascham.exchange;

import club.ascham.form.Typed;
import java.util.function.Consumer;

/**
 * The rules that the form of one list holds its fields to: an import asks the same ones. A feature
 * brings its own as a bean.
 */
public interface RowRules {
  /** The name of the list, {@code risers}. */
  String list();

  /**
   * Leaves a fault at each field that the form would refuse.
   *
   * @param row the cells of one row by column; lengths carry their unit
   */
  void check(Typed row);

  static RowRules of(String list, Consumer<Typed> check) {
    return new RowRules() {
      @Override
      public String list() {
        return list;
      }

      @Override
      public void check(Typed row) {
        check.accept(row);
      }
    };
  }
}
