package dev.towerscribe.geometry;

/**
 * A stretch of a raw edge between two numbered vertices. A whole circle that nothing cuts has no
 * vertices, and -1 stands for both.
 *
 * @param edge the stretch itself, its ends at its vertices
 * @param from number of its first vertex
 * @param to number of its last vertex
 * @param source which raw edge it came from
 */
record EdgePiece(Edge edge, int from, int to, int source) {
  Vec2 middle() {
    return edge.at(0.5);
  }

  boolean isClosed() {
    return from == to;
  }

  EdgePiece reversed() {
    return new EdgePiece(edge.reversed(), to, from, source);
  }
}
