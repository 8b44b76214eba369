/**
 * What keeps files: directories whose files are replaced as one, locks, marks and lists of packs,
 * records that only grow, and the one way in which a file is made, proved and then written or
 * refused. Knows nothing of commands and options; every fault is an {@link java.io.IOException}, of
 * class {@link dev.towerscribe.store.Refused} where the files are sound and something else bars the
 * writing.
 */
package dev.towerscribe.store;
