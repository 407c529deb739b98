package club.ascham.statistics;

/** An estimate and the ends between which the truth lies, as often as the asker wanted. */
public record Interval(double estimate, double low, double high) {}
