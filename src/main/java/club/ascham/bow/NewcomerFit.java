package club.ascham.bow;

import java.util.List;

/**
 * What suits an archer: bow length in inches, weight on the fingers in lbf, shortest arrow.
 *
 * @param bowFromIn the shortest bow of the published row
 * @param bowToIn the longest bow of the published row
 * @param bowPreferredIn the one to look for first
 * @param bowBasis where the lengths come from, in words
 * @param leastLb below it the bow is lighter than usual; advice
 * @param aimLb the weight to look for first; advice
 * @param ceiling how heavy it may be, with and without a coach who agreed
 * @param weightBasis where the weights come from, in words
 * @param shortestArrow a hard rule, overridden by nobody
 * @param remarks what a person has to decide or do
 */
public record NewcomerFit(
    int bowFromIn,
    int bowToIn,
    int bowPreferredIn,
    String bowBasis,
    double leastLb,
    double aimLb,
    WeightCeiling ceiling,
    String weightBasis,
    ShortestArrow shortestArrow,
    List<String> remarks) {
  public NewcomerFit {
    remarks = List.copyOf(remarks);
  }
}
