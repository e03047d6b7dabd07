package quarterlight.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.logging.FileHandler;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.LogManager;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import java.util.logging.SimpleFormatter;

/** The program's log: two files that take turns, opened at the first line worth writing. Nothing of it goes to the console. */
public final class LogFile extends Handler {
    private static final int MAX_BYTES = 500_000;

    private final Path folder;
    private Handler file = new Nowhere();
    private boolean opened;

    private LogFile(Path folder) {
        this.folder = folder;
    }

    /** Sends all that the program logs to {@code quarterlight.log} in the folder, and nothing to the console. */
    public static LogFile install(Path folder) {
        LogFile log = new LogFile(folder);
        LogManager.getLogManager().reset();
        Logger root = Logger.getLogger("");
        root.setLevel(Level.INFO);
        root.addHandler(log);
        return log;
    }

    public Path path() {
        return folder.resolve("quarterlight.log");
    }

    @Override
    public synchronized void publish(LogRecord line) {
        if (!opened) {
            opened = true;
            file = open();
        }
        file.publish(line);
    }

    private Handler open() {
        try {
            Files.createDirectories(folder);
            FileHandler handler = new FileHandler(path().toString().replace("%", "%%"), MAX_BYTES, 1, true);
            handler.setFormatter(new SimpleFormatter());
            handler.setEncoding("UTF-8");
            return handler;
        } catch (IOException e) {
            return new Nowhere();
        }
    }

    @Override
    public synchronized void flush() {
        file.flush();
    }

    @Override
    public synchronized void close() {
        file.close();
    }

    /** Takes the place of a file that cannot be written: a log is no reason to stop. */
    private static final class Nowhere extends Handler {
        @Override
        public void publish(LogRecord line) {
            // there is no place to keep it
        }

        @Override
        public void flush() {
            // nothing is held
        }

        @Override
        public void close() {
            // nothing is open
        }
    }
}
