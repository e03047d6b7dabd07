package quarterlight;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import quarterlight.cli.LogFile;
import quarterlight.cli.Program;
import quarterlight.cli.call.CallRefused;
import quarterlight.cli.call.CliContext;
import quarterlight.cli.demo.DemoVisits;
import quarterlight.cli.text.Console;
import quarterlight.cli.text.StandardInput;
import quarterlight.cli.text.StatusLine;
import quarterlight.diagram.NominalAreas;
import quarterlight.diagram.file.DiagramRefused;
import quarterlight.diagram.file.VisitDiagram;
import quarterlight.edit.EditRefused;
import quarterlight.edit.fact.DiagramEdits;
import quarterlight.finish.place.ZoneSizes;
import quarterlight.store.folder.VisitFile;
import quarterlight.store.problem.VisitProblem;
import quarterlight.table.ZoneTable;
import quarterlight.task.Progress;
import quarterlight.ui.Desktop;
import quarterlight.ui.DesktopPreloader;
import quarterlight.ui.start.SampleVisits;
import quarterlight.visit.VisitFacts;

/** Reads the arguments, builds the objects, and hands over to the command line or the desktop. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        Path settings = Path.of(System.getProperty("user.home"), ".quarterlight");
        DesktopPreloader desk = new DesktopPreloader(settings);
        if (args.length == 0 || args[0].equals("desk") || VisitFile.isOne(args[0])) {
            desk.begin();
        }
        LogFile log = LogFile.install(settings);
        PrintStream err = new PrintStream(System.err, true, StandardCharsets.UTF_8);
        Console console = new Console(
                new PrintStream(System.out, false, StandardCharsets.UTF_8),
                err,
                new StandardInput(System.in),
                StatusLine.ofThisProcess(err));
        CliContext around = around(console, new Window(desk, log), log, settings);
        int status = new Program(around).run(args);
        console.out().flush();
        System.exit(status);
    }

    private static CliContext around(Console console, CliContext.Desk desk, LogFile log, Path settings) {
        return new CliContext(
                console,
                Clock.system(java.time.ZoneId.systemDefault()),
                ZoneTable::load,
                Main::areas,
                Main::demoData,
                desk,
                log.path(),
                settings.resolve(DiagramEdits.OWN));
    }

    /** The desktop, as the command line knows it. */
    private record Window(DesktopPreloader readiness, LogFile log) implements CliContext.Desk {
        @Override
        public boolean open(Optional<Path> visit) {
            return desktop().open(visit);
        }

        @Override
        public boolean rehearse(Path visit) {
            return desktop().rehearse(visit);
        }

        private Desktop desktop() {
            return new Desktop(
                    Clock.system(java.time.ZoneId.systemDefault()),
                    ZoneTable::load,
                    Main::areas,
                    readiness,
                    new Samples(log),
                    log.path());
        }
    }

    /** The demo visits, as the window knows them: built by the same code as {@code demo}, without a console. */
    private record Samples(LogFile log) implements SampleVisits {
        @Override
        public Path folder() {
            return Path.of(System.getProperty("user.home"), "Quarterlight samples");
        }

        @Override
        public List<Path> make(Progress progress) throws EditRefused, VisitProblem, IOException {
            PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
            Console silent =
                    new Console(nowhere, nowhere, new StandardInput(InputStream.nullInputStream()), StatusLine.none());
            Path settings = log.path().toAbsolutePath().getParent();
            try {
                return new DemoVisits(around(silent, visit -> false, log, settings))
                        .in(folder(), progress).stream()
                                .map(DemoVisits.Made::visit)
                                .toList();
            } catch (CallRefused e) {
                throw new IOException(e.getMessage(), e);
            }
        }
    }

    /** Nominal areas from the diagram of the visit; none if it cannot be used. */
    private static ZoneSizes areas(Path folder, VisitFacts facts) {
        try {
            return NominalAreas.sizes(
                    VisitDiagram.of(folder, facts), facts.car().dimensions());
        } catch (DiagramRefused e) {
            System.getLogger(Main.class.getName()).log(System.Logger.Level.WARNING, e.getMessage(), e);
            return ZoneSizes.NONE;
        }
    }

    /** The demo data beside the program or where it was built, else in the working folder. */
    private static Optional<Path> demoData() {
        return Stream.concat(besideTheProgram(), Stream.of(Path.of("")))
                .map(folder -> folder.resolve("demo-data"))
                .filter(Files::isDirectory)
                .findFirst();
    }

    private static Stream<Path> besideTheProgram() {
        try {
            Path program = Path.of(Main.class
                    .getProtectionDomain()
                    .getCodeSource()
                    .getLocation()
                    .toURI());
            return Stream.iterate(program.getParent(), folder -> folder != null, Path::getParent)
                    .limit(2);
        } catch (URISyntaxException e) {
            return Stream.empty();
        }
    }
}
