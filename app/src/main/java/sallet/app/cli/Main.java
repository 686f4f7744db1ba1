package sallet.app.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;
import sallet.app.file.Fault;

/** The program: {@code sallet COMMAND FILE [options]}. */
public final class Main {
  private Main() {}

  /** Runs a command and ends the process with its exit status. */
  public static void main(String[] args) {
    Locale.setDefault(Locale.ROOT);
    System.exit(run(Terminal.ofProcess(), args));
  }

  /** Runs a command and gives its exit status. */
  static int run(Terminal terminal, String... args) {
    Answer answer = new Answer(terminal, Arrays.asList(args).contains("--json"));
    try {
      return commandLine(terminal, answer).execute(args);
    } catch (Throwable e) { // whatever it is, the grower gets a sentence and no stack trace
      return ourFault(terminal, answer, e);
    }
  }

  private static CommandLine commandLine(Terminal terminal, Answer answer) {
    CommandLine commandLine =
        new CommandLine(new Sallet())
            .addSubcommand(new PlanCommand(terminal))
            .addSubcommand(new LightCommand(terminal))
            .addSubcommand(new FeedCommand(terminal))
            .addSubcommand(new CropCommand(terminal))
            .addSubcommand(new JournalCommand(terminal))
            .addSubcommand(new RehearseCommand(terminal))
            .addSubcommand(new WaterCommand(terminal))
            .addSubcommand(new AwayCommand(terminal));
    commandLine.setOut(new PrintWriter(terminal.out(), true, StandardCharsets.UTF_8));
    commandLine.setErr(new PrintWriter(terminal.err(), true, StandardCharsets.UTF_8));
    commandLine.setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF));
    commandLine.setParameterExceptionHandler((e, args) -> wrongCall(answer, e));
    commandLine.setExecutionExceptionHandler((e, line, parsed) -> ourFault(terminal, answer, e));
    return commandLine;
  }

  private static int wrongCall(Answer answer, ParameterException e) {
    String command = e.getCommandLine().getCommandSpec().qualifiedName();
    String sentence = sentence(e) + "; see " + command + " --help";
    return answer.refuse(ExitStatus.WRONG_INPUT, "", List.of(new Fault("", 0, sentence))).code();
  }

  private static String sentence(ParameterException e) {
    if (e instanceof UnmatchedArgumentException unmatched) {
      String word = String.join(" ", unmatched.getUnmatched());
      List<String> near = unmatched.getSuggestions();
      return "\""
          + word
          + "\" is not understood here"
          + (near.isEmpty() ? "" : " (did you mean " + near.get(0) + "?)");
    }
    return String.valueOf(e.getMessage()).replace('\n', ' ');
  }

  private static int ourFault(Terminal terminal, Answer answer, Throwable e) {
    if (terminal.trace()) {
      e.printStackTrace(terminal.err());
    }
    String sentence =
        "Sallet itself failed here ("
            + e.getClass().getSimpleName()
            + "), not your file; please report it with the file, and set SALLET_TRACE=1 to see"
            + " where it failed";
    return answer.refuse(ExitStatus.OUR_FAULT, "", List.of(new Fault("", 0, sentence))).code();
  }

  /** The command without a command: help and version. */
  @Command(
      name = "sallet",
      header = "Plan and run a household's year-round salad bench.",
      footer = {
        "%nExit status: 0 done, 1 our own fault, 2 wrong input or call, 3 no answer.",
        "Start with: sallet plan examples/porch.yaml"
      },
      mixinStandardHelpOptions = true,
      versionProvider = Version.class)
  private static final class Sallet implements Runnable {
    @Override
    public void run() {
      throw new ParameterException(
          new CommandLine(this), "name a command, such as: sallet plan examples/porch.yaml");
    }
  }

  /** The version the build was given. */
  static final class Version implements CommandLine.IVersionProvider {
    @Override
    public String[] getVersion() {
      String version = Main.class.getPackage().getImplementationVersion();
      return new String[] {"Sallet " + (version == null ? "(not packaged)" : version)};
    }
  }
}
