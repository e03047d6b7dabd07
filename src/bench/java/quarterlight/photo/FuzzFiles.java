package quarterlight.photo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import quarterlight.photo.intake.FolderScan;
import quarterlight.photo.worker.DecodingWorkers;
import quarterlight.photo.worker.WorkerLost;
import quarterlight.task.Progress;
import quarterlight.visit.photo.MediaKind;

/**
 * The long run over damaged files: {@code FuzzFiles FOLDER COUNT WORK [FIRST_SEED]}. Files of the folder, and one of each kind that it may lack, are cut and
 * their bytes flipped, each by its own seed, and looked at by the workers as intake does (of films a frame too, of papers a second page). Prints the slowest, what cost a worker and the most memory, and ends with
 * status 1 if anything came out but a picture, a reason, or the loss of a worker.
 */
public final class FuzzFiles {
    private static final DecodingWorkers WORKERS = new DecodingWorkers();
    private static final int MAX_BYTES = 1_500_000;
    private static final int HEAD = 4000;
    private static final String XMP =
            "<x:xmpmeta xmlns:x='adobe:ns:meta/'><rdf:RDF xmlns:rdf='http://www.w3.org/1999/02/22-rdf-syntax-ns#'>"
                    + "<rdf:Description rdf:about='' xmlns:xmp='http://ns.adobe.com/xap/1.0/'"
                    + " xmlns:tiff='http://ns.adobe.com/tiff/1.0/' xmlns:dc='http://purl.org/dc/elements/1.1/'"
                    + " xmp:Rating='4' tiff:Orientation='6'><dc:description><rdf:Alt><rdf:li xml:lang='x-default'>"
                    + "Dent at the edge</rdf:li></rdf:Alt></dc:description><dc:subject><rdf:Bag><rdf:li>hood</rdf:li>"
                    + "</rdf:Bag></dc:subject></rdf:Description></rdf:RDF></x:xmpmeta>";

    private FuzzFiles() {}

    /** The bytes are read again for each mutation; they stay in the system's cache. */
    private record Sample(Path file, MediaType type) {}

    public static void main(String[] args) throws IOException {
        List<Sample> samples = new ArrayList<>();
        for (FolderScan.Found found :
                FolderScan.of(List.of(Path.of(args[0])), Progress.NONE).media()) {
            if (Files.size(found.file()) <= MAX_BYTES) {
                samples.add(new Sample(found.file(), found.type()));
            }
        }
        samples.sort(Comparator.comparing(sample -> sample.file().toString()));
        int count = Integer.parseInt(args[1]);
        Path work = Path.of(args[2]);
        samples.addAll(made(Files.createDirectories(work.resolveSibling(work.getFileName() + "-made"))));
        int first = args.length > 3 ? Integer.parseInt(args[3]) : 1;
        Map<MediaType, int[]> shown = new EnumMap<>(MediaType.class);
        long slowest = 0;
        int faults = 0;
        for (int seed = first; seed < first + count; seed++) {
            Sample sample = sample(samples, seed);
            Files.write(work, damaged(Files.readAllBytes(sample.file()), seed));
            long start = System.nanoTime();
            int[] counts = shown.computeIfAbsent(sample.type(), type -> new int[3]);
            try {
                counts[look(work, sample.type()) ? 0 : 1]++;
            } catch (WorkerLost e) {
                counts[2]++;
                System.out.println("seed " + seed + " of " + sample.file().getFileName() + ": " + e.reason());
            } catch (IOException | RuntimeException | Error e) {
                faults++;
                System.out.println("seed " + seed + " of " + sample.file().getFileName() + ": " + e);
            }
            long took = (System.nanoTime() - start) / 1_000_000;
            if (took > slowest) {
                slowest = took;
                System.out.println("seed " + seed + " of " + sample.file().getFileName() + ": " + took + " ms");
            }
            if (seed % 1000 == 0) {
                System.out.println(seed + " done, " + peak());
            }
        }
        shown.forEach((type, counts) -> System.out.println(type.word() + ": " + counts[0] + " shown in part or whole, "
                + counts[1] + " not shown, " + counts[2] + " cost their worker"));
        System.out.println(count + " files, " + faults + " faults, slowest " + slowest + " ms, " + peak());
        WORKERS.close();
        System.exit(faults == 0 ? 0 : 1);
    }

    /** Every second seed takes the next of all files, the others the next kind, so that kinds of which there are few files get their share. */
    private static Sample sample(List<Sample> samples, int seed) {
        if (seed % 2 == 0) {
            return samples.get(seed / 2 % samples.size());
        }
        List<MediaType> kinds = samples.stream().map(Sample::type).distinct().toList();
        MediaType kind = kinds.get(seed / 2 % kinds.size());
        List<Sample> ofKind =
                samples.stream().filter(each -> each.type() == kind).toList();
        return ofKind.get(seed / 2 / kinds.size() % ofKind.size());
    }

    /** One of each kind that cameras' samples lack: papers, sounds, sidecars, cameras' own formats. */
    private static List<Sample> made(Path folder) throws IOException {
        byte[] jpeg = SamplePictures.withExif(
                SamplePictures.jpeg(640, 480, 3), "2026:03:01 09:10:11", "2026:03:01 09:10:11", 6);
        List<Sample> made = new ArrayList<>();
        made.add(new Sample(MediaSamples.paper(folder.resolve("a.pdf"), "first page", "second page"), MediaType.PDF));
        made.add(new Sample(MediaSamples.longPaper(folder.resolve("long.pdf"), 300), MediaType.PDF));
        made.add(new Sample(
                MediaSamples.wavWithTime(folder.resolve("a.wav"), 2.5, "2026-03-01", "09:41:07"), MediaType.WAV));
        made.add(new Sample(MediaSamples.amr(folder.resolve("a.amr"), 150), MediaType.AMR));
        made.add(new Sample(MediaSamples.mp3(folder.resolve("a.mp3"), 200), MediaType.MP3));
        made.add(new Sample(
                MediaSamples.memo(folder.resolve("a.m4a"), "M4A ", LocalDateTime.of(2026, 3, 1, 17, 0, 9), 12.5),
                MediaType.M4A));
        made.add(new Sample(
                MediaSamples.cr3(
                        folder.resolve("a.cr3"),
                        jpeg,
                        MediaSamples.tiffOfShort(0x0112, 6),
                        MediaSamples.tiffOfText(0x9003, "2026:03:01 09:10:11")),
                MediaType.CR3));
        made.add(new Sample(MediaSamples.raf(folder.resolve("a.raf"), jpeg), MediaType.RAF));
        made.add(new Sample(MediaSamples.x3f(folder.resolve("a.x3f"), jpeg), MediaType.X3F));
        made.add(new Sample(Files.writeString(folder.resolve("a.xmp"), XMP), MediaType.XMP));
        return made;
    }

    private static boolean look(Path file, MediaType type) throws IOException, WorkerLost {
        boolean shown = WORKERS.look(file, type, Instant.EPOCH).thumbnail().isPresent();
        try {
            if (type.kind() == MediaKind.FILM) {
                WORKERS.frame(file, 0.3);
            } else if (type.kind() == MediaKind.PAPER) {
                WORKERS.page(file, 2, 800);
            }
            return shown;
        } catch (PictureUnreadable e) {
            return false;
        }
    }

    /** The most memory that this process and its workers that live had, each by itself, in kB. */
    private static String peak() {
        return Stream.concat(
                        Stream.of(ProcessHandle.current()),
                        ProcessHandle.current().children())
                .map(process -> Path.of("/proc", Long.toString(process.pid()), "status"))
                .map(FuzzFiles::peakOf)
                .collect(Collectors.joining(" + ", "peak kB ", ""));
    }

    private static String peakOf(Path status) {
        try {
            return Files.readAllLines(status).stream()
                    .filter(line -> line.startsWith("VmHWM"))
                    .map(line -> line.replaceAll("[^0-9]", ""))
                    .findFirst()
                    .orElse("?");
        } catch (IOException e) {
            return "?";
        }
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
