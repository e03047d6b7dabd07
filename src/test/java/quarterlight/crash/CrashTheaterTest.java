package quarterlight.crash;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.cli.Bench;
import quarterlight.cli.TestPhotos;
import quarterlight.crash.CrashDisk.Cut;
import quarterlight.crash.Step.Kind;
import quarterlight.file.Leftovers;
import quarterlight.visit.VisitRecord;

/**
 * Cuts the power after every change that a verb makes to the disk, and looks at what may be there then. See {@code docs/testing.md} for what
 * this proves and what it does not. Every cut is looked at with {@code -Dquarterlight.theater=all}; else the last ones and a spread of the
 * rest.
 */
@Timeout(900)
class CrashTheaterTest {
    private static final boolean ALL = "all".equals(System.getProperty("quarterlight.theater"));
    private static final int USUAL_CUTS = 8;
    private static final Path SCHEMAS =
            Path.of(System.getProperty("quarterlight.basedir", ".")).resolve("src/test/resources/quarterlight/store");

    /** A world with one visit, made once. */
    @TempDir
    static Path made;

    @TempDir
    Path folder;

    private Path world;
    private Path visit;

    @BeforeEach
    void worldWithOneVisit() throws Exception {
        assumeTrue(Recording.isPossible(), "needs strace, to record what the program asks of the disk");
        Files.createDirectories(folder.resolve("scratch"));
        Path first = made.resolve("world");
        if (!Files.exists(first)) {
            world = Files.createDirectories(first);
            Files.createDirectories(world.resolve("home/.quarterlight"));
            run("new", world.resolve("v").toString(), "--car", "Any", "--style", "coupe", "--year", "1970");
        }
        world = Reopened.copied(first, folder.toRealPath().resolve("world"));
        visit = world.resolve("v");
    }

    /** In this process, with the home of the recorded ones: what comes before a recording is not cut. */
    private void run(String... arguments) {
        Bench.Outcome outcome = new Bench(world.resolve("home/.quarterlight")).run(arguments);
        assertThat(outcome.status()).as(outcome.err()).isZero();
    }

    private Path card(int photos) throws IOException {
        Path card = Files.createDirectories(folder.toRealPath().resolve("card"));
        for (int i = 0; i < photos; i++) {
            TestPhotos.write(card.resolve("IMG_" + i + ".JPG"), i + 1, "2026:02:28 10:00:0" + i);
        }
        return card;
    }

    private Path table(String text) throws IOException {
        return Files.writeString(folder.resolve("table.csv"), text);
    }

    /** Looks at what is there after a cut. */
    private interface Look {
        void at(Path image, boolean acknowledged) throws IOException;
    }

    @Test
    void newMakesAWholeVisitOrNone() throws Exception {
        Path other = world.resolve("w");
        CrashDisk disk = new CrashDisk(world);
        Recording.Run run = recorded("new", other.toString(), "--car", "Other", "--style", "wagon");
        VisitRecord after = Reopened.visit(other, world.resolve("home"));
        cut(disk, run, (image, acknowledged) -> {
            if (acknowledged || Files.exists(image.resolve("w"))) {
                assertThat(Reopened.visit(image.resolve("w"), image.resolve("home")))
                        .isEqualTo(after);
            }
        });
    }

    @Test
    void setChangesAllOrNothing() throws Exception {
        changes("set", visit.toString(), "odometer=12345", "inspector=Q");
    }

    @Test
    void addAddsAllOrNothing() throws Exception {
        changes(
                "add",
                "readings",
                visit.toString(),
                table("zone,value,unit\nhood,4.1,mil\nhood,4.2,mil\nroof,100,um\n")
                        .toString());
    }

    @Test
    void clockChangesAllOrNothing() throws Exception {
        run("intake", visit.toString(), card(2).toString());
        changes("clock", visit.toString(), "--camera", "orrin-fieldview", "--shift", "+00:02:00");
    }

    private void changes(String... call) throws Exception {
        VisitRecord before = Reopened.visit(visit, world.resolve("home"));
        CrashDisk disk = new CrashDisk(world);
        Recording.Run run = recorded(call);
        VisitRecord after = Reopened.visit(visit, world.resolve("home"));
        assertThat(after).isNotEqualTo(before);
        cut(disk, run, (image, acknowledged) -> {
            VisitRecord found = Reopened.visit(image.resolve("v"), image.resolve("home"));
            assertThat(found).isIn(acknowledged ? List.of(after) : List.of(before, after));
        });
    }

    @Test
    void intakeNamesNoOriginalThatIsNotThere() throws Exception {
        Path card = card(5);
        CrashDisk disk = new CrashDisk(world);
        Recording.Run run = recorded("intake", visit.toString(), card.toString());
        VisitRecord after = Reopened.visit(visit, world.resolve("home"));
        assertThat(after.photos()).hasSize(5);
        cut(disk, run, (image, acknowledged) -> {
            VisitRecord found = Reopened.visit(image.resolve("v"), image.resolve("home"));
            if (acknowledged) {
                assertThat(found).isEqualTo(after);
            }
        });
    }

    @Test
    void anUpgradeKeepsAWholeCopyFirst() throws Exception {
        Path old = Files.createDirectories(world.resolve("old"));
        Files.copy(SCHEMAS.resolve("schema-0001.db"), old.resolve("visit.db"), StandardCopyOption.REPLACE_EXISTING);
        CrashDisk disk = new CrashDisk(world);
        Recording.Run run = recorded("set", old.toString(), "inspector=Q");
        Map<String, byte[]> copy = Reopened.files(old.resolve("visit-schema-1.db"));
        assertThat(copy).isNotEmpty();
        cut(disk, run, (image, acknowledged) -> {
            Path kept = image.resolve("old/visit-schema-1.db");
            if (acknowledged || Files.exists(kept)) {
                Reopened.assertSame(Reopened.files(kept), copy);
            } else {
                assertThat(Files.readAllBytes(image.resolve("old/visit.db")))
                        .as("untouched until the copy lasts")
                        .isEqualTo(Files.readAllBytes(SCHEMAS.resolve("schema-0001.db")));
            }
            try (quarterlight.store.VisitStore store =
                    quarterlight.store.VisitStore.openForEditing(image.resolve("old"), java.time.Clock.systemUTC())) {
                String inspector = store.read().facts().inspector().orElse("");
                assertThat(quarterlight.store.StoreAudit.of(store)).isEmpty();
                if (acknowledged) {
                    assertThat(inspector).isEqualTo("Q");
                }
            } catch (quarterlight.store.problem.VisitProblem e) {
                throw new AssertionError(e);
            }
        });
    }

    @Test
    void pagesAreTheOldOrTheNewOnes() throws Exception {
        run("pages", visit.toString());
        Map<String, byte[]> before = Reopened.files(visit.resolve("pages"));
        run("set", visit.toString(), "client=Somebody else", "odometer=4711");
        CrashDisk disk = new CrashDisk(world);
        Recording.Run run = recorded("pages", visit.toString());
        replaced(disk, run, "v/pages", before);
    }

    @Test
    void comparedPagesAreTheOldOrTheNewOnes() throws Exception {
        Path other = world.resolve("w");
        run("new", other.toString(), "--car", "Other", "--style", "coupe");
        CrashDisk disk = new CrashDisk(world);
        Recording.Run run = recorded(
                "compare",
                visit.toString(),
                other.toString(),
                "--out",
                world.resolve("out").toString());
        replaced(disk, run, "out", Map.of());
    }

    private void replaced(CrashDisk disk, Recording.Run run, String place, Map<String, byte[]> before)
            throws Exception {
        Map<String, byte[]> after = Reopened.files(world.resolve(place));
        assertThat(after).isNotEmpty();
        cut(disk, run, (image, acknowledged) -> {
            Leftovers.clear(image.resolve(place));
            Map<String, byte[]> found = Reopened.files(image.resolve(place));
            if (acknowledged) {
                Reopened.assertSame(found, after);
            } else {
                found.forEach((name, bytes) -> assertThat(List.of(
                                before.getOrDefault(name, new byte[] {1}), after.getOrDefault(name, new byte[] {1})))
                        .as(name)
                        .anyMatch(whole -> java.util.Arrays.equals(whole, bytes)));
                assertThat(found.keySet()).containsAll(before.keySet());
            }
        });
    }

    @Test
    void anExportIsWholeOrNotThere() throws Exception {
        CrashDisk disk = new CrashDisk(world);
        Recording.Run run =
                recorded("export", visit.toString(), world.resolve("x").toString());
        whole(disk, run, "x");
    }

    @Test
    void anArchiveIsWholeOrNotThere() throws Exception {
        run("intake", visit.toString(), card(2).toString());
        CrashDisk disk = new CrashDisk(world);
        Recording.Run run =
                recorded("archive", visit.toString(), world.resolve("a.zip").toString());
        whole(disk, run, "a.zip");
    }

    @Test
    void aRestoredVisitIsWholeOrNotThere() throws Exception {
        run("intake", visit.toString(), card(2).toString());
        run("archive", visit.toString(), world.resolve("a.zip").toString());
        CrashDisk disk = new CrashDisk(world);
        Recording.Run run = recorded(
                "restore", world.resolve("a.zip").toString(), world.resolve("r").toString());
        whole(disk, run, "r");
    }

    @Test
    void aListOfOnesOwnIsTheOldOrTheNewOne() throws Exception {
        Path list = folder.resolve("walk.csv");
        Files.writeString(list, "zone\nhood\nroof\n");
        CrashDisk disk = new CrashDisk(world);
        Recording.Run run = recorded("lists", "walk", "--take", list.toString());
        replaced(disk, run, "home/.quarterlight", Reopened.files(world.resolve("none")));
    }

    private void whole(CrashDisk disk, Recording.Run run, String target) throws Exception {
        Map<String, byte[]> after = Reopened.files(world.resolve(target));
        assertThat(after).isNotEmpty();
        cut(disk, run, (image, acknowledged) -> {
            if (acknowledged || Files.exists(image.resolve(target))) {
                Reopened.assertSame(Reopened.files(image.resolve(target)), after);
            }
            Leftovers.clear(image);
            assertThat(Reopened.leftovers(image)).as("gone at the next start").isEmpty();
        });
    }

    private Recording.Run recorded(String... call) throws Exception {
        Recording.Run run = Recording.of(world, folder.resolve("scratch"), call);
        assertThat(run.status()).as(run.err()).isZero();
        assertThat(run.steps()).as("a recording that says something").anyMatch(step -> step.kind() == Kind.SAY);
        assertThat(run.steps()).anyMatch(step -> step.kind() == Kind.FORCE);
        return run;
    }

    /** Looks at every image that a cut after any of the steps can leave, each once. */
    private void cut(CrashDisk disk, Recording.Run run, Look look) throws Exception {
        Set<String> seen = new HashSet<>();
        List<Integer> wanted = wanted(run.steps());
        boolean acknowledged = false;
        int looked = 0;
        for (int i = 0; i < run.steps().size(); i++) {
            Step step = run.steps().get(i);
            disk.apply(step);
            acknowledged |= step.kind() == Kind.SAY;
            if (!wanted.contains(i)) {
                continue;
            }
            for (Cut cut : Cut.values()) {
                if (seen.add(cut + " " + acknowledged + " " + disk.signature(cut))) {
                    Path image = folder.resolve("image-" + looked++);
                    disk.image(cut, image);
                    try {
                        look.at(image, acknowledged);
                    } catch (AssertionError e) {
                        throw new AssertionError(
                                "cut (" + cut + ", acknowledged " + acknowledged + ") after step " + i + " of "
                                        + run.steps().size() + ", " + step + ": " + e.getMessage(),
                                e);
                    }
                    Leftovers.delete(image);
                }
            }
        }
        assertThat(acknowledged).isTrue();
        System.getLogger(getClass().getName())
                .log(System.Logger.Level.INFO, run.steps().size() + " steps, " + looked + " images");
    }

    /** Which steps to cut after: what comes with the word that all is done and after it, renames, and a spread of the rest. */
    private static List<Integer> wanted(List<Step> steps) {
        List<Integer> wanted = new ArrayList<>();
        int stride = ALL ? 1 : Math.max(1, steps.size() / USUAL_CUTS);
        for (int i = 0; i < steps.size(); i++) {
            Kind kind = steps.get(i).kind();
            if (i % stride == 0 || kind == Kind.SAY || kind == Kind.RENAME || i == steps.size() - 1) {
                wanted.add(i);
            }
        }
        return wanted;
    }
}
