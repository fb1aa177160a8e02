package dev.fairlead.cli;

import dev.fairlead.drawing.Wrap;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import picocli.CommandLine;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.TypeConversionException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Says what is wrong with a call in a few lines, so that the message is not lost above the whole help. */
final class UsageErrors {
    private UsageErrors() {}

    static void on(CommandLine line) {
        line.registerConverter(LocalDate.class, new Day());
        line.registerConverter(Path.class, new PathNames());
        line.setParameterExceptionHandler((e, args) -> told(e, args.length == 0));
    }

    private static int told(ParameterException e, boolean bare) {
        PrintWriter err = e.getCommandLine().getErr();
        if (bare) {
            e.getCommandLine().usage(err);
            return ExitCode.USAGE;
        }
        err.print(Wrap.hanging("", String.valueOf(e.getMessage())));
        UnmatchedArgumentException.printSuggestions(e, err);
        err.println(e.getCommandLine().getCommandSpec().qualifiedName() + " --help tells what it takes.");
        err.flush();
        return ExitCode.USAGE;
    }

    /** A day as people are asked to write it. */
    private static final class Day implements ITypeConverter<LocalDate> {
        @Override
        public LocalDate convert(String value) {
            try {
                return LocalDate.parse(value);
            } catch (DateTimeParseException e) {
                throw new TypeConversionException(
                        "expected a day as year-month-day, such as 2026-10-01, found " + value);
            }
        }
    }
}
