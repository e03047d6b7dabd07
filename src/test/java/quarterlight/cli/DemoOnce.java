package quarterlight.cli;

import static org.assertj.core.api.Assumptions.assumeThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.stream.Stream;

/** The demo as the verb makes it, made once for all tests of a build in whichever process asks first; each test has a copy of its own. */
public final class DemoOnce {
    private static final Path BASE = Path.of(System.getProperty("quarterlight.basedir", "."));
    private static final Path KEPT = BASE.toAbsolutePath().normalize().resolve("target/demo-of-tests");

    private DemoOnce() {}

    /** A bench in a folder that knows the demo data; without them the test is skipped. */
    public static Bench bench(Path folder) {
        Path data = BASE.resolve("demo-data");
        assumeThat(data).isDirectory();
        return new Bench(folder).withDemoData(data);
    }

    /**
     * @param folder that of the bench, in which the demo then lies under {@code demo}
     * @return what {@code demo --json} printed, with the paths of the copy
     */
    public static JsonNode in(Path folder) throws IOException {
        Files.createDirectories(KEPT);
        try (FileChannel lock =
                FileChannel.open(KEPT.resolve("lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
            lock.lock();
            Path made = KEPT.resolve(build());
            if (!Files.exists(made.resolve("demo.json"))) {
                Files.createDirectories(made);
                Bench.Outcome outcome = bench(made)
                        .run("demo", made.resolve("demo").toString(), "--json")
                        .done();
                Files.writeString(made.resolve("demo.json"), outcome.out());
            }
            copy(made, folder);
            String printed = Files.readString(made.resolve("demo.json"));
            return new ObjectMapper().readTree(printed.replace(made.toString(), folder.toString()));
        }
    }

    /** Names the process that started this one, so that the demo of an older program is not taken for today's. */
    private static String build() {
        return ProcessHandle.current()
                .parent()
                .map(parent -> parent.pid() + "-"
                        + parent.info().startInstant().map(Object::toString).orElse(""))
                .orElse("alone")
                .replace(':', '-');
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> all = Files.walk(from)) {
            for (Path each : all.toList()) {
                Path target = to.resolve(from.relativize(each).toString());
                if (!Files.isDirectory(each)) {
                    Files.copy(each, target);
                } else {
                    Files.createDirectories(target);
                }
            }
        }
    }
}
