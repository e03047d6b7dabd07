package quarterlight.cli.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import quarterlight.cli.call.CallRefused;
import quarterlight.cli.call.CliContext;
import quarterlight.edit.EditRefused;
import quarterlight.file.DurableFiles;
import quarterlight.store.problem.VisitProblem;
import quarterlight.task.Progress;

/** The demo visits of a folder: those that are there stay as they are, the others are built from the demo data. */
public final class DemoVisits {
    private final CliContext around;
    private final List<String> refused = new ArrayList<>();

    public DemoVisits(CliContext around) {
        this.around = Objects.requireNonNull(around, "around");
    }

    /**
     * One of them.
     *
     * @param held what it was built of, in words; empty if it was there
     */
    public record Made(Path visit, Optional<String> held) {
        public Made {
            Objects.requireNonNull(visit, "visit");
            Objects.requireNonNull(held, "held");
        }
    }

    /**
     * Builds what is not there yet, in the order of the names.
     *
     * @throws CallRefused if there is no demo data, or the folder is a file
     * @throws java.util.concurrent.CancellationException if the progress is cancelled; visits that were whole by then stay
     */
    public List<Made> in(Path folder, Progress progress) throws CallRefused, EditRefused, VisitProblem, IOException {
        Path data = around.demoData()
                .get()
                .orElseThrow(() -> new CallRefused(
                        "the folder demo-data is missing; put it next to the program, or run from the folder"
                                + " that has it"));
        Map<String, Path> sources = sources(data);
        if (sources.isEmpty()) {
            throw new CallRefused(data + " has no demo visit; use demo-data as it came with the program");
        }
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            throw new CallRefused(folder + " is a file; name a folder for the demo");
        }
        DurableFiles.createFolders(folder);
        List<Made> made = new ArrayList<>();
        for (Map.Entry<String, Path> source : sources.entrySet()) {
            progress.checkCancelled();
            Path visit = folder.resolve(source.getKey());
            if (Files.exists(visit)) {
                made.add(new Made(visit, Optional.empty()));
            } else {
                DemoBuild build = new DemoBuild(around, source.getValue());
                made.add(new Made(visit, Optional.of(build.build(visit, progress))));
                refused.addAll(build.refused());
            }
        }
        return made;
    }

    /** What could not be taken in, in sentences; none if the demo data is whole. */
    public List<String> refused() {
        return List.copyOf(refused);
    }

    private static Map<String, Path> sources(Path demoData) throws IOException {
        Map<String, Path> visits = new TreeMap<>();
        try (Stream<Path> folders = Files.list(demoData)) {
            folders.filter(folder -> Files.exists(folder.resolve("facts.txt")))
                    .forEach(folder -> visits.put(folder.getFileName().toString(), folder));
        }
        return visits;
    }
}
