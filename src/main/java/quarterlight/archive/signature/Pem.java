package quarterlight.archive.signature;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Bytes as text between two lines that say what they are: RFC 7468. */
final class Pem {
    private static final int LINE = 64;

    private Pem() {}

    static String encoded(String label, byte[] bytes) {
        return "-----BEGIN " + label + "-----\n"
                + Base64.getMimeEncoder(LINE, "\n".getBytes(StandardCharsets.US_ASCII))
                        .encodeToString(bytes)
                + "\n-----END " + label + "-----\n";
    }

    /** What stands under a label; empty if nothing does. */
    static Optional<byte[]> decoded(String label, String text) {
        Matcher block = Pattern.compile("-----BEGIN " + label + "-----([A-Za-z0-9+/=\\s]*)-----END " + label + "-----")
                .matcher(text);
        try {
            return block.find()
                    ? Optional.of(Base64.getDecoder().decode(block.group(1).replaceAll("\\s", "")))
                    : Optional.empty();
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }
}
