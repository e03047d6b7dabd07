package quarterlight.crash;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How calls that copy within the system are understood; the lines are as strace 6.1 prints them. */
class RecordingTest {
    @TempDir
    Path world;

    private static String hex(Path path) {
        StringBuilder hex = new StringBuilder();
        for (byte each : path.toString().getBytes(StandardCharsets.UTF_8)) {
            hex.append("\\x%02x".formatted(each));
        }
        return hex.toString();
    }

    private String line(String call) {
        return "77 "
                + call.replace("<a>", "<" + hex(world.resolve("a")) + ">")
                        .replace("<b>", "<" + hex(world.resolve("b")) + ">");
    }

    @Test
    void aRangeThatIsCopiedIsCopiedOnTheDisk() throws Exception {
        Files.write(world.resolve("a"), "0123456789".getBytes(StandardCharsets.US_ASCII));
        Files.write(world.resolve("b"), "..........".getBytes(StandardCharsets.US_ASCII));
        CrashDisk disk = new CrashDisk(world);
        List<Step> steps = Recording.steps(
                world,
                List.of(
                        line("copy_file_range(3<a>, NULL, 4<b>, NULL, 2, 0) = 2"),
                        line("copy_file_range(3<a>, [5], 4<b>, [5], 3, 0) = 3"),
                        line("copy_file_range(3<a>, NULL, 4<b>, NULL, 9223372035781033984, 0) = 1"),
                        line("copy_file_range(3<a>, NULL, 4<b>, NULL, 9, 0) = 0"),
                        line("fsync(4<b>) = 0")));
        assertThat(steps)
                .extracting(Step::kind)
                .containsExactly(Step.Kind.COPY, Step.Kind.COPY, Step.Kind.COPY, Step.Kind.FORCE);
        steps.forEach(disk::apply);
        Path image = world.resolveSibling(world.getFileName() + "-image");
        disk.image(CrashDisk.Cut.ONLY_FORCED, image);
        assertThat(image.resolve("b")).hasContent("012..567..");
    }

    @Test
    void aCopyToAnotherPlaceIsNotGuessedAt() {
        assertThatThrownBy(
                        () -> Recording.steps(world, List.of(line("copy_file_range(3<a>, [5], 4<b>, [0], 3, 0) = 3"))))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining("another place");
    }

    /** A library that unpacks itself in the middle of a recording says nothing of the program. */
    @Test
    void aLinkOfALibraryIsPassedOverAndOneOfTheProgramIsNot() {
        assertThat(Recording.steps(world, List.of(link("home/.javacpp/cache/a.so"))))
                .isEmpty();
        assertThatThrownBy(() -> Recording.steps(world, List.of(link("home/.javacpp.so"))))
                .isInstanceOf(AssertionError.class)
                .hasMessageContaining("symlink");
    }

    private String link(String name) {
        return "77 symlink(\"" + hex(Path.of("/usr/lib/b.so")) + "\", \"" + hex(world.resolve(name)) + "\") = 0";
    }
}
