package club.ascham.store;

import java.sql.SQLException;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/**
 * The club's file can't be read or written just now, whatever was asked: the disk is full, another
 * program holds the file, and the like. Nothing was changed.
 *
 * <p>Read off SQLite's code anywhere in a failure, here alone: so a page and a program are told the
 * same sentence.
 */
public class FileTrouble extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /** What is in the way, the answer to the person, and what helps. */
  public enum Kind {
    DISK_FULL(
        507,
        "The disk is full",
        "The server’s disk is full. Nothing was changed. Make room on it, then send this again."),
    READ_ONLY(
        503,
        "The file can’t be written",
        "The club’s file can be read but not written. Nothing was changed. Whoever looks after the"
            + " server has to let it write into its data folder again."),
    LOCKED(
        503,
        "Busy",
        "Another program holds the club’s file. Nothing was changed; try again shortly. If it stays"
            + " like this, find and end that program on the server."),
    DAMAGED(
        503,
        "The file is damaged",
        "The club’s file is damaged. Nothing was changed. Stop the server, start it again, and do as"
            + " it says: it names the backup to bring back."),
    ANOTHER(
        503,
        "The club’s file is not there",
        "The club’s file or its log was moved, replaced or cut short under the running server:"
            + " nothing can be saved. Stop the server, put the file and its log back (or bring back"
            + " the newest backup), and start it again."),
    UNREACHABLE(
        503,
        "The file can’t be reached",
        "The disk did not answer, or the club’s file is gone. Nothing was changed. Whoever looks"
            + " after the server has to look at its disk.");

    private final int status;
    private final String heading;
    private final String said;

    Kind(int status, String heading, String said) {
      this.status = status;
      this.heading = heading;
      this.said = said;
    }

    /** Of HTTP: 507 or 503. */
    public int status() {
      return status;
    }

    public String heading() {
      return heading;
    }

    /** The answer to the person. */
    public String said() {
      return said;
    }

    /** Whether the same request will do in a moment. */
    public boolean passes() {
      return this == LOCKED;
    }

    static Optional<Kind> of(int resultCode) {
      // The low byte is the kind of failure, the rest its finer shade.
      return switch (SQLiteErrorCode.getErrorCode(resultCode & 0xff)) {
        case SQLITE_FULL -> Optional.of(DISK_FULL);
        case SQLITE_READONLY, SQLITE_PERM -> Optional.of(READ_ONLY);
        case SQLITE_BUSY, SQLITE_LOCKED, SQLITE_PROTOCOL -> Optional.of(LOCKED);
        case SQLITE_CORRUPT, SQLITE_NOTADB -> Optional.of(DAMAGED);
        case SQLITE_IOERR, SQLITE_CANTOPEN -> Optional.of(UNREACHABLE);
        default -> Optional.empty();
      };
    }
  }

  private final Kind kind;

  public FileTrouble(Kind kind, Throwable cause) {
    super(kind.said, cause);
    this.kind = kind;
  }

  /** The message is shown in place of the kind's own. */
  protected FileTrouble(Kind kind, String message, Throwable cause) {
    super(message, cause);
    this.kind = kind;
  }

  /**
   * @param found what was found, as half a sentence
   * @param fate what became of what was sent
   */
  public static FileTrouble another(String found, String fate) {
    return new FileTrouble(
        Kind.ANOTHER, "%s %s What was found: %s.".formatted(Kind.ANOTHER.said, fate, found), null);
  }

  public Kind kind() {
    return kind;
  }

  /** The trouble behind a failure of Hibernate, JTA or JDBC, where it is of that kind. */
  public static Optional<FileTrouble> in(Throwable failure) {
    return in(failure, failure, new HashSet<>());
  }

  private static Optional<FileTrouble> in(Throwable all, Throwable part, Set<Throwable> seen) {
    if (part == null || !seen.add(part)) {
      return Optional.empty();
    }
    if (part instanceof FileTrouble already) {
      return Optional.of(already);
    }
    if (part instanceof SQLException sql) {
      int code =
          sql instanceof SQLiteException sqlite ? sqlite.getResultCode().code : sql.getErrorCode();
      Optional<Kind> kind = Kind.of(code);
      if (kind.isPresent()) {
        return kind.map(k -> new FileTrouble(k, all));
      }
    }
    Optional<FileTrouble> found = in(all, part.getCause(), seen);
    // What failed at the end of a transaction is kept beside the failure.
    for (Throwable beside : part.getSuppressed()) {
      found = found.isPresent() ? found : in(all, beside, seen);
    }
    return found;
  }
}
