package quarterlight.diagram;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import quarterlight.car.View;
import quarterlight.car.Zone;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.ZoneGroup;
import quarterlight.car.body.Body;
import quarterlight.car.body.BodyStyle;
import quarterlight.car.body.DriveSide;
import quarterlight.diagram.file.DiagramFile;
import quarterlight.diagram.file.DiagramRefused;
import quarterlight.table.ZoneTable;
import quarterlight.units.Worded;

/** A diagram for tests that is complete but no drawing: every zone is one cell of a grid, sorted to the views by group and side. */
public final class PlainDiagram {
    private static final ZoneCatalog CATALOG = ZoneTable.load();

    private PlainDiagram() {}

    /** The SVG text of a style with all its variants. */
    public static String svg(BodyStyle style) {
        Map<View, List<Zone>> sorted = new EnumMap<>(View.class);
        for (View view : View.values()) {
            sorted.put(view, new ArrayList<>());
        }
        for (Zone zone : CATALOG.all()) {
            if (zone.styles().contains(style) && zone.group() != ZoneGroup.RECORD) {
                sorted.get(viewOf(zone)).add(zone);
            }
        }
        StringBuilder svg =
                new StringBuilder("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 40000 2000\" data-style=\""
                        + style.word()
                        + "\" data-wheelbase-mm=\"2740\" data-length-mm=\"4690\" data-width-mm=\"1810\" data-height-mm=\"1330\">\n"
                        + "<title>Plain</title><style>.zone{fill:none}</style>\n");
        sorted.forEach((view, zones) -> svg.append(group(view, zones)));
        return svg.append("</svg>\n").toString();
    }

    public static DiagramFile file(BodyStyle style) {
        return read(svg(style));
    }

    public static BodyDiagram of(Body body) {
        return file(body.style()).of(body);
    }

    public static DiagramFile read(String svg) {
        try {
            return DiagramFile.read("plain.svg", new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
        } catch (DiagramRefused | IOException e) {
            throw new AssertionError(e);
        }
    }

    private static View viewOf(Zone zone) {
        return switch (zone.group()) {
            case BAY -> View.BAY;
            case UNDER, LOAD -> View.UNDER;
            case CABIN -> View.CABIN;
            default -> {
                if (zone.id().value().endsWith("bumper-front")
                        || zone.id().value().equals("bumper-front")) {
                    yield View.FRONT;
                }
                if (zone.id().value().equals("bumper-rear")) {
                    yield View.REAR;
                }
                yield zone.side()
                        .map(side -> side == DriveSide.LEFT ? View.LEFT : View.RIGHT)
                        .orElse(View.TOP);
            }
        };
    }

    private static String group(View view, List<Zone> zones) {
        double width = view == View.FRONT || view == View.REAR || view == View.BAY ? 2000 : 5000;
        double height = 1500;
        String frame = cell(0, 0, width, height);
        StringBuilder out = new StringBuilder(String.format(
                Locale.ROOT,
                "<g data-view=\"%s\" data-width-mm=\"%.0f\" data-height-mm=\"%.0f\"><title>%s view</title>%n"
                        + "<path class=\"silhouette\" d=\"%s\"/><path class=\"glass\" d=\"%s\"/>%n",
                view.word(),
                width,
                height,
                view.word(),
                frame,
                frame));
        int columns = (int) Math.ceil(Math.sqrt(zones.size() * 2.0));
        int rows = Math.max(1, (zones.size() + columns - 1) / Math.max(1, columns));
        for (int i = 0; i < zones.size(); i++) {
            Zone zone = zones.get(i);
            double w = width / columns;
            double h = height / rows;
            out.append(String.format(
                    Locale.ROOT,
                    "<path id=\"%s-%s\" class=\"zone\" data-zone=\"%s\" data-construction=\"%s\" data-engine=\"%s\" d=\"%s\"/>%n",
                    view.word(),
                    zone.id(),
                    zone.id(),
                    words(zone.constructions()),
                    words(zone.engines()),
                    cell((i % columns) * w, Math.floorDiv(i, columns) * h, w, h)));
        }
        return out.append("</g>\n").toString();
    }

    private static String words(Iterable<? extends Worded> set) {
        List<String> words = new ArrayList<>();
        set.forEach(w -> words.add(w.word()));
        return words.stream().sorted().collect(Collectors.joining(" "));
    }

    private static String cell(double x, double y, double w, double h) {
        return String.format(
                Locale.ROOT, "M%.1f %.1f L%.1f %.1f L%.1f %.1f L%.1f %.1f Z", x, y, x + w, y, x + w, y + h, x, y + h);
    }
}
