package dev.towerscribe.cli;

import dev.towerscribe.finding.JobRejected;
import java.io.IOException;

/** One subcommand: what may stand behind its name, and what it does. */
interface Command {
  /**
   * Its options, built only when it is asked for.
   *
   * @return a fresh description
   */
  Options options();

  /**
   * Runs it.
   *
   * @param given what stood on the command line, and where it works
   * @return one of {@link Exit}
   * @throws IOException if a file could not be read or written
   * @throws JobRejected if the job file has faults
   * @throws Refusal for everything else that ends it early
   */
  int run(ParsedCommand given) throws IOException, JobRejected, Refusal;
}
