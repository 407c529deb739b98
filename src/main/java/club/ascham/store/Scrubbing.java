package club.ascham.store;

import club.ascham.Settings;
import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.Optional;
import org.jboss.logging.Logger;

/**
 * Keeps the club's file scrubbed: after each erasing, and again until nothing is in the way.
 *
 * <p>It takes longer the larger the file is; readers read on meanwhile.
 *
 * <p>That it is owed stands in the file itself, by the transaction that erases: so a power cut, a
 * full disk, a file from before and a backup that was brought back are all made up for at the next
 * start, and a copy of such a file is scrubbed itself. No backup and no export holds whom we erased
 * before it was made.
 *
 * <p>A reader that holds the log stops only its cutting. That is tried again every five minutes and
 * at each start, and officers are told meanwhile. Blocks that the disk itself keeps are beyond us.
 */
@ApplicationScoped
public class Scrubbing {
  private static final Logger LOG = Logger.getLogger(Scrubbing.class);
  static final String LOG_IS_READ =
      "Someone was erased, and the log of writes still holds them, since something reads from the"
          + " file. It is tried again by itself. If this stays, end what reads the file on the server.";
  private static final String NOT_SCRUBBED =
      "Someone was erased, and their name is still in unused parts of the club’s file. It is tried"
          + " again by itself; no backup holds them. ";

  /**
   * Whether anyone was erased before a start, nobody can tell of a file that can't be looked at.
   */
  static final String NOT_LOOKED_AT =
      "At its start the server could not clear the unused parts of the club’s file: if someone was"
          + " erased just before, their name may be there still. It is tried again by itself; no backup"
          + " holds them. ";

  static final String LOG_NOT_CUT =
      "Something reads from the club’s file, so its log of writes was not emptied at the start: if"
          + " someone was erased just before, it may hold their name still. It is tried again by itself."
          + " If this stays, end what reads the file on the server.";

  private final Path file;
  private final Rows rows;
  private final SameFile sameFile;
  private volatile boolean asked;

  /** Someone was since the start, and the file was not scrubbed since. */
  private volatile boolean erased;

  private volatile String worry;

  Scrubbing(Settings settings, Rows rows, SameFile sameFile) {
    this.file = new DataFolder(settings.dataDir()).file();
    this.rows = rows;
    this.sameFile = sameFile;
  }

  /**
   * Inside the use case that erases someone: once it is saved the file is scrubbed, before anyone
   * else writes. Should the power go in between, the file itself says that it is owed.
   */
  public void onceSaved() {
    rows.change(Scrub.OWE);
    asked = true;
  }

  /** The gate is ours. */
  void ifAsked() {
    if (asked) {
      asked = false;
      erased = true;
      now();
    }
  }

  /** When the file is opened: a power cut may have come in between, or it is from before. */
  public void atStart() {
    WriteGate.alone(this::now);
  }

  /** Tries again what something was in the way of. */
  public void again() {
    if (worry != null) {
      WriteGate.alone(this::now);
    }
  }

  private void now() {
    try {
      boolean emptied =
          sameFile.whileItShrinks(
              () -> Scrub.isOwed(file) ? Scrub.run(file) : Scrub.emptyLog(file));
      worry = emptied ? null : erased ? LOG_IS_READ : LOG_NOT_CUT;
      erased &= !emptied;
    } catch (SQLException | IOException | RuntimeException failure) {
      LOG.error("the file was not scrubbed; it is tried again", failure);
      worry =
          (erased ? NOT_SCRUBBED : NOT_LOOKED_AT)
              + FileTrouble.in(failure)
                  .map(trouble -> trouble.kind().heading() + ".")
                  .orElse("The server’s log says why.");
    }
  }

  /** What an officer has to know without asking; empty: all is well. */
  public Optional<String> worry() {
    return Optional.ofNullable(worry);
  }
}
