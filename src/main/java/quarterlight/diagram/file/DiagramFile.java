package quarterlight.diagram.file;

import java.awt.geom.AffineTransform;
import java.io.IOException;
import java.io.InputStream;
import java.lang.ref.SoftReference;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.body.Body;
import quarterlight.car.body.BodyStyle;
import quarterlight.car.body.DriveSide;
import quarterlight.diagram.BodyDiagram;
import quarterlight.diagram.StyleSize;
import quarterlight.diagram.ViewDrawing;
import quarterlight.file.PlainFile;

/**
 * A body diagram file of one style with the shapes of every variant, as read. Immutable.
 *
 * @param name name of the file, for messages
 * @param views its views in the order of {@link quarterlight.car.View}, all variants' shapes in them
 */
public record DiagramFile(String name, BodyStyle style, StyleSize size, List<ViewDrawing> views) {
    public DiagramFile {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(style, "style");
        Objects.requireNonNull(size, "size");
        views = List.copyOf(views);
    }

    /** Read once as long as there is memory: what opens or makes pages of a visit asks several times. */
    private static final Map<BodyStyle, SoftReference<DiagramFile>> SHIPPED = new ConcurrentHashMap<>();

    /** The largest file that is read, bytes. */
    public static final int MAX_BYTES = 8 * 1024 * 1024;

    /**
     * The diagram of a body that the program carries.
     *
     * @throws DiagramRefused if the program has none of this style or it is broken
     */
    public static BodyDiagram shipped(Body body) throws DiagramRefused {
        return shipped(body.style()).of(body);
    }

    /** The file of a style that the program carries, with all variants. */
    public static DiagramFile shipped(BodyStyle style) throws DiagramRefused {
        DiagramFile known =
                SHIPPED.getOrDefault(style, new SoftReference<>(null)).get();
        if (known != null) {
            return known;
        }
        DiagramFile read = readShipped(style);
        SHIPPED.put(style, new SoftReference<>(read));
        return read;
    }

    private static DiagramFile readShipped(BodyStyle style) throws DiagramRefused {
        String name = style.word() + ".svg";
        try (InputStream in = DiagramFile.class.getResourceAsStream("/quarterlight/diagrams/" + name)) {
            if (in == null) {
                throw new DiagramRefused(name, 0, "this build has no diagram of the style", "use one of your own");
            }
            return read(name, in);
        } catch (IOException e) {
            throw new DiagramRefused(name, 0, "it cannot be read (" + e.getMessage() + ")", "try again");
        }
    }

    /**
     * A user's own diagram for a body, if it passes the same checks as the program's.
     *
     * @throws DiagramRefused if it cannot be read, is for another style or lacks something
     */
    public static BodyDiagram own(Path file, Body body, ZoneCatalog catalog) throws DiagramRefused {
        DiagramFile read = read(file).ofStyle(body);
        List<DiagramFinding> findings = DiagramCheck.check(read, catalog);
        if (!findings.isEmpty()) {
            String more = findings.size() > 1 ? " (and " + (findings.size() - 1) + " more)" : "";
            throw new DiagramRefused(
                    read.name(), 0, findings.get(0).text() + more, "`diagram check " + read.name() + "` lists all");
        }
        return read.of(body);
    }

    /** This file, if it is for the style of a body. */
    DiagramFile ofStyle(Body body) throws DiagramRefused {
        if (style != body.style()) {
            throw new DiagramRefused(
                    name,
                    0,
                    "it is a diagram of a " + style.word() + " and the car is a "
                            + body.style().word(),
                    "choose a diagram of that style, or set diagram=shipped");
        }
        return this;
    }

    /** Reads a file without asking whether its zones are complete; {@link DiagramCheck} says that. */
    public static DiagramFile read(Path file) throws DiagramRefused {
        String name = String.valueOf(file.getFileName());
        try {
            PlainFile.requirePlain(file);
            try (InputStream in = Files.newInputStream(file)) {
                return read(name, in);
            }
        } catch (IOException e) {
            throw new DiagramRefused(name, 0, "it cannot be read", "check that the file exists and may be read");
        }
    }

    /** Reads a stream of SVG. */
    public static DiagramFile read(String name, InputStream in) throws DiagramRefused, IOException {
        byte[] bytes = in.readNBytes(MAX_BYTES + 1);
        if (bytes.length > MAX_BYTES) {
            throw new DiagramRefused(
                    name, 0, "it is larger than " + MAX_BYTES / 1024 / 1024 + " MB", "leave out what is not drawing");
        }
        return new DiagramReader(name).read(bytes);
    }

    /** The diagram of one variant with the driver on the left. */
    public BodyDiagram of(Body body) {
        return of(body, DriveSide.LEFT);
    }

    /**
     * The diagram of one variant. For a driver on the right what lies on the driver's side is mirrored over the middle of its view.
     *
     * @throws IllegalArgumentException if the body is of another style
     */
    public BodyDiagram of(Body body, DriveSide drive) {
        if (body.style() != style) {
            throw new IllegalArgumentException(
                    name + " is a " + style.word() + ", not a " + body.style().word());
        }
        List<ViewDrawing> chosen = new ArrayList<>();
        for (ViewDrawing view : views) {
            chosen.add(new ViewDrawing(
                    view.view(),
                    view.title(),
                    view.widthMm(),
                    view.heightMm(),
                    view.shapes().stream()
                            .filter(shape -> shape.belongsTo(body))
                            .map(shape ->
                                    shape.driver() && drive == DriveSide.RIGHT ? shape.moved(across(view)) : shape)
                            .toList()));
        }
        return new BodyDiagram(body, size, chosen);
    }

    /** From one side of the car to the other within a view; a side view shows one side only and stays. */
    private static AffineTransform across(ViewDrawing view) {
        return switch (view.view()) {
            case LEFT, RIGHT -> new AffineTransform();
            case FRONT, REAR, BAY -> new AffineTransform(-1, 0, 0, 1, view.widthMm(), 0);
            case TOP, UNDER, CABIN -> new AffineTransform(1, 0, 0, -1, 0, view.heightMm());
        };
    }
}
