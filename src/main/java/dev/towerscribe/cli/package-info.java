/**
 * The command line: words in, words and exit codes out. The only package that touches the process's
 * streams. What keeps files is in {@code store}; everything else hands values or bytes.
 */
package dev.towerscribe.cli;
