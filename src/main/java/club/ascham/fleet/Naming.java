package club.ascham.fleet;

import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** How the lists call an item. */
final class Naming {
  private Naming() {}

  /** Maker and model, else the kind. */
  static String of(String maker, String model, String kind) {
    String name = Stream.of(maker, model).filter(Objects::nonNull).collect(Collectors.joining(" "));
    return name.isEmpty() && kind != null ? word(kind) : name;
  }

  /** {@code BOLT_INSPECTION} as {@code bolt-inspection}; a one-piece bow says that it is one. */
  static String word(String constant) {
    return constant.equals("BOW")
        ? "one-piece"
        : constant.toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
