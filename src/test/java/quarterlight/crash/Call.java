package quarterlight.crash;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** How the program is called in a process of its own. */
final class Call {
    private Call() {}

    /** @param home the home of its user, where settings lie */
    static List<String> of(Path home, String... arguments) {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx256m",
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-Djava.awt.headless=true",
                "-Dorg.freemarker.loggerLibrary=none",
                "-Duser.home=" + home,
                "-cp",
                System.getProperty("java.class.path"),
                "quarterlight.Main"));
        command.addAll(List.of(arguments));
        return command;
    }
}
