package quarterlight.ui.start;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitProblem;
import quarterlight.task.Progress;
import quarterlight.ui.kit.Command;
import quarterlight.ui.kit.UiContext;
import quarterlight.visit.VisitRecord;

/** Makes the sample visits where they are not there yet, and opens the first; the others stand among the recent ones. Event thread only. */
public final class OpenSamples {
    private final UiContext parts;
    private final SampleVisits samples;
    private final Consumer<Path> open;
    private final Command command;

    /** @param open opens a visit in the window */
    public OpenSamples(UiContext parts, SampleVisits samples, Consumer<Path> open) {
        this.parts = Objects.requireNonNull(parts, "parts");
        this.samples = Objects.requireNonNull(samples, "samples");
        this.open = Objects.requireNonNull(open, "open");
        this.command = Command.of(parts.texts(), "do.samples", this::make)
                .tip(parts.texts().get("do.samples.tip", samples.folder()));
    }

    /** The one command; it waits while it is at work. */
    public Command command() {
        return command;
    }

    /** A sample visit and what it holds. */
    private record Sample(Path folder, VisitRecord visit) {}

    private void make() {
        command.setEnabled(false);
        parts.jobs()
                .start(
                        parts.texts().get("samples.making"),
                        progress -> {
                            try {
                                return made(progress);
                            } finally {
                                SwingUtilities.invokeLater(() -> command.setEnabled(true));
                            }
                        },
                        this::show,
                        parts.problems()::failed);
    }

    private List<Sample> made(Progress progress) throws Exception {
        List<Sample> made = new ArrayList<>();
        for (Path folder : samples.make(progress)) {
            made.add(new Sample(folder, read(folder)));
        }
        return made;
    }

    private VisitRecord read(Path folder) throws VisitProblem {
        try (VisitStore store = parts.work().visits(report -> {}).forReading(folder)) {
            return store.read();
        }
    }

    private void show(List<Sample> made) {
        for (int i = made.size() - 1; i >= 0; i--) {
            Sample one = made.get(i);
            parts.settings()
                    .change(settings -> RecentVisit.remember(
                            settings.withRecent(one.folder()), one.folder(), one.visit(), parts.catalog()));
        }
        made.stream().map(Sample::folder).findFirst().ifPresent(open);
    }
}
