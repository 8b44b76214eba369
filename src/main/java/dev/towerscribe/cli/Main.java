package dev.towerscribe.cli;

import dev.towerscribe.finding.Fault;
import dev.towerscribe.finding.JobRejected;
import dev.towerscribe.quantity.Version;
import dev.towerscribe.store.FileOps;
import dev.towerscribe.store.Refused;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

/** The program: picks the command, runs it, and turns every way it can end into an exit code. */
public final class Main {
  /** Set to 1, it lets the working of an unexpected fault be shown. */
  private static final String TRACE_VARIABLE = "TOWERSCRIBE_TRACE";

  private static final String NAME = "towerscribe";

  private static final Map<Class<?>, String> FILE_FAULTS =
      Map.of(
          NoSuchFileException.class, "no such file or directory",
          AccessDeniedException.class, "permission denied",
          NotDirectoryException.class, "not a directory",
          FileAlreadyExistsException.class, "is in the way");

  private static final Map<String, Supplier<Command>> COMMANDS = new LinkedHashMap<>();

  static {
    COMMANDS.put("start", StartCommand::new);
    COMMANDS.put("survey", SurveyCommand::new);
    COMMANDS.put("check", CheckCommand::new);
    COMMANDS.put("align", AlignCommand::new);
    COMMANDS.put("place", PlaceCommand::new);
    COMMANDS.put("drawing", DrawingCommand::new);
    COMMANDS.put("pack", PackCommand::new);
    COMMANDS.put("drilled", DrilledCommand::new);
    COMMANDS.put("record", RecordCommand::new);
    COMMANDS.put("ruler", RulerCommand::new);
  }

  private Main() {}

  /**
   * Runs the program and ends the process with its exit code.
   *
   * @param args a command and what follows it
   */
  public static void main(String[] args) {
    PrintStream out = utf8(FileDescriptor.out);
    PrintStream err = utf8(FileDescriptor.err);
    System.exit(run(args, out, err, Path.of("")));
  }

  /**
   * Runs the program within a process.
   *
   * @param args a command and what follows it
   * @param out where results go, UTF-8
   * @param err where messages go, UTF-8
   * @param directory what relative paths start from
   * @return the exit code: 0 done, 1 a stop finding, 2 wrong use or bad input, 3 a file could not
   *     be read or written, 70 a fault of the program
   */
  public static int run(String[] args, PrintStream out, PrintStream err, Path directory) {
    return run(args, new Context(new Console(out, err), directory, FileOps.REAL));
  }

  static int run(String[] args, Context context) {
    Console console = context.console();
    int exit = exitOf(args, context);
    if (!console.flush() && exit <= Exit.STOPPED) {
      console.warn("standard output could not be written");
      exit = Exit.FILES;
    }
    console.flush();
    return exit;
  }

  private static int exitOf(String[] args, Context context) {
    Console console = context.console();
    try {
      return dispatch(args, context);
    } catch (Refusal e) {
      e.lines().forEach(console::warn);
      return e.exit();
    } catch (JobRejected e) {
      console.warn("the job file cannot be used:");
      e.faults().stream().map(Fault::line).forEach(console::warn);
      return Exit.WRONG_USE;
    } catch (Refused e) {
      return refused(e, console);
    } catch (IOException e) {
      console.warn(words(e));
      return Exit.FILES;
    } catch (UncheckedIOException e) {
      console.warn(words(e.getCause()));
      return Exit.FILES;
    } catch (RuntimeException | Error e) {
      // Errors too: left to the virtual machine, one would end the process with 1, which says
      // that the job has a stop finding.
      console.warn(e.getClass().getSimpleName() + ": " + e.getMessage());
      console.warn(Refusal.PLEASE_REPORT);
      if ("1".equals(System.getenv(TRACE_VARIABLE))) {
        console.trace(e);
      }
      return Exit.OUR_FAULT;
    }
  }

  /** Adds to what the store says what a user of the command line can do about it. */
  static int refused(Refused e, Console console) {
    String more =
        switch (e.why()) {
          case THERE_ALREADY -> "; --force replaces it";
          case NEVER_REPLACED -> ", --force or not; name another file";
          default -> "";
        };
    e.lines().forEach(line -> console.warn(line + more));
    return switch (e.why()) {
      case BUSY, NO_FOLDER, THERE_ALREADY -> Exit.FILES;
      case NEVER_REPLACED -> Exit.WRONG_USE;
      case UNPROVED -> {
        console.warn(Refusal.PLEASE_REPORT);
        yield Exit.OUR_FAULT;
      }
    };
  }

  private static int dispatch(String[] args, Context context)
      throws IOException, JobRejected, Refusal {
    if (args.length == 2 && args[0].equals("help")) {
      return dispatch(new String[] {args[1], "--help"}, context);
    }
    Supplier<Command> named = args.length == 0 ? null : COMMANDS.get(args[0]);
    if (named == null) {
      return withoutCommand(args, context.console());
    }
    Command command = named.get();
    CommandSpec spec = command.options().spec();
    ParseResult given = parse(spec, Arrays.copyOfRange(args, 1, args.length), NAME + " " + args[0]);
    if (given.isUsageHelpRequested()) {
      context.console().print(usage(spec));
      return Exit.DONE;
    }
    return command.run(new ParsedCommand(given, context));
  }

  /** No known command first: help, version, or a mistake. */
  private static int withoutCommand(String[] args, Console console) throws Refusal {
    CommandSpec spec = CommandSpec.create().name(NAME);
    spec.usageMessage()
        .description(
            "Makes full-scale drilling and cutting sheets for slotted strut top mounts from a job"
                + " file.")
        .footer(
            "",
            "Exit codes: 0 done; 1 the job has a stop finding; 2 wrong use or bad input;",
            "3 a file could not be read or written; 70 a fault of the program.",
            "",
            "Example: towerscribe start -o wren.toml, then: towerscribe check wren.toml");
    spec.addOption(
        OptionSpec.builder("-h", "--help").usageHelp(true).description("Show this help.").build());
    spec.addOption(
        OptionSpec.builder("-V", "--version")
            .versionHelp(true)
            .description("Show the version.")
            .build());
    for (Map.Entry<String, Supplier<Command>> command : COMMANDS.entrySet()) {
      spec.addSubcommand(
          command.getKey(), command.getValue().get().options().spec().name(command.getKey()));
    }
    ParseResult given = parse(spec, args, NAME);
    if (given.isUsageHelpRequested() || args.length == 1 && args[0].equals("help")) {
      console.print(usage(spec));
      return Exit.DONE;
    }
    if (given.isVersionHelpRequested()) {
      console.say(NAME + " " + Version.TEXT);
      return Exit.DONE;
    }
    throw Refusal.wrongUse(
        List.of(
            "no command given; there are: " + String.join(", ", COMMANDS.keySet()),
            "see: " + NAME + " --help"));
  }

  private static ParseResult parse(CommandSpec spec, String[] args, String name) throws Refusal {
    try {
      return new CommandLine(spec).setExpandAtFiles(false).parseArgs(args);
    } catch (ParameterException e) {
      String said = e.getMessage();
      if (e instanceof UnmatchedArgumentException unmatched
          && !unmatched.getSuggestions().isEmpty()) {
        said += "; did you mean " + String.join(" or ", unmatched.getSuggestions()) + "?";
      }
      throw Refusal.wrongUse(List.of(said, "see: " + name + " --help"));
    }
  }

  private static String usage(CommandSpec spec) {
    StringWriter text = new StringWriter();
    spec.commandLine().usage(new PrintWriter(text), Ansi.OFF);
    return text.toString().replace(System.lineSeparator(), "\n");
  }

  /** Says in words what the class of a file fault says in Java. */
  private static String words(IOException e) {
    String file = e instanceof FileSystemException f && f.getFile() != null ? f.getFile() : "";
    String what = FILE_FAULTS.get(e.getClass());
    if (what != null) {
      return file + ": " + what;
    }
    return e.getMessage() == null ? "a file could not be read or written" : e.getMessage();
  }

  private static PrintStream utf8(FileDescriptor stream) {
    return new PrintStream(new FileOutputStream(stream), false, StandardCharsets.UTF_8);
  }
}
