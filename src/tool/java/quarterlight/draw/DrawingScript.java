package quarterlight.draw;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.locationtech.jts.geom.Geometry;
import quarterlight.car.Zone;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.ZoneId;
import quarterlight.car.body.BodyStyle;

/**
 * Reads drawing data and draws. One statement a line; an indented line that begins with no statement continues the one before; {@code #} begins a comment.
 *
 * <pre>
 * let NAME = NUMBER              curve NAME = POINTS       area NAME = AREA        loop NAME = POINTS (closed curve)
 * use FILE [NAME=TEXT ...]       another file, with $NAME replaced by TEXT
 * view NAME X0,Y0 X1,Y1 WORDS : TITLE     WORDS of: flip-x flip-y lateral-x lateral-y
 * silhouette AREA                what the view covers
 * cut ZONE[@WHEN] ... = AREA     a zone takes AREA out of what is left of the silhouette
 * zone ZONE[@WHEN] ... = AREA    a zone on top of what is drawn
 * line POINTS | shape AREA | gap POINTS | glass AREA | dark AREA | shade AREA    quiet detail; line1, shape1 ... : not mirrored
 * only WHEN ... end              for some bodies only (words of style, construction, engine place)
 * driver ... end                 what lies on the driver's side, drawn for a driver on the left
 * other-side NAME : TITLE        the view before, seen from the other side
 * </pre>
 */
final class DrawingScript {
    private static final Pattern VIEW = Pattern.compile("(\\S+)\\s+(\\S+)\\s+(\\S+)\\s*([^:]*):\\s*(.*)");

    private final Function<String, List<String>> files;
    private final ZoneCatalog catalog;
    private final BodyStyle style;
    private final Numbers numbers = new Numbers();
    private final CurveReader curves = new CurveReader(numbers);
    private final AreaReader areas = new AreaReader(numbers, curves);
    private final List<ViewDrawing> views = new ArrayList<>();
    private final Deque<Applies> only = new ArrayDeque<>(List.of(Applies.ALL));

    /** @param files from the name of a file of drawing data to its lines */
    DrawingScript(Function<String, List<String>> files, ZoneCatalog catalog, BodyStyle style) {
        this.files = files;
        this.catalog = catalog;
        this.style = style;
    }

    List<ViewDrawing> views() {
        return List.copyOf(views);
    }

    double number(String name) {
        return numbers.value(name);
    }

    /** @throws DrawingFault naming file and line of what cannot be read */
    void read(String file) {
        read(file, files.apply(file));
    }

    private void read(String file, List<String> lines) {
        int i = 0;
        while (i < lines.size()) {
            int first = i;
            StringBuilder statement = new StringBuilder(bare(lines.get(i++)));
            while (i < lines.size() && lines.get(i).startsWith(" ") && continues(lines.get(i))) {
                statement.append(' ').append(bare(lines.get(i++)).trim());
            }
            if (!statement.toString().isBlank()) {
                try {
                    statement(statement.toString().trim());
                } catch (IllegalArgumentException fault) {
                    throw new DrawingFault(file + ":" + (first + 1) + ": " + fault.getMessage(), fault);
                }
            }
        }
    }

    /** Inside a block statements may be indented; a continuation begins with a number, a bracket or a sign. */
    private static boolean continues(String line) {
        return !line.trim()
                .matches(
                        "(let|curve|loop|area|use|cut|zone|line1?|gap|shape1?|glass|shade1?|dark1?|only|driver|end)\\b.*");
    }

    private static String bare(String line) {
        int comment = line.indexOf('#');
        return comment < 0 ? line : line.substring(0, comment);
    }

    private void statement(String text) {
        int blank = text.indexOf(' ');
        String verb = blank < 0 ? text : text.substring(0, blank);
        String rest = blank < 0 ? "" : text.substring(blank + 1).trim();
        if (verb.equals("end")) {
            only.pop();
        } else if (verb.equals("driver")) {
            only.push(only.peek().and(Applies.DRIVER));
        } else if (verb.equals("only")) {
            only.push(only.peek().and(Applies.read(rest)));
        } else if (only.peek().fits(style)) {
            active(verb, rest);
        }
    }

    private void active(String verb, String rest) {
        switch (verb) {
            case "let" -> numbers.set(name(rest), numbers.value(body(rest)));
            case "curve" -> numbers.set(name(rest), curves.open(body(rest)));
            case "loop" -> numbers.set(name(rest), curves.closed(body(rest)));
            case "area" -> areas.name(name(rest), areas.read(body(rest)));
            case "use" -> use(rest);
            case "view" -> view(rest);
            case "other-side" -> {
                String[] parts = rest.split("\\s*:\\s*", 2);
                views.add(now().otherSide(parts[0], parts[1]));
            }
            case "silhouette" -> {
                now().silhouette(areas.read(rest));
                areas.name("all", now().silhouette());
                areas.name("rest", now().rest());
            }
            case "cut" -> zones(name(rest), body(rest), true);
            case "zone" -> zones(name(rest), body(rest), false);
            case "line", "gap" ->
                now().add(Piece.line(verb.equals("line") ? "detail" : "gap", curves.open(rest), only.peek()));
            case "line1" -> now().addOnce(Piece.line("detail", curves.open(rest), only.peek()));
            case "shape" -> now().add(Piece.plain("detail", areas.read(rest), only.peek()));
            case "shape1" -> now().addOnce(Piece.plain("detail", areas.read(rest), only.peek()));
            case "glass" -> now().add(Piece.plain("glass", areas.read(rest), only.peek()));
            case "dark" -> now().add(Piece.plain("wheel", areas.read(rest), only.peek()));
            case "shade" -> now().add(Piece.plain("shade", areas.read(rest), only.peek()));
            case "shade1" -> now().addOnce(Piece.plain("shade", areas.read(rest), only.peek()));
            case "dark1" -> now().addOnce(Piece.plain("wheel", areas.read(rest), only.peek()));
            default -> throw new DrawingFault("there is no statement " + verb);
        }
    }

    private void use(String text) {
        String[] words = text.split("\\s+");
        List<String> lines = new ArrayList<>();
        for (String line : files.apply(words[0])) {
            String filled = line;
            for (int i = 1; i < words.length; i++) {
                int equals = words[i].indexOf('=');
                filled = filled.replace("$" + words[i].substring(0, equals), words[i].substring(equals + 1));
            }
            lines.add(filled);
        }
        read(words[0], lines);
    }

    private void view(String text) {
        Matcher parts = VIEW.matcher(text);
        if (!parts.matches()) {
            throw new DrawingFault("expected view NAME X0,Y0 X1,Y1 WORDS : TITLE");
        }
        List<String> from = Numbers.split(parts.group(2));
        List<String> to = Numbers.split(parts.group(3));
        List<String> words = List.of(parts.group(4).trim().split("\\s+"));
        Lateral lateral = words.contains("lateral-x")
                ? Lateral.FIRST
                : words.contains("lateral-y") ? Lateral.SECOND : Lateral.NONE;
        views.add(new ViewDrawing(new ViewDrawing.Window(
                parts.group(1),
                parts.group(5),
                numbers.value(from.get(0)),
                numbers.value(from.get(1)),
                numbers.value(to.get(0)),
                numbers.value(to.get(1)),
                words.contains("flip-x"),
                words.contains("flip-y"),
                lateral)));
        areas.lateral(lateral);
    }

    private void zones(String names, String area, boolean cut) {
        List<Piece> pieces = new ArrayList<>();
        for (String word : names.split("\\s+")) {
            String[] parts = word.split("@");
            Zone zone = catalog.find(new ZoneId(parts[0]))
                    .orElseThrow(() -> new DrawingFault("there is no zone " + parts[0]));
            Applies applies = only.peek().and(Applies.of(zone));
            if (parts.length > 1) {
                applies = applies.and(Applies.read(parts[1]));
            }
            if (applies.fits(style)) {
                pieces.add(new Piece("zone", Optional.of(parts[0]), Shapes.empty(), applies));
            }
        }
        if (pieces.isEmpty()) {
            return;
        }
        Geometry wanted = areas.read(area);
        Geometry shape = cut ? now().take(wanted, names) : wanted;
        for (Piece piece : pieces) {
            Geometry drawn = now().addZone(piece.with(shape), cut);
            areas.name(piece.zone().orElseThrow().replace('-', '_'), drawn);
        }
        areas.name("rest", now().rest());
    }

    private ViewDrawing now() {
        if (views.isEmpty()) {
            throw new DrawingFault("no view is begun yet");
        }
        return views.get(views.size() - 1);
    }

    private static String name(String text) {
        return text.substring(0, equals(text)).trim();
    }

    private static String body(String text) {
        return text.substring(equals(text) + 1).trim();
    }

    private static int equals(String text) {
        int at = text.indexOf('=');
        if (at < 0) {
            throw new DrawingFault("expected NAME = ...");
        }
        return at;
    }
}
