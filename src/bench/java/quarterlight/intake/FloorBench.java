package quarterlight.intake;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.bytedeco.javacpp.BytePointer;
import org.bytedeco.javacpp.IntPointer;
import org.bytedeco.javacpp.PointerPointer;
import org.bytedeco.javacpp.SizeTPointer;
import org.bytedeco.leptonica.PIX;
import org.bytedeco.leptonica.global.leptonica;

/**
 * The least that an intake can cost on a computer: {@code FloorBench FOLDER TARGET} reads each file once, copies it, hashes source and copy, decodes
 * at an eighth of the size and encodes that, by two threads; it reads no metadata, scales nothing, keeps no record.
 */
public final class FloorBench {
    private static final int REDUCTION = 8;
    private static final int QUALITY = 85;

    private FloorBench() {}

    public static void main(String[] args) throws Exception {
        Path target = Files.createDirectories(Path.of(args[1]));
        List<Path> files;
        try (Stream<Path> all = Files.list(Path.of(args[0]))) {
            files = all.sorted().collect(Collectors.toList());
        }
        ExecutorService threads = Executors.newFixedThreadPool(2);
        List<Future<Long>> sizes = files.stream()
                .map(file -> threads.submit(() -> take(file, target)))
                .toList();
        long bytes = 0;
        for (Future<Long> size : sizes) {
            bytes += size.get();
        }
        threads.shutdown();
        if (bytes <= 0) {
            throw new IllegalStateException("nothing encoded");
        }
    }

    private static long take(Path file, Path target) throws IOException, NoSuchAlgorithmException {
        byte[] data = Files.readAllBytes(file);
        MessageDigest source = MessageDigest.getInstance("SHA-256");
        source.update(data);
        Path copy = target.resolve(file.getFileName().toString());
        Files.write(copy, data);
        MessageDigest second = MessageDigest.getInstance("SHA-256");
        try (BytePointer pixels = new BytePointer(data.length);
                FileChannel channel = FileChannel.open(copy, StandardOpenOption.READ);
                IntPointer warnings = new IntPointer(1);
                PointerPointer<BytePointer> out = new PointerPointer<>(1);
                SizeTPointer size = new SizeTPointer(1)) {
            ByteBuffer buffer = pixels.asByteBuffer();
            while (buffer.hasRemaining() && channel.read(buffer) >= 0) {
                // goes on until all is read
            }
            second.update(buffer.flip());
            if (!MessageDigest.isEqual(source.digest(), second.digest())) {
                throw new IOException("the copy differs");
            }
            PIX picture = leptonica.pixReadMemJpeg(pixels, data.length, 0, REDUCTION, warnings, 0);
            leptonica.pixWriteMemJpeg(out, size, picture, QUALITY, 0);
            leptonica.pixDestroy(picture);
            leptonica.lept_free(out.get(0));
            return size.get();
        }
    }
}
