package quarterlight.cli.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class StatusLineTest {
    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    private final PrintStream err = new PrintStream(bytes, true, StandardCharsets.UTF_8);

    private String said() {
        return bytes.toString(StandardCharsets.UTF_8);
    }

    @Test
    void aLineIsShownAndGoesAwayBeforeAnythingElseIsSaid() {
        Console console = new Console(err, err, StandardInput.empty(), StatusLine.on(err));
        console.status().show(3, 70, "DSC_0231.JPG");
        assertThat(said()).isEqualTo("\r3 of 70  DSC_0231.JPG");
        console.complain("the rest");
        assertThat(said())
                .isEqualTo("\r3 of 70  DSC_0231.JPG\r" + " ".repeat(21) + "\rquarterlight: the rest"
                        + System.lineSeparator());
    }

    @Test
    void itStaysOneLineAndComesAtMostTenTimesASecond() {
        StatusLine line = StatusLine.on(err);
        line.show(0, 0, "x".repeat(200) + "\n\u001b[2J");
        line.show(1, 2, "soon after");
        assertThat(said()).hasSize(1 + 76).startsWith("\rxxx").endsWith("…").doesNotContain("\n", "\u001b");
    }

    @Test
    void withoutATerminalAndWhereItIsQuietNothingIsShown() {
        StatusLine.none().show(1, 2, "x");
        new Console(err, err, StandardInput.empty(), StatusLine.on(err))
                .quiet()
                .status()
                .show(1, 2, "x");
        new Console(err, err, StandardInput.empty(), StatusLine.on(err)).quiet().print("x");
        assertThat(said()).isEmpty();
        new Console(err, err).quiet().complain("wrong");
        assertThat(said()).contains("wrong");
    }
}
