package club.ascham.backup;

import club.ascham.id.AccountId;
import jakarta.enterprise.context.ApplicationScoped;

/**
 * Makes a backup and tells it in the record. It is told after it was made, since only what was made
 * can be told: so a backup never holds its own sentence, and the seal in its name is of the
 * sentence before.
 */
@ApplicationScoped
class MakeBackup {
  private final Backups backups;
  private final TellBackup tellBackup;

  MakeBackup(Backups backups, TellBackup tellBackup) {
    this.backups = backups;
    this.tellBackup = tellBackup;
  }

  /** Because a person asked for it. */
  Backups.Outcome asked(AccountId by) {
    Backups.Outcome outcome = backups.make();
    if (outcome instanceof Backups.Made made) {
      tellBackup.asked(made, by);
    }
    return outcome;
  }

  /** The daily one, if it is due. */
  void ifDue() {
    if (backups.isDue() && backups.make() instanceof Backups.Made made) {
      tellBackup.atNight(made);
    }
  }
}
