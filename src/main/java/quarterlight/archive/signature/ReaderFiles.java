package quarterlight.archive.signature;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What lies in an archive for who opens it without this program: {@code README.txt} in plain words, and {@code check.html}, which checks hashes and signature
 * in a browser and shows the pictures. The page is the same in every archive of one version of the program.
 */
public final class ReaderFiles {
    private static final String FOLDER = "/quarterlight/archive/signature/";

    private ReaderFiles() {}

    /** By their names in the bag. */
    public static Map<String, String> of(String car, boolean forBuyer, Optional<PublicHalf> key) {
        Map<String, String> files = new LinkedHashMap<>();
        files.put("README.txt", readme(car, forBuyer, key));
        files.put("check.html", page());
        return files;
    }

    static String page() {
        return text("check.html")
                .replace("@MIT@", text("js-sha256-MIT.txt").strip())
                .replace("@SHA256@", text("sha256.min.js").strip())
                .replace("@NACL@", text("nacl.min.js").strip())
                .replace("@CHECK@", text("check.js").strip());
    }

    private static String readme(String car, boolean forBuyer, Optional<PublicHalf> key) {
        StringBuilder out = new StringBuilder();
        out.append("ARCHIVE OF A VISIT TO ONE CAR: ")
                .append(car.replaceAll("[\\p{Cntrl}\\s]+", " ").strip())
                .append("\n\n");
        out.append(text(forBuyer ? "readme-buyer.txt" : "readme-whole.txt")).append('\n');
        out.append(text("readme-check.txt")).append('\n');
        out.append(key.map(half -> text("readme-signed.txt").replace("@KEY@", half.fingerprint()))
                .orElseGet(() -> text("readme-unsigned.txt")));
        return out.toString();
    }

    private static String text(String name) {
        try (InputStream in = ReaderFiles.class.getResourceAsStream(FOLDER + name)) {
            if (in == null) {
                throw new IllegalStateException(name + " is not where it belongs");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
