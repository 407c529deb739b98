package club.ascham.fleet;

/**
 * A number on the committee's page and the way to exactly the rows it counts.
 *
 * @param word its word in JSON
 * @param said what it counts
 * @param query what leads to its rows
 */
public record Figure(String word, String said, int count, String query) {
  public String href() {
    return "/fleet/rows?" + query;
  }

  public boolean isNone() {
    return count == 0;
  }
}
