package quarterlight.ui;

import java.awt.GraphicsEnvironment;
import java.nio.file.Path;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.FutureTask;
import javax.swing.SwingUtilities;
import quarterlight.diagram.ink.TextMeasure;
import quarterlight.language.Language;
import quarterlight.store.VisitOpening;
import quarterlight.task.Threads;
import quarterlight.ui.kit.SettingsFile;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.look.Sight;
import quarterlight.ui.kit.look.Typeface;
import quarterlight.ui.start.WindowLanguage;

/**
 * What the window needs whatever visit it shows: settings, typeface, look, and the library of the database. It can be made ready while the call is
 * still being read.
 */
public final class DesktopPreloader {
    /**
     * @param writer runs the writing of the settings; whoever takes it shuts it down
     * @param language in which the window speaks
     */
    record Ready(SettingsFile settings, ExecutorService writer, TextMeasure measure, Language language) {}

    private final FutureTask<Ready> work;

    /** @param settingsFolder where settings are kept */
    public DesktopPreloader(Path settingsFolder) {
        work = new FutureTask<>(() -> ready(settingsFolder));
    }

    /** Begins on threads of its own; does nothing where there is no display. */
    public void begin() {
        if (!GraphicsEnvironment.isHeadless()) {
            Threads.start("quarterlight-typeface", work);
            Threads.start("quarterlight-database", VisitOpening::prepare);
        }
    }

    /**
     * Waits for it; makes it ready on the calling thread if nobody began. Not on the event thread.
     *
     * @throws java.awt.AWTError if the display cannot be used
     */
    Ready await() {
        work.run();
        try {
            return work.get();
        } catch (ExecutionException e) {
            if (e.getCause() instanceof Error error) {
                throw error;
            }
            throw new IllegalStateException(e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted before there was a window", e);
        }
    }

    private static Ready ready(Path settingsFolder) {
        ExecutorService writer = Threads.inOrder("quarterlight-settings");
        SettingsFile settings = SettingsFile.read(settingsFolder.resolve("settings.properties"), writer);
        Language language = WindowLanguage.take(settings.settings());
        TextMeasure measure = TextMeasure.bundled();
        Typeface.register(measure);
        Sight sight = settings.settings().sight();
        SwingUtilities.invokeLater(() -> Look.install(sight));
        return new Ready(settings, writer, measure, language);
    }
}
