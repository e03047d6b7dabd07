package quarterlight.crash;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quarterlight.OwnProcess;
import quarterlight.cli.TestPhotos;

/** The disk of the visit becomes full during an intake: a small disk in memory, mounted where only the process sees it. Linux only. */
@Timeout(300)
class FullDiskTest {
    private static final int PHOTOS = 30;

    @TempDir
    Path folder;

    private int inNamespace(String script, String... call) throws Exception {
        List<String> command = new ArrayList<>(List.of("unshare", "-r", "-m", "sh", "-c", script, "script"));
        command.addAll(OwnProcess.program(folder.resolve("home"), call));
        try {
            return new ProcessBuilder(command)
                    .redirectOutput(folder.resolve("out.txt").toFile())
                    .redirectError(folder.resolve("err.txt").toFile())
                    .start()
                    .waitFor();
        } catch (IOException e) {
            return -1;
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1800, 2600, 3333, 4000})
    void whatWasProvedIsKept(int kilobytes) throws Exception {
        Path disk = Files.createDirectories(folder.resolve("disk"));
        assumeTrue(
                inNamespace("mount -t tmpfs -o size=1m none '" + disk + "'") == 0, "needs leave to mount a small disk");
        Random random = new Random(kilobytes);
        for (int i = 0; i < PHOTOS; i++) {
            Path photo = TestPhotos.write(
                    folder.resolve("card/IMG_" + (100 + i) + ".JPG"), i, "2026:02:28 10:00:%02d".formatted(i));
            byte[] tail = new byte[150_000 + random.nextInt(50_000)];
            random.nextBytes(tail);
            Files.write(photo, tail, java.nio.file.StandardOpenOption.APPEND);
        }
        String visit = disk.resolve("v").toString();
        String script = "mount -t tmpfs -o size=" + kilobytes + "k none '" + disk + "' && \"$@\" new '" + visit
                + "' --car Any --style coupe && { \"$@\" intake '" + visit + "' '" + folder.resolve("card")
                + "'; echo status $?; \"$@\" audit '" + visit + "'; ls '" + disk.resolve("v/originals")
                + "' | wc -l; }";
        inNamespace(script);
        List<String> said = Files.readAllLines(folder.resolve("out.txt"));
        List<String> complaints = Files.readAllLines(folder.resolve("err.txt")).stream()
                .filter(line -> line.startsWith("quarterlight"))
                .toList();
        assertThat(complaints).singleElement().asString().contains("can no longer be used", "is safe, make room");
        assertThat(said).contains("status 1");
        assertThat(said).as("everything that was copied has its row").noneMatch(line -> line.startsWith("remark"));
        int kept = Integer.parseInt(said.get(said.size() - 1).strip());
        assertThat(kept).isBetween(1, PHOTOS - 1);
        assertThat(said)
                .anyMatch(line -> line.startsWith(
                        "All " + kept + " originals are unchanged since they were added, and the database agrees"));
    }
}
