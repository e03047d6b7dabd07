package quarterlight.ui.kit;

import java.time.Clock;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import quarterlight.car.Car;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.ZoneId;
import quarterlight.diagram.ink.Ramp;
import quarterlight.diagram.ink.TextMeasure;
import quarterlight.task.JobRunner;
import quarterlight.units.Area;

/**
 * What every screen of the window may use. Immutable save the settings.
 *
 * @param areas nominal areas of a car's zones; asked off the event thread only
 * @param jobs long work, shown in the progress line
 */
public record DeskParts(
        Texts texts,
        Clock clock,
        ZoneCatalog catalog,
        Function<Car, Map<ZoneId, Area>> areas,
        SettingsFile settings,
        JobRunner jobs,
        Problems problems,
        Ramp ramp,
        TextMeasure measure) {
    public DeskParts {
        Objects.requireNonNull(texts, "texts");
        Objects.requireNonNull(clock, "clock");
        Objects.requireNonNull(catalog, "catalog");
        Objects.requireNonNull(areas, "areas");
        Objects.requireNonNull(settings, "settings");
        Objects.requireNonNull(jobs, "jobs");
        Objects.requireNonNull(problems, "problems");
        Objects.requireNonNull(ramp, "ramp");
        Objects.requireNonNull(measure, "measure");
    }
}
