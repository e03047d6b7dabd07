package quarterlight.archive;

import static quarterlight.language.Sentences.say;

import java.util.Optional;
import java.util.regex.Pattern;

/** Paths within a bag: relative, divided by {@code /}, never leading out of it; and how a manifest writes them. */
final class BagPath {
    static final String PAYLOAD = "data/";

    private static final Pattern DRIVE = Pattern.compile("[A-Za-z]:.*");

    private BagPath() {}

    /** As a manifest writes it: RFC 8493, section 2.1.3, encodes line feed, carriage return and percent sign, and only those. */
    static String encoded(String path) {
        return path.replace("%", "%25").replace("\n", "%0A").replace("\r", "%0D");
    }

    static String decoded(String written) {
        return written.replaceAll("(?i)%0A", "\n").replaceAll("(?i)%0D", "\r").replace("%25", "%");
    }

    static boolean isPayload(String path) {
        return path.startsWith(PAYLOAD);
    }

    /** Why a path may not stand in a bag; empty if it may. */
    static Optional<String> problem(String path) {
        if (path.isEmpty() || path.startsWith("/") || DRIVE.matcher(path).matches()) {
            return Optional.of(say("archived.path"));
        }
        if (path.indexOf('\\') >= 0 || path.indexOf('\0') >= 0) {
            return Optional.of(say("archived.path.backslash"));
        }
        for (String step : path.split("/", -1)) {
            if (step.isEmpty() || step.equals(".") || step.equals("..")) {
                return Optional.of(say("archived.path.out"));
            }
        }
        return Optional.empty();
    }
}
