package club.ascham.statistics;

import club.ascham.mechanics.Domain;
import club.ascham.mechanics.OutOfDomain;
import club.ascham.statistics.Scatter.Offset;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.RealVector;

/**
 * Variance components of readings: what one person's repeat scatters by, and what people differ by.
 *
 * <p>A reading is the true value of its thing, plus its reader's offset, plus error: things are
 * fixed effects, readers random ones. Sums of squares are set equal to what is expected of them
 * (fitting constants, Henderson's third method); for one thing that is the one-way analysis of
 * variance of unbalanced data. A negative component is 0. Each is drawn toward the prior as if the
 * prior's degrees of freedom had been observed too.
 *
 * @param mean of all readings
 * @param offsets of each reader from the readers' common mean, best linear unbiased prediction: the
 *     fewer readings, and the less readers differ, the nearer to 0
 */
public record Readers(
    double mean, double repeatability, double between, Map<String, Offset> offsets) {
  /** Below this share of the largest, an eigenvalue is 0: a direction that no reading tells of. */
  private static final double NOTHING = 1e-9;

  /**
   * @param thing what was measured, as it was then: one bow between two changes of it. Hand no
   *     readings as one thing between which it may have drifted: the drift would count as scatter
   * @param reader null: someone whose name was not kept; each such reading is another's
   */
  public record Reading(String thing, String reader, double value) {
    public Reading {
      Domain.within("readings", value, -1e9, 1e9);
    }
  }

  public Readers {
    offsets = Collections.unmodifiableMap(new LinkedHashMap<>(offsets));
  }

  /** s_R, with s_R^2 = s_r^2 + s_L^2: of one reading by anybody. */
  public double reproducibility() {
    return Math.hypot(repeatability, between);
  }

  /**
   * From the readings alone.
   *
   * @throws OutOfDomain where nobody measured twice, or everything was measured by one person
   */
  public static Readers of(List<Reading> readings) {
    return of(readings, ScatterPrior.NONE);
  }

  /** From the readings and what was believed before them. */
  public static Readers of(List<Reading> readings, ScatterPrior prior) {
    if (readings.isEmpty()) {
      throw new OutOfDomain("readings", "There are none.");
    }
    return new Sums(readings).components(prior);
  }

  /** The club's scatter, with what its readings so far add to the prior. */
  public static Scatter learnt(List<Reading> readings, ScatterPrior prior) {
    if (readings.isEmpty()) {
      return prior.scatter();
    }
    Readers readers = of(readings, prior);
    return new Scatter(readers.repeatability, readers.between, readers.offsets);
  }

  /** Sums of squares and products about each thing's mean. */
  private static final class Sums {
    private final Map<String, Integer> readers = new TreeMap<>();
    private final int count;
    private final int things;
    private final double mean;
    private double square;
    private final double[][] products;
    private final double[] sums;

    Sums(List<Reading> readings) {
      Map<String, Map<String, double[]>> cells = new TreeMap<>();
      Map<String, double[]> totals = new TreeMap<>();
      int unnamed = 0;
      double total = 0;
      for (Reading reading : readings) {
        // Nobody's name begins with a control character.
        String reader = reading.reader() == null ? "\u0000" + unnamed++ : reading.reader();
        readers.putIfAbsent(reader, 0);
        add(cells.computeIfAbsent(reading.thing(), t -> new TreeMap<>()), reader, reading.value());
        add(totals, reading.thing(), reading.value());
        total += reading.value();
      }
      count = readings.size();
      things = totals.size();
      mean = total / count;
      int next = 0;
      for (Map.Entry<String, Integer> reader : readers.entrySet()) {
        reader.setValue(next++);
      }
      products = new double[readers.size()][readers.size()];
      sums = new double[readers.size()];
      for (Reading reading : readings) {
        double[] thing = totals.get(reading.thing());
        double deviation = reading.value() - thing[1] / thing[0];
        square += deviation * deviation;
      }
      cells.forEach((thing, cell) -> gather(cell, totals.get(thing)));
    }

    private static void add(Map<String, double[]> to, String key, double value) {
      double[] sum = to.computeIfAbsent(key, k -> new double[2]);
      sum[0]++;
      sum[1] += value;
    }

    private void gather(Map<String, double[]> cell, double[] thing) {
      cell.forEach(
          (reader, own) -> {
            int row = readers.get(reader);
            sums[row] += own[1] - own[0] * thing[1] / thing[0];
            products[row][row] += own[0];
            cell.forEach(
                (other, theirs) ->
                    products[row][readers.get(other)] -= own[0] * theirs[0] / thing[0]);
          });
    }

    Readers components(ScatterPrior prior) {
      EigenDecompositionSymmetric eigen =
          new EigenDecompositionSymmetric(new Array2DRowRealMatrix(products, false));
      double[] told = eigen.getEigenvalues();
      double[] along = new double[told.length];
      double most = 0;
      for (double value : told) {
        most = Math.max(most, value);
      }
      int rank = 0;
      double explained = 0;
      double trace = 0;
      for (int i = 0; i < told.length; i++) {
        if (told[i] > NOTHING * most) {
          along[i] = dot(eigen.getEigenvector(i));
          explained += along[i] * along[i] / told[i];
          trace += told[i];
          rank++;
        } else {
          told[i] = 0;
        }
      }
      int free = count - things - rank;
      refuse(free + prior.repeats() <= 0, "Someone has to measure the same thing twice.");
      refuse(rank + prior.readers() <= 0, "Two people have to measure the same thing.");
      double within =
          (Math.max(0, square - explained) + prior.repeats() * squared(prior.repeatability()))
              / (free + prior.repeats());
      // How much of the readers' variance a mean square between them holds, for each direction.
      double share = rank == 0 ? 1 : trace / rank;
      double between =
          Math.max(
              0,
              ((explained - rank * within) / share + prior.readers() * squared(prior.between()))
                  / (rank + prior.readers()));
      return new Readers(
          mean,
          Math.sqrt(within),
          Math.sqrt(between),
          offsets(eigen, told, along, within, between));
    }

    /** With no scatter of one person at all, whatever differs between readers is theirs. */
    private Map<String, Offset> offsets(
        EigenDecompositionSymmetric eigen,
        double[] told,
        double[] along,
        double within,
        double between) {
      double[] means = new double[told.length];
      double[] variances = new double[told.length];
      for (int i = 0; i < told.length; i++) {
        RealVector direction = eigen.getEigenvector(i);
        double precision = told[i] * between + within;
        double mean = precision == 0 ? 0 : between * along[i] / precision;
        double variance = precision == 0 ? 0 : between * within / precision;
        for (int j = 0; j < means.length; j++) {
          means[j] += direction.getEntry(j) * mean;
          variances[j] += direction.getEntry(j) * direction.getEntry(j) * variance;
        }
      }
      Map<String, Offset> offsets = new LinkedHashMap<>();
      readers.forEach(
          (reader, at) -> {
            if (!reader.startsWith("\u0000")) {
              offsets.put(reader, new Offset(means[at], Math.sqrt(Math.max(0, variances[at]))));
            }
          });
      return offsets;
    }

    private double dot(RealVector direction) {
      double sum = 0;
      for (int i = 0; i < sums.length; i++) {
        sum += sums[i] * direction.getEntry(i);
      }
      return sum;
    }

    private static void refuse(boolean lacking, String why) {
      if (lacking) {
        throw new OutOfDomain("readings", why);
      }
    }

    private static double squared(double x) {
      return x * x;
    }
  }
}
