package quarterlight;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** The program openssl, as a second opinion on keys and signatures; a test that asks for it is skipped where it is not installed, and says so. */
public final class OpenSsl {
    private OpenSsl() {}

    /** What a call gave, standard error behind standard output. */
    public record Said(int status, String text) {}

    public static Said run(String... words) throws IOException {
        List<String> call = new ArrayList<>(List.of("openssl"));
        call.addAll(List.of(words));
        Process process;
        try {
            process = new ProcessBuilder(call).redirectErrorStream(true).start();
        } catch (IOException e) {
            assumeTrue(false, "openssl is not installed, so no second program had a look");
            throw e;
        }
        String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        try {
            assumeTrue(process.waitFor(60, TimeUnit.SECONDS), "openssl did not end");
        } catch (InterruptedException e) {
            throw new IOException(e);
        }
        return new Said(process.exitValue(), text);
    }
}
