package club.ascham.journey;

import com.microsoft.playwright.options.ColorScheme;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/**
 * The same walk at 360 and 1280 px, by day and by night, two at a time: a walk waits for its
 * browser more than for the server. The two who walk stay, and so do their browsers.
 */
final class SideBySide {
  private static final ExecutorService TWO =
      Executors.newFixedThreadPool(
          2,
          walk -> {
            Thread walker = new Thread(walk, "walker");
            walker.setDaemon(true);
            return walker;
          });

  private SideBySide() {}

  /** Something that is looked at in one width and theme, by someone of its own. */
  interface Walk {
    void at(int width, ColorScheme theme);
  }

  /** Walks all four to their end; what failed of each stands in one failure. */
  static void walk(Walk walk) throws InterruptedException {
    List<Callable<Void>> walks = new ArrayList<>();
    List<String> names = new ArrayList<>();
    for (int width : List.of(360, 1280)) {
      for (ColorScheme theme : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
        names.add(width + " px, " + theme);
        walks.add(
            () -> {
              walk.at(width, theme);
              return null;
            });
      }
    }
    AssertionError failed = new AssertionError("not so everywhere");
    List<Future<Void>> ended = TWO.invokeAll(walks);
    for (int i = 0; i < ended.size(); i++) {
      try {
        ended.get(i).get();
      } catch (ExecutionException failure) {
        failed.addSuppressed(new AssertionError(names.get(i), failure.getCause()));
      }
    }
    if (failed.getSuppressed().length > 0) {
      throw failed;
    }
  }
}
