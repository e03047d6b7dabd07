package quarterlight.ui.kit;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Objects;
import java.util.function.BiFunction;
import quarterlight.car.ZoneCatalog;
import quarterlight.diagram.ink.Ramp;
import quarterlight.diagram.ink.TextMeasure;
import quarterlight.edit.pages.VisitWork;
import quarterlight.finish.place.ZoneSizes;
import quarterlight.task.JobRunner;
import quarterlight.visit.VisitFacts;

/**
 * What every screen of the window may use. Immutable save the settings.
 *
 * @param areas nominal areas of the zones of a visit in a folder; asked off the event thread only
 * @param jobs long work, shown in the progress line
 */
public record UiContext(
        Texts texts,
        Clock clock,
        ZoneCatalog catalog,
        BiFunction<Path, VisitFacts, ZoneSizes> areas,
        SettingsFile settings,
        JobRunner jobs,
        Problems problems,
        Ramp ramp,
        TextMeasure measure) {
    public UiContext {
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

    /** What works out findings and makes pages. */
    public VisitWork work() {
        return new VisitWork(catalog, areas, settings.folder());
    }
}
