package quarterlight.demo;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.SplittableRandom;

/** Rust of known area with something of known size beside it, on paint, underbody coating, floor or box section. */
final class RustScenes {
    private final Scene scene;
    private final Relief s;
    private final double k;

    RustScenes(Scene scene) {
        this.scene = scene;
        this.s = scene.s;
        this.k = scene.params.number("mm", 4);
    }

    void draw() {
        ground();
        for (String spec : scene.params.text("patches", "").split(" ")) {
            if (!spec.isEmpty()) {
                patch(spec.split(":"));
            }
        }
        double x = s.w * scene.params.number("sx", 0.30);
        double y = s.h * scene.params.number("sy", 0.70);
        double turn = scene.params.number("sturn", 4);
        switch (scene.params.text("scale", "")) {
            case "ruler" -> {
                double mm = scene.params.number("rulermm", 100);
                scene.scalePoints = scene.things.ruler(x, y, turn, mm, k);
                scene.scale = Rows.number(mm, 0);
            }
            case "card" -> {
                scene.scalePoints = scene.things.card(x, y, turn, k);
                scene.scale = "85.60 x 53.98";
            }
            default -> {}
        }
    }

    private void ground() {
        switch (scene.params.text("on", "paint")) {
            case "paint" -> {
                s.cover(s.all(), scene.car.paint());
                s.bendY = 0.5;
                s.rough(s.all(), 0.2, 5.5, 2);
                Path2D edge = new Path2D.Double();
                edge.moveTo(-20, s.h * 0.93);
                edge.curveTo(s.w * 0.3, s.h * 0.86, s.w * 0.7, s.h * 0.87, s.w + 20, s.h * 0.95);
                Path2D below = new Path2D.Double(edge);
                below.lineTo(s.w + 20, s.h + 60);
                below.lineTo(-20, s.h + 60);
                below.closePath();
                s.raise(Relief.stroke(edge, 40), 8, 9);
                s.raise(below, -40, 4);
                s.cover(below, Stuff.dull("#100f0d"), 3, 1);
                new Finds(scene).draw();
            }
            case "coating" -> coating("#26251f");
            case "floor" -> {
                s.cover(s.all(), new Stuff(Tint.hex(scene.car.primer()), 0.03, 0, 10));
                s.rough(s.all(), 2, 60, 4);
                for (int i = 0; i < 4; i++) {
                    Shape rib = new Rectangle2D.Double(-40, s.h * (0.10 + 0.25 * i), s.w + 80.0, s.h * 0.055);
                    s.raise(rib, 13, 8);
                }
                s.mottle(s.all(), "#6d5c48", 0.55, 120, 0.40, 0.75, 1);
            }
            case "box" -> {
                coating("#2b2a25");
                Shape upper = new Rectangle2D.Double(-40, -40, s.w + 80.0, s.h * 0.20 + 40);
                s.raise(upper, 34, 5);
                Shape flange = new Rectangle2D.Double(-40, s.h * 0.86, s.w + 80.0, s.h * 0.07);
                s.raise(flange, 13, 3);
                for (int i = 0; i < 8; i++) {
                    s.raise(Relief.disc(s.w * (0.05 + 0.13 * i), s.h * 0.895, 13), -5, 4);
                }
                scene.things.bolt(s.w * 0.86, s.h * 0.34, 24, 20, Stuff.dull("#4b4136"));
            }
            default -> throw new IllegalArgumentException("no ground " + scene.params.text("on", ""));
        }
    }

    private void coating(String color) {
        s.cover(s.all(), new Stuff(Tint.hex(color), 0.035, 0, 14));
        s.rough(s.all(), 9, 26, 5);
        s.rough(s.all(), 26, 240, 3);
        s.mottle(s.all(), "#6a604e", 0.6, 150, 0.44, 0.78, 1);
        s.mottle(s.all(), "#54402c", 0.35, 40, 0.58, 0.8, 1);
    }

    /** {@code kind:x:y:rx:ry[:uneven]}, x and y as shares of the sheet, radii in mm. */
    private void patch(String[] p) {
        double uneven = p.length > 5 ? Double.parseDouble(p[5]) : 0.22;
        List<Point2D.Double> ring = Blob.ring(
                scene.params.has("shape")
                        ? new SplittableRandom((long) scene.params.number("shape", 0) + p[0].hashCode())
                        : scene.random,
                s.w * Double.parseDouble(p[1]),
                s.h * Double.parseDouble(p[2]),
                k * Double.parseDouble(p[3]),
                k * Double.parseDouble(p[4]),
                uneven,
                40);
        scene.patches.add(new Scene.SheetPatch(p[0], ring, k));
        Path2D area = Blob.path(ring);
        switch (p[0]) {
            case "surface" -> surface(area);
            case "scale" -> scale(area);
            case "pitting" -> pitting(area);
            case "hole" -> hole(area);
            case "damage" -> {
                s.raise(area, -26, 20);
                s.dull(area, 0.8, 4);
            }
            default -> throw new IllegalArgumentException("no patch of kind " + p[0]);
        }
    }

    private void surface(Path2D area) {
        s.dye(Relief.stroke(area, 5 * k), "#5a3b22", 2.2 * k, 0.35);
        s.cover(area, Stuff.dull("#6b3a1d"), 0.8, 0.97);
        s.raise(area, -1.6, 1.2);
        s.rough(area, 3.4, 7, 4);
        s.mottle(area, "#8f5126", 0.85, 26, 0.42, 0.68, 1);
        s.mottle(area, "#4a2715", 0.80, 16, 0.52, 0.70, 1);
        s.mottle(area, "#a56a36", 0.6, 9, 0.60, 0.76, 1);
    }

    private void scale(Path2D area) {
        surface(area);
        s.raise(area, 6, 5);
        s.rough(area, 26, 22, 3);
        s.rough(area, 9, 6, 3);
        s.mottle(area, "#2c1a12", 0.85, 24, 0.50, 0.66, 1);
        s.mottle(area, "#8f5730", 0.6, 33, 0.55, 0.7, 1);
    }

    private void pitting(Path2D area) {
        surface(area);
        Rectangle2D box = area.getBounds2D();
        int count = (int) (box.getWidth() * box.getHeight() / 220);
        for (int i = 0; i < count; i++) {
            double x = box.getX() + box.getWidth() * scene.random.nextDouble();
            double y = box.getY() + box.getHeight() * scene.random.nextDouble();
            if (area.contains(x, y)) {
                Shape pit = Blob.around(scene.random, x, y, 2 + 4 * scene.random.nextDouble(), 0.3, 9);
                s.raise(pit, -5, 1.5);
                s.dye(pit, "#24150d", 1, 0.7);
            }
        }
    }

    private void hole(Path2D area) {
        Rectangle2D box = area.getBounds2D();
        AffineTransform wider = AffineTransform.getTranslateInstance(box.getCenterX(), box.getCenterY());
        wider.scale(1.5, 1.5);
        wider.translate(-box.getCenterX(), -box.getCenterY());
        Shape thin = wider.createTransformedShape(area);
        s.raise(thin, -6, 9);
        s.dye(thin, "#3a2113", 7, 0.55);
        s.raise(Relief.stroke(area, 9), 5, 2.4);
        s.dye(Relief.stroke(area, 8), "#9a5a2c", 1.6, 0.7);
        s.raise(area, -70, 1.2);
        s.cover(area, Stuff.dull("#050505"), 0.6, 1);
    }
}
