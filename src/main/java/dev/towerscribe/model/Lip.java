package dev.towerscribe.model;

import dev.towerscribe.geometry.Contour;
import dev.towerscribe.quantity.Require;
import dev.towerscribe.quantity.Worded;
import java.util.Objects;

/**
 * The edge of an opening that was pressed out of the flat: raised above the top, or swaged down.
 *
 * @param turned which way
 * @param heightMm how far it stands out from that face of the tower, positive
 * @param radiusMm radius of the bend between it and the flat, positive
 * @param flat the line round the opening outside which the metal is flat, plan
 */
public record Lip(Turned turned, double heightMm, double radiusMm, Contour flat) {
  /** Which way a lip stands. */
  public enum Turned implements Worded {
    /** Up, off the tower's upper face. */
    UP("up"),
    /** Down, off its lower face. */
    DOWN("down");

    private final String word;

    Turned(String word) {
      this.word = word;
    }

    @Override
    public String word() {
      return word;
    }
  }

  /** Checks the figures. */
  public Lip {
    Objects.requireNonNull(turned);
    Objects.requireNonNull(flat);
    Require.positive("lip height", heightMm);
    Require.positive("lip radius", radiusMm);
  }

  /**
   * Whether it stands out from the face that a plate lies against.
   *
   * @param seat that face
   * @return true where the plate meets it
   */
  public boolean facesPlate(Seat seat) {
    return (turned == Turned.UP) == (seat == Seat.ON_TOP);
  }
}
