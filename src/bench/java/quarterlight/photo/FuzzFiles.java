package quarterlight.photo;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import quarterlight.photo.decode.Pictures;
import quarterlight.photo.film.FilmFrames;
import quarterlight.photo.header.FileFacts;
import quarterlight.photo.header.MetadataReader;
import quarterlight.photo.intake.FolderScan;
import quarterlight.task.Progress;

/**
 * The long run over damaged files: {@code FuzzFiles FOLDER COUNT WORK [FIRST_SEED]}. Files of the folder are cut and their bytes flipped, each by its own
 * seed; metadata is read and the picture decoded (of films the poster and a frame). Prints the slowest, the failures and the most memory, and ends
 * with status 1 if anything but a refusal came out, or one took more than 5 seconds of its thread's time.
 */
public final class FuzzFiles {
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
    private static final long LONGEST_MS = 5000;
    private static final int MOST_BYTES = 1_500_000;
    private static final int HEAD = 4000;

    private FuzzFiles() {}

    /** The bytes are read again for each mutation; they stay in the system's cache. */
    private record Sample(Path file, MediaType type) {}

    public static void main(String[] args) throws IOException {
        List<Sample> samples = new ArrayList<>();
        for (FolderScan.Found found :
                FolderScan.of(List.of(Path.of(args[0])), Progress.NONE).media()) {
            if (Files.size(found.file()) <= MOST_BYTES) {
                samples.add(new Sample(found.file(), found.type()));
            }
        }
        samples.sort(Comparator.comparing(sample -> sample.file().toString()));
        int count = Integer.parseInt(args[1]);
        Path work = Path.of(args[2]);
        int first = args.length > 3 ? Integer.parseInt(args[3]) : 1;
        Map<MediaType, int[]> shown = new EnumMap<>(MediaType.class);
        long slowest = 0;
        int faults = 0;
        for (int seed = first; seed < first + count; seed++) {
            Sample sample = samples.get(seed % samples.size());
            Files.write(work, damaged(Files.readAllBytes(sample.file()), seed));
            long start = THREADS.getCurrentThreadCpuTime();
            int[] counts = shown.computeIfAbsent(sample.type(), type -> new int[2]);
            try {
                counts[look(work, sample.type()) ? 0 : 1]++;
            } catch (IOException | RuntimeException | Error e) {
                faults++;
                System.out.println("seed " + seed + " of " + sample.file().getFileName() + ": " + e);
            }
            long took = (THREADS.getCurrentThreadCpuTime() - start) / 1_000_000;
            if (took > slowest) {
                slowest = took;
                System.out.println("seed " + seed + " of " + sample.file().getFileName() + ": " + took + " ms");
            }
            if (took > LONGEST_MS) {
                faults++;
            }
            if (seed % 1000 == 0) {
                System.out.println(seed + " done, " + peak());
            }
        }
        shown.forEach((type, counts) -> System.out.println(
                type.word() + ": " + counts[0] + " shown in part or whole, " + counts[1] + " refused"));
        System.out.println(count + " files, " + faults + " faults, slowest " + slowest + " ms, " + peak());
        System.exit(faults == 0 ? 0 : 1);
    }

    private static boolean look(Path file, MediaType type) throws IOException {
        FileFacts facts = new MetadataReader(Clock.systemUTC()).read(file, type);
        try {
            Pictures.usual().upright(file, type, facts.orientation(), Pictures.THUMBNAIL);
            if (type.kind() == quarterlight.visit.MediaKind.FILM) {
                FilmFrames.at(file, 0.3);
            }
            return true;
        } catch (PictureUnreadable e) {
            return false;
        }
    }

    private static String peak() throws IOException {
        return Files.readAllLines(Path.of("/proc/self/status")).stream()
                .filter(line -> line.startsWith("VmHWM"))
                .findFirst()
                .orElse("");
    }

    private static byte[] damaged(byte[] good, int seed) {
        Random random = new Random(seed);
        byte[] bytes = good.clone();
        int kind = random.nextInt(4);
        if (kind != 0) {
            boolean header = random.nextInt(3) > 0;
            for (int i = random.nextInt(12); i >= 0; i--) {
                int at = random.nextInt(header ? Math.min(bytes.length, HEAD) : bytes.length);
                bytes[at] = (byte) (random.nextBoolean() ? random.nextInt(256) : random.nextBoolean() ? 0xFF : 0);
            }
        }
        return kind < 2 ? Arrays.copyOf(bytes, 1 + random.nextInt(bytes.length)) : bytes;
    }
}
