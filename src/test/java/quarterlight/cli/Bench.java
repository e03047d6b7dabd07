package quarterlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import quarterlight.car.View;
import quarterlight.cli.call.CliContext;
import quarterlight.cli.call.Exit;
import quarterlight.cli.text.Console;
import quarterlight.cli.text.StandardInput;
import quarterlight.cli.text.StatusLine;
import quarterlight.finish.place.PanelOutline;
import quarterlight.finish.place.ZoneSizes;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitProblem;
import quarterlight.table.VisitFixture;
import quarterlight.table.ZoneTable;
import quarterlight.units.Area;
import quarterlight.visit.VisitFacts;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.row.RecordKind;

/** Runs verbs in this process on visits in a temporary folder, and keeps what they printed. */
public final class Bench {
    public static final Clock CLOCK = Clock.fixed(Instant.parse("2026-05-02T18:00:00Z"), ZoneId.of("America/Denver"));

    private final Path folder;
    private final List<Optional<Path>> opened = new ArrayList<>();

    private final Optional<Path> demoData;
    private final Runnable during;

    public Bench(Path folder) {
        this(folder, Optional.empty(), () -> {});
    }

    private Bench(Path folder, Optional<Path> demoData, Runnable during) {
        this.folder = folder;
        this.demoData = demoData;
        this.during = during;
    }

    public Bench withDemoData(Path data) {
        return new Bench(folder, Optional.of(data), during);
    }

    /** The same with something that happens while a verb is at work, whenever it asks for the table of zones. */
    Bench during(Runnable event) {
        return new Bench(folder, demoData, event);
    }

    /** What a call gave. */
    public record Outcome(int status, String out, String err) {
        /** The one document on standard output; fails if there is more or less. */
        public JsonNode json() {
            ObjectMapper mapper = new ObjectMapper();
            try (JsonParser parser = mapper.createParser(out)) {
                JsonNode document = mapper.readTree(parser);
                assertThat(parser.nextToken()).as("nothing after the document").isNull();
                return document;
            } catch (IOException e) {
                throw new AssertionError(out, e);
            }
        }

        /** Fails unless standard error is exactly one line that a person can read. */
        public Outcome complains(int wanted, String... parts) {
            assertThat(status).as(err).isEqualTo(wanted);
            assertThat(err.lines().toList()).as(err).hasSize(1);
            assertThat(err).contains(parts).doesNotContain("Exception", "\tat ", "null");
            return this;
        }

        public Outcome done() {
            assertThat(err).isEmpty();
            assertThat(status).isEqualTo(Exit.DONE);
            return this;
        }
    }

    public Outcome run(String... args) {
        return runWith(new byte[0], args);
    }

    /** The same, with something on standard input. */
    public Outcome runWith(byte[] input, String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Console console = new Console(
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                new StandardInput(new ByteArrayInputStream(input)),
                StatusLine.none());
        int status = new Program(around(console)).run(args);
        return new Outcome(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    /** What verbs need, with a console on which nothing is seen. */
    public CliContext around() {
        PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
        return around(
                new Console(nowhere, nowhere, new StandardInput(InputStream.nullInputStream()), StatusLine.none()));
    }

    private CliContext around(Console console) {
        return new CliContext(
                console,
                CLOCK,
                () -> {
                    during.run();
                    return ZoneTable.load();
                },
                Bench::areas,
                () -> demoData,
                visit -> opened.add(visit),
                folder.resolve("quarterlight.log"),
                folder.resolve("settings/diagrams"));
    }

    /** A square metre for the hood and the roof, nothing for the rest; the hood is a square in a view from above of 4 by 2 m. */
    private static ZoneSizes areas(Path visit, VisitFacts facts) {
        quarterlight.car.ZoneId hood = new quarterlight.car.ZoneId("hood");
        return new ZoneSizes(
                Map.of(hood, new Area(1e6), new quarterlight.car.ZoneId("roof"), new Area(1e6)),
                Map.of(
                        hood,
                        new PanelOutline(
                                View.TOP,
                                4000,
                                2000,
                                new GeometryFactory().toGeometry(new Envelope(1000, 2000, 500, 1500)))));
    }

    /** A visit with the usual photos and pins of {@link VisitFixture}. */
    public String visit() {
        Path path = folder.resolve("visit");
        VisitRecord record = VisitFixture.usual().record();
        try (VisitStore store = VisitStore.create(path, record.facts(), CLOCK)) {
            store.change("fill", tx -> {
                record.photos().forEach(photo -> tx.addPhoto(photo.file()));
                record.pins().forEach(pin -> tx.add(RecordKind.PINS, pin.value()));
            });
        } catch (VisitProblem e) {
            throw new AssertionError(e);
        }
        return path.toString();
    }

    /** All that the visit holds, its edit log, and the names of its files, as text to compare. */
    public String state(String visit) {
        try (VisitStore store = VisitStore.openForReading(Path.of(visit));
                Stream<Path> files = Files.list(Path.of(visit))) {
            return store.read() + "\n" + store.editLog() + "\n"
                    + files.map(file -> file.getFileName().toString())
                            .filter(name -> !name.startsWith("visit.") && !name.equals("lists"))
                            .sorted()
                            .toList();
        } catch (VisitProblem | IOException e) {
            throw new AssertionError(e);
        }
    }

    /** A path that nothing is at yet. */
    public String folder(String name) {
        return folder.resolve(name).toString();
    }

    public String file(String name, String text) {
        try {
            return Files.writeString(folder.resolve(name), text).toString();
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    List<Optional<Path>> opened() {
        return opened;
    }
}
