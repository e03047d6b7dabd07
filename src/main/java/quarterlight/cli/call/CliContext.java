package quarterlight.cli.call;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import quarterlight.car.ZoneCatalog;
import quarterlight.cli.text.Console;
import quarterlight.finish.place.ZoneSizes;
import quarterlight.store.TakeoverReport;
import quarterlight.store.VisitOpening;
import quarterlight.visit.VisitFacts;

/**
 * What the verbs need from outside. What takes time to load is a supplier and is asked only by verbs that need it.
 *
 * @param zones the zone table
 * @param areas nominal areas of the zones of a visit's car; a zone that has none is left out
 * @param demoData the folder with the demo data, if it is there
 * @param desk opens the desktop
 * @param log where faults of the program are written
 * @param diagrams the folder of body diagrams of one's own; need not exist
 */
public record CliContext(
        Console console,
        Clock clock,
        Supplier<ZoneCatalog> zones,
        Areas areas,
        Supplier<Optional<Path>> demoData,
        Desk desk,
        Path log,
        Path diagrams) {
    public CliContext {
        Objects.requireNonNull(console, "console");
        Objects.requireNonNull(clock, "clock");
        Objects.requireNonNull(zones, "zones");
        Objects.requireNonNull(areas, "areas");
        Objects.requireNonNull(demoData, "demoData");
        Objects.requireNonNull(desk, "desk");
        Objects.requireNonNull(log, "log");
        Objects.requireNonNull(diagrams, "diagrams");
    }

    /** Nominal areas and outlines by the diagram of a visit. */
    @FunctionalInterface
    public interface Areas {
        /** @param folder of the visit */
        ZoneSizes of(Path folder, VisitFacts facts);
    }

    /** The same with another console. */
    public CliContext with(Console other) {
        return new CliContext(other, clock, zones, areas, demoData, desk, log, diagrams);
    }

    /** The user's settings folder, where the log stands too. */
    public Path settings() {
        return log.toAbsolutePath().getParent();
    }

    /** Opens visits on this computer; what of a received one was left out is told on standard error before anything else is said of it. */
    public VisitOpening visits() {
        return VisitOpening.by(clock).onThisComputer(settings()).telling(this::tell);
    }

    private void tell(TakeoverReport report) {
        console.complain(report.heading());
        report.lines().forEach(line -> console.complain("left out: " + line));
        report.footing().ifPresent(console::complain);
    }

    /** The desktop, which the command line does not know. */
    @FunctionalInterface
    public interface Desk {
        /** Opens the window, with a visit if one is given. Returns false if there is no display or no desktop. */
        boolean open(Optional<Path> visit);

        /** Opens the window with a visit, shows each station once and closes it. Returns false if there is no display or no desktop. */
        default boolean rehearse(Path visit) {
            return false;
        }
    }
}
