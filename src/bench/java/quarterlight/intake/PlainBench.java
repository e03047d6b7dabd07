package quarterlight.intake;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.coobird.thumbnailator.Thumbnails;

/** The plain way: {@code PlainBench FOLDER TARGET} copies, hashes source and copy, and makes thumbnails as the thumbnail library does by default. */
public final class PlainBench {
    private PlainBench() {}

    public static void main(String[] args) throws Exception {
        Path target = Files.createDirectories(Path.of(args[1]));
        List<Path> files;
        try (Stream<Path> all = Files.list(Path.of(args[0]))) {
            files = all.sorted().collect(Collectors.toList());
        }
        ExecutorService threads = Executors.newFixedThreadPool(2);
        List<Future<Boolean>> works = files.stream()
                .map(file -> threads.submit(() -> take(file, target)))
                .toList();
        for (Future<Boolean> work : works) {
            if (!work.get()) {
                throw new IllegalStateException("a copy differs");
            }
        }
        threads.shutdown();
    }

    private static boolean take(Path file, Path target) throws IOException, NoSuchAlgorithmException {
        Path copy = target.resolve(file.getFileName().toString());
        Files.copy(file, copy);
        boolean same = MessageDigest.isEqual(digest(file), digest(copy));
        Thumbnails.of(copy.toFile())
                .size(320, 320)
                .outputFormat("jpg")
                .toFile(target.resolve("small-" + file.getFileName()).toFile());
        return same;
    }

    private static byte[] digest(Path file) throws IOException, NoSuchAlgorithmException {
        MessageDigest digest = MessageDigest.getInstance("SHA-256");
        byte[] buffer = new byte[1 << 17];
        try (InputStream in = Files.newInputStream(file)) {
            for (int got = in.read(buffer); got >= 0; got = in.read(buffer)) {
                digest.update(buffer, 0, got);
            }
        }
        return digest.digest();
    }
}
