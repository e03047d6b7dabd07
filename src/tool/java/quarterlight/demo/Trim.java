package quarterlight.demo;

import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;

/** Wheels, lamps, bumpers, seals and script seen from near. */
final class Trim {
    private final Scene scene;
    private final Relief s;

    Trim(Scene scene) {
        this.scene = scene;
        this.s = scene.s;
    }

    void draw() {
        switch (scene.params.text("part", "wheel")) {
            case "wheel" -> wheel();
            case "headlamp" -> headlamp();
            case "bumper" -> bumper();
            case "script" -> script();
            case "seal" -> seal();
            default -> throw new IllegalArgumentException("no part " + scene.params.text("part", ""));
        }
        s.mottle(s.all(), "#8b8170", scene.params.number("dust", 0.10), 120, 0.45, 0.8, 1);
    }

    private void wheel() {
        s.cover(s.all(), Stuff.dull("#6e6656"));
        s.rough(s.all(), 8, 6, 4);
        double x = s.w * 0.5;
        double y = s.h * 0.5;
        double radius = s.h * 0.47;
        s.cover(Relief.disc(x, y - 30, radius * 1.16), Stuff.dull("#080808"), 6, 1);
        Path2D body = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        body.append(new Rectangle2D.Double(-20, -20, s.w + 40.0, s.h * 0.62), false);
        body.append(Relief.disc(x, y - 24, radius * 1.13), false);
        s.cover(body, scene.car.paint(), 0.8, 1);
        s.raise(body, 30, 8);
        Shape tire = Relief.disc(x, y, radius);
        s.shadow(tire, 4, 18, 14, 0.5);
        s.clearShadow(tire);
        s.cover(tire, Stuff.rubber());
        s.flatten(tire, 0);
        s.raise(tire, 22, 8);
        s.raise(Relief.stroke(Relief.disc(x, y, radius * 0.82), radius * 0.2), 26, 20);
        for (double f : new double[] {0.68, 0.72, 0.93}) {
            s.groove(Relief.disc(x, y, radius * f), 3, 4, 1.3);
        }
        Shape rim = Relief.disc(x, y, radius * 0.64);
        s.cover(rim, Stuff.steel("#8f9293"));
        s.raise(rim, -12, 3);
        s.raise(Relief.disc(x, y, radius * 0.56), -22, 10);
        Shape cap = Relief.disc(x, y, radius * 0.36);
        s.cover(cap, Stuff.chrome());
        s.raise(cap, 60, 26);
        s.raise(Relief.disc(x, y, radius * 0.12), 12, 5);
        for (int i = 0; i < 10; i++) {
            double a = Math.PI * 2 * i / 10;
            Shape slot = Relief.disc(x + radius * 0.46 * Math.cos(a), y + radius * 0.46 * Math.sin(a), radius * 0.055);
            s.raise(slot, -20, 2);
            s.cover(slot, Stuff.dull("#090909"), 1, 1);
        }
        s.mottle(rim, "#7d4a25", scene.params.number("rust", 0.1), 30, 0.5, 0.7, 2);
    }

    private void headlamp() {
        s.cover(s.all(), scene.car.paint());
        s.bendY = 0.6;
        double x = s.w * 0.5;
        double y = s.h * 0.47;
        double radius = s.h * 0.33;
        Shape ring = Relief.disc(x, y, radius * 1.2);
        s.shadow(ring, 6, 10, 8, 0.5);
        s.clearShadow(ring);
        s.cover(ring, Stuff.chrome());
        s.raise(ring, 40, 14);
        s.raise(Relief.disc(x, y, radius), -26, 5);
        Shape lens = Relief.disc(x, y, radius);
        s.cover(lens, new Stuff(Tint.hex("#c2c8c8"), 0.38, 0, 190));
        s.raise(lens, 60, 50);
        for (int i = -8; i <= 8; i++) {
            double half = Math.sqrt(Math.max(0, 1 - i * i / 81.0)) * radius * 0.93;
            s.groove(new Rectangle2D.Double(x + i * radius / 9, y - half, 1, 2 * half), 7, 5, 2.5);
        }
        for (int i = -2; i <= 2; i++) {
            s.groove(new Rectangle2D.Double(x - radius * 0.85, y + i * radius * 0.3, radius * 1.7, 1), 6, 4, 2);
        }
    }

    private void bumper() {
        s.cover(s.all(), scene.car.paint());
        s.bendY = 0.5;
        Shape bar = new RoundRectangle2D.Double(-60, s.h * 0.34, s.w + 120.0, s.h * 0.36, 90, 90);
        s.shadow(new Rectangle2D.Double(-60, s.h * 0.26, s.w + 120.0, 90), 0, 0, 18, 0.6);
        s.clearShadow(bar);
        s.cover(bar, Stuff.chrome());
        s.raise(bar, 120, 46);
        s.groove(new Rectangle2D.Double(-60, s.h * 0.52, s.w + 120.0, 1), 16, 14, 5);
        Shape guard = new RoundRectangle2D.Double(s.w * 0.68, s.h * 0.28, s.w * 0.09, s.h * 0.48, 60, 60);
        s.shadow(guard, 14, 18, 14, 0.6);
        s.clearShadow(guard);
        s.cover(guard, Stuff.chrome());
        s.raise(guard, 60, 20);
        if (scene.params.has("pitted")) {
            for (int i = 0; i < 700; i++) {
                double px = s.w * scene.random.nextDouble();
                double py = s.h * (0.36 + 0.32 * scene.random.nextDouble());
                Shape pit = Blob.around(scene.random, px, py, 1 + 3.6 * Math.pow(scene.random.nextDouble(), 3), 0.3, 8);
                s.cover(pit, Stuff.dull("#5b3a22"), 0.6, 0.9);
                s.raise(pit, -1.5, 1);
            }
        }
        Shape ground = new Rectangle2D.Double(-20, s.h * 0.88, s.w + 40.0, s.h * 0.3);
        s.cover(ground, Stuff.dull("#4d483d"), 4, 1);
        s.rough(ground, 10, 8, 4);
    }

    private void script() {
        s.cover(s.all(), scene.car.paint());
        s.bendY = 0.6;
        s.rough(s.all(), 0.25, 5.5, 2);
        String name = scene.params.text("text", "Fenlark");
        double size = s.h * 0.27;
        Shape letters = scene.type.slanted(name, s.w * 0.17, s.h * 0.56, size);
        s.shadow(letters, 6, 9, 5, 0.5);
        s.clearShadow(letters);
        s.cover(letters, Stuff.chrome());
        s.raise(letters, 16, 5);
        Shape line = new RoundRectangle2D.Double(s.w * 0.17, s.h * 0.63, s.w * 0.66, 12, 12, 12);
        s.shadow(line, 4, 7, 4, 0.5);
        s.clearShadow(line);
        s.cover(line, Stuff.chrome());
        s.raise(line, 10, 3);
    }

    private void seal() {
        s.cover(s.all(), scene.car.paint());
        s.bendX = 0.6;
        Path2D p = new Path2D.Double();
        p.moveTo(s.w * 0.50, -20);
        p.curveTo(s.w * 0.54, s.h * 0.3, s.w * 0.48, s.h * 0.7, s.w * 0.53, s.h + 20);
        Shape rubber = Relief.stroke(p, 110);
        s.shadow(rubber, 10, 6, 10, 0.5);
        s.clearShadow(rubber);
        s.cover(rubber, Stuff.rubber());
        s.raise(rubber, 46, 16);
        s.groove(p, 18, 16, 5);
        for (int i = 0; i < 60; i++) {
            double y = s.h * scene.random.nextDouble();
            Path2D c = new Path2D.Double();
            c.moveTo(s.w * 0.475, y);
            c.lineTo(s.w * 0.555, y + scene.random.nextDouble(-14, 14));
            s.groove(c, 2.2, 5, 0.6);
        }
        new Finds(scene).draw();
    }
}
