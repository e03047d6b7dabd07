package quarterlight.demo;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Numbers and dates where a car carries them: struck, cast, printed, molded, etched. */
final class Marks {
    private final Scene scene;
    private final Relief s;

    Marks(Scene scene) {
        this.scene = scene;
        this.s = scene.s;
    }

    private String text(int line) {
        String[] lines = scene.params.text("text", "").split("/", -1);
        return line < lines.length ? lines[line].replace('_', ' ') : "";
    }

    /** Struck into a painted or bare sheet of steel. */
    void stamp() {
        scene.light = scene.params.has("light") ? scene.light : Light.RAKING;
        String on = scene.params.text("on", "paint");
        if (on.equals("paint")) {
            s.cover(s.all(), new Stuff(Tint.hex(scene.params.text("color", scene.car.body())), 0.06, 0, 40));
        } else {
            s.cover(s.all(), Stuff.steel("#6d6a64"));
            for (int i = 0; i < 420; i++) {
                Path2D p = new Path2D.Double();
                double y = s.h * scene.random.nextDouble();
                p.moveTo(s.w * scene.random.nextDouble(), y);
                p.lineTo(s.w * scene.random.nextDouble(), y + 8 * (scene.random.nextDouble() - 0.5));
                s.groove(p, 1.6, 0.5, 0.6);
            }
        }
        s.rough(s.all(), 1.6, 7, 3);
        s.rough(s.all(), 10, 210, 3);
        s.mottle(s.all(), "#5f4a35", 0.75, 90, 0.50, 0.76, 1);
        s.mottle(s.all(), "#8a5a30", 0.55, 26, 0.60, 0.80, 1);
        double size = s.h * 0.15;
        double y = s.h * 0.48;
        for (int line = 0; line < 2 && !text(line).isEmpty(); line++) {
            String t = text(line);
            double pitch = Math.min(size * 0.66, s.w * 0.82 / t.length());
            Shape struck = scene.type.struck(
                    t, s.w * 0.5 - pitch * t.length() / 2, y, Math.min(size, pitch * 1.55), pitch, scene.random);
            s.raise(Relief.stroke(struck, 11), 4.0, 3.0);
            s.raise(struck, -11, 1.3);
            s.dye(struck, "#17130f", 1.5, 0.55);
            if (line == 0 && scene.params.has("pit")) {
                double at = s.w * 0.5 - pitch * t.length() / 2 + pitch * (scene.params.number("pit", 1) - 0.5);
                Shape eaten = Blob.around(scene.random, at, y - size * 0.34, size * 0.46, 0.22, 30);
                s.flatten(eaten, 0);
                s.raise(eaten, -4, 6);
                s.cover(eaten, Stuff.dull("#6d4526"), 3, 0.9);
                s.rough(eaten, 15, 9, 4);
            }
            y += size * 1.5;
        }
        Path2D fold = new Path2D.Double();
        fold.moveTo(-20, s.h * 0.80);
        fold.lineTo(s.w + 20, s.h * 0.79);
        fold.lineTo(s.w + 20, s.h + 30);
        fold.lineTo(-20, s.h + 30);
        fold.closePath();
        s.raise(fold, -46, 10);
    }

    /** A thin metal plate with raised letters, held by rivets. */
    void plate() {
        s.cover(s.all(), new Stuff(Tint.hex(scene.params.text("color", scene.car.body())), 0.06, 0, 40));
        s.rough(s.all(), 1.2, 8, 3);
        s.mottle(s.all(), "#6d6252", 0.4, 120, 0.46, 0.78, 1);
        double x = s.w * 0.16;
        double y = s.h * 0.24;
        double w = s.w * 0.68;
        int lines = (int) scene.params.number("lines", 4);
        double h = s.h * (0.10 + 0.105 * lines);
        scene.things.lay(new RoundRectangle2D.Double(x, y, w, h, 36, 36), 6, 1, Stuff.steel("#a8a9a5"), 6);
        s.rough(new Rectangle2D.Double(x, y, w, h), 1.2, 3, 2);
        s.raise(Relief.stroke(new RoundRectangle2D.Double(x + 18, y + 18, w - 36, h - 36, 26, 26), 5), 3, 1.5);
        for (int line = 0; line < lines; line++) {
            String t = text(line);
            double size = s.h * 0.08;
            double wide = scene.type.width(t, size);
            double fit = Math.min(size, size * (w - 150) / Math.max(1, wide));
            Shape letters = scene.type.strong(t, x + 74, y + s.h * (0.125 + 0.107 * line), fit);
            s.raise(letters, 6.5, 1.2);
            s.cover(letters, Stuff.steel("#c3c4bf"), 0.5, 0.8);
            s.dye(Relief.stroke(letters, 5), "#24231f", 2, 0.42);
        }
        for (double[] at : new double[][] {{30, h / 2}, {w - 30, h / 2}}) {
            scene.things.rivet(x + at[0], y + at[1], 20, Stuff.steel("#b9bab6"));
        }
        s.mottle(new Rectangle2D.Double(x, y, w, h), "#4a4136", 0.5, 60, 0.55, 0.8, 1);
    }

    /** A printed label, aged, on paint. */
    void label() {
        s.cover(s.all(), new Stuff(Tint.hex(scene.params.text("color", scene.car.body())), 0.07, 0, 60));
        s.bendX = 0.5;
        s.rough(s.all(), 0.6, 6, 2);
        double x = s.w * 0.14;
        double y = s.h * 0.22;
        double w = s.w * 0.72;
        double h = s.h * 0.56;
        Shape paper = new RoundRectangle2D.Double(x, y, w, h, 12, 12);
        scene.things.lay(paper, 1.6, 0.6, Stuff.paper(scene.params.text("paper", "#d9d2bd")), 2);
        s.mottle(paper, "#a8956d", 0.6, 160, 0.40, 0.75, 1);
        s.mottle(paper, "#7d6a45", 0.5, 34, 0.60, 0.78, 1);
        String ink = scene.params.text("ink", "#20262b");
        s.dye(Relief.stroke(new Rectangle2D.Double(x + 18, y + 18, w - 36, h - 36), 4), ink, 0.4, 0.8);
        double size = Math.min(64, h * 0.135);
        for (int line = 0; line < 6; line++) {
            String t = text(line);
            double fit = Math.min(size, size * (w - 100) / Math.max(1, scene.type.width(t, size)));
            Shape letters = line == 0
                    ? scene.type.strong(t, x + 50, y + h * 0.20, fit)
                    : scene.type.plain(t, x + 50, y + h * (0.20 + 0.145 * line), fit);
            s.mottle(letters, ink, 0.95, 22, 0.10, 0.34, 0.5);
        }
    }

    /** Raised letters on cast iron. */
    void casting() {
        String paint = scene.params.text("color", scene.car.engine());
        s.cover(s.all(), new Stuff(Tint.hex(paint), 0.045, 0, 22));
        s.rough(s.all(), 4.5, 7, 4);
        s.rough(s.all(), 22, 260, 3);
        Shape pad = new RoundRectangle2D.Double(s.w * 0.12, s.h * 0.27, s.w * 0.76, s.h * 0.44, 70, 70);
        s.raise(pad, 16, 12);
        Shape tube = new Rectangle2D.Double(-30, s.h * 0.83, s.w + 60.0, s.h * 0.14);
        s.raise(tube, 80, 34);
        double size = s.h * 0.16;
        List<Shape> chalk = new ArrayList<>();
        for (int line = 0; line < 2; line++) {
            String t = text(line);
            double fit = Math.min(size, size * s.w * 0.66 / Math.max(1, scene.type.width(t, size)));
            double wide = scene.type.width(t, fit);
            Shape letters = scene.type.struck(
                    t,
                    s.w * 0.5 - wide / 2 - 6,
                    s.h * (0.46 + 0.2 * line),
                    fit,
                    wide / Math.max(1, t.length()) + 2,
                    scene.random);
            s.raise(Relief.stroke(letters, 5), 15, 2.4);
            s.rough(letters, 5, 6, 3);
            chalk.add(letters);
        }
        s.mottle(s.all(), "#3b2c20", 0.85, 110, 0.46, 0.70, 1);
        s.mottle(s.all(), "#7b4a28", 0.7, 40, 0.56, 0.74, 1);
        s.mottle(s.all(), "#15120e", 0.5, 190, 0.5, 0.8, 1);
        for (Shape letters : chalk) {
            s.mottle(letters, "#e9e4d6", 0.72, 13, 0.22, 0.56, 0.9);
        }
        scene.things.bolt(s.w * 0.90, s.h * 0.16, 46, 8, Stuff.dull("#4e443a"));
        scene.things.bolt(s.w * 0.10, s.h * 0.14, 46, 31, Stuff.dull("#4e443a"));
    }

    /** The side of a tire with its molded code. */
    void tire() {
        s.cover(s.all(), Stuff.rubber());
        double cx = s.w * 0.5;
        double cy = s.h * 2.05;
        double inner = s.h * 1.12;
        double outer = s.h * 1.98;
        s.form((x, y) -> {
            double d = (Math.hypot(x - cx, y - cy) - inner) / (outer - inner);
            double t = Math.max(0, Math.min(1, d));
            return 120 * Math.sin(Math.PI * (0.12 + 0.76 * t));
        });
        s.rough(s.all(), 0.9, 3, 2);
        for (double f : new double[] {0.10, 0.16, 0.80, 0.86}) {
            s.raise(Relief.stroke(Relief.disc(cx, cy, inner + (outer - inner) * f), 7), 4, 1.6);
        }
        Shape beyond = ring(cx, cy, outer, outer * 2);
        s.cover(beyond, Stuff.dull("#2b2823"), 4, 1);
        s.raise(beyond, -40, 8);
        Shape rim = Relief.disc(cx, cy, inner);
        s.cover(rim, Stuff.steel("#8d9092"), 1, 1);
        s.raise(rim, 16, 8);
        String t = text(0);
        double radius = inner + (outer - inner) * 0.38;
        double size = s.h * 0.10;
        double total = scene.type.width(t, size) * 1.12;
        double angle = -Math.PI / 2 - total / radius / 2;
        Path2D all = new Path2D.Double();
        for (String letter : t.split("")) {
            double w = scene.type.width(letter, size) * 1.12;
            double a = angle + w / radius / 2;
            AffineTransform at =
                    AffineTransform.getTranslateInstance(cx + radius * Math.cos(a), cy + radius * Math.sin(a));
            at.rotate(a + Math.PI / 2);
            all.append(at.createTransformedShape(scene.type.strong(letter, -w / 2.24, 0, size)), false);
            angle += w / radius;
        }
        s.raise(all, 7, 1.0);
        Shape box = new RoundRectangle2D.Double(
                cx + total * 0.5 - size * 2.75, cy - radius - size * 0.92, size * 2.7, size * 1.25, 20, 20);
        if (scene.params.has("window")) {
            AffineTransform at = AffineTransform.getRotateInstance((total / radius / 2) * 0.72, cx, cy);
            Shape frame = at.createTransformedShape(new RoundRectangle2D.Double(
                    cx - size * 1.3, cy - radius - size * 0.95, size * 2.6, size * 1.28, 22, 22));
            s.raise(Relief.stroke(frame, 6), 4, 1.4);
        } else {
            s.rough(box, 0.1, 4, 1);
        }
        s.mottle(s.all(), "#6f675a", 0.45, 130, 0.42, 0.8, 1);
        s.mottle(all, "#e9e4d6", 0.62, 15, 0.20, 0.58, 0.8);
        if (scene.params.has("cracked")) {
            for (int i = 0; i < 260; i++) {
                double a = -Math.PI / 2 + scene.random.nextDouble(-0.36, 0.36);
                double r = inner + (outer - inner) * scene.random.nextDouble(0.55, 0.95);
                Path2D p = new Path2D.Double();
                p.moveTo(cx + r * Math.cos(a), cy + r * Math.sin(a));
                p.lineTo(cx + r * Math.cos(a + 0.02), cy + (r + 7) * Math.sin(a + 0.02));
                s.groove(p, 1.6, 2.5, 0.5);
            }
        }
    }

    private static Shape ring(double x, double y, double from, double to) {
        Path2D p = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        p.append(Relief.disc(x, y, from), false);
        p.append(Relief.disc(x, y, to), false);
        return p;
    }

    /** A mark etched into a pane, a pale lining behind it. */
    void glass() {
        s.cover(s.all(), new Stuff(Tint.hex("#2c3a38"), 0.20, 0, 190));
        s.bendY = 0.4;
        s.bendX = 0.3;
        s.mottle(s.all(), "#5f6d68", 0.6, 300, 0.3, 0.8, 1);
        Shape below = new Rectangle2D.Double(-20, s.h * 0.80, s.w + 40.0, s.h * 0.3);
        s.cover(below, Stuff.rubber(), 2, 1);
        s.raise(below, 26, 10);
        Shape trim = new Rectangle2D.Double(-20, s.h * 0.86, s.w + 40.0, s.h * 0.08);
        s.cover(trim, Stuff.chrome());
        s.raise(trim, 20, 8);
        double size = s.h * 0.075;
        for (int line = 0; line < 4; line++) {
            String t = text(line);
            double wide = scene.type.width(t, size);
            Shape letters = scene.type.plain(t, s.w * 0.5 - wide / 2, s.h * (0.30 + 0.115 * line), size);
            s.cover(letters, new Stuff(Tint.hex("#cfd8d6"), 0.02, 0, 6), 0.4, 0.75);
        }
        Shape frame =
                Relief.stroke(new RoundRectangle2D.Double(s.w * 0.27, s.h * 0.17, s.w * 0.46, s.h * 0.52, 60, 60), 4);
        s.cover(frame, new Stuff(Tint.hex("#cfd8d6"), 0.02, 0, 6), 0.4, 0.6);
        s.mottle(s.all(), "#a9a290", 0.18, 60, 0.5, 0.8, 1);
    }
}
