package quarterlight.draw;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.body.BodyStyle;
import quarterlight.table.ZoneTable;

/** Writes {@code diagrams/<style>.svg} for every style from the drawing data in {@code diagrams/curves}. */
public final class DrawDiagrams {
    private static final System.Logger LOG = System.getLogger(DrawDiagrams.class.getName());
    private final Path diagrams;
    private final ZoneCatalog catalog;

    /**
     * A diagram as SVG text, and what a person who changes it should look at (nothing in a finished drawing).
     */
    public record Drawn(String svg, List<String> remarks) {
        public Drawn {
            remarks = List.copyOf(remarks);
        }
    }

    /** @param diagrams the folder {@code diagrams} of the project */
    public DrawDiagrams(Path diagrams, ZoneCatalog catalog) {
        this.diagrams = diagrams;
        this.catalog = catalog;
    }

    /**
     * Arguments: folder of the project (default: the current one), then styles (default: all).
     *
     * @throws DrawingFault if drawing data cannot be read
     */
    public static void main(String[] arguments) throws IOException {
        Path base = Path.of(arguments.length > 0 ? arguments[0] : ".");
        List<String> wanted = List.of(arguments).subList(Math.min(1, arguments.length), arguments.length);
        DrawDiagrams all = new DrawDiagrams(base.resolve("diagrams"), ZoneTable.load());
        for (BodyStyle style : BodyStyle.values()) {
            if (wanted.isEmpty() || wanted.contains(style.word())) {
                Drawn drawn = all.draw(style);
                Files.writeString(all.target(style), drawn.svg());
                drawn.remarks().forEach(remark -> LOG.log(System.Logger.Level.WARNING, style.word() + " " + remark));
            }
        }
    }

    public Path target(BodyStyle style) {
        return diagrams.resolve(style.word() + ".svg");
    }

    /**
     * The diagram of a style.
     *
     * @throws DrawingFault if drawing data cannot be read
     */
    public Drawn draw(BodyStyle style) {
        DrawingScript script = new DrawingScript(this::lines, catalog, style);
        script.read(style.word() + ".draw");
        List<String> remarks =
                script.views().stream().flatMap(view -> view.remarks().stream()).toList();
        return new Drawn(new SheetText(style, script).of(script.views()), remarks);
    }

    private List<String> lines(String file) {
        try {
            return Files.readAllLines(diagrams.resolve("curves").resolve(file));
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read drawing data " + file, e);
        }
    }
}
