package quarterlight.diagram;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.operation.union.UnaryUnionOp;
import quarterlight.car.View;
import quarterlight.car.ZoneId;
import quarterlight.car.body.BodyStyle;
import quarterlight.car.body.Dimensions;
import quarterlight.file.CsvShape;
import quarterlight.finish.place.PanelOutline;
import quarterlight.finish.place.ZoneSizes;
import quarterlight.units.Area;
import quarterlight.units.Worded;

/**
 * The nominal area of each zone, from {@code zone-areas.csv}: the outline's area in a named view times a factor for what the projection
 * hides, scaled by the car's own dimensions where they were given; or a written area, which does not scale. How far off they can be is said in the methods.
 */
public final class NominalAreas {
    private static final String RESOURCE = "/quarterlight/diagrams/zone-areas.csv";

    private final List<Rule> rules;

    private NominalAreas(List<Rule> rules) {
        this.rules = rules;
    }

    /** One row: either a view with a factor, or an area. */
    private record Rule(
            ZoneId zone, Optional<BodyStyle> style, Optional<View> view, double factor, OptionalDouble mm2) {}

    /**
     * The nominal areas of the zones of a diagram that the table knows, in drawing order.
     *
     * @param dimensions the car's own; an absent one is the style's
     */
    public static Map<ZoneId, Area> of(BodyDiagram diagram, Dimensions dimensions) {
        return shipped().areas(diagram, dimensions);
    }

    /** The same areas with the outlines that they rest on, scaled as they are. */
    public static ZoneSizes sizes(BodyDiagram diagram, Dimensions dimensions) {
        NominalAreas rules = shipped();
        Map<ZoneId, PanelOutline> outlines = new LinkedHashMap<>();
        for (ZoneId zone : diagram.zones()) {
            rules.rule(zone, diagram.body().style())
                    .flatMap(rule -> outline(rule, diagram, dimensions))
                    .ifPresent(outline -> outlines.put(zone, outline));
        }
        return new ZoneSizes(rules.areas(diagram, dimensions), outlines);
    }

    private static NominalAreas shipped() {
        try (InputStream in = NominalAreas.class.getResourceAsStream(RESOURCE)) {
            return read(new InputStreamReader(in, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException("zone-areas.csv cannot be read", e);
        }
    }

    static NominalAreas read(Reader csv) throws IOException {
        CSVFormat format = CsvShape.withHeaderAndRemarks();
        List<Rule> rules = new ArrayList<>();
        for (CSVRecord row : format.parse(csv)) {
            String style = row.get("style").strip();
            String view = row.get("view").strip();
            String area = row.get("area_mm2").strip();
            if (view.isEmpty() == area.isEmpty()) {
                throw new IllegalArgumentException(
                        "zone-areas.csv, line " + row.getRecordNumber() + ": give a view or an area");
            }
            String factor = row.get("factor").strip();
            rules.add(new Rule(
                    new ZoneId(row.get("zone").strip()),
                    style.equals("*") ? Optional.empty() : Optional.of(word(BodyStyle.class, style)),
                    view.isEmpty() ? Optional.empty() : Optional.of(word(View.class, view)),
                    factor.isEmpty() ? 1 : Double.parseDouble(factor),
                    area.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(area))));
        }
        return new NominalAreas(List.copyOf(rules));
    }

    Map<ZoneId, Area> areas(BodyDiagram diagram, Dimensions dimensions) {
        Map<ZoneId, Area> areas = new LinkedHashMap<>();
        for (ZoneId zone : diagram.zones()) {
            rule(zone, diagram.body().style())
                    .flatMap(rule -> area(rule, diagram, dimensions))
                    .ifPresent(area -> areas.put(zone, area));
        }
        return areas;
    }

    /** The rule of the style itself goes before the rule of all styles. */
    private Optional<Rule> rule(ZoneId zone, BodyStyle style) {
        Optional<Rule> general = Optional.empty();
        for (Rule rule : rules) {
            if (rule.zone().equals(zone)) {
                if (rule.style().equals(Optional.of(style))) {
                    return Optional.of(rule);
                }
                if (rule.style().isEmpty()) {
                    general = Optional.of(rule);
                }
            }
        }
        return general;
    }

    private static Optional<Area> area(Rule rule, BodyDiagram diagram, Dimensions dimensions) {
        if (rule.mm2().isPresent()) {
            return Optional.of(new Area(rule.mm2().getAsDouble()));
        }
        return rule.view().flatMap(diagram::view).flatMap(view -> {
            double drawn = view.outlinesOf(rule.zone()).stream()
                    .mapToDouble(shape -> shape.outline().area())
                    .sum();
            Scale scale = Scale.of(view.view(), diagram.size(), dimensions);
            return drawn > 0
                    ? Optional.of(new Area(drawn * rule.factor() * scale.across() * scale.down()))
                    : Optional.empty();
        });
    }

    private static Optional<PanelOutline> outline(Rule rule, BodyDiagram diagram, Dimensions dimensions) {
        return rule.view().flatMap(diagram::view).flatMap(view -> {
            Scale scale = Scale.of(view.view(), diagram.size(), dimensions);
            List<Geometry> parts = view.outlinesOf(rule.zone()).stream()
                    .map(shape -> GeometryFixer.fix(shape.outline().polygon()))
                    .toList();
            Geometry whole = UnaryUnionOp.union(parts);
            if (whole == null || !(whole.getArea() > 0)) {
                return Optional.empty();
            }
            Geometry scaled = AffineTransformation.scaleInstance(scale.across(), scale.down())
                    .transform(whole);
            return Optional.of(new PanelOutline(
                    view.view(), view.widthMm() * scale.across(), view.heightMm() * scale.down(), scaled));
        });
    }

    /** How much larger than drawn the car in hand is along x and along y of a view. */
    private record Scale(double across, double down) {
        static Scale of(View view, StyleSize size, Dimensions dimensions) {
            double length = lengthRatio(size, dimensions);
            double width = ratio(dimensions.widthMm(), size.widthMm());
            double height = ratio(dimensions.heightMm(), size.heightMm());
            return switch (view) {
                case LEFT, RIGHT -> new Scale(length, height);
                case FRONT, REAR -> new Scale(width, height);
                case TOP, BAY, UNDER, CABIN -> new Scale(length, width);
            };
        }
    }

    /** The car's length over the style's; by the wheelbase where only that was given. */
    private static double lengthRatio(StyleSize size, Dimensions dimensions) {
        return dimensions.lengthMm().isPresent()
                ? ratio(dimensions.lengthMm(), size.lengthMm())
                : ratio(dimensions.wheelbaseMm(), size.wheelbaseMm());
    }

    private static double ratio(OptionalInt own, double usual) {
        return own.isPresent() ? own.getAsInt() / usual : 1;
    }

    private static <E extends Enum<E> & Worded> E word(Class<E> type, String word) {
        return Worded.find(type, word)
                .orElseThrow(() -> new IllegalArgumentException(word + " is none of " + Worded.words(type)));
    }
}
