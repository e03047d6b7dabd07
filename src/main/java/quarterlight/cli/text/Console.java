package quarterlight.cli.text;

import java.io.PrintStream;
import java.util.Objects;

/** Where a command prints: results on {@code out}, one line per error on {@code err}; both in UTF-8, and nothing that steers a terminal. */
public record Console(PrintStream out, PrintStream err) {
    public Console {
        Objects.requireNonNull(out, "out");
        Objects.requireNonNull(err, "err");
    }

    /** Says what is wrong, on one line whatever the text holds. */
    public void complain(String sentence) {
        err.println("quarterlight: " + TerminalText.text(sentence.strip().replaceAll("\\s*\\R\\s*", " ")));
        err.flush();
    }

    public void print(String text) {
        out.print(TerminalText.text(text));
        out.flush();
    }
}
