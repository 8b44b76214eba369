package dev.towerscribe.store;

/** Sets of files that share a directory; each is replaced as one, by its own list. */
public enum FileSet {
  /** The sheets of a job. */
  PACK("pack.list"),
  /** The curves and the page of its alignment. */
  ALIGNMENT("alignment.list"),
  /** The map of a placement search. */
  PLACEMENT("place.list"),
  /** The drawings of its parts. */
  DRAWINGS("drawing.list"),
  /** The picture of a job that was checked; never beside sheets that were made after it. */
  OVERVIEW("overview.list");

  private final String list;

  FileSet(String list) {
    this.list = list;
  }

  /** The name of the file that lists them. */
  String list() {
    return list;
  }
}
