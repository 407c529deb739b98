package club.ascham.id;

/** Names a backup by the seal in its name: two of the same seal hold the same. */
public record BackupId(long value) implements Made {
  public static BackupId of(String seal) {
    return new BackupId(Long.parseLong(seal.replace(" ", ""), 16));
  }
}
