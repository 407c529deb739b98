package club.ascham.id;

/** Names the club itself, for what is set for all of it. */
public record ClubId(long value) implements Made {
  public static final ClubId ONE = new ClubId(1);
}
