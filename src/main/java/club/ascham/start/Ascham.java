package club.ascham.start;

import club.ascham.backup.Restore;
import club.ascham.store.DataFolder;
import io.quarkus.runtime.Quarkus;
import io.quarkus.runtime.annotations.QuarkusMain;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.time.Clock;
import org.eclipse.microprofile.config.ConfigProvider;
import org.jboss.logging.Logger;

/**
 * The program: without words it serves the club; {@code restore <file>} brings a backup back and
 * ends. A command and no setting, since a setting that is left behind would bring it back again at
 * each start.
 */
@QuarkusMain
public class Ascham {
  private static final Logger LOG = Logger.getLogger(Ascham.class);
  private static final int DONE = 0;
  private static final int FAILED = 1;
  private static final int NOT_UNDERSTOOD = 2;

  public static void main(String... words) {
    if (words.length == 0) {
      Quarkus.run(null, Ascham::end, words);
      return;
    }
    Path dataDir = ConfigProvider.getConfig().getValue("ascham.data-dir", Path.class);
    System.exit(command(new DataFolder(dataDir), Clock.systemUTC(), System.out, words));
  }

  /** A refusal is said in its sentence; of any other failure the whole is wanted. */
  private static void end(int exitCode, Throwable failure) {
    if (failure == null) {
      System.exit(exitCode);
    }
    NotStarting refusal = NotStarting.in(failure);
    if (refusal != null) {
      System.err.println(refusal.getMessage());
    } else {
      LOG.error("Ascham did not start", failure);
    }
    System.exit(FAILED);
  }

  /** Answers the exit code. */
  static int command(DataFolder folder, Clock clock, PrintStream out, String... words) {
    if (words.length != 2 || !words[0].equals("restore")) {
      out.println(
          "Without words Ascham serves the club. \"restore <file>\" brings that backup back, with the"
              + " server stopped.");
      return NOT_UNDERSTOOD;
    }
    try {
      Restore.Outcome outcome = Restore.run(folder, Path.of(words[1]), clock.instant());
      if (outcome instanceof Restore.Outcome.Refused refused) {
        out.println(refused.why() + " Nothing was changed.");
        return FAILED;
      }
      Restore.Outcome.Done done = (Restore.Outcome.Done) outcome;
      out.println(
          "Restored to "
              + folder.file().toAbsolutePath()
              + "; it is sound. Newest seal of its record: "
              + done.now().newestSeal());
      if (done.setAside() != null) {
        out.println("What was there before is kept in " + done.setAside().toAbsolutePath());
      }
      out.println("Start the server as always.");
      return DONE;
    } catch (IOException failure) {
      out.println(
          "The data folder can't be written ("
              + failure
              + "). Run this as the one who runs the server, and look at the disk; then run it again.");
      return FAILED;
    }
  }
}
