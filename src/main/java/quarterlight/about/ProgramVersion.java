package quarterlight.about;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;
import java.util.Optional;
import java.util.Properties;

/**
 * The version of the program and the state of the source it was built from.
 *
 * @param number as in the project's description, such as 0.1.0; {@code development} where the build did not put it in
 * @param build the abbreviated name of the commit; empty where the build knew none
 */
public record ProgramVersion(String number, Optional<String> build) {
    private static final String FILE = "/quarterlight/version.properties";
    private static final ProgramVersion OURS = read();

    public ProgramVersion {
        Objects.requireNonNull(number, "number");
        Objects.requireNonNull(build, "build");
    }

    /** The version of the program that runs. */
    public static ProgramVersion ours() {
        return OURS;
    }

    /** Such as {@code Quarterlight 0.1.0 (build 1a2b3c4)}; stands in every document that leaves the program. */
    public String text() {
        return "Quarterlight " + number
                + build.map(commit -> " (build " + commit + ")").orElse("");
    }

    private static ProgramVersion read() {
        Properties properties = new Properties();
        try (InputStream in = ProgramVersion.class.getResourceAsStream(FILE)) {
            if (in != null) {
                properties.load(in);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return of(properties);
    }

    /** What was not put in by the build still holds the name of its property, in braces. */
    static ProgramVersion of(Properties properties) {
        return new ProgramVersion(value(properties, "version").orElse("development"), value(properties, "build"));
    }

    private static Optional<String> value(Properties properties, String key) {
        return Optional.ofNullable(properties.getProperty(key))
                .map(String::strip)
                .filter(text -> !text.isEmpty() && !text.contains("${"));
    }
}
