/**
 * The command line: words in, files and exit codes out. The only package that touches the process's
 * streams, and the only one that writes files. Everything else hands it values or bytes.
 */
package dev.towerscribe.cli;
