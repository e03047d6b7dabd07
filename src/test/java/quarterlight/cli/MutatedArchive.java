package quarterlight.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.Collections;
import java.util.Enumeration;
import java.util.HexFormat;
import java.util.Random;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/** Changes of an archive that somebody might send: of its bytes, or of its files, packed anew. */
final class MutatedArchive {
    private MutatedArchive() {}

    static void scratch(Path file, Random random) throws IOException {
        byte[] bytes = Files.readAllBytes(file);
        int times = 1 + random.nextInt(20);
        for (int i = 0; i < times; i++) {
            bytes[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
        }
        Files.write(file, random.nextInt(4) == 0 ? Arrays.copyOf(bytes, random.nextInt(bytes.length)) : bytes);
    }

    /** Some of its files changed, left out, or under other names, with manifests that say so. */
    static void packedAnew(Path good, Path bad, Random random) throws IOException {
        try (ZipFile zip = new ZipFile(good.toFile());
                OutputStream out = Files.newOutputStream(bad);
                ZipOutputStream target = new ZipOutputStream(out)) {
            StringBuilder manifest = new StringBuilder();
            String base = "";
            Enumeration<? extends ZipEntry> all = zip.entries();
            for (ZipEntry entry : Collections.list(all)) {
                base = entry.getName().substring(0, entry.getName().indexOf('/') + 1);
                String path = entry.getName().substring(base.length());
                if (path.startsWith("manifest") || path.startsWith("tagmanifest")) {
                    continue;
                }
                byte[] bytes = zip.getInputStream(entry).readAllBytes();
                int kind = random.nextInt(12);
                if (kind == 0) {
                    continue;
                }
                if (kind <= 3 && bytes.length > 0) {
                    bytes[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
                }
                String named = kind == 4 ? path + "x" : path;
                target.putNextEntry(new ZipEntry(base + named));
                target.write(bytes);
                target.closeEntry();
                if (named.startsWith("data/")) {
                    manifest.append(hash(bytes)).append("  ").append(named).append('\n');
                }
            }
            target.putNextEntry(new ZipEntry(base + "manifest-sha256.txt"));
            target.write(manifest.toString().getBytes(StandardCharsets.UTF_8));
            target.closeEntry();
        }
    }

    private static String hash(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new AssertionError(e);
        }
    }
}
