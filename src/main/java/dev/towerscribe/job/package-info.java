/**
 * Job files in: TOML text to a tree that remembers where each value was written, the tree with each
 * side's overrides merged in, and from that the model. Every fault of a file is gathered before any
 * is reported. The only user of the TOML library.
 *
 * <p>Strings are never taken for numbers nor numbers for strings, a missing key is never a silent
 * zero, and whatever the text holds, the answer is a job or a list of faults.
 */
package dev.towerscribe.job;
