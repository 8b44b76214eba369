package dev.towerscribe.adjust;

import java.util.List;
import java.util.Optional;

/**
 * A network at its least-squares solution, with the covariance that the standard deviations as
 * stated give.
 */
public final class Adjustment {
  /**
   * Checked by the others to no more than this share of an error, an observation is as good as
   * alone. Our own choice, no source.
   */
  public static final double UNCHECKED = 0.02;

  private final Network net;
  private final List<Observation> observations;
  private final GaussNewton.Solution solution;
  private final Covariance covariance;

  private Adjustment(Network net, List<Observation> observations, GaussNewton.Solution solution) {
    this.net = net;
    this.observations = List.copyOf(observations);
    this.solution = solution;
    covariance = Covariance.inverse(solution.equations().matrix());
  }

  /**
   * Looks for a solution without working its covariance out.
   *
   * @param net the network
   * @param observations of it
   * @param start the unknowns to begin at, mm
   * @return the lowest place found
   */
  public static GaussNewton.Solution search(
      Network net, List<Observation> observations, double[] start) {
    return GaussNewton.solve(x -> Optional.of(NormalEquations.of(net, observations, x)), start);
  }

  /**
   * An adjustment at a solution that was found.
   *
   * @param net the network
   * @param observations of it
   * @param solution what {@link #search} gave
   * @return with its covariance
   */
  public static Adjustment at(
      Network net, List<Observation> observations, GaussNewton.Solution solution) {
    return new Adjustment(net, observations, solution);
  }

  /**
   * Solves.
   *
   * @param net the network
   * @param observations of it
   * @param start the unknowns to begin at, mm
   * @return the adjustment
   */
  public static Adjustment solve(Network net, List<Observation> observations, double[] start) {
    return at(net, observations, search(net, observations, start));
  }

  /**
   * The network.
   *
   * @return as given
   */
  public Network net() {
    return net;
  }

  /**
   * What it was solved from.
   *
   * @return as given
   */
  public List<Observation> observations() {
    return observations;
  }

  /**
   * The unknowns.
   *
   * @return mm, in the network's order
   */
  public double[] x() {
    return solution.x();
  }

  /**
   * Covariance of the unknowns at the standard deviations as stated.
   *
   * @return mm2
   */
  public Covariance covariance() {
    return covariance;
  }

  /**
   * Degrees of freedom: readings less what they had to fix.
   *
   * @return not negative
   */
  public int freedom() {
    int readings = observations.stream().mapToInt(o -> o.reading().count()).sum();
    return readings - (net.unknowns() - covariance.open().size());
  }

  /**
   * How all readings agree: residuals of the means, and repeated readings with each other.
   *
   * @return the chi-square test
   */
  public Consistency consistency() {
    double scatter = observations.stream().mapToDouble(o -> o.reading().scatter()).sum();
    return new Consistency(solution.squares() + scatter, freedom());
  }

  /**
   * What an observation should have read.
   *
   * @param o any observation of the network
   * @return mm
   */
  public double calculated(Observation o) {
    return o.measure().value(net, x());
  }

  /**
   * Derivatives of an observation at the solution.
   *
   * @param o any observation of the network
   * @return its row
   */
  public Row row(Observation o) {
    return o.measure().row(net, x());
  }

  /**
   * Variance of what an observation should have read.
   *
   * @param o any observation of the network
   * @return mm2
   */
  public double calculatedVariance(Observation o) {
    return covariance.of(row(o), row(o));
  }

  /**
   * The share of an error of an observation that the others would show.
   *
   * @param o one of the observations
   * @return 0 to 1, but for rounding
   */
  public double redundancy(Observation o) {
    return 1 - o.weight() * calculatedVariance(o);
  }

  /**
   * Whether the others show enough of an error to tell anything.
   *
   * @param o one of the observations
   * @return true past {@link #UNCHECKED}
   */
  public boolean isChecked(Observation o) {
    return redundancy(o) > UNCHECKED;
  }
}
