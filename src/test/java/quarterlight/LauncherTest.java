package quarterlight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The launcher finds its program from any folder. A script in place of the Java machine prints what it was called with. */
@Timeout(60)
class LauncherTest {
    private static final Path SOURCE =
            Path.of(System.getProperty("quarterlight.basedir", "."), "src/main/launch/quarterlight");

    @TempDir
    Path folder;

    private Path home;
    private Path launcher;
    private Path javaHome;

    @BeforeEach
    void layOut() throws Exception {
        assumeTrue(Files.isExecutable(Path.of("/bin/sh")), "a POSIX shell");
        home = Files.createDirectories(folder.resolve("a program/it's here")).toRealPath();
        launcher = home.resolve("bin/quarterlight");
        Files.createDirectories(launcher.getParent());
        Files.copy(SOURCE, launcher);
        executable(launcher);
        javaHome = folder.resolve("java home");
        Path java = javaHome.resolve("bin/java");
        Files.createDirectories(java.getParent());
        Files.writeString(
                java,
                """
                #!/bin/sh
                for word in "$@"; do printf '%s\\n' "$word"
                case $word in -XX:ArchiveClassesAtExit=*) echo made >"${word#*=}";; esac; done
                exit 7
                """);
        executable(java);
    }

    private static void executable(Path file) throws Exception {
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
    }

    private record Call(int status, List<String> words) {}

    private Call call(Path from, Map<String, String> environment, String... command) throws Exception {
        ProcessBuilder builder = new ProcessBuilder(command).directory(from.toFile());
        builder.redirectErrorStream(true).environment().putAll(environment);
        Process process = builder.start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor(30, TimeUnit.SECONDS)).isTrue();
        return new Call(process.exitValue(), said.lines().toList());
    }

    private Call call(Path from, String... command) throws Exception {
        return call(from, Map.of("JAVA_HOME", javaHome.toString()), command);
    }

    private void findsTheProgram(Call call, String... arguments) {
        assertThat(call.status()).as(call.toString()).isEqualTo(7);
        List<String> end =
                new ArrayList<>(List.of("-jar", home.resolve("quarterlight.jar").toString()));
        end.addAll(List.of(arguments));
        assertThat(call.words()).endsWith(end.toArray(String[]::new));
        assertThat(call.words())
                .contains(
                        "-Dorg.sqlite.lib.path=" + home.resolve("native"),
                        "-XX:SharedArchiveFile=" + home.resolve("classes.jsa"));
    }

    @Test
    void fromAnotherFolderWithSpacesInThePath() throws Exception {
        findsTheProgram(call(folder, launcher.toString(), "zones", "my visit"), "zones", "my visit");
    }

    @Test
    void fromItsOwnFolder() throws Exception {
        findsTheProgram(call(launcher.getParent(), "./quarterlight", "zones"), "zones");
    }

    @Test
    void throughALinkToALink() throws Exception {
        Path first = folder.resolve("bin of the user/first");
        Files.createDirectories(first.getParent());
        Files.createSymbolicLink(first, launcher);
        Path second = folder.resolve("second");
        Files.createSymbolicLink(second, Path.of("bin of the user/first"));
        findsTheProgram(call(Path.of("/"), second.toString(), "zones"), "zones");
        findsTheProgram(call(folder, "./second", "zones"), "zones");
    }

    @Test
    void byTheSearchPath() throws Exception {
        String path = launcher.getParent() + ":" + System.getenv("PATH");
        Map<String, String> environment = Map.of("JAVA_HOME", javaHome.toString(), "PATH", path);
        findsTheProgram(call(folder, environment, "/bin/sh", "-c", "quarterlight zones"), "zones");
    }

    @Test
    void theFirstWindowMakesTheClassesReadyAndTheSecondUsesThem() throws Exception {
        Call first = call(folder, launcher.toString(), "desk", "v");
        assertThat(first.status()).isEqualTo(7);
        assertThat(first.words()).anyMatch(word -> word.startsWith("-XX:ArchiveClassesAtExit=" + home));
        assertThat(home.resolve("classes.jsa")).hasContent("made");
        assertThat(home.resolve("classes.place")).hasContent(home.toString());
        findsTheProgram(call(folder, launcher.toString(), "desk", "v"), "desk", "v");
    }

    @Test
    void aProgramThatWasMovedMakesThemAnew() throws Exception {
        Files.writeString(home.resolve("classes.place"), "/somewhere/else\n");
        assertThat(call(folder, launcher.toString()).words())
                .anyMatch(word -> word.startsWith("-XX:ArchiveClassesAtExit=" + home));
        assertThat(home.resolve("classes.place")).hasContent(home.toString());
    }

    @Test
    void withoutAJavaMachineOneSentenceSaysWhatToDo() throws Exception {
        Call call = call(folder, Map.of("JAVA_HOME", folder.resolve("none").toString()), launcher.toString(), "zones");
        assertThat(call.status()).isEqualTo(3);
        assertThat(call.words()).singleElement().asString().contains("install Java 17");
    }
}
