package quarterlight.demo;

import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;

/** Under the car, in the trunk and in the engine bay. */
final class Beneath {
    private final Scene scene;
    private final Relief s;

    Beneath(Scene scene) {
        this.scene = scene;
        this.s = scene.s;
    }

    void draw() {
        if (!scene.params.has("light")) {
            scene.light = Light.LAMP;
            scene.exposure = 1.15;
        }
        switch (scene.params.text("part", "floor")) {
            case "floor" -> floor();
            case "rail" -> rail();
            case "axle" -> axle();
            case "tank" -> tank();
            case "front" -> front();
            case "trunk" -> trunk();
            case "bay" -> bay();
            case "tower" -> tower();
            case "support" -> support();
            default -> throw new IllegalArgumentException("no part " + scene.params.text("part", ""));
        }
        dirt();
    }

    private void dirt() {
        double much = scene.params.number("dirt", 0.5);
        s.mottle(s.all(), "#6e634f", 0.75 * much, 140, 0.42, 0.76, 1);
        s.mottle(s.all(), "#7d4a25", 0.9 * scene.params.number("rust", 0.25), 55, 0.52, 0.74, 1);
        s.rough(s.all(), 0.8, 9, 3);
    }

    private void base(String color) {
        s.cover(s.all(), new Stuff(Tint.hex(color), 0.03, 0, 12));
        s.rough(s.all(), 2.2, 24, 5);
        s.rough(s.all(), 12, 260, 3);
    }

    private void floor() {
        base("#37342c");
        for (int i = 0; i < 6; i++) {
            Shape rib =
                    new RoundRectangle2D.Double(s.w * 0.04, s.h * (0.06 + 0.105 * i), s.w * 0.56, s.h * 0.045, 40, 40);
            s.raise(rib, 16, 8);
        }
        Shape plug = Relief.disc(s.w * 0.32, s.h * 0.82, 58);
        s.cover(plug, Stuff.rubber());
        s.raise(plug, 9, 6);
        tube(-0.05, 0.90, 1.05, 0.86, 74, Stuff.dull("#51473b"));
        Shape tunnel = new Rectangle2D.Double(s.w * 0.66, -20, s.w * 0.4, s.h + 40.0);
        s.raise(tunnel, -46, 40);
        tube(0.84, -0.05, 0.84, 1.05, 150, Stuff.dull("#5a5954"));
    }

    private void rail() {
        base("#2d2b25");
        Shape rail = new Rectangle2D.Double(-30, s.h * 0.34, s.w + 60.0, s.h * 0.30);
        box(rail, 60, "#34322b");
        for (int i = 0; i < 4; i++) {
            Shape slot = new RoundRectangle2D.Double(s.w * (0.10 + 0.25 * i), s.h * 0.455, 110, 62, 62, 62);
            s.raise(slot, -40, 3);
            s.cover(slot, Stuff.dull("#070706"), 1, 1);
        }
        Shape flange = new Rectangle2D.Double(-30, s.h * 0.66, s.w + 60.0, s.h * 0.055);
        s.raise(flange, 16, 4);
        for (int i = 0; i < 10; i++) {
            s.raise(Relief.disc(s.w * (0.04 + 0.10 * i), s.h * 0.688, 13), -6, 4);
        }
        tube(-0.05, 0.86, 1.05, 0.84, 22, Stuff.steel("#6d6d68"));
        tube(-0.05, 0.905, 1.05, 0.90, 16, Stuff.steel("#77715f"));
    }

    private void axle() {
        base("#26241f");
        tube(-0.05, 0.50, 1.05, 0.50, 150, Stuff.dull("#3b3934"));
        Shape pumpkin = Relief.disc(s.w * 0.5, s.h * 0.5, s.h * 0.27);
        s.shadow(pumpkin, 16, 26, 24, 0.6);
        s.clearShadow(pumpkin);
        s.cover(pumpkin, Stuff.dull("#47443d"));
        s.raise(pumpkin, 120, 46);
        s.cover(Relief.stroke(Relief.disc(s.w * 0.5, s.h * 0.5, s.h * 0.235), 30), Stuff.dull("#35332e"));
        s.raise(Relief.stroke(Relief.disc(s.w * 0.5, s.h * 0.5, s.h * 0.235), 30), 12, 4);
        for (int i = 0; i < 10; i++) {
            double a = Math.PI * 2 * i / 10;
            scene.things.bolt(
                    s.w * 0.5 + s.h * 0.235 * Math.cos(a),
                    s.h * 0.5 + s.h * 0.235 * Math.sin(a),
                    17,
                    9 * i,
                    Stuff.dull("#57524a"));
        }
        for (double fx : new double[] {0.09, 0.91}) {
            for (int i = 0; i < 4; i++) {
                Shape leaf = new Rectangle2D.Double(s.w * fx - 60, -20 - 0.0 * i, 120, s.h + 40.0);
                s.raise(leaf, 14, 4);
            }
            s.cover(new Rectangle2D.Double(s.w * fx - 60, -20, 120, s.h + 40.0), Stuff.dull("#34312b"), 2, 0.8);
        }
    }

    private void tank() {
        base("#2b2923");
        Shape tank = new RoundRectangle2D.Double(s.w * 0.12, s.h * 0.16, s.w * 0.76, s.h * 0.66, 120, 120);
        s.shadow(tank, 14, 26, 24, 0.7);
        s.clearShadow(tank);
        s.cover(tank, Stuff.steel("#6a6a66"));
        s.raise(tank, 70, 26);
        s.groove(new RoundRectangle2D.Double(s.w * 0.16, s.h * 0.22, s.w * 0.68, s.h * 0.54, 90, 90), 26, 12, 8);
        for (double fx : new double[] {0.32, 0.68}) {
            Shape strap = new Rectangle2D.Double(s.w * fx - 34, -20, 68, s.h + 40.0);
            s.shadow(strap, 5, 6, 5, 0.4);
            s.clearShadow(strap);
            s.cover(strap, Stuff.dull("#3c3931"));
            s.raise(strap, 12, 3);
        }
        scene.things.bolt(s.w * 0.5, s.h * 0.68, 30, 0, Stuff.dull("#6a675f"));
    }

    private void front() {
        base("#24221e");
        tube(0.02, 0.30, 0.98, 0.36, 120, Stuff.dull("#33312b"));
        tube(0.10, 0.80, 0.90, 0.62, 44, Stuff.dull("#4b463c"));
        tube(-0.05, 0.58, 0.52, 0.72, 34, Stuff.steel("#5c5952"));
        for (int i = 0; i < 9; i++) {
            Shape coil = Relief.stroke(
                    new java.awt.geom.Ellipse2D.Double(s.w * 0.70, s.h * (0.02 + 0.036 * i), s.w * 0.20, 60), 26);
            s.raise(coil, 18, 5);
            s.cover(coil, Stuff.dull("#2f2d28"), 1, 0.9);
        }
        scene.things.bolt(s.w * 0.24, s.h * 0.33, 36, 12, Stuff.dull("#655c4e"));
        scene.things.bolt(s.w * 0.60, s.h * 0.70, 26, 32, Stuff.dull("#655c4e"));
        Shape boot = Relief.disc(s.w * 0.52, s.h * 0.725, 58);
        s.cover(boot, Stuff.rubber());
        s.raise(boot, 46, 18);
    }

    private void trunk() {
        if (!scene.params.has("light")) {
            scene.light = Light.SHED;
        }
        base(scene.car.primer());
        s.mottle(s.all(), "#85857c", 0.45, 5, 0.56, 0.62, 1);
        for (int i = 0; i < 5; i++) {
            Shape rib =
                    new RoundRectangle2D.Double(s.w * (0.08 + 0.18 * i), s.h * 0.10, s.w * 0.05, s.h * 0.34, 40, 40);
            s.raise(rib, 13, 8);
        }
        double x = s.w * 0.52;
        double y = s.h * 0.72;
        Shape tire = Relief.disc(x, y, s.h * 0.30);
        s.shadow(tire, 16, 24, 20, 0.7);
        s.clearShadow(tire);
        s.cover(tire, Stuff.rubber());
        s.raise(tire, 60, 20);
        s.raise(Relief.disc(x, y, s.h * 0.17), -40, 8);
        s.cover(Relief.disc(x, y, s.h * 0.18), Stuff.steel("#8a8d8d"), 1, 1);
        for (int i = 0; i < 5; i++) {
            double a = Math.PI * 2 * i / 5;
            s.cover(Relief.disc(x + 62 * Math.cos(a), y + 62 * Math.sin(a), 13), Stuff.dull("#0b0b0b"), 1, 1);
        }
        scene.things.bolt(x, y, 26, 0, Stuff.steel("#9a9a96"));
    }

    private void bay() {
        if (!scene.params.has("light")) {
            scene.light = Light.YARD;
            scene.exposure = 0.95;
        }
        base("#15151a");
        tube(-0.05, 0.06, 1.05, 0.05, 60, Stuff.dull("#1b1b1b"));
        for (double fx : new double[] {0.22, 0.78}) {
            Shape cover = new RoundRectangle2D.Double(s.w * fx - 120, s.h * 0.22, 240, s.h * 0.56, 60, 60);
            s.shadow(cover, 14, 22, 18, 0.7);
            s.clearShadow(cover);
            s.cover(cover, new Stuff(Tint.hex(scene.car.engine()), 0.06, 0, 60));
            s.raise(cover, 70, 20);
            for (int i = 0; i < 4; i++) {
                scene.things.bolt(
                        s.w * fx + (i % 2 == 0 ? -96 : 96),
                        s.h * (0.27 + (i < 2 ? 0 : 0.46)),
                        15,
                        11 * i,
                        Stuff.steel("#8a8a86"));
            }
        }
        double x = s.w * 0.5;
        double y = s.h * 0.47;
        Shape cleaner = Relief.disc(x, y, s.h * 0.27);
        s.shadow(cleaner, 22, 34, 26, 0.8);
        s.clearShadow(cleaner);
        s.flatten(cleaner, 60);
        s.cover(cleaner, new Stuff(Tint.hex("#151616"), 0.10, 0, 110));
        s.raise(cleaner, 60, 16);
        s.raise(Relief.stroke(Relief.disc(x, y, s.h * 0.20), 16), 9, 4);
        s.raise(Relief.stroke(Relief.disc(x, y, s.h * 0.13), 12), 7, 4);
        scene.things.bolt(x, y, 24, 0, Stuff.steel("#b1b1ac"));
        tube(0.50, 0.18, 1.05, 0.02, 90, Stuff.dull("#161616"));
        hose(0.05, 0.95, 0.30, 0.70, 0.45, 1.0, 0.70, 0.90, 62);
        hose(0.98, 0.80, 0.85, 0.60, 0.70, 0.20, 0.55, 0.12, 34);
        for (int i = 0; i < 4; i++) {
            hose(0.22, 0.30 + 0.13 * i, 0.12, 0.26 + 0.13 * i, 0.07, 0.5, 0.02, 0.62, 12);
            hose(0.78, 0.30 + 0.13 * i, 0.88, 0.26 + 0.13 * i, 0.94, 0.4, 0.98, 0.32, 12);
        }
        Shape battery = new RoundRectangle2D.Double(s.w * 0.86, s.h * 0.58, s.w * 0.18, s.h * 0.34, 16, 16);
        s.shadow(battery, -8, 12, 14, 0.6);
        s.clearShadow(battery);
        s.cover(battery, Stuff.plastic("#202224"));
        s.raise(battery, 60, 7);
        s.cover(Relief.disc(s.w * 0.90, s.h * 0.64, 20), Stuff.steel("#8f8a80"));
        s.raise(Relief.disc(s.w * 0.90, s.h * 0.64, 20), 20, 5);
    }

    private void tower() {
        if (!scene.params.has("light")) {
            scene.light = Light.YARD;
        }
        base("#191a1a");
        Shape dome = Relief.disc(s.w * 0.5, s.h * 0.46, s.h * 0.34);
        s.raise(dome, 110, 40);
        Shape cap = Relief.disc(s.w * 0.5, s.h * 0.46, s.h * 0.16);
        s.raise(cap, 14, 5);
        for (int i = 0; i < 3; i++) {
            double a = Math.PI * 2 * i / 3 + 0.5;
            scene.things.bolt(
                    s.w * 0.5 + s.h * 0.115 * Math.cos(a),
                    s.h * 0.46 + s.h * 0.115 * Math.sin(a),
                    20,
                    17 * i,
                    Stuff.steel("#7d7a72"));
        }
        for (int i = 0; i < 12; i++) {
            s.raise(Relief.disc(s.w * (0.04 + 0.085 * i), s.h * 0.93, 11), -5, 3);
        }
        hose(-0.02, 0.30, 0.2, 0.2, 0.3, 0.9, 1.02, 0.78, 26);
    }

    private void support() {
        if (!scene.params.has("light")) {
            scene.light = Light.YARD;
        }
        base("#181818");
        Shape core = new Rectangle2D.Double(s.w * 0.16, s.h * 0.30, s.w * 0.68, s.h + 20.0);
        s.cover(core, Stuff.dull("#1e1d1b"));
        for (int i = 0; i < 58; i++) {
            s.groove(new Rectangle2D.Double(s.w * (0.165 + 0.0115 * i), s.h * 0.31, 1, s.h), 4, 7, 1.2);
        }
        Shape bar = new Rectangle2D.Double(-20, s.h * 0.08, s.w + 40.0, s.h * 0.17);
        box(bar, 44, scene.params.text("bar", "#1a1a1a"));
        for (int i = 0; i < 4; i++) {
            scene.things.bolt(s.w * (0.10 + 0.26 * i), s.h * 0.165, 22, 13 * i, Stuff.steel("#84817a"));
        }
        Shape cap = Relief.disc(s.w * 0.72, s.h * 0.36, 66);
        s.shadow(cap, 8, 12, 10, 0.6);
        s.clearShadow(cap);
        s.cover(cap, Stuff.steel("#b0a98f"));
        s.raise(cap, 36, 10);
    }

    private void box(Shape shape, double height, String color) {
        s.shadow(shape, 0, 30, 20, 0.6);
        s.clearShadow(shape);
        s.cover(shape, new Stuff(Tint.hex(color), 0.035, 0, 16));
        s.raise(shape, height, 10);
    }

    private void tube(double x1, double y1, double x2, double y2, double width, Stuff stuff) {
        Path2D p = new Path2D.Double();
        p.moveTo(s.w * x1, s.h * y1);
        p.lineTo(s.w * x2, s.h * y2);
        round(p, width, stuff);
    }

    private void hose(
            double x1, double y1, double cx, double cy, double dx, double dy, double x2, double y2, double width) {
        Path2D p = new Path2D.Double();
        p.moveTo(s.w * x1, s.h * y1);
        p.curveTo(s.w * cx, s.h * cy, s.w * dx, s.h * dy, s.w * x2, s.h * y2);
        round(p, width, Stuff.rubber());
    }

    private void round(Path2D path, double width, Stuff stuff) {
        Shape shape = Relief.stroke(path, width);
        s.shadow(shape, width * 0.12, width * 0.22, width * 0.16 + 2, 0.6);
        s.clearShadow(shape);
        s.cover(shape, stuff, 0.6, 1);
        for (int i = 1; i <= 4; i++) {
            s.raise(Relief.stroke(path, width * (1.05 - 0.22 * i)), width * 0.17 / Math.sqrt(i), width * 0.06 + 0.6);
        }
    }
}
