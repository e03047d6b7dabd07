package quarterlight.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import quarterlight.diagram.BodyDiagram;
import quarterlight.diagram.DiagramFile;
import quarterlight.diagram.DiagramRefused;
import quarterlight.diagram.NominalAreas;
import quarterlight.findings.Findings;
import quarterlight.page.Paper;
import quarterlight.page.VisitPages;
import quarterlight.photo.PictureUnreadable;
import quarterlight.photo.Pictures;
import quarterlight.store.VisitProblem;
import quarterlight.table.JsonObject;
import quarterlight.task.Progress;
import quarterlight.units.Worded;
import quarterlight.visit.Photo;
import quarterlight.visit.PhotoFile;
import quarterlight.visit.PhotoId;
import quarterlight.visit.VisitRecord;

/** {@code pages}: the annotated diagram page, as SVG and as PDF. */
final class PagesVerb implements Verb {
    private final Surroundings around;

    PagesVerb(Surroundings around) {
        this.around = around;
    }

    @Override
    public CommandSpec spec() {
        return Words.verb("pages", "the annotated diagram page as SVG and PDF")
                .addPositional(Words.visit())
                .addOption(Words.text("--paper", "PAPER", "a4 or letter; a4 unless given"))
                .addOption(Words.pathOption("--out", "FOLDER", "where to; pages/ of the visit unless given"))
                .addOption(Words.json());
    }

    @Override
    public int run(ParseResult call) throws CallRefused, VisitProblem, IOException {
        String word = call.matchedOptionValue("--paper", Paper.A4.word());
        Paper paper = Worded.find(Paper.class, word)
                .orElseThrow(() -> new CallRefused("there is no paper " + word + ": give --paper "
                        + String.join(" or ", Worded.list(Paper.class))));
        Path visit = Words.pathAt(call, 0);
        VisitRecord record = Visits.read(visit);
        BodyDiagram diagram;
        try {
            diagram = DiagramFile.shipped(record.facts().car().body());
        } catch (DiagramRefused e) {
            throw new CallRefused(e.getMessage());
        }
        Findings car = Findings.of(
                record,
                around.zones().get(),
                NominalAreas.of(diagram, record.facts().car().dimensions()));
        Path folder = call.matchedOptionValue("--out", visit.resolve("pages"));
        Map<PhotoId, PhotoFile> files = new HashMap<>();
        for (Photo photo : record.photos()) {
            files.put(photo.id(), photo.file());
        }
        Pictures pictures = Pictures.usual();
        List<Path> made = new VisitPages(car, diagram, id -> thumbnail(pictures, visit, files.get(id)))
                .write(folder, paper, Progress.NONE);
        List<String> names = made.stream().map(Path::toString).toList();
        around.console()
                .print(
                        Words.isJson(call)
                                ? new JsonObject().put("made", names).text()
                                : String.join("\n", names) + "\n");
        return Exit.DONE;
    }

    /** Empty for a file that cannot be shown. */
    private static Optional<byte[]> thumbnail(Pictures pictures, Path visit, PhotoFile file) {
        try {
            return Optional.of(Pictures.jpeg(pictures.upright(visit, file, Pictures.THUMBNAIL)));
        } catch (PictureUnreadable e) {
            return Optional.empty();
        }
    }
}
