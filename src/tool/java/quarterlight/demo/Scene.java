package quarterlight.demo;

import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** One photo in the making: its sheet, and the traces that fall on it. */
final class Scene {
    final Relief s;
    final Type type;
    final Things things;
    final Palette car;
    final Params params;
    final SplittableRandom random;
    final int photoW;
    final int photoH;
    final long seed;
    Light light = Light.YARD;
    double exposure = 1;
    double soft = 0.2;
    double warmth;
    String scale = "";
    final List<SheetPatch> patches = new ArrayList<>();
    List<Point2D.Double> scalePoints = List.of();

    /** A patch in sheet pixels; {@code pxPerMm} of the sheet. */
    record SheetPatch(String kind, List<Point2D.Double> outline, double pxPerMm) {}

    Scene(Type type, Palette car, Params params, long seed, int photoW, int photoH) {
        double room = params.has("tilt") || params.has("turn") ? 1.55 : 1.08;
        this.s = new Relief((int) (photoW * room), (int) (photoH * room), seed);
        this.type = type;
        this.things = new Things(s, type);
        this.car = car;
        this.params = params;
        this.seed = seed;
        this.random = new SplittableRandom(seed);
        this.photoW = photoW;
        this.photoH = photoH;
        if (params.has("light")) {
            light = Light.valueOf(params.text("light", ""));
        }
    }

    Picture take() {
        Lens lens = Lens.of(
                s,
                photoW,
                photoH,
                params.number("zoom", 1),
                params.number("tilt", 0),
                params.number("turn", 0),
                params.number("roll", 0));
        float[][] sheet = light.fallOn(s);
        float[][] photo = lens.take(sheet, s.w, s.h, photoW, photoH);
        return new Picture(
                Develop.print(
                        photo,
                        photoW,
                        photoH,
                        exposure * params.number("exposure", 1),
                        params.number("soft", soft),
                        params.number("shake", 0),
                        params.number("warmth", warmth),
                        seed + 5),
                patches.stream().map(p -> seen(p, lens)).toList(),
                scaleText(lens));
    }

    private static Picture.Patch seen(SheetPatch patch, Lens lens) {
        double twice = 0;
        List<Point2D.Double> ring = patch.outline();
        for (int i = 0; i < ring.size(); i++) {
            Point2D.Double a = ring.get(i);
            Point2D.Double b = ring.get((i + 1) % ring.size());
            twice += a.x * b.y - b.x * a.y;
        }
        double area = Math.abs(twice) / 2 / (patch.pxPerMm() * patch.pxPerMm());
        List<Point2D.Double> outline =
                ring.stream().map(p -> lens.seen(p.x, p.y)).toList();
        List<Point2D.Double> mm = ring.stream()
                .map(p -> new Point2D.Double(p.x / patch.pxPerMm(), p.y / patch.pxPerMm()))
                .toList();
        return new Picture.Patch(patch.kind(), outline, mm, area);
    }

    private String scaleText(Lens lens) {
        if (scalePoints.isEmpty()) {
            return "";
        }
        StringBuilder text = new StringBuilder(scalePoints.size() == 2 ? "length:" : "rectangle:");
        for (int i = 0; i < scalePoints.size(); i++) {
            Point2D.Double p = lens.seen(scalePoints.get(i).x, scalePoints.get(i).y);
            text.append(i == 0 ? "" : " ").append(Rows.px(p.x)).append(' ').append(Rows.px(p.y));
        }
        return text.append(':').append(scale).toString();
    }
}
