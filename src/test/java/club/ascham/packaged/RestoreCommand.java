package club.ascham.packaged;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** The command that brings a backup back, as whoever runs the server gives it. */
final class RestoreCommand {
  private RestoreCommand() {}

  /** What it said, and how it ended. */
  record Ended(int code, String said) {}

  static Ended run(Path data, Path backup) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(PackagedServer.quickJava(PreparedClub.classes()));
    command.addAll(List.of("-jar", PackagedServer.JAR.toString(), "restore", backup.toString()));
    ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
    builder.environment().put("ASCHAM_DATA_DIR", data.toString());
    Process process = builder.start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertTrue(process.waitFor(1, TimeUnit.MINUTES), said);
    return new Ended(process.exitValue(), said);
  }
}
