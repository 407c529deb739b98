package club.ascham.backup;

import club.ascham.store.FileTrouble;
import club.ascham.store.Scrub;
import club.ascham.store.SqliteFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.file.FileStore;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import org.sqlite.SQLiteConnection;
import org.sqlite.SQLiteErrorCode;

/**
 * A copy of the club's file at one moment, made while people work and then looked through. SQLite
 * copies it page by page under a read lock: writers go on, and unlike {@code VACUUM INTO} no row
 * gets another number, which the record would take for a change.
 */
public final class Snapshot {
  private static final int ALL_PAGES = -1;
  private static final String NO_FOLDER =
      "The folder for backups can’t be written. Let the server write into its data folder, and look"
          + " at its disk.";

  private Snapshot() {}

  static NotMade noFolder(IOException failure) {
    return new NotMade(FileTrouble.Kind.UNREACHABLE, NO_FOLDER, failure);
  }

  /** It could not be made, or what was made is not sound and is gone again. */
  public static final class NotMade extends FileTrouble {
    private static final long serialVersionUID = 1L;

    /** The message is shown: what is in the way, and what helps. */
    NotMade(Kind kind, String message, Throwable cause) {
      super(kind, message, cause);
    }
  }

  /**
   * Copies, looks through the copy, and has it on the disk when this returns.
   *
   * @param to where it will lie; nothing may be there
   * @return what the copy holds
   */
  public static Soundness.Sound take(Path file, Path to) {
    try {
      mindRoom(file, to);
      String seal = copied(file, to);
      Soundness found = Soundness.ofAll(to);
      if (!(found instanceof Soundness.Sound sound)) {
        throw new NotMade(
            FileTrouble.Kind.DAMAGED,
            "The copy is not sound. "
                + ((Soundness.Unsound) found).why()
                + " Look at the server’s disk, and keep the earlier backups.",
            null);
      }
      if (!sound.newestSeal().equals(seal)) {
        throw new NotMade(
            FileTrouble.Kind.DAMAGED,
            "The copy’s record does not end as the club’s does. Look at the server’s disk.",
            null);
      }
      force(to);
      return sound;
    } catch (SQLException | IOException | RuntimeException failure) {
      forget(to);
      throw failure instanceof NotMade said ? said : notMade(failure);
    }
  }

  /** The seal at the moment that was copied. */
  private static String copied(Path file, Path to) throws SQLException {
    try (SQLiteConnection club = SqliteFile.open(file)) {
      club.setAutoCommit(false);
      // The first reading fixes the moment; the copy is of the same.
      String seal = Soundness.newestSeal(club);
      int ended = club.getDatabase().backup("main", to.toString(), null, 100, 50, ALL_PAGES);
      club.rollback();
      if (ended != SQLiteErrorCode.SQLITE_OK.code) {
        throw new SQLException(
            "the copy ended with " + SQLiteErrorCode.getErrorCode(ended), null, ended);
      }
      makeOneFile(to);
      if (Scrub.isOwed(to)) {
        // SQLite copies pages with all that was deleted in them.
        Scrub.run(to);
      }
      return seal;
    }
  }

  /** The club's file keeps a log of writes beside it; a copy is complete by itself. */
  private static void makeOneFile(Path copy) throws SQLException {
    try (Connection connection = SqliteFile.open(copy);
        Statement statement = connection.createStatement()) {
      statement.execute("PRAGMA journal_mode=DELETE");
    }
  }

  private static void mindRoom(Path file, Path to) throws IOException {
    FileStore disk = Files.getFileStore(to.toAbsolutePath().getParent());
    String said = tooLittle(Files.size(file), disk.getUsableSpace());
    if (said != null) {
      throw new NotMade(FileTrouble.Kind.DISK_FULL, said, null);
    }
  }

  /** What to say where a disk has too little room for a copy; null: it has enough. */
  static String tooLittle(long needed, long free) {
    return free > needed + needed / 4
        ? null
        : "The disk is full: a copy needs %s, and %s are free. Make room on the server’s disk."
            .formatted(Size.said(needed), Size.said(free));
  }

  private static NotMade notMade(Exception failure) {
    FileTrouble.Kind kind =
        FileTrouble.in(failure).map(FileTrouble::kind).orElse(FileTrouble.Kind.UNREACHABLE);
    String said =
        switch (kind) {
          case DISK_FULL -> "The disk is full. Make room on the server’s disk.";
          case READ_ONLY, UNREACHABLE, ANOTHER -> NO_FOLDER;
          case LOCKED -> "Another program holds the club’s file. Find and end it on the server.";
          case DAMAGED ->
              "The club’s file is damaged. Stop the server, start it again, and do as it says.";
        };
    return new NotMade(kind, said, failure);
  }

  /** On the disk, not only on its way there. */
  public static void force(Path file) throws IOException {
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
      channel.force(true);
    }
  }

  /** A new name is on the disk when its folder is. */
  public static void forceFolder(Path folder) {
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException notOnThisSystem) {
      // Some systems can't; they keep names in order themselves.
      return;
    }
  }

  /** Takes away a copy that is of no more use, and what SQLite may have left beside it. */
  public static void forget(Path copy) {
    try {
      for (String ending : new String[] {"", "-journal", "-wal", "-shm", ".clean"}) {
        Files.deleteIfExists(Path.of(copy + ending));
      }
    } catch (IOException failure) {
      throw new UncheckedIOException("can't take away " + copy, failure);
    }
  }
}
