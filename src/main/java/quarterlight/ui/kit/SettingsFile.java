package quarterlight.ui.kit;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Objects;
import java.util.Properties;
import java.util.TreeMap;
import java.util.concurrent.Executor;
import java.util.function.UnaryOperator;
import quarterlight.file.DurableFiles;
import quarterlight.file.Leftovers;
import quarterlight.file.PlainFile;

/**
 * The settings of the window and the file they live in. Changed on the event thread, written in the background as a whole; a file that
 * cannot be read or written costs a line in the log and never the work.
 */
public final class SettingsFile {
    private static final System.Logger LOG = System.getLogger(SettingsFile.class.getName());
    private static final String SCHEMA_KEY = "schema";
    private static final String SCHEMA = "1";
    private static final int MAX_BYTES = 1 << 20;

    private final Path file;
    private final Executor writer;
    private Settings settings;

    private SettingsFile(Path file, Executor writer, Settings settings) {
        this.file = file;
        this.writer = writer;
        this.settings = settings;
    }

    /** @param writer runs the writing, one after the other */
    public static SettingsFile read(Path file, Executor writer) {
        Leftovers.clear(file.toAbsolutePath().getParent());
        Leftovers.clearEarlier(file.toAbsolutePath().getParent(), file.getFileName() + ".part");
        return new SettingsFile(Objects.requireNonNull(file, "file"), writer, load(file));
    }

    private static Settings load(Path file) {
        Properties properties = new Properties();
        try {
            properties.load(new StringReader(PlainFile.text(file, MAX_BYTES)));
        } catch (NoSuchFileException e) {
            return Settings.NONE;
        } catch (IOException | IllegalArgumentException e) {
            LOG.log(System.Logger.Level.WARNING, "the settings in " + file + " cannot be read and are left out", e);
            return Settings.NONE;
        }
        Map<String, String> values = new TreeMap<>();
        properties.stringPropertyNames().forEach(key -> values.put(key, properties.getProperty(key)));
        return new Settings(values);
    }

    public Settings settings() {
        return settings;
    }

    /** The folder of the settings, where other things that outlive a visit may be kept. */
    public Path folder() {
        return file.toAbsolutePath().getParent();
    }

    public void change(UnaryOperator<Settings> change) {
        Settings changed = change.apply(settings);
        if (!changed.values().equals(settings.values())) {
            settings = changed;
            writer.execute(() -> write(changed));
        }
    }

    private void write(Settings changed) {
        Properties properties = new Properties();
        properties.putAll(changed.values());
        properties.putIfAbsent(SCHEMA_KEY, SCHEMA);
        try {
            StringWriter lines = new StringWriter();
            properties.store(lines, null);
            DurableFiles.text(file, lines.toString());
        } catch (IOException e) {
            LOG.log(System.Logger.Level.WARNING, "the settings cannot be kept in " + file, e);
        }
    }
}
