package club.ascham.store;

import java.nio.file.Path;

/** Where everything lies that a club must not lose. */
public record DataFolder(Path path) {
  /** The club's SQLite file. */
  public Path file() {
    return path.resolve("ascham.db");
  }

  /** What SQLite wrote and has not folded into the file yet: it belongs to the file. */
  public Path writeAheadLog() {
    return path.resolve("ascham.db-wal");
  }

  /** SQLite's index of the write-ahead log. */
  public Path sharedMemory() {
    return path.resolve("ascham.db-shm");
  }

  public Path backups() {
    return path.resolve("backups");
  }

  /**
   * A backup on its way to become the file; where it lies and the file does not, a restore ended
   * half-way.
   */
  public Path restoring() {
    return path.resolve("ascham.db.restoring");
  }

  /** Opens what is sealed of second steps; it stays here when the file is copied. */
  public Path secondStepKey() {
    return path.resolve("second-step.key");
  }

  /** How far the record had come: what tells of a lost log of writes. In no backup or export. */
  public Path highWaterMark() {
    return path.resolve("high-water-mark");
  }

  Path inUse() {
    return path.resolve("in-use");
  }
}
