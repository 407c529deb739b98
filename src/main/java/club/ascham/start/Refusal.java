package club.ascham.start;

import io.quarkus.runtime.PreventFurtherStepsException;

/** Not starting, with a sentence for whoever started it and no stack trace. */
final class Refusal {
  private static final int EXIT_CODE = 1;

  private Refusal() {}

  static RuntimeException because(String sentence) {
    return new PreventFurtherStepsException("Ascham does not start. " + sentence, EXIT_CODE);
  }
}
