package club.ascham.start;

import club.ascham.backup.Restore;
import club.ascham.store.DataFolder;
import club.ascham.store.Schema;
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
 * ends, {@code carry-over <folder>} carries a data folder from before 1.0.0 over and ends. Commands
 * and no settings, since a setting that is left behind would do it again at each start.
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
    String word = words.length == 2 ? words[0] : "";
    return switch (word) {
      case "restore" -> restore(folder, clock, out, Path.of(words[1]));
      case "carry-over" -> carryOver(new DataFolder(Path.of(words[1])), clock, out);
      default -> {
        out.println(
            "Without words Ascham serves the club. \"restore <file>\" brings that backup back, and"
                + " \"carry-over <folder>\" carries a data folder from before 1.0.0 over, each with"
                + " the server stopped.");
        yield NOT_UNDERSTOOD;
      }
    };
  }

  private static int carryOver(DataFolder folder, Clock clock, PrintStream out) {
    try {
      CarryOver.Outcome outcome = CarryOver.run(folder, clock.instant());
      if (outcome instanceof CarryOver.Outcome.Refused refused) {
        out.println(refused.why() + " Nothing was changed.");
        return FAILED;
      }
      if (outcome instanceof CarryOver.Outcome.Done done) {
        out.println(
            "Carried over: "
                + folder.file().toAbsolutePath()
                + " holds every row of before. Its record is whole, "
                + done.now().entries()
                + " entries; newest seal: "
                + done.now().newest());
        out.println(
            "The file of before is kept in "
                + done.kept().toAbsolutePath()
                + ". It holds names: delete it once all is well.");
      } else {
        out.println("It is done: " + folder.file().toAbsolutePath() + " is not from before 1.0.0.");
      }
      out.println("Start the server as always.");
      return DONE;
    } catch (IOException failure) {
      return notWritten(failure, out);
    }
  }

  private static int notWritten(IOException failure, PrintStream out) {
    out.println(
        "The data folder can't be written ("
            + failure
            + "). Run this as the one who runs the server, and look at the disk; then run it again.");
    return FAILED;
  }

  private static int restore(DataFolder folder, Clock clock, PrintStream out, Path backup) {
    try {
      Restore.Outcome outcome = Restore.run(folder, backup, clock.instant());
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
      out.println(
          Schema.isFromBefore(done.now().schema())
              ? "It is from before Ascham 1.0.0: carry it over with: " + CarryOver.command(folder)
              : "Start the server as always.");
      return DONE;
    } catch (IOException failure) {
      return notWritten(failure, out);
    }
  }
}
