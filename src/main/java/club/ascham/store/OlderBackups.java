package club.ascham.store;

import java.time.LocalDate;
import java.util.List;

/** Asked for what holds whom the club erases now, until its turn is over. */
public interface OlderBackups {
  /**
   * The backups that were kept until now.
   *
   * @param lastDay on which the last backup goes that goes by itself; null: there is none
   * @param stay backups whose day nobody knows: the last that were made before an update
   * @param setAside folders in which a restore left a file, which nobody but a person deletes
   * @param copies those in the second folder; null: none are asked for
   */
  record Older(LocalDate lastDay, int stay, List<String> setAside, OlderCopies copies) {
    public boolean none() {
      return lastDay == null
          && stay == 0
          && setAside.isEmpty()
          && (copies == null || copies.none());
    }
  }

  /**
   * The same in the second folder.
   *
   * @param there whether the second folder's disk is; where not, nobody knows what it holds
   * @param lastDay on which the last goes that goes by itself; null: there is none
   * @param stay those whose day nobody knows
   */
  record OlderCopies(boolean there, LocalDate lastDay, int stay) {
    public boolean none() {
      return there && lastDay == null && stay == 0;
    }
  }

  Older older();
}
