package quarterlight.demo;

import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;

/** Painted panels seen from near: their form, gaps, glass and openings, and what was found on them. */
final class Panels {
    private final Scene scene;
    private final Relief s;

    Panels(Scene scene) {
        this.scene = scene;
        this.s = scene.s;
    }

    void draw() {
        s.cover(s.all(), scene.car.paint());
        s.bendY = 0.55;
        s.bendX = 0.22;
        s.leanX = scene.random.nextDouble(-0.03, 0.03);
        String kind = scene.params.text("panel", "door");
        switch (kind) {
            case "door" -> door();
            case "fender" -> arch(0.74, 0.98);
            case "quarter" -> arch(0.22, 0.98);
            case "hood" -> hood();
            case "roof" -> roof();
            case "decklid" -> decklid();
            case "rocker" -> rocker();
            case "cowl" -> cowl();
            case "pillar" -> pillar();
            case "sail" -> sail();
            case "tail" -> tail();
            case "valance" -> valance();
            case "gap" -> gap();
            case "jamb" -> jamb();
            default -> throw new IllegalArgumentException("no panel " + kind);
        }
        s.rough(s.all(), 0.10 + 0.25 * scene.params.number("peel", 0.3), 5.5, 2);
        s.rough(s.all(), 1.1, 260, 2);
        new Finds(scene).draw();
        if (scene.params.has("shows")) {
            double x = s.w * scene.params.number("gx", 0.5);
            double y = s.h * scene.params.number("gy", 0.5);
            double turn = scene.random.nextDouble(-14, 14);
            scene.things.gauge(
                    x, y, turn, s.h / 290.0, scene.params.text("shows", ""), scene.params.text("unit", "mil"));
        }
    }

    private void door() {
        crease(0.30, 26, 0.05);
        crease(0.86, -16, 0.06);
        gapAt(0.83, 0.06);
        Path2D belt = line(0, 0.045, 1, 0.055);
        s.cover(rect(0, 0, 1, 0.045), Stuff.glass());
        s.cover(Relief.stroke(belt, 20), Stuff.chrome());
        s.raise(Relief.stroke(belt, 20), 9, 4);
        handle(0.70, 0.22);
    }

    private void handle(double fx, double fy) {
        double x = s.w * fx;
        double y = s.h * fy;
        Shape dish = new RoundRectangle2D.Double(x - 105, y - 26, 190, 58, 50, 50);
        s.raise(dish, -9, 7);
        Shape bar = new RoundRectangle2D.Double(x - 110, y - 15, 176, 24, 22, 22);
        s.shadow(bar, 5, 14, 7, 0.6);
        s.clearShadow(bar);
        s.cover(bar, Stuff.chrome());
        s.raise(bar, 16, 5);
        Shape button = Relief.disc(x + 84, y - 2, 17);
        s.cover(button, Stuff.chrome());
        s.raise(button, 9, 4);
    }

    /** A wheel opening at the bottom, its middle at {@code fx}. */
    private void arch(double fx, double fy) {
        crease(0.24, 24, 0.05);
        double x = s.w * fx;
        double y = s.h * fy;
        double radius = s.h * 0.46;
        Shape opening = Relief.disc(x, y, radius);
        Shape lip = Relief.disc(x, y, radius + 26);
        s.raise(lip, 9, 8);
        s.raise(opening, -60, 2.5);
        s.cover(opening, Stuff.dull("#0b0c0c"));
        s.shadow(opening, 0, 0, 1, 0.6);
        Shape tire = Relief.disc(x + 14, y + s.h * 0.10, radius * 0.93);
        s.cover(tire, Stuff.rubber(), 1.2, 1);
        s.raise(tire, 26, 13);
        for (int i = 0; i < 3; i++) {
            s.groove(Relief.disc(x + 14, y + s.h * 0.10, radius * (0.86 - 0.09 * i)), 3, 2.5, 1.2);
        }
        s.dull(Relief.stroke(Relief.disc(x, y, radius + 4), 7), 0.4, 2);
        gapAt(fx < 0.5 ? 0.93 : 0.08, fx < 0.5 ? -0.03 : 0.03);
    }

    private void hood() {
        s.bendY = 0.95;
        s.leanY = 0.42;
        ridge(0.5, 22, 0.10);
        ridge(0.16, 15, 0.05);
        ridge(0.84, 15, 0.05);
    }

    private void roof() {
        s.leanY = 0.50;
        s.bendY = 0.75;
        s.bendX = 0.4;
        s.cover(rect(0, 0.93, 1, 0.09), Stuff.chrome());
        s.raise(rect(0, 0.93, 1, 0.09), 12, 8);
    }

    private void decklid() {
        s.leanY = 0.34;
        ridge(0.5, 16, 0.12);
        Path2D gap = new Path2D.Double();
        gap.moveTo(-10, s.h * 0.80);
        gap.curveTo(s.w * 0.3, s.h * 0.815, s.w * 0.7, s.h * 0.815, s.w + 10, s.h * 0.80);
        seam(gap, 9);
        Shape lock = Relief.disc(s.w * 0.5, s.h * 0.70, 25);
        s.shadow(lock, 3, 5, 4, 0.4);
        s.clearShadow(lock);
        s.cover(lock, Stuff.chrome());
        s.raise(lock, 9, 4);
        s.cover(new RoundRectangle2D.Double(s.w * 0.5 - 3, s.h * 0.70 - 10, 6, 20, 4, 4), Stuff.dull("#0c0c0c"));
    }

    private void rocker() {
        s.bendY = 1.1;
        crease(0.20, 20, 0.04);
        seam(line(-0.01, 0.10, 1.01, 0.11), 9);
        Shape under = rect(0, 0.78, 1, 0.3);
        s.cover(under, Stuff.dull("#15140f"), 3, 1);
        s.raise(under, -40, 6);
        s.rough(under, 14, 30, 4);
        s.cover(rect(0, 0.735, 1, 0.045), scene.car.paint(), 1, 1);
        s.raise(rect(0, 0.735, 1, 0.045), 7, 3);
        for (int i = 0; i < 9; i++) {
            s.raise(Relief.disc(s.w * (0.06 + 0.115 * i), s.h * 0.757, 8), -3, 3);
        }
    }

    private void cowl() {
        s.leanY = 0.5;
        seam(line(-0.01, 0.24, 1.01, 0.22), 10);
        s.cover(rect(0, 0.86, 1, 0.2), Stuff.rubber(), 3, 1);
        for (int i = 0; i < 15; i++) {
            double x = s.w * (0.09 + 0.058 * i);
            Shape slot = new RoundRectangle2D.Double(x, s.h * 0.40, s.w * 0.026, s.h * 0.30, 26, 26);
            s.raise(Relief.stroke(slot, 14), 5, 4);
            s.raise(slot, -22, 2.5);
            s.cover(slot, Stuff.dull("#0b0b0a"), 1, 1);
        }
    }

    private void pillar() {
        s.bendX = 1.1;
        s.cover(rect(0, 0, 0.30, 1.01), Stuff.glass());
        s.cover(rect(0.27, 0, 0.055, 1.01), Stuff.chrome());
        s.raise(rect(0.27, 0, 0.055, 1.01), 14, 6);
        s.cover(rect(0.74, 0, 0.30, 1.01), Stuff.glass());
        s.cover(rect(0.70, 0, 0.04, 1.01), Stuff.rubber(), 1, 1);
        s.raise(rect(0.70, 0, 0.04, 1.01), 9, 6);
    }

    private void sail() {
        s.bendX = 0.9;
        s.leanY = 0.12;
        Path2D glass = new Path2D.Double();
        glass.moveTo(-20, -20);
        glass.lineTo(s.w * 0.24, -20);
        glass.curveTo(s.w * 0.20, s.h * 0.4, s.w * 0.10, s.h * 0.8, -20, s.h * 0.9);
        glass.closePath();
        s.cover(glass, Stuff.glass());
        s.cover(Relief.stroke(glass, 26), Stuff.chrome());
        s.raise(Relief.stroke(glass, 26), 10, 5);
        crease(0.88, 18, 0.06);
    }

    private void tail() {
        s.bendY = 0.9;
        Shape chrome = rect(0, 0.80, 1, 0.25);
        s.cover(chrome, Stuff.chrome(), 1, 1);
        s.raise(rect(0, 0.80, 1, 0.14), 40, 14);
        s.shadow(rect(0, 0.79, 1, 0.02), 0, 8, 8, 0.7);
        Shape lamp = new RoundRectangle2D.Double(s.w * 0.66, s.h * 0.20, s.w * 0.42, s.h * 0.36, 40, 40);
        s.cover(Relief.stroke(lamp, 22), Stuff.chrome());
        s.raise(Relief.stroke(lamp, 22), 10, 4);
        s.cover(lamp, new Stuff(Tint.hex("#8d1016"), 0.12, 0, 160));
        for (int i = 0; i < 13; i++) {
            s.groove(line(0.66, 0.225 + 0.026 * i, 1.08, 0.225 + 0.026 * i), 3, 4, 1.5);
        }
    }

    private void valance() {
        s.bendY = 1.2;
        s.cover(rect(0, 0, 1, 0.26), Stuff.chrome(), 1, 1);
        s.raise(rect(0, 0, 1, 0.26), 46, 16);
        s.shadow(rect(0, 0.25, 1, 0.05), 0, 8, 9, 0.7);
        for (int i = 0; i < 2; i++) {
            Shape slot =
                    new RoundRectangle2D.Double(s.w * (0.12 + 0.46 * i), s.h * 0.52, s.w * 0.30, s.h * 0.12, 50, 50);
            s.raise(slot, -24, 4);
            s.cover(slot, Stuff.dull("#0b0b0a"), 1, 1);
        }
        Shape ground = rect(0, 0.86, 1, 0.2);
        s.cover(ground, Stuff.dull("#4b463c"), 4, 1);
        s.rough(ground, 10, 9, 4);
    }

    /** Two panels meeting, near enough to judge the gap. */
    private void gap() {
        double lean = scene.params.number("lean", 0);
        double wide = scene.params.number("wide", 15);
        crease(0.36, 24, 0.06);
        Path2D gap = new Path2D.Double();
        gap.moveTo(s.w * (0.52 - lean), -20);
        gap.curveTo(
                s.w * (0.54 - lean / 2), s.h * 0.4, s.w * (0.535 + lean / 2), s.h * 0.6, s.w * (0.50 + lean), s.h + 20);
        if (lean != 0) {
            Path2D beyond = new Path2D.Double(gap);
            beyond.lineTo(s.w + 40, s.h + 20);
            beyond.lineTo(s.w + 40, -20);
            beyond.closePath();
            s.raise(beyond, -5, 4);
        }
        seam(gap, wide);
        Path2D lower = new Path2D.Double();
        lower.moveTo(-20, s.h * 0.92);
        lower.lineTo(s.w * 1.02, s.h * 0.93);
        seam(lower, 10);
    }

    private void jamb() {
        s.bendX = 0.8;
        Shape inner = rect(0.56, 0, 0.5, 1.01);
        s.raise(inner, -34, 9);
        Path2D rubber = line(0.60, -0.02, 0.60, 1.02);
        s.cover(Relief.stroke(rubber, 46), Stuff.rubber(), 1, 1);
        s.raise(Relief.stroke(rubber, 46), 20, 9);
        s.cover(rect(0.80, 0, 0.3, 1.01), Stuff.dull(scene.car.trim()), 3, 1);
        Shape striker = new RoundRectangle2D.Double(s.w * 0.24, s.h * 0.36, 150, 230, 24, 24);
        s.cover(striker, Stuff.steel("#8b8d8b"));
        s.raise(striker, 7, 3);
        scene.things.bolt(s.w * 0.24 + 75, s.h * 0.36 + 50, 22, 12, Stuff.steel("#77736c"));
        scene.things.bolt(s.w * 0.24 + 75, s.h * 0.36 + 180, 22, 40, Stuff.steel("#77736c"));
    }

    private void crease(double fy, double amount, double soft) {
        s.form((x, y) -> amount * Relief.step(fy - soft, fy + soft, y / s.h - 0.010 * Math.sin(x / s.w * 1.4)));
    }

    private void ridge(double fx, double amount, double soft) {
        s.form((x, y) -> {
            double d = (x / s.w - fx - 0.02 * (y / s.h - 0.5)) / soft;
            return amount * Math.exp(-d * d);
        });
    }

    private void gapAt(double fx, double lean) {
        seam(line(fx - lean / 2, -0.02, fx + lean / 2, 1.02), 9);
    }

    private void seam(Shape path, double width) {
        s.raise(Relief.stroke(path, width * 3.2), -3.5, width * 0.7);
        s.groove(path, width, 26, 1.6);
        s.cover(Relief.stroke(path, width * 0.8), Stuff.dull("#090909"), 1.2, 0.96);
    }

    private Path2D line(double x1, double y1, double x2, double y2) {
        Path2D p = new Path2D.Double();
        p.moveTo(s.w * x1, s.h * y1);
        p.lineTo(s.w * x2, s.h * y2);
        return p;
    }

    private Shape rect(double x, double y, double w, double h) {
        return new Rectangle2D.Double(s.w * x - (x == 0 ? 20 : 0), s.h * y - (y == 0 ? 20 : 0), s.w * w + 20, s.h * h);
    }
}
