package quarterlight;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * The program in a process of its own. The build tells by {@code quarterlight.built} where it has just put the jar and the classes made ready for a fast start; from
 * there a process starts in a third of the time. Elsewhere it starts from the classes of the test.
 */
public final class OwnProcess {
    private static final String BUILT = System.getProperty("quarterlight.built", "");

    private OwnProcess() {}

    /** @param home the home of its user, where settings lie */
    public static List<String> program(Path home, String... arguments) {
        return of(Main.class, home, arguments);
    }

    /** @param main what runs, of the program or of its tests */
    public static List<String> of(Class<?> main, Path home, String... arguments) {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx256m",
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-Djava.awt.headless=true",
                "-Dfile.encoding=UTF-8",
                "-Dorg.freemarker.loggerLibrary=none",
                "-Duser.home=" + home));
        String classes = System.getProperty("java.class.path");
        Path jar = Path.of(BUILT, "quarterlight.jar");
        Path ready = Path.of(BUILT, "classes.jsa");
        if (!BUILT.isEmpty() && Files.exists(jar) && Files.exists(ready)) {
            command.addAll(List.of(
                    "-Xlog:disable", "-XX:SharedArchiveFile=" + ready, "-Dquarterlight.shared-classes=" + ready));
            classes = jar + (main == Main.class ? "" : File.pathSeparator + classes);
        }
        command.addAll(List.of("-cp", classes, main.getName()));
        command.addAll(List.of(arguments));
        return command;
    }
}
