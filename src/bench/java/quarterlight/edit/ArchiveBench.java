package quarterlight.edit;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import quarterlight.archive.ArchiveAudit;
import quarterlight.edit.archive.Archived;
import quarterlight.edit.archive.Archiving;
import quarterlight.edit.archive.Restoring;
import quarterlight.edit.fact.FactEdits;
import quarterlight.photo.originals.Digests;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitProblem;
import quarterlight.table.ZoneTable;
import quarterlight.task.Progress;
import quarterlight.visit.photo.MediaFacts;
import quarterlight.visit.photo.MediaHeader;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.PhotoFile;

/**
 * Archives, audits and restores a visit with large films, to be run with {@code -Xmx256m}: one film above 4 GB, so that Zip64 is used,
 * and more of 250 MB. The films are holes in the disk with a few bytes of text. Arguments: a folder, and the length of the
 * large film in MB (4500 unless given).
 */
public final class ArchiveBench {
    private static final int SMALL_MB = 250;

    private ArchiveBench() {}

    public static void main(String[] args) throws Exception {
        Path folder = Files.createDirectories(Path.of(args[0]));
        long largeMb = args.length > 1 ? Long.parseLong(args[1]) : 4500;
        Path visit = folder.resolve("visit");
        Clock clock = Clock.system(ZoneId.systemDefault());
        try (VisitStore store = VisitStore.create(
                visit,
                new FactEdits(ZoneTable.load()).start(Map.of("car", "Large", "style", "coupe"), clock.getZone()),
                clock)) {
            film(store, visit, "large.mp4", largeMb);
            film(store, visit, "second.mp4", SMALL_MB);
            film(store, visit, "third.mp4", SMALL_MB);
        }
        Path zip = folder.resolve("visit.zip");
        try (VisitStore store = VisitStore.openForReading(visit)) {
            Archiving archiving = new Archiving(ZoneTable.load(), clock, (pages, pictures, progress) -> {});
            Instant start = clock.instant();
            Archived made = archiving.make(store, zip, false, Progress.NONE);
            tell("archive", start, clock, made.bytes() + " bytes, all well: " + made.ok());
        }
        Instant start = clock.instant();
        tell(
                "audit",
                start,
                clock,
                "all well: " + ArchiveAudit.of(zip, Progress.NONE).ok());
        start = clock.instant();
        boolean restored = new Restoring(quarterlight.store.VisitOpening.by(clock), ZoneTable.load())
                .restore(zip, folder.resolve("back"), Progress.NONE)
                .ok();
        tell("restore", start, clock, "all well: " + restored);
    }

    private static void tell(String what, Instant start, Clock clock, String result) {
        Runtime machine = Runtime.getRuntime();
        System.out.printf(
                "%s: %.1f s, heap in use %d MB of at most %d MB; %s%n",
                what,
                Duration.between(start, clock.instant()).toMillis() / 1000.0,
                (machine.totalMemory() - machine.freeMemory()) >> 20,
                machine.maxMemory() >> 20,
                result);
    }

    private static void film(VisitStore store, Path visit, String name, long mb) throws IOException, VisitProblem {
        Path file = visit.resolve("originals").resolve(name);
        try (RandomAccessFile out = new RandomAccessFile(file.toFile(), "rw")) {
            out.setLength(mb << 20);
            out.seek((mb << 20) - 100);
            out.write(name.getBytes(StandardCharsets.UTF_8));
        }
        PhotoFile film = new PhotoFile(
                name,
                "originals/" + name,
                Digests.of(file),
                mb << 20,
                MediaKind.FILM,
                "MP4",
                MediaHeader.NONE,
                OptionalDouble.empty(),
                List.of(),
                MediaFacts.NONE);
        store.change("take in " + name, tx -> tx.addPhoto(film));
    }
}
