package club.ascham.backup;

import club.ascham.form.Outcome;
import club.ascham.id.AccountId;
import club.ascham.id.BackupId;
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
  Outcome<BackupId> asked(Backups.Backup made, AccountId by) {
    tell(made, by, "Made a backup");
    return Outcome.done(
        BackupId.of(made.name().seal()),
        "A backup is made and was looked through: it is sound. " + made.size());
  }

  @Writes
  void atNight(Backups.Backup made) {
    tell(made, null, "Made the daily backup");
  }

  /** Told once the migration went through: the file as it was could not take the sentence. */
  @Writes
  public void beforeMigration(Backups.Backup made) {
    tell(made, null, "Made a backup before the migration " + made.name().before());
  }

  private void tell(Backups.Backup made, AccountId by, String what) {
    BackupName name = made.name();
    story.tell(
        Story.Told.ofClub(name.moment(), by, what + ", of the seal " + name.shownSeal() + "."));
  }
}
