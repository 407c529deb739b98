package club.ascham.fleet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShownTest {
  @ParameterizedTest(name = "of {0}: {1} on the screen and {2} more, {3} on paper and {4} more")
  @CsvSource({"3, 3, 0, 3, 0", "4, 4, 0, 4, 0", "5, 5, 0, 3, 2", "6, 5, 1, 3, 3", "12, 5, 7, 3, 9"})
  void everyThing_isEitherShownOrCounted(
      int all, int first, int more, int onPaper, int moreOnPaper) {
    Shown<Integer> shown = Shown.of(IntStream.range(0, all).boxed().toList(), 5);

    assertEquals(first, shown.first().size());
    assertEquals(more, shown.more());
    assertEquals(onPaper, Math.min(shown.onPaper(), all));
    assertEquals(moreOnPaper, shown.moreOnPaper());
  }
}
