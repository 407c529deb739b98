package club.ascham.start;

import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import club.ascham.store.DataFolder;
import club.ascham.time.TestClock;
import java.io.IOException;
import java.nio.file.Path;

/** A data folder from before 1.0.0, carried over by the command. */
public final class CarriedOver {
  private CarriedOver() {}

  /** Answers the file of before. */
  public static Path folder(DataFolder folder) throws IOException {
    CarryOver.Outcome outcome = CarryOver.run(folder, TestClock.running().instant());
    return assertInstanceOf(CarryOver.Outcome.Done.class, outcome, outcome.toString()).kept();
  }
}
