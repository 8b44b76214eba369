package dev.towerscribe.model;

import dev.towerscribe.quantity.Worded;

/** Tolerance of a bored hole, ISO 286: its least size is the nominal one. */
public enum HoleFit implements Worded {
  /** A ground or reamed seat, for a bearing, a bushing or a dowel. */
  H7,
  /** A drilled hole. */
  H13;

  @Override
  public String word() {
    return name();
  }
}
