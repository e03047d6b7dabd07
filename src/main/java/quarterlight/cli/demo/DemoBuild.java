package quarterlight.cli.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import quarterlight.cli.call.CallRefused;
import quarterlight.cli.call.CliContext;
import quarterlight.cli.call.PhotoArgument;
import quarterlight.cli.evidence.IntakeVerb;
import quarterlight.cli.text.CliText;
import quarterlight.edit.EditRefused;
import quarterlight.edit.fact.ClockEdits;
import quarterlight.edit.fact.FactEdits;
import quarterlight.edit.intake.IntakeResult;
import quarterlight.edit.row.RowEdits;
import quarterlight.edit.row.RowKinds;
import quarterlight.file.StagingFolder;
import quarterlight.photo.originals.OriginalsUnwritable;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitProblem;
import quarterlight.table.CsvFile;
import quarterlight.table.RowKind;
import quarterlight.table.TableRead;
import quarterlight.table.TableUnreadable;
import quarterlight.table.cell.RowContext;
import quarterlight.table.text.DateTimeText;
import quarterlight.task.Progress;
import quarterlight.visit.photo.CameraId;

/**
 * Builds one visit from what it brought home, by the same edits as the verbs: {@code facts.txt} (KEY=VALUE lines), {@code photos/},
 * {@code clock.csv} (camera, photo, shows), and one table of each kind, named for it.
 */
final class DemoBuild {
    /** Pins before traces, since a trace may take its zone from a pin. */
    private static final List<String> ORDER =
            List.of("gauge", "readings", "pins", "signs", "traces", "marks", "trials", "statements", "features");

    private final CliContext around;
    private final Path from;
    private final List<String> refused = new ArrayList<>();

    DemoBuild(CliContext around, Path from) {
        this.around = around;
        this.from = from;
    }

    /** What could not be taken in, in sentences; none if the demo data is whole. */
    List<String> refused() {
        return List.copyOf(refused);
    }

    /** Builds the visit beside its place and moves it there when it is whole. Returns what it holds, in words. */
    String build(Path visit, Progress progress) throws CallRefused, EditRefused, VisitProblem, IOException {
        try (StagingFolder unfinished = StagingFolder.beside(visit)) {
            Path making = unfinished.folder().resolve("visit");
            String held = buildAt(making, progress);
            unfinished.deliver(making);
            return held;
        }
    }

    private String buildAt(Path making, Progress progress) throws CallRefused, EditRefused, VisitProblem, IOException {
        List<String> held = new ArrayList<>();
        VisitStore store = around.visits()
                .create(
                        making,
                        new FactEdits(around.zones().get())
                                .start(
                                        FactEdits.assignments(lines("facts.txt")),
                                        around.clock().getZone()));
        try (store) {
            held.add(intake(store, progress));
            setClocks(store);
            for (String word : ORDER) {
                RowKind<?> kind = RowKinds.find(word).orElseThrow();
                if (Files.exists(from.resolve(word + ".csv"))) {
                    held.add(add(store, kind));
                }
            }
        }
        return String.join(", ", held);
    }

    private List<String> lines(String name) throws IOException {
        return Files.readAllLines(from.resolve(name)).stream()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .toList();
    }

    private String intake(VisitStore store, Progress progress) throws CallRefused, VisitProblem {
        try {
            IntakeResult result = new IntakeVerb(around).run(store, List.of(from.resolve("photos")), progress);
            result.refused().forEach(refusal -> refused.add(refusal.file() + ": " + refusal.reason()));
            return CliText.count(result.added(), "photo", "photos");
        } catch (OriginalsUnwritable e) {
            throw new CallRefused(e.getMessage());
        }
    }

    private void setClocks(VisitStore store) throws CallRefused, EditRefused, VisitProblem, IOException {
        if (!Files.exists(from.resolve("clock.csv"))) {
            return;
        }
        for (String line : lines("clock.csv").stream().skip(1).toList()) {
            String[] cells = line.split(",", -1);
            Optional<LocalDateTime> shows = cells.length == 3
                    ? DateTimeText.parse(cells[2], store.read().facts().timezone())
                    : Optional.empty();
            if (shows.isEmpty()) {
                throw new CallRefused(
                        from.resolve("clock.csv") + " has a line that is no camera, photo and time: " + line);
            }
            new ClockEdits(store)
                    .fromPhoto(
                            new CameraId(cells[0]),
                            PhotoArgument.find(store.read().photos(), cells[1]).id(),
                            shows.get(),
                            Optional.empty());
        }
    }

    private <T> String add(VisitStore store, RowKind<T> kind) throws CallRefused, EditRefused, VisitProblem {
        try {
            TableRead<T> read = CsvFile.read(
                    from.resolve(kind.word() + ".csv"),
                    kind,
                    RowContext.of(store.read(), around.zones().get()));
            read.refused().forEach(row -> refused.add(row.sentence(from.getFileName() + "/" + read.file())));
            new RowEdits(store).add(kind.kind(), read.values());
            return kind.kind().count(read.values().size());
        } catch (TableUnreadable e) {
            throw new CallRefused(e.getMessage());
        }
    }
}
