package quarterlight.archive;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

/**
 * The rules of a bag, written a second time from the text of RFC 8493 and sharing nothing with the program: it reads the zip from its
 * beginning as a stream, not by its directory. Numbers in the findings are sections of the RFC.
 */
public final class RfcBag {
    private final Map<String, byte[]> files = new LinkedHashMap<>();
    private final List<String> findings = new ArrayList<>();

    private RfcBag() {}

    /** The files of a bag by their paths in it, and what breaks a rule. */
    public record Seen(Map<String, byte[]> files, List<String> findings) {
        public String text(String path) {
            return new String(files.get(path), StandardCharsets.UTF_8);
        }
    }

    public static Seen of(Path zip) throws IOException {
        RfcBag bag = new RfcBag();
        bag.read(zip);
        if (bag.findings.isEmpty()) {
            bag.judge();
        }
        return new Seen(bag.files, bag.findings);
    }

    private void read(Path zip) throws IOException {
        Set<String> folders = new TreeSet<>();
        try (InputStream in = Files.newInputStream(zip);
                ZipInputStream stream = new ZipInputStream(in, StandardCharsets.UTF_8)) {
            for (ZipEntry entry = stream.getNextEntry(); entry != null; entry = stream.getNextEntry()) {
                int slash = entry.getName().indexOf('/');
                folders.add(slash < 0 ? "" : entry.getName().substring(0, slash));
                files.put(entry.getName().substring(slash + 1), stream.readAllBytes());
            }
        }
        check(folders.size() == 1 && !folders.contains(""), "4.2: one folder, not " + folders);
    }

    private void judge() {
        check(files.containsKey("bagit.txt"), "2.1.1: bagit.txt");
        check(
                "BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n"
                        .equals(new String(files.get("bagit.txt"), StandardCharsets.UTF_8)),
                "2.1.1: the two lines of bagit.txt");
        Map<String, String> payload = manifest("manifest-sha256.txt");
        Map<String, String> tags = manifest("tagmanifest-sha256.txt");
        Set<String> inData = new TreeSet<>();
        Set<String> inTags = new TreeSet<>();
        files.keySet().forEach(path -> (path.startsWith("data/") ? inData : inTags).add(path));
        check(payload.keySet().equals(inData), "3: every payload file listed, and every listed file there");
        inTags.remove("tagmanifest-sha256.txt");
        // a signature of the tag manifest cannot stand in it
        inTags.remove("signature/tagmanifest-sha256.txt.sig");
        check(tags.keySet().equals(inTags), "2.2.1: every tag file but tag manifests listed");
        compare(payload);
        compare(tags);
        long bytes = inData.stream().mapToLong(path -> files.get(path).length).sum();
        String info = new String(files.get("bag-info.txt"), StandardCharsets.UTF_8);
        check(info.contains("Payload-Oxum: " + bytes + "." + inData.size() + "\n"), "2.2.2: Payload-Oxum");
        check(info.lines().allMatch(line -> line.matches("[^:\\s][^:]*: .*")), "2.2.2: label, colon, value");
        check(info.lines().anyMatch(line -> line.matches("Bagging-Date: \\d{4}-\\d\\d-\\d\\d")), "2.2.2: Bagging-Date");
    }

    /** 2.1.3: checksum, white space, path; only LF, CR and % are percent-encoded. */
    private Map<String, String> manifest(String name) {
        Map<String, String> lines = new HashMap<>();
        for (String line : new String(files.get(name), StandardCharsets.UTF_8).split("\n")) {
            String hex = line.substring(0, 64);
            check(hex.matches("[0-9a-f]{64}") && line.startsWith("  ", 64), "2.1.3: " + line);
            StringBuilder path = new StringBuilder();
            String written = line.substring(66);
            for (int i = 0; i < written.length(); i++) {
                if (written.charAt(i) == '%') {
                    String code = written.substring(i + 1, i + 3).toUpperCase(Locale.ROOT);
                    check(List.of("0A", "0D", "25").contains(code), "2.1.3: encoded for nothing: " + written);
                    path.append((char) Integer.parseInt(code, 16));
                    i += 2;
                } else {
                    path.append(written.charAt(i));
                }
            }
            check(lines.put(path.toString(), hex) == null, "3: listed twice: " + path);
        }
        return lines;
    }

    private void compare(Map<String, String> manifest) {
        manifest.forEach((path, hex) -> check(hex.equals(sha256(files.get(path))), "3: hash of " + path));
    }

    private static String sha256(byte[] bytes) {
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(bytes == null ? new byte[0] : bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new AssertionError(e);
        }
    }

    private void check(boolean holds, String rule) {
        if (!holds) {
            findings.add(rule);
        }
    }
}
