package club.ascham.backup;

import club.ascham.id.AccountId;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import jakarta.enterprise.context.ApplicationScoped;

/**
 * Tells that a backup was made: when, by whom or why by itself, and under which seal.
 *
 * <p>Afterwards, since only what was made can be told: a backup never holds its own sentence, and
 * its name bears the seal before. One before a migration is told once the migration went through;
 * if that fails, the next start makes another and tells that one.
 */
@ApplicationScoped
public class TellBackup {
  private final Story story;

  TellBackup(Story story) {
    this.story = story;
  }

  @Writes
  void asked(Backups.Made made, AccountId by) {
    tell(made, by, "Made a backup");
  }

  @Writes
  void atNight(Backups.Made made) {
    tell(made, null, "Made the daily backup");
  }

  /** Told once the migration went through: the file as it was could not take the sentence. */
  @Writes
  public void beforeMigration(Backups.Made made) {
    tell(made, null, "Made a backup before the migration " + made.backup().name().before());
  }

  private void tell(Backups.Made made, AccountId by, String what) {
    BackupName name = made.backup().name();
    story.tell(
        Story.Told.ofClub(name.moment(), by, what + ", of the seal " + name.shownSeal() + "."));
  }
}
