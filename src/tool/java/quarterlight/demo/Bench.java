package quarterlight.demo;

import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;

/** Things beside the car: the wall clock, the gauge on its check plates, papers. */
final class Bench {
    private final Scene scene;
    private final Relief s;

    public Bench(Scene scene) {
        this.scene = scene;
        this.s = scene.s;
    }

    /** A clock with seconds on a plank wall. */
    void clock() {
        scene.light = Light.SHED;
        planks("#8a7355");
        double w = s.w * 0.62;
        double h = s.h * 0.46;
        double x = s.w * 0.19;
        double y = s.h * 0.25;
        Shape body = new RoundRectangle2D.Double(x, y, w, h, 50, 50);
        s.shadow(body, 14, 22, 16, 0.6);
        s.clearShadow(body);
        s.flatten(body, 6);
        s.raise(body, 26, 9);
        s.cover(body, Stuff.plastic("#2a2d2f"));
        s.rough(body, 0.6, 3, 2);
        Shape pane = new RoundRectangle2D.Double(x + 40, y + 40, w - 80, h - 80, 20, 20);
        s.cover(pane, new Stuff(Tint.hex("#b2bda2"), 0.035, 0, 120), 1, 1);
        s.raise(pane, -6, 3);
        String time = scene.params.text("shows", "00:00:00");
        String date = scene.params.text("date", "2026-01-01");
        double tall = h * 0.36;
        // as wide as the widest figures, so that a 1 does not move the rest
        double wide = Type.display("88:88:88", 0, 0, tall).getBounds2D().getWidth();
        tall *= Math.min(1, (w - 150) / wide);
        double left = s.w * 0.5 - Math.min(wide, w - 150) / 2;
        s.cover(Type.display(time, left, y + h * 0.22, tall), Stuff.dull("#121a15"), 0.4, 0.95);
        double small = h * 0.15;
        double dateWide = Type.display("8888-88-88", 0, 0, small).getBounds2D().getWidth();
        s.cover(Type.display(date, s.w * 0.5 - dateWide / 2, y + h * 0.66, small), Stuff.dull("#121a15"), 0.4, 0.95);
        s.cover(
                scene.type.strong("RADIO CONTROLLED", x + w * 0.5 - 150, y + h - 14, 22),
                Stuff.dull("#8e979b"),
                0.3,
                0.9);
    }

    private void planks(String color) {
        s.cover(s.all(), Stuff.dull(color));
        s.mottle(s.all(), "#5d4a33", 0.7, 150, 0.35, 0.7, 1);
        s.form((x, y) -> 2.2 * s.noise.fractal(x / 240, y / 5, 4));
        for (int i = 0; i < 6; i++) {
            Path2D p = new Path2D.Double();
            p.moveTo(-20, s.h * (0.02 + 0.19 * i));
            p.lineTo(s.w + 20, s.h * (0.025 + 0.19 * i));
            s.groove(p, 8, 14, 1.6);
            s.cover(Relief.stroke(p, 6), Stuff.dull("#1e1710"), 1.2, 0.9);
        }
    }

    /** The gauge on a bare plate or on a shim of known thickness. */
    void check() {
        s.cover(s.all(), Stuff.dull("#4d5560"));
        s.rough(s.all(), 2.4, 4, 3);
        s.mottle(s.all(), "#3a414b", 0.6, 120, 0.4, 0.7, 1);
        Shape plate = new RoundRectangle2D.Double(s.w * 0.28, s.h * 0.20, s.w * 0.44, s.h * 0.66, 30, 30);
        scene.things.lay(plate, 9, 1, Stuff.steel("#8f9294"), 9);
        for (int i = 0; i < 160; i++) {
            Path2D p = new Path2D.Double();
            double y = s.h * (0.21 + 0.64 * scene.random.nextDouble());
            p.moveTo(s.w * 0.285, y);
            p.lineTo(s.w * 0.715, y + 2);
            s.groove(p, 1.5, 0.35, 0.5);
        }
        String shim = scene.params.text("shim", "");
        if (!shim.isEmpty()) {
            Shape foil = new RoundRectangle2D.Double(s.w * 0.20, s.h * 0.33, s.w * 0.60, s.h * 0.40, 14, 14);
            s.shadow(foil, 4, 6, 5, 0.4);
            s.clearShadow(foil);
            s.raise(foil, 2, 1);
            s.cover(foil, new Stuff(Tint.hex(scene.params.text("foil", "#d8b23a")), 0.10, 0, 120), 0.5, 0.82);
            s.cover(scene.type.strong(shim, s.w * 0.215, s.h * 0.39, 46), Stuff.dull("#20262b"), 0.3, 0.95);
            s.cover(scene.type.plain("shim, +/- 1 %", s.w * 0.215, s.h * 0.70, 30), Stuff.dull("#20262b"), 0.3, 0.9);
        }
        scene.things.gauge(
                s.w * 0.5,
                s.h * 0.52,
                scene.random.nextDouble(-7, 7),
                s.h / 260.0,
                scene.params.text("shows", "0.0"),
                "mil");
    }

    /** A typed sheet on a work top. */
    void paper() {
        s.cover(s.all(), Stuff.dull("#6a4f36"));
        s.form((x, y) -> 1.6 * s.noise.fractal(x / 300, y / 7, 4));
        s.mottle(s.all(), "#3f2c1c", 0.6, 170, 0.38, 0.75, 1);
        Shape sheet = new Rectangle2D.Double(s.w * 0.13, s.h * 0.07, s.w * 0.74, s.h * 0.88);
        scene.things.lay(sheet, 2, 1, Stuff.paper("#e2dac3"), 5);
        s.rough(sheet, 2.2, 160, 3);
        s.mottle(sheet, "#b79d68", 0.7, 230, 0.46, 0.8, 1);
        Path2D fold = new Path2D.Double();
        fold.moveTo(s.w * 0.13, s.h * 0.51);
        fold.lineTo(s.w * 0.87, s.h * 0.505);
        s.groove(fold, 5, 3, 2.5);
        String[] lines = scene.params.text("text", "").split("/");
        double y = s.h * 0.165;
        for (int i = 0; i < lines.length; i++) {
            double size = i == 0 ? 50 : 37;
            String line = lines[i].replace('_', ' ');
            Shape letters =
                    i == 0 ? scene.type.strong(line, s.w * 0.18, y, size) : scene.type.plain(line, s.w * 0.18, y, size);
            s.mottle(letters, "#2a2c33", 0.92, 14, 0.06, 0.35, 0.5);
            y += i == 0 ? 78 : 60;
        }
        Shape stampRing = Relief.stroke(Relief.disc(s.w * 0.74, s.h * 0.80, 82), 7);
        s.mottle(stampRing, "#5a3566", 0.7, 18, 0.25, 0.6, 0.8);
        s.mottle(scene.type.strong("PAID", s.w * 0.74 - 52, s.h * 0.80 + 16, 46), "#5a3566", 0.7, 18, 0.25, 0.6, 0.8);
    }
}
