package club.ascham.units;

/**
 * A signed length, kept exactly as a whole number of hundred-thousandths of a millimetre: 1/32 in
 * is 79 375 of them and 0.1 mm is 10 000, so neither system ever rounds.
 *
 * @param units hundred-thousandths of a millimetre; negative where the quantity is signed (tiller)
 */
public record Length(long units) implements Comparable<Length> {
  public static final Length ZERO = new Length(0);
  private static final long PER_MM = 100_000;
  private static final long PER_INCH = 2_540_000;

  /** The nearest length to so many millimetres. */
  public static Length ofMm(double mm) {
    return new Length(Math.round(mm * PER_MM));
  }

  /** The nearest length to so many inches. */
  public static Length ofInches(double inches) {
    return new Length(Math.round(inches * PER_INCH));
  }

  /**
   * The step it was read in: a whole number of sixteenths of an inch was read in inches, anything
   * else in millimetres.
   */
  public Length readingStep() {
    return new Length(units % (PER_INCH / 16) == 0 ? PER_INCH / 16 : PER_MM);
  }

  public double mm() {
    return (double) units / PER_MM;
  }

  public double inches() {
    return (double) units / PER_INCH;
  }

  public Length plus(Length other) {
    return new Length(Math.addExact(units, other.units));
  }

  public Length minus(Length other) {
    return new Length(Math.subtractExact(units, other.units));
  }

  public Length abs() {
    return new Length(Math.abs(units));
  }

  @Override
  public int compareTo(Length other) {
    return Long.compare(units, other.units);
  }
}
