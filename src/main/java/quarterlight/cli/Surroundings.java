package quarterlight.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import quarterlight.car.Car;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.ZoneId;
import quarterlight.units.Area;

/**
 * What the verbs need from outside. What takes time to load is a supplier and is asked only by verbs that need it.
 *
 * @param zones the zone table
 * @param areas nominal areas of a car's zones; a zone that has none is left out
 * @param demoData the folder with the demo data, if it is there
 * @param desk opens the desktop
 * @param log where faults of the program are written
 */
public record Surroundings(
        Console console,
        Clock clock,
        Supplier<ZoneCatalog> zones,
        Function<Car, Map<ZoneId, Area>> areas,
        Supplier<Optional<Path>> demoData,
        Desk desk,
        Path log) {
    public Surroundings {
        Objects.requireNonNull(console, "console");
        Objects.requireNonNull(clock, "clock");
        Objects.requireNonNull(zones, "zones");
        Objects.requireNonNull(areas, "areas");
        Objects.requireNonNull(demoData, "demoData");
        Objects.requireNonNull(desk, "desk");
        Objects.requireNonNull(log, "log");
    }

    /** The user's settings folder, where the log stands too. */
    Path settings() {
        return log.toAbsolutePath().getParent();
    }

    /** The desktop, which the command line does not know. */
    @FunctionalInterface
    public interface Desk {
        /** Opens the window, with a visit if one is given. Returns false if there is no display or no desktop. */
        boolean open(Optional<Path> visit);
    }
}
