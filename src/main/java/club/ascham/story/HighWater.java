package club.ascham.story;

import club.ascham.store.DataFolder;
import club.ascham.store.SameFile;
import club.ascham.store.SqliteFile;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javax.sql.DataSource;
import org.jboss.logging.Logger;

/**
 * Holds the club's file against the high-water mark when it is opened, and lets the mark follow the
 * record while the server runs. No save waits for it: it reads what was committed, about a second
 * later, so that a cut may lose the last second or two of saves unnoticed and a killed process
 * never leaves a mark above what its disk holds.
 *
 * <p>The mark holds number, seal and moment of the newest sealed entry, and is written whole, to
 * the disk, its owner's alone. SQLite shows a commit to others only once it is on the disk, so the
 * mark is never ahead of it.
 *
 * <p>What is missing stands in the mark until an officer has read it, since the mark itself goes
 * on. A restore writes it anew before the file is moved in, and settles the backups that it passed
 * over; by nothing else does it go back.
 */
@ApplicationScoped
public class HighWater {
  private static final Logger LOG = Logger.getLogger(HighWater.class);

  private final DataSource source;
  private final SameFile sameFile;
  private final ClubTime time;
  private Path file;
  private volatile HighWaterMark mark = HighWaterMark.NONE;

  /** Why the mark in the folder is not the one known here; null: it is. */
  private String failure;

  HighWater(DataSource source, SameFile sameFile, ClubTime time) {
    this.source = source;
    this.sameFile = sameFile;
    this.time = time;
  }

  /**
   * Before anything is written into the file, migrations included.
   *
   * @param newest the newest backup; null: there is none
   */
  public synchronized void opens(DataFolder folder, Loss.Backup newest) {
    file = folder.highWaterMark();
    mark = known();
    if (Files.exists(folder.file()) && folder.file().toFile().length() > 0) {
      compare(folder.file(), newest);
    }
  }

  private HighWaterMark known() {
    try {
      return HighWaterMark.read(file).orElse(HighWaterMark.NONE);
    } catch (IOException unreadable) {
      LOG.warnf(unreadable, "The high-water mark %s can't be read: it begins anew.", file);
      return HighWaterMark.NONE;
    }
  }

  private void compare(Path club, Loss.Backup newest) {
    try (Connection connection = SqliteFile.open(club)) {
      RecordInFile opened = new RecordInFile(connection);
      Loss.between(mark, newest, opened, time.now())
          .ifPresent(
              loss ->
                  keep(
                      new HighWaterMark(
                          opened.end(),
                          newest == null ? null : newest.fileName(),
                          Stream.concat(mark.unread().stream(), Stream.of(loss)).toList())));
    } catch (SQLException unreadable) {
      throw new IllegalStateException("the record can't be read", unreadable);
    }
  }

  /** Lets the mark follow, where the record went on. It never goes back by itself. */
  public synchronized void follow() {
    if (file == null || sameFile.trouble().isPresent()) {
      return;
    }
    try (Connection connection = source.getConnection()) {
      RecordEnd newest = RecordEnd.in(connection).orElse(null);
      boolean wentOn =
          newest != null && (mark.end() == null || newest.entry() > mark.end().entry());
      if (wentOn || failure != null) {
        keep(wentOn ? mark.reached(newest) : mark);
      }
    } catch (SQLException unreadable) {
      failed(unreadable);
    }
  }

  private void keep(HighWaterMark next) {
    mark = next;
    try {
      next.write(file);
      failure = null;
    } catch (IOException unwritten) {
      failed(unwritten);
    }
  }

  /** Said once, not each second. */
  private void failed(Exception why) {
    if (!why.toString().equals(failure)) {
      failure = why.toString();
      LOG.warnf(why, "The high-water mark stays behind: a lost log of writes might go unnoticed.");
    }
  }

  /** What no officer has read yet. */
  public List<Loss> unread() {
    return mark.unread();
  }

  /**
   * Once it is told in the record that an officer read them: cut off in between, it is asked again.
   */
  public synchronized void allRead() {
    keep(mark.allRead());
  }

  /** One loss in two sentences. */
  public String said(Loss loss) {
    String what = loss.what(time);
    return what.substring(0, 1).toUpperCase(Locale.ROOT)
        + what.substring(1)
        + ". "
        + loss.whatToDo(time);
  }
}
