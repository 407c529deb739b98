package club.ascham.server;

import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Alternative;
import java.nio.file.Path;

/** A disk with as much room as a test says; plenty, whatever the machine's own has. */
@Alternative
@Priority(1)
@ApplicationScoped
public class TestDisk extends Disk {
  static final Room PLENTY = new Room(50_000_000_000L, 100_000_000_000L);
  private volatile Room room = PLENTY;
  private volatile String askedBy;

  @Override
  public Room at(Path folder) {
    askedBy = Thread.currentThread().getName();
    return room;
  }

  /** The name of the thread that asked last. */
  String askedBy() {
    return askedBy;
  }

  void has(Room now) {
    room = now;
  }
}
