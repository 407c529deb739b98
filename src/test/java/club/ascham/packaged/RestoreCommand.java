package club.ascham.packaged;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** The commands beside serving, as whoever runs the server gives them. */
final class RestoreCommand {
  private RestoreCommand() {}

  /** What it said, and how it ended. */
  record Ended(int code, String said) {}

  static Ended run(Path data, Path backup) throws IOException, InterruptedException {
    return command(data, "restore", backup.toString());
  }

  /** The command that carries a folder from before 1.0.0 over. */
  static Ended carryOver(Path data) throws IOException, InterruptedException {
    return command(data, "carry-over", data.toString());
  }

  /** As {@link #carryOver}, and killed in the middle of it, or after it. */
  static void carryOverKilledAfter(Path data, Duration wait)
      throws IOException, InterruptedException {
    Process process = started(data, "carry-over", data.toString());
    process.waitFor(wait.toMillis(), TimeUnit.MILLISECONDS);
    process.destroyForcibly().waitFor();
  }

  private static Ended command(Path data, String... words)
      throws IOException, InterruptedException {
    Process process = started(data, words);
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertTrue(process.waitFor(1, TimeUnit.MINUTES), said);
    return new Ended(process.exitValue(), said);
  }

  private static Process started(Path data, String... words)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(PackagedServer.quickJava(PreparedClub.classes()));
    command.addAll(List.of("-jar", PackagedServer.JAR.toString()));
    command.addAll(List.of(words));
    ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
    builder.environment().put("ASCHAM_DATA_DIR", data.toString());
    return builder.start();
  }
}
