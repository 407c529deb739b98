package club.ascham.fleet;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Some of the rigs: those with these words for these traits. A figure counts it and the page behind
 * the figure lists it.
 */
record RigChoice(Map<Trait, String> words) {
  static final RigChoice ALL = new RigChoice(Map.of());

  RigChoice {
    EnumMap<Trait, String> copy = new EnumMap<>(Trait.class);
    copy.putAll(words);
    words = Collections.unmodifiableMap(copy);
  }

  /**
   * @param given the address's value for a trait's key; null: not narrowed by it
   */
  static RigChoice parse(Function<String, String> given) {
    Map<Trait, String> words = new EnumMap<>(Trait.class);
    for (Trait trait : Trait.values()) {
      String word = given.apply(trait.key());
      if (word != null && !word.isBlank()) {
        words.put(trait, word);
      }
    }
    return new RigChoice(words);
  }

  RigChoice and(Trait trait, String word) {
    EnumMap<Trait, String> more = new EnumMap<>(Trait.class);
    more.putAll(words);
    more.put(trait, word);
    return new RigChoice(more);
  }

  /** A loop and not a stream: the committee's page asks it of every rig for every figure. */
  boolean matches(FleetRig rig) {
    for (Trait trait : words.keySet()) {
      if (!trait.of(rig).equals(words.get(trait))) {
        return false;
      }
    }
    return true;
  }

  List<FleetRig> of(List<FleetRig> rigs) {
    return rigs.stream().filter(this::matches).toList();
  }

  /** What stands in the address: {@code list=rigs&state=ready&hand=left}. */
  String query() {
    return "list=rigs"
        + words.entrySet().stream()
            .map(
                e ->
                    "&"
                        + e.getKey().key()
                        + "="
                        + URLEncoder.encode(e.getValue(), StandardCharsets.UTF_8))
            .collect(Collectors.joining());
  }

  /** As people say it: {@code ready, left, 66 in}; nothing where all are meant. */
  String said() {
    return words.entrySet().stream()
        .map(e -> e.getKey().said(e.getValue()))
        .collect(Collectors.joining(", "));
  }
}
