package quarterlight;

import java.io.PrintStream;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.stream.Stream;
import quarterlight.cli.LogFile;
import quarterlight.cli.Program;
import quarterlight.cli.call.CliContext;
import quarterlight.cli.text.Console;
import quarterlight.cli.text.StandardInput;
import quarterlight.cli.text.StatusLine;
import quarterlight.diagram.NominalAreas;
import quarterlight.diagram.file.DiagramRefused;
import quarterlight.diagram.file.VisitDiagram;
import quarterlight.edit.fact.DiagramEdits;
import quarterlight.finish.place.ZoneSizes;
import quarterlight.store.folder.VisitFile;
import quarterlight.table.ZoneTable;
import quarterlight.ui.Desktop;
import quarterlight.ui.DesktopPreloader;
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
        CliContext around = new CliContext(
                console,
                Clock.system(java.time.ZoneId.systemDefault()),
                ZoneTable::load,
                Main::areas,
                Main::demoData,
                new CliContext.Desk() {
                    @Override
                    public boolean open(Optional<Path> visit) {
                        return desktop(desk, log).open(visit);
                    }

                    @Override
                    public boolean rehearse(Path visit) {
                        return desktop(desk, log).rehearse(visit);
                    }
                },
                log.path(),
                settings.resolve(DiagramEdits.OWN));
        int status = new Program(around).run(args);
        console.out().flush();
        System.exit(status);
    }

    private static Desktop desktop(DesktopPreloader readiness, LogFile log) {
        return new Desktop(
                Clock.system(java.time.ZoneId.systemDefault()), ZoneTable::load, Main::areas, readiness, log.path());
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
