package quarterlight.archive;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import quarterlight.visit.photo.Sha256;

/**
 * A manifest as read: the hash that each path shall have, and the lines that say nothing.
 *
 * @param faults in sentences
 */
record Manifest(Map<String, Sha256> hashes, List<String> faults) {
    private static final Pattern LINE = Pattern.compile("([0-9a-fA-F]{64})[ \\t]+(.+)", Pattern.DOTALL);

    /** Lines end with line feed, carriage return or both, as RFC 8493, section 2.1.3, allows. */
    static Manifest parse(String name, String text) {
        Map<String, Sha256> hashes = new LinkedHashMap<>();
        List<String> faults = new ArrayList<>();
        int number = 0;
        for (String line : text.split("\r\n|\r|\n", -1)) {
            number++;
            if (line.isEmpty()) {
                continue;
            }
            Matcher m = LINE.matcher(line);
            String path = m.matches() ? BagPath.decoded(m.group(2)) : "";
            if (!m.matches() || BagPath.problem(path).isPresent()) {
                faults.add(say("archived.manifest.line", name, number));
            } else if (hashes.put(path, new Sha256(m.group(1).toLowerCase(Locale.ROOT))) != null) {
                faults.add(say("archived.manifest.twice", name, path));
            }
        }
        return new Manifest(hashes, faults);
    }
}
