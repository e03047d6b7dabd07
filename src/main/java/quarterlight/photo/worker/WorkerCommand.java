package quarterlight.photo.worker;

import java.io.File;
import java.io.IOException;
import java.net.URISyntaxException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The command that starts a worker: the Java machine that runs the program, with the same class path. Arguments are handed over one by one, so paths may
 * hold spaces.
 */
final class WorkerCommand {
    /** Set where the program was started with classes made ready for a fast start; the worker uses them too. */
    private static final String SHARED_CLASSES = "quarterlight.shared-classes";

    private static final List<String> PASSED_ON = List.of(
            "user.home",
            "java.io.tmpdir",
            "java.library.path",
            "org.bytedeco.javacpp.cachedir",
            "org.bytedeco.javacpp.pathsFirst",
            "org.bytedeco.javacpp.platform");

    /** Room for what the limit on memory measures a moment too late. */
    private static final int SPARE_MB = 48;

    /** Little is translated twice in a process that decodes a few hundred files; the program itself is started with the same. */
    private static final List<String> TRANSLATING = List.of(
            "-XX:+IgnoreUnrecognizedVMOptions",
            "-XX:+UnlockDiagnosticVMOptions",
            "-XX:ArchiveRelocationMode=0",
            "-XX:-C1ProfileBranches",
            "-XX:-C1ProfileInlinedCalls",
            "-XX:-C1ProfileCheckcasts",
            "-XX:Tier4InvocationThreshold=50000",
            "-XX:Tier4MinInvocationThreshold=6000",
            "-XX:Tier4CompileThreshold=150000",
            "-XX:Tier4BackEdgeThreshold=400000");

    private static final Path SHELL = Path.of("/bin/sh");

    private WorkerCommand() {}

    static List<String> of(WorkerLimits limits, Path pixels, Class<?> main) throws IOException {
        List<String> command = new ArrayList<>(limited(limits));
        command.add(java().toString());
        command.addAll(TRANSLATING);
        command.addAll(List.of(
                "-Xmx" + limits.heapMb() + "m",
                "-Xms24m",
                "-Xss512k",
                "-XX:+UseSerialGC",
                "-XX:-UsePerfData",
                "-XX:ReservedCodeCacheSize=24m",
                "-XX:+DisplayVMOutputToStderr",
                "-XX:+SuppressFatalErrorMessage",
                "-Djava.awt.headless=true",
                "-Dfile.encoding=UTF-8"));
        Optional.ofNullable(System.getProperty(SHARED_CLASSES))
                .filter(archive -> Files.isReadable(Path.of(archive)))
                .ifPresent(archive -> command.addAll(List.of("-XX:SharedArchiveFile=" + archive, "-Xlog:disable")));
        for (String key : PASSED_ON) {
            Optional.ofNullable(System.getProperty(key)).ifPresent(value -> command.add("-D" + key + "=" + value));
        }
        command.addAll(
                List.of("-cp", classPath(), main.getName(), Integer.toString(limits.memoryMb()), pixels.toString()));
        return command;
    }

    /** On Linux the system itself refuses memory beyond the limit; elsewhere the worker's own watch must do. */
    private static List<String> limited(WorkerLimits limits) {
        boolean linux = System.getProperty("os.name").toLowerCase(Locale.ROOT).contains("linux");
        return linux && Files.isExecutable(SHELL)
                ? List.of(
                        SHELL.toString(),
                        "-c",
                        "ulimit -d \"$0\" 2>/dev/null; exec \"$@\"",
                        Integer.toString((limits.memoryMb() + SPARE_MB) * 1024))
                : List.of();
    }

    /** Where the program's classes come from, whichever loader brought them. */
    private static String classPath() throws IOException {
        if (!(WorkerCommand.class.getClassLoader() instanceof URLClassLoader loader)) {
            return System.getProperty("java.class.path");
        }
        List<String> places = new ArrayList<>();
        for (URL place : loader.getURLs()) {
            try {
                places.add(Path.of(place.toURI()).toString());
            } catch (URISyntaxException e) {
                throw new IOException("the place of the program's classes cannot be read", e);
            }
        }
        return String.join(File.pathSeparator, places);
    }

    /** @throws IOException if the Java machine that runs the program has no command of its own any more */
    private static Path java() throws IOException {
        Path home = Path.of(System.getProperty("java.home"), "bin");
        for (String name : List.of("java", "java.exe")) {
            if (Files.isExecutable(home.resolve(name))) {
                return home.resolve(name);
            }
        }
        throw new IOException("there is no java command in " + home);
    }
}
