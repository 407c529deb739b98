package club.ascham.plan;

/**
 * How something may turn out: half of all courses end between the two inner figures, nine in ten
 * between the outer ones.
 */
public record Spread(long low90, long low50, long median, long high50, long high90, double mean) {}
