package quarterlight.cli.text;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;

/**
 * One line of a terminal that says how far a command is and goes away when something else is said. It is written over by a carriage return and blanks, which
 * every terminal knows. May be used from any thread.
 */
public final class StatusLine {
    /** So narrow that it stays one line on every terminal. */
    private static final int WIDTH = 76;

    private static final long PAUSE_NS = 100_000_000;
    private static final Path STANDARD_ERROR = Path.of("/proc/self/fd/2");

    /** Set by the launcher where standard error is a terminal. */
    private static final String TERMINAL = "quarterlight.terminal";

    private final Optional<PrintStream> terminal;
    private int shown;
    private long last;

    private StatusLine(Optional<PrintStream> terminal) {
        this.terminal = Objects.requireNonNull(terminal, "terminal");
        this.last = System.nanoTime() - PAUSE_NS;
    }

    /** Says nothing. */
    public static StatusLine none() {
        return new StatusLine(Optional.empty());
    }

    /** On a terminal behind this stream. */
    public static StatusLine on(PrintStream terminal) {
        return new StatusLine(Optional.of(terminal));
    }

    /**
     * On standard error if it is a terminal, else nowhere. Where the system does not tell what standard error is, the launcher does.
     */
    public static StatusLine ofThisProcess(PrintStream err) {
        return isTerminal() ? on(err) : none();
    }

    private static boolean isTerminal() {
        try {
            if (Files.isSymbolicLink(STANDARD_ERROR)) {
                String target = Files.readSymbolicLink(STANDARD_ERROR).toString();
                return target.startsWith("/dev/pts/") || target.startsWith("/dev/tty") || target.equals("/dev/console");
            }
        } catch (IOException e) {
            return false;
        }
        return Boolean.getBoolean(TERMINAL);
    }

    /** Shows how far a job is, at most ten times a second. */
    public synchronized void show(int done, int total, String what) {
        long now = System.nanoTime();
        if (terminal.isEmpty() || now - last < PAUSE_NS) {
            return;
        }
        last = now;
        String text = TerminalText.text((total > 0 ? done + " of " + total + "  " : "") + what.replaceAll("\\s+", " "));
        String cut = text.length() > WIDTH ? text.substring(0, WIDTH - 1) + "…" : text;
        terminal.get().print("\r" + cut + " ".repeat(Math.max(0, shown - cut.length())));
        terminal.get().flush();
        shown = cut.length();
    }

    /** Takes the line away. */
    public synchronized void clear() {
        if (shown > 0) {
            terminal.ifPresent(stream -> {
                stream.print("\r" + " ".repeat(shown) + "\r");
                stream.flush();
            });
            shown = 0;
        }
    }
}
