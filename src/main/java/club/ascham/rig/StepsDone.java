package club.ascham.rig;

import club.ascham.bow.SetUpStep;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Collectors;

/** The steps of a set-up sheet that were done. */
public record StepsDone(Set<SetUpStep.Key> keys) {
  public static StepsDone of(String text) {
    return new StepsDone(
        Arrays.stream(text.split(","))
            .filter(key -> !key.isBlank())
            .map(SetUpStep.Key::valueOf)
            .collect(Collectors.toCollection(() -> EnumSet.noneOf(SetUpStep.Key.class))));
  }

  public boolean has(SetUpStep.Key key) {
    return keys.contains(key);
  }

  public StepsDone with(SetUpStep.Key key) {
    Set<SetUpStep.Key> more = EnumSet.of(key);
    more.addAll(keys);
    return new StepsDone(more);
  }

  /** As the file keeps it: the keys in the order of the bench, with commas between. */
  String text() {
    return keys.stream().map(Enum::name).collect(Collectors.joining(","));
  }
}
