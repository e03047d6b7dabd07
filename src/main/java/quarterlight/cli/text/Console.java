package quarterlight.cli.text;

import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/**
 * Where a command reads and prints: results on {@code out}, one line per error on {@code err}, both in UTF-8 and without anything that steers a terminal; how
 * far it is on a line of its own, if there is a terminal.
 */
public record Console(PrintStream out, PrintStream err, StandardInput in, StatusLine status) {
    public Console {
        Objects.requireNonNull(out, "out");
        Objects.requireNonNull(err, "err");
        Objects.requireNonNull(in, "in");
        Objects.requireNonNull(status, "status");
    }

    /** Without standard input and terminal. */
    public Console(PrintStream out, PrintStream err) {
        this(out, err, StandardInput.empty(), StatusLine.none());
    }

    /** The same, where only what is wrong is said. */
    public Console quiet() {
        return new Console(
                new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8),
                err,
                in,
                StatusLine.none());
    }

    /** Says what is wrong, on one line whatever the text holds. */
    public void complain(String sentence) {
        status.clear();
        err.println(
                "quarterlight: " + TerminalText.text(in.told(sentence.strip().replaceAll("\\s*\\R\\s*", " "))));
        err.flush();
    }

    public void print(String text) {
        status.clear();
        out.print(TerminalText.text(text));
        out.flush();
    }
}
