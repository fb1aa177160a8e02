package dev.fairlead.cli;

import java.io.PrintStream;
import java.util.function.LongConsumer;
import me.tongfei.progressbar.ConsoleProgressBarConsumer;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;
import org.jspecify.annotations.Nullable;

/** A bar on standard error that tells how far a long run has come; nothing at all where nobody would see it. */
final class RunProgress implements LongConsumer, AutoCloseable {
    private static final int WIDTH = 78;
    private static final int MILLISECONDS = 500;

    private final @Nullable ProgressBar bar;

    private RunProgress(@Nullable ProgressBar bar) {
        this.bar = bar;
    }

    @SuppressWarnings("SystemConsoleNull") // Java 22 to 24 have a console without a terminal, and a method that tells
    private static boolean terminal() {
        java.io.Console here = System.console();
        if (here == null) {
            return false;
        }
        try {
            return (boolean) java.io.Console.class.getMethod("isTerminal").invoke(here);
        } catch (NoSuchMethodException e) {
            return true;
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("this Java does not tell whether it has a terminal", e);
        }
    }

    /** Shown when asked for, or when the process has a terminal. */
    static RunProgress of(Console console, boolean wanted, String what, String unit, long size, long most) {
        if (!wanted && !terminal()) {
            return new RunProgress(null);
        }
        PrintStream err = console.err();
        return new RunProgress(new ProgressBarBuilder()
                .setTaskName(what)
                .setInitialMax(most)
                .setUnit(unit, size)
                .setStyle(ProgressBarStyle.ASCII)
                .setUpdateIntervalMillis(MILLISECONDS)
                .setConsumer(new ConsoleProgressBarConsumer(err, WIDTH))
                .build());
    }

    @Override
    public void accept(long reached) {
        if (bar != null) {
            bar.stepTo(reached);
        }
    }

    @Override
    public void close() {
        if (bar != null) {
            bar.close();
        }
    }
}
