package club.ascham.mechanics;

/**
 * Newton's method on two or three unknowns, its slopes by differences. Keeps its room, so that a
 * solver that walks from state to state allocates nothing.
 *
 * <p>Tension and brace are sought together and not one inside the other: nested, each step of the
 * outer search would pay for all of the inner one. Each state begins from the last.
 */
final class Newton {
  private static final double NUDGE = 1e-7;
  private static final int MOST_ROUNDS = 25;

  /** Residuals of the unknowns, written into {@code out}. */
  interface Equations {
    void at(double[] unknowns, double[] out);
  }

  private final int size;
  private final double tolerance;
  private final double[] largestStep;
  private final double[] here;
  private final double[] there;
  private final double[] change;
  private final double[][] slopes;

  /**
   * @param tolerance of every residual
   * @param largestStep by which an unknown changes in one round
   */
  Newton(double tolerance, double... largestStep) {
    this.size = largestStep.length;
    this.tolerance = tolerance;
    this.largestStep = largestStep;
    this.here = new double[size];
    this.there = new double[size];
    this.change = new double[size];
    this.slopes = new double[size][size];
  }

  /**
   * Improves the unknowns in place.
   *
   * @return whether they solve the equations; if not, what stands there is of no use
   */
  boolean solve(Equations equations, double[] unknowns) {
    for (int round = 0; round < MOST_ROUNDS; round++) {
      equations.at(unknowns, here);
      double worst = 0;
      for (double residual : here) {
        worst = Math.max(worst, Math.abs(residual));
      }
      if (worst < tolerance) {
        return true;
      }
      if (!Double.isFinite(worst)) {
        return false;
      }
      for (int j = 0; j < size; j++) {
        double kept = unknowns[j];
        double nudge = NUDGE * (1 + Math.abs(kept));
        unknowns[j] = kept + nudge;
        equations.at(unknowns, there);
        unknowns[j] = kept;
        for (int i = 0; i < size; i++) {
          slopes[i][j] = (there[i] - here[i]) / nudge;
        }
      }
      if (!eliminate()) {
        return false;
      }
      double part = 1;
      for (int j = 0; j < size; j++) {
        part = Math.min(part, largestStep[j] / Math.max(Math.abs(change[j]), 1e-300));
      }
      for (int j = 0; j < size; j++) {
        unknowns[j] -= part * change[j];
      }
    }
    return false;
  }

  /** slopes x change = here, by elimination with pivots. */
  private boolean eliminate() {
    for (int column = 0; column < size; column++) {
      int pivot = column;
      for (int row = column + 1; row < size; row++) {
        if (Math.abs(slopes[row][column]) > Math.abs(slopes[pivot][column])) {
          pivot = row;
        }
      }
      if (!(Math.abs(slopes[pivot][column]) > 1e-14)) {
        return false;
      }
      double[] swapped = slopes[pivot];
      slopes[pivot] = slopes[column];
      slopes[column] = swapped;
      double residual = here[pivot];
      here[pivot] = here[column];
      here[column] = residual;
      for (int row = column + 1; row < size; row++) {
        double factor = slopes[row][column] / slopes[column][column];
        for (int j = column; j < size; j++) {
          slopes[row][j] -= factor * slopes[column][j];
        }
        here[row] -= factor * here[column];
      }
    }
    for (int row = size - 1; row >= 0; row--) {
      double sum = here[row];
      for (int j = row + 1; j < size; j++) {
        sum -= slopes[row][j] * change[j];
      }
      change[row] = sum / slopes[row][row];
    }
    return true;
  }
}
