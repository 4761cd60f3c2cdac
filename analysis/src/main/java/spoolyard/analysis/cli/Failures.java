package spoolyard.analysis.cli;

import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.file.FileSystemException;
import java.util.List;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;
import spoolyard.analysis.experiment.ReplicationFailedException;
import spoolyard.analysis.report.ResultsRefusedException;
import spoolyard.scenarios.fault.ScenarioException;

/** Turns whatever went wrong into words and an exit code; a stack trace only where it is asked for. */
final class Failures implements IExecutionExceptionHandler, IParameterExceptionHandler {
    private final PrintStream err;

    /**
     * Tells people.
     *
     * @param err standard error
     */
    Failures(PrintStream err) {
        this.err = err;
    }

    @Override
    public int handleParseException(ParameterException failure, String[] arguments) {
        CommandLine command = failure.getCommandLine();
        if (arguments.length == 0) {
            command.usage(err);
            return ExitCode.INPUT;
        }
        err.println(told(failure));
        err.println("  Mend: see " + command.getCommandSpec().qualifiedName() + " --help.");
        return ExitCode.INPUT;
    }

    private static String told(ParameterException failure) {
        if (failure instanceof UnmatchedArgumentException unmatched) {
            String unknown = String.join(" ", unmatched.getUnmatched());
            String meant = unmatched.getSuggestions().stream()
                    .limit(3)
                    .map(suggestion -> suggestion.replace("spoolyard ", ""))
                    .collect(Collectors.joining(" or "));
            return "Not understood: " + unknown + "." + (meant.isEmpty() ? "" : " Meant " + meant + "?");
        }
        if (failure.getArgSpec() instanceof OptionSpec option && failure.getValue() != null && isNumber(option)) {
            return option.longestName() + " = " + failure.getValue() + ". Must be a "
                    + (isWhole(option) ? "whole number." : "number, with a point and no unit.");
        }
        return failure.getMessage() + ".";
    }

    private static boolean isNumber(OptionSpec option) {
        return isWhole(option) || option.type() == double.class || option.type() == Double.class;
    }

    private static boolean isWhole(OptionSpec option) {
        return List.of(int.class, Integer.class, long.class, Long.class).contains(option.type());
    }

    @Override
    public int handleExecutionException(Exception failure, CommandLine command, ParseResult parsed) {
        if (isDebugging(parsed)) {
            failure.printStackTrace(err);
        }
        Throwable cause = failure instanceof ReplicationFailedException ? failure.getCause() : failure;
        if (cause instanceof ScenarioException faults) {
            return faults(faults);
        }
        if (cause instanceof ResultsRefusedException || cause instanceof InputException) {
            err.println(cause.getMessage());
            return ExitCode.INPUT;
        }
        if (cause instanceof UncheckedIOException unchecked) {
            return files(unchecked.getCause());
        }
        return cause instanceof IOException files ? files(files) : internal(failure, cause);
    }

    private int faults(ScenarioException failure) {
        int count = failure.faults().size();
        err.println(failure.getMessage());
        err.println((count == 1 ? "1 fault" : count + " faults") + ". Nothing was run or written.");
        return ExitCode.INPUT;
    }

    private int files(IOException failure) {
        String reason = failure instanceof FileSystemException inFile && inFile.getReason() != null
                ? inFile.getFile() + ": " + inFile.getReason()
                : failure.getClass().getSimpleName() + ": " + failure.getMessage();
        err.println("A file cannot be read or written: " + reason
                + ".\n  Mend: look whether it may be written and the disk has room, then run again.");
        return ExitCode.INPUT;
    }

    private int internal(Exception failure, Throwable cause) {
        if (cause instanceof OutOfMemoryError) {
            err.println("Out of memory.\n  Mend: run with --threads 1, or give Java more with"
                    + " JAVA_TOOL_OPTIONS=-Xmx4g.");
        } else {
            err.println("Internal failure: " + cause + ". This is a fault of the program, not of the scenario.\n"
                    + "  Mend: add --debug to the same command and report what it prints, with the scenario folder.");
        }
        return ExitCode.INTERNAL;
    }

    private static boolean isDebugging(ParseResult parsed) {
        ParseResult root = parsed;
        while (root.hasSubcommand()) {
            root = root.subcommand();
        }
        return root.matchedOptionValue("--debug", false);
    }
}
