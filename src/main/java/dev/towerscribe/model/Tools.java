package dev.towerscribe.model;

import dev.towerscribe.quantity.Require;

/**
 * What tightens the fasteners.
 *
 * @param socketMm outside diameter of the socket, or of its drive end if that is larger
 * @param depthMm its length
 * @param roomMm air around it
 * @param assumed true when the size was not measured but taken from a typical list
 */
public record Tools(double socketMm, double depthMm, double roomMm, boolean assumed) {
  /** Checks the figures. */
  public Tools {
    Require.positive("socket diameter", socketMm);
    Require.positive("socket depth", depthMm);
    Require.notNegative("room", roomMm);
  }

  /**
   * Radius that must be free above a fastener.
   *
   * @return mm
   */
  public double reachRadiusMm() {
    return socketMm / 2 + roomMm;
  }
}
