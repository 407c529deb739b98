package club.ascham.drift;

import club.ascham.statistics.Scatter.Offset;
import club.ascham.store.Rows;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;

/** Reads how this club's readings differ, and who reads high or low, by name. */
@ApplicationScoped
class ReadersOffsets {
  private final ClubScatter scatter;
  private final Rows rows;

  ReadersOffsets(ClubScatter scatter, Rows rows) {
    this.scatter = scatter;
    this.rows = rows;
  }

  /** One who measured, in mm. */
  record Reader(String name, Offset brace, Offset tiller) {}

  /**
   * @param readers by name
   */
  record Told(ClubScatter.Known known, List<Reader> readers) {}

  private record Account(long id, String name) {}

  Told today() {
    ClubScatter.Known known = scatter.today();
    List<Reader> readers =
        rows.list(Account.class, "SELECT id, name FROM account ORDER BY name").stream()
            .filter(account -> known.brace().offsets().containsKey(Long.toString(account.id())))
            .map(account -> reader(account, known))
            .toList();
    return new Told(known, readers);
  }

  private static Reader reader(Account account, ClubScatter.Known known) {
    String id = Long.toString(account.id());
    return new Reader(account.name(), known.brace().offsetOf(id), known.tiller().offsetOf(id));
  }
}
