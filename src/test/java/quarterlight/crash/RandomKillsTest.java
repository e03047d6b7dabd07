package quarterlight.crash;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.OwnProcess;
import quarterlight.archive.BagCheck;
import quarterlight.archive.BagFile;
import quarterlight.archive.BagRefused;
import quarterlight.cli.Bench;
import quarterlight.cli.TestPhotos;
import quarterlight.file.Leftovers;
import quarterlight.task.Progress;
import quarterlight.ui.kit.WindowEdits;
import quarterlight.visit.VisitRecord;

/**
 * Kills the program at random moments of every verb that writes, and of edits as the window does them; what is there then must be whole, and
 * what was told must last. More with {@code -Dquarterlight.kills=200}, others with {@code -Dquarterlight.seed=N}.
 */
@Timeout(7200)
class RandomKillsTest {
    /** Every third verb; thirteen kills come to all. */
    private static final int KILLS = Integer.getInteger("quarterlight.kills", 4);

    private static final long SEED = Long.getLong("quarterlight.seed", 17);
    private static final int PHOTOS = 6;
    /** Each sooner than the one before, if the program was done when the kill came. */
    private static final int ATTEMPTS = 5;

    @TempDir
    Path folder;

    private Path template;
    private Path home;
    private VisitRecord before;
    private final Map<String, Long> tookMs = new TreeMap<>();
    /** The list of the walk as it is once it was taken. */
    private String takenList = "";

    /** A call, what it makes beside the visit if anything, and whether it changes the visit. */
    private record Verb(String name, List<String> call, String made) {}

    @BeforeEach
    void visitWithPhotosAndRows() throws Exception {
        folder = folder.toRealPath();
        home = Files.createDirectories(folder.resolve("home"));
        template = Files.createDirectories(folder.resolve("template"));
        for (int i = 0; i < PHOTOS; i++) {
            TestPhotos.write(folder.resolve("card/IMG_" + i + ".JPG"), i + 1, "2026:02:28 10:00:0" + i);
            TestPhotos.write(folder.resolve("second/DSC_" + i + ".JPG"), i + 50, "2026:02:28 11:00:0" + i);
        }
        Files.writeString(folder.resolve("readings.csv"), "zone,value,unit\nhood,4.1,mil\nroof,4.4,mil\n");
        Files.writeString(folder.resolve("walk.csv"), "zone\nhood\nroof\n");
        String visit = template.resolve("v").toString();
        toTheEnd("new", template.resolve("w").toString(), "--car", "Another", "--style", "coupe", "--year", "1970");
        toTheEnd("new", visit, "--car", "Any", "--style", "coupe", "--year", "1970");
        toTheEnd("intake", visit, folder.resolve("card").toString());
        toTheEnd("archive", visit, template.resolve("whole.zip").toString());
        before = Reopened.visit(template.resolve("v"), home);
    }

    private List<Verb> verbs(Path world) {
        String visit = world.resolve("v").toString();
        String other = world.resolve("other").toString();
        return List.of(
                new Verb("new", List.of("new", other, "--car", "Other", "--style", "wagon"), "other"),
                new Verb("set", List.of("set", visit, "inspector=Q"), ""),
                new Verb(
                        "intake",
                        List.of("intake", visit, folder.resolve("second").toString()),
                        ""),
                new Verb("clock", List.of("clock", visit, "--camera", "orrin-fieldview", "--shift", "+00:02:00"), ""),
                new Verb(
                        "add",
                        List.of(
                                "add",
                                "readings",
                                visit,
                                folder.resolve("readings.csv").toString()),
                        ""),
                new Verb("pages", List.of("pages", visit), ""),
                new Verb("export", List.of("export", visit, other), "other"),
                new Verb("archive", List.of("archive", visit, other + ".zip"), "other.zip"),
                new Verb(
                        "restore", List.of("restore", world.resolve("whole.zip").toString(), other), "other"),
                new Verb("compare", List.of("compare", visit, world.resolve("w").toString(), "--out", other), "other"),
                new Verb(
                        "lists",
                        List.of(
                                "lists",
                                "walk",
                                "--take",
                                folder.resolve("walk.csv").toString()),
                        ""),
                new Verb("window", List.of(), ""),
                new Verb("demo", List.of("demo", other), "other"));
    }

    @Test
    void aKillLosesNothingThatWasTold() throws Exception {
        int inTheMiddle = 0;
        for (int n = 0; n < KILLS; n++) {
            Random random = new Random(SEED * 1_000_003 + n);
            boolean running = false;
            for (int attempt = 0; !running && attempt < ATTEMPTS; attempt++) {
                running = killed(n, Math.pow(0.5, attempt) * (0.3 + 0.7 * random.nextDouble()));
            }
            inTheMiddle += running ? 1 : 0;
        }
        assertThat(inTheMiddle)
                .as("processes that were killed before their end")
                .isGreaterThan(KILLS / 2);
    }

    private boolean killed(int n, double share) throws Exception {
        Path world = copied("world-" + n);
        List<Verb> verbs = verbs(world);
        Verb verb = verbs.get((2 + 3 * n) % verbs.size());
        try {
            return killed(verb, world, share);
        } catch (AssertionError | IOException e) {
            throw new AssertionError("seed " + SEED + ", kill " + n + ", of " + verb.name() + ": " + e.getMessage(), e);
        } finally {
            Leftovers.delete(world);
        }
    }

    /**
     * Kills it after a share of the time that its last whole run took; how fast a computer is changes from run to run.
     *
     * @return whether it was still running
     */
    private boolean killed(Verb verb, Path world, double share) throws Exception {
        if (!tookMs.containsKey(verb.name())) {
            Path trial = copied("trial-" + verb.name());
            Verb same = verbs(trial).stream()
                    .filter(each -> each.name().equals(verb.name()))
                    .findFirst()
                    .orElseThrow();
            long start = System.nanoTime();
            Process whole = start(same, trial);
            if (!whole.waitFor(same.call().isEmpty() ? 3 : 120, TimeUnit.SECONDS)) {
                whole.destroyForcibly().waitFor();
            }
            tookMs.put(verb.name(), millisSince(start));
            takenList = verb.name().equals("lists") ? lists(trial) : takenList;
            Leftovers.delete(trial);
        }
        long start = System.nanoTime();
        Process process = start(verb, world);
        boolean ended = process.waitFor((long) (tookMs.get(verb.name()) * share), TimeUnit.MILLISECONDS);
        if (ended) {
            tookMs.put(verb.name(), millisSince(start));
        }
        process.destroyForcibly().waitFor();
        look(verb, world, Files.readString(folder.resolve("out.txt")));
        return !ended;
    }

    private static long millisSince(long start) {
        return TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - start);
    }

    /** The inspector's own list of the walk, empty if there is none. */
    private static String lists(Path world) throws IOException {
        try (Stream<Path> all = Files.walk(listsHome(world))) {
            Optional<Path> list = all.filter(
                            each -> each.getFileName().toString().contains("walk"))
                    .findFirst();
            return list.isPresent() ? Files.readString(list.get()) : "";
        }
    }

    /** A home of its own, since lists are the inspector's and not the visit's. */
    private static Path listsHome(Path world) throws IOException {
        return Files.createDirectories(world.resolve("lists-home"));
    }

    private void look(Verb verb, Path world, String told) throws Exception {
        VisitRecord found = Reopened.visit(world.resolve("v"), home);
        assertThat(found.photos()).hasSizeGreaterThanOrEqualTo(before.photos().size());
        switch (verb.name()) {
            case "set" ->
                assertThat(found.facts().inspector().isPresent() || told.isEmpty())
                        .isTrue();
            case "intake" ->
                assertThat(found.photos()).hasSizeBetween(told.isEmpty() ? PHOTOS : 2 * PHOTOS, 2 * PHOTOS);
            case "add" ->
                assertThat(found.readings())
                        .hasSize(told.isEmpty() && found.readings().isEmpty() ? 0 : 2);
            case "window" ->
                assertThat(found.facts().inspector().map(Integer::parseInt).orElse(0))
                        .as("the last edit that the window showed as saved")
                        .isGreaterThanOrEqualTo((int) told.lines()
                                .filter(line -> line.matches("\\d+"))
                                .count());
            case "lists" ->
                assertThat(lists(world))
                        .satisfiesAnyOf(list -> assertThat(list).isEqualTo(takenList), list -> assertThat(
                                        list.isEmpty() && told.isEmpty())
                                .isTrue());
            default -> assertThat(found.readings()).isEmpty();
        }
        Path made = world.resolve(verb.made());
        if (!verb.made().isEmpty()) {
            assertThat(Files.exists(made) || told.isEmpty()).isTrue();
            if (Files.exists(made)) {
                whole(verb, made);
            }
            Leftovers.clear(world);
            assertThat(Reopened.leftovers(world)).isEmpty();
        }
    }

    private void whole(Verb verb, Path made) throws IOException {
        switch (verb.name()) {
            case "new", "restore" ->
                assertThat(Reopened.visit(made, home).photos())
                        .hasSize(verb.name().equals("new") ? 0 : PHOTOS);
            case "compare" -> wholePages(made);
            case "demo" -> {
                try (Stream<Path> all = Files.list(made)) {
                    for (Path visit : all.filter(each -> Files.exists(each.resolve("visit.db")))
                            .toList()) {
                        assertThat(Reopened.visit(visit, home).photos()).hasSizeGreaterThan(PHOTOS);
                        wholePages(Files.createDirectories(visit.resolve("pages")));
                    }
                }
                wholePages(made);
            }
            case "archive" -> {
                try (BagFile bag = BagFile.open(made)) {
                    BagCheck check = bag.check(BagFile.Unpacking.NONE, Progress.NONE);
                    assertThat(check.firstProblem()).isEmpty();
                } catch (BagRefused e) {
                    throw new AssertionError(e.getMessage(), e);
                }
            }
            default -> assertThat(made.resolve("visit.json")).isNotEmptyFile();
        }
    }

    /** Pages that lie directly in a folder end as their formats end. */
    static void wholePages(Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            for (Path page : all.filter(Files::isRegularFile).toList()) {
                String name = page.getFileName().toString();
                String text =
                        Files.readString(page, StandardCharsets.ISO_8859_1).stripTrailing();
                String ending = name.endsWith(".pdf") ? "%%EOF" : name.endsWith(".svg") ? "</svg>" : "</html>";
                assertThat(text).as(name).endsWith(ending);
            }
        }
    }

    private Path copied(String name) throws IOException {
        return Reopened.copied(template, folder.resolve(name));
    }

    private Process start(Verb verb, Path world) throws IOException {
        List<String> command = verb.call().isEmpty()
                ? OwnProcess.of(WindowEdits.class, home, world.resolve("v").toString())
                : OwnProcess.program(
                        verb.name().equals("lists") ? listsHome(world) : home,
                        verb.call().toArray(String[]::new));
        return new ProcessBuilder(command)
                .redirectOutput(folder.resolve("out.txt").toFile())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
    }

    /** In this process, with the home of those that are killed. */
    private void toTheEnd(String... call) throws IOException {
        Bench.Outcome outcome = new Bench(Files.createDirectories(home.resolve(".quarterlight"))).run(call);
        assertThat(outcome.status()).as(outcome.err()).isZero();
    }
}
