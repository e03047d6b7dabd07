package quarterlight.demo;

import java.awt.geom.Point2D;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.union.UnaryUnionOp;

/** Writes what one visit brought home: photos, tables, and the truth beside them. */
final class Visit {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);
    private static final Pattern SHOT = Pattern.compile("@([a-z0-9-]+)");
    private final Story story;
    private final Path out;
    private final Type type;
    private final Readings readings;
    private final ZonePoints points;

    Visit(Story story, Path out, Type type, ZonePoints points) throws IOException {
        this.story = story;
        this.out = out;
        this.type = type;
        this.points = points;
        this.readings = Readings.of(story);
    }

    /** @param scenes those whose photos are written; empty for all */
    void write(List<String> scenes) throws IOException {
        Files.createDirectories(out.resolve("truth"));
        List<List<String>> traces = new ArrayList<>();
        List<List<String>> patches = new ArrayList<>();
        List<List<String>> rust = new ArrayList<>();
        PhotoWriter writer = new PhotoWriter(story);
        for (Shot shot : story.shots()) {
            boolean wanted = scenes.isEmpty() || scenes.contains(shot.scene());
            if (!wanted && !shot.scene().equals("rust")) {
                continue;
            }
            Picture picture = draw(shot);
            if (wanted) {
                Path file = out.resolve(shot.path());
                Files.createDirectories(file.getParent());
                Files.write(file, writer.bytes(shot, picture.image()));
            }
            record(shot, picture, traces, patches, rust);
        }
        table("traces.csv", List.of("photo", "kind", "outline", "scale", "zone", "patch", "note"), traces);
        table("truth/patches.csv", List.of("photo", "zone", "kind", "patch", "area_mm2"), patches);
        table("truth/rust.csv", List.of("photo", "zone", "patch", "rust_mm2", "holes", "largest_hole_mm2"), rust);
        table("pins.csv", Pins.HEADER, Pins.of(story, points));
        table("readings.csv", Readings.HEADER, readings.rows(points));
        table(
                "clock.csv",
                List.of("camera", "photo", "shows"),
                List.of(List.of(
                        "orrin-fieldview-12-of120447",
                        story.shot("clock-c").file(),
                        story.shot("clock-c").truth().toString())));
        told();
        table("truth/photos.csv", Truth.PHOTOS, Truth.photos(story));
        table("truth/finish.csv", Truth.FINISH, Truth.finish(story));
    }

    Picture draw(Shot shot) {
        int w = shot.portrait() ? 900 : 1200;
        int h = shot.portrait() ? 1200 : 900;
        Map<String, String> values = new TreeMap<>(shot.params().values());
        values.replaceAll((key, value) -> switch (value) {
            case "@reading" -> readings.shown(shot.zones().get(0));
            case "@true" -> CLOCK.format(shot.truth());
            case "@date" -> shot.truth().toLocalDate().toString();
            default -> value;
        });
        Scene scene = new Scene(type, story.palette(), new Params(values), shot.seed(), w, h);
        Scenes.draw(shot.scene(), scene);
        return scene.take();
    }

    private static void record(
            Shot shot,
            Picture picture,
            List<List<String>> traces,
            List<List<String>> patches,
            List<List<String>> rust) {
        String zone = shot.zones().get(0);
        String place = shot.params().text("place", "").replace('_', ' ');
        int holes = 0;
        double largest = 0;
        for (Picture.Patch patch : picture.patches()) {
            traces.add(List.of(shot.file(), patch.kind(), polygon(patch.outline()), picture.scale(), zone, place, ""));
            patches.add(List.of(shot.file(), zone, patch.kind(), place, Rows.number(patch.areaMm2(), 2)));
            if (patch.kind().equals("hole")) {
                holes++;
                largest = Math.max(largest, patch.areaMm2());
            }
        }
        if (!picture.patches().isEmpty()) {
            rust.add(List.of(
                    shot.file(),
                    zone,
                    place,
                    Rows.number(united(picture.patches()), 2),
                    Integer.toString(holes),
                    holes == 0 ? "" : Rows.number(largest, 2)));
        }
    }

    /** The area that the patches cover together, on the sheet. */
    private static double united(List<Picture.Patch> patches) {
        GeometryFactory geometry = new GeometryFactory();
        List<Geometry> all = patches.stream()
                .map(p -> {
                    List<Coordinate> ring = p.onSheetMm().stream()
                            .map(q -> new Coordinate(q.x, q.y))
                            .collect(Collectors.toCollection(ArrayList::new));
                    ring.add(ring.get(0));
                    return (Geometry) geometry.createPolygon(ring.toArray(Coordinate[]::new));
                })
                .toList();
        return UnaryUnionOp.union(all).getArea();
    }

    private static String polygon(List<Point2D.Double> outline) {
        List<Point2D.Double> ring = new ArrayList<>(outline);
        ring.add(outline.get(0));
        return ring.stream()
                .map(p -> Rows.px(p.x) + " " + Rows.px(p.y))
                .collect(Collectors.joining(", ", "POLYGON ((", "))"));
    }

    /** Copies what the story tells in words, photo names in the place of shots. */
    private void told() throws IOException {
        for (String name : List.of("signs", "marks", "trials", "statements", "features", "gauge")) {
            String text = Files.readString(story.folder().resolve(name + ".csv"), StandardCharsets.UTF_8);
            Files.writeString(out.resolve(name + ".csv"), named(text), StandardCharsets.UTF_8);
        }
        Files.copy(story.folder().resolve("facts.txt"), out.resolve("facts.txt"), StandardCopyOption.REPLACE_EXISTING);
        for (String name : List.of("dates", "contradictions")) {
            String text = Files.readString(story.folder().resolve("true-" + name + ".csv"), StandardCharsets.UTF_8);
            Files.writeString(out.resolve("truth").resolve(name + ".csv"), named(text), StandardCharsets.UTF_8);
        }
    }

    private String named(String text) {
        Matcher m = SHOT.matcher(text);
        return m.replaceAll(
                found -> Matcher.quoteReplacement(story.shot(found.group(1)).file()));
    }

    private void table(String name, List<String> header, List<List<String>> rows) throws IOException {
        StringBuilder text = new StringBuilder(Rows.row(header)).append('\n');
        rows.forEach(row -> text.append(Rows.row(row)).append('\n'));
        Files.writeString(out.resolve(name), text, StandardCharsets.UTF_8);
    }
}
