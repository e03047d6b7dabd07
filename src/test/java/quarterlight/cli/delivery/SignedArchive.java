package quarterlight.cli.delivery;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import javax.imageio.ImageIO;
import quarterlight.archive.RfcBag;
import quarterlight.cli.Bench;

/** A visit of two photos, archived and signed, and what somebody makes of such an archive. */
public final class SignedArchive {
    public static final String KEY = "signature/inspector-key.pem";
    public static final String SIGNATURE = "signature/tagmanifest-sha256.txt.sig";

    private SignedArchive() {}

    /** Makes the visit in a folder, if it is not there, and an archive of it signed by the key of that bench. */
    public static Path made(Bench bench, Path folder, String name, String... options) throws Exception {
        Path visit = folder.resolve("visit");
        if (!Files.exists(visit)) {
            photo(folder, "FRONT.JPG", Color.GRAY);
            photo(folder, "REAR.JPG", Color.BLUE);
            bench.run("new", visit.toString(), "--car", "Test car", "--style", "coupe", "--timezone", "UTC")
                    .done();
            bench.run("set", visit.toString(), "inspector=Alma Quill").done();
            bench.run("intake", visit.toString(), folder.resolve("card").toString())
                    .done();
            bench.run(
                            "add",
                            "pins",
                            visit.toString(),
                            bench.file("pins.csv", "photo,zone\nFRONT.JPG,hood\nREAR.JPG,decklid\n"))
                    .done();
        }
        Path zip = folder.resolve(name);
        String[] call = new String[3 + options.length];
        call[0] = "archive";
        call[1] = visit.toString();
        call[2] = zip.toString();
        System.arraycopy(options, 0, call, 3, options.length);
        bench.run(call).done();
        return zip;
    }

    private static void photo(Path folder, String name, Color color) throws IOException {
        BufferedImage image = new BufferedImage(640, 480, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < 480; y++) {
            for (int x = 0; x < 640; x++) {
                image.setRGB(x, y, color.getRGB() ^ (x / 8 & 0x1F));
            }
        }
        Files.createDirectories(folder.resolve("card"));
        ImageIO.write(image, "jpg", folder.resolve("card").resolve(name).toFile());
    }

    /** The files of an archive by their paths in it. */
    public static Map<String, byte[]> files(Path zip) throws IOException {
        return new LinkedHashMap<>(RfcBag.of(zip).files());
    }

    /** An archive of these files. */
    public static Path zipped(Map<String, byte[]> files, Path zip) throws IOException {
        try (OutputStream file = Files.newOutputStream(zip);
                ZipOutputStream out = new ZipOutputStream(file, StandardCharsets.UTF_8)) {
            for (Map.Entry<String, byte[]> each : files.entrySet()) {
                out.putNextEntry(new ZipEntry("bag/" + each.getKey()));
                out.write(each.getValue());
                out.closeEntry();
            }
        }
        return zip;
    }

    /** The same as a folder. */
    public static Path unpacked(Map<String, byte[]> files, Path folder) throws IOException {
        for (Map.Entry<String, byte[]> each : files.entrySet()) {
            Path file = folder.resolve(each.getKey());
            Files.createDirectories(file.getParent());
            Files.write(file, each.getValue());
        }
        return folder;
    }

    /** The path of the first photo. */
    public static String photoIn(Map<String, byte[]> files) {
        return files.keySet().stream()
                .filter(path -> path.endsWith("FRONT.JPG"))
                .findFirst()
                .orElseThrow();
    }

    /** With one bit of a file turned round. */
    public static Map<String, byte[]> flipped(Map<String, byte[]> files, String path) {
        Map<String, byte[]> changed = new LinkedHashMap<>(files);
        byte[] bytes = files.get(path).clone();
        bytes[bytes.length / 2] ^= 1;
        changed.put(path, bytes);
        return changed;
    }

    /** Somebody changes a photo and makes every list agree with it again, but cannot sign: manifest, then the manifest of the tag files. */
    public static Map<String, byte[]> mendedLists(Map<String, byte[]> files) throws Exception {
        String photo = photoIn(files);
        Map<String, byte[]> changed = flipped(files, photo);
        replaceHash(changed, "manifest-sha256.txt", photo);
        replaceHash(changed, "tagmanifest-sha256.txt", "manifest-sha256.txt");
        return changed;
    }

    private static void replaceHash(Map<String, byte[]> files, String list, String path) throws Exception {
        java.security.MessageDigest digest = java.security.MessageDigest.getInstance("SHA-256");
        String hash = java.util.HexFormat.of().formatHex(digest.digest(files.get(path)));
        String text = new String(files.get(list), StandardCharsets.UTF_8);
        String changed = text.replaceAll(
                "(?m)^[0-9a-f]{64}  " + java.util.regex.Pattern.quote(path) + "$",
                java.util.regex.Matcher.quoteReplacement(hash + "  " + path));
        files.put(list, changed.getBytes(StandardCharsets.UTF_8));
    }
}
