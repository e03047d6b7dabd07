package quarterlight.demo;

import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** What shows on a painted panel: overspray, a tape edge, sanding scratches, ripples, cracks, primer, dust, chips. */
final class Finds {
    private final Scene scene;
    private final Relief s;

    Finds(Scene scene) {
        this.scene = scene;
        this.s = scene.s;
    }

    void draw() {
        for (String find : scene.params.text("finds", "").split(" ")) {
            switch (find) {
                case "" -> {}
                case "overspray" -> overspray();
                case "tape" -> tape();
                case "scratches" -> scratches();
                case "ripple" -> ripple();
                case "cracks" -> cracks();
                case "primer" -> primer();
                case "chips" -> chips();
                case "chalk" -> chalk();
                case "bubbles" -> bubbles();
                case "runs" -> runs();
                case "stencil" -> stencil();
                case "differs" -> differs();
                default -> throw new IllegalArgumentException("nothing known as " + find);
            }
        }
        s.mottle(s.all(), "#8b8170", 0.10, 190, 0.45, 0.8, 1);
    }

    private void overspray() {
        Shape rubber = new Rectangle2D.Double(s.w * 0.70, -20, s.w * 0.16, s.h + 40.0);
        s.cover(rubber, Stuff.rubber(), 1, 1);
        s.raise(rubber, 18, 9);
        Path2D mist = new Path2D.Double();
        mist.moveTo(s.w * 0.69, -20);
        mist.lineTo(s.w * 0.735, -20);
        mist.curveTo(s.w * 0.75, s.h * 0.4, s.w * 0.72, s.h * 0.7, s.w * 0.745, s.h + 20);
        mist.lineTo(s.w * 0.69, s.h + 20);
        mist.closePath();
        s.cover(mist, new Stuff(Tint.hex(scene.car.body()), 0.03, 0, 8), 10, 0.85);
        s.rough(mist, 6, 2.4, 2);
    }

    private void tape() {
        Path2D edge = new Path2D.Double();
        edge.moveTo(s.w * 0.20, -20);
        edge.lineTo(s.w * 0.24, s.h + 20);
        Path2D beyond = new Path2D.Double(edge);
        beyond.lineTo(s.w + 30, s.h + 20);
        beyond.lineTo(s.w + 30, -20);
        beyond.closePath();
        s.raise(beyond, 3.2, 0.8);
        s.dye(beyond, scene.params.text("over", scene.car.body()), 1, 0.30);
        s.raise(Relief.stroke(edge, 6), 2.2, 1.4);
    }

    private void scratches() {
        for (int i = 0; i < 160; i++) {
            double x = s.w * (0.25 + 0.5 * scene.random.nextDouble());
            double y = s.h * (0.33 + 0.15 * scene.random.nextDouble());
            double a = -0.5 + 0.25 * scene.random.nextDouble();
            double length = 40 + 90 * scene.random.nextDouble();
            Path2D p = new Path2D.Double();
            p.moveTo(x, y);
            p.lineTo(x + length * Math.cos(a), y + length * Math.sin(a));
            s.groove(p, 1.6, 0.9, 0.5);
        }
    }

    private void ripple() {
        double x0 = s.w * scene.params.number("rx", 0.6);
        double y0 = s.h * scene.params.number("ry", 0.6);
        s.form((x, y) -> {
            double d = Math.hypot((x - x0) / 1.35, y - y0);
            double within = Relief.step(330, 90, d);
            return within * (4.2 * Math.sin(x / 46 + 1.3 * Math.sin(y / 70)) + 3.0 * Math.sin(y / 39 + x / 95));
        });
    }

    private void cracks() {
        for (int i = 0; i < 16; i++) {
            Path2D p = new Path2D.Double();
            double x = s.w * (0.1 + 0.8 * scene.random.nextDouble());
            double y = s.h * (0.1 + 0.7 * scene.random.nextDouble());
            double a = scene.random.nextDouble(0.9, 2.2);
            p.moveTo(x, y);
            for (int j = 0; j < 26; j++) {
                a += scene.random.nextDouble(-0.35, 0.35);
                x += 11 * Math.cos(a);
                y += 11 * Math.sin(a);
                p.lineTo(x, y);
            }
            s.groove(p, 1.8, 2.6, 0.5);
            s.dye(Relief.stroke(p, 1.5), "#3a3226", 0.4, 0.6);
        }
    }

    /** Paint worn through on the high places. */
    private void primer() {
        double x = s.w * scene.params.number("rx", 0.45);
        double y = s.h * scene.params.number("ry", 0.45);
        Shape worn = Blob.around(scene.random, x, y, 190, 0.35, 36);
        s.mottle(worn, scene.car.primer(), 0.96, 70, 0.36, 0.52, 26);
        Shape through = Blob.around(scene.random, x + 15, y - 8, 60, 0.4, 30);
        s.mottle(through, "#77736a", 0.9, 40, 0.42, 0.58, 14);
        s.raise(worn, -1.6, 16);
    }

    private void chips() {
        for (int i = 0; i < 46; i++) {
            double x = s.w * scene.random.nextDouble();
            double y = s.h * scene.random.nextDouble();
            Shape chip = Blob.around(scene.random, x, y, 2 + 7 * Math.pow(scene.random.nextDouble(), 3), 0.4, 9);
            s.cover(chip, Stuff.dull(scene.random.nextInt(3) == 0 ? "#5d3a22" : scene.car.primer()), 0.5, 0.95);
            s.raise(chip, -1.5, 0.7);
        }
    }

    private void chalk() {
        s.mottle(s.all(), "#cfd3d0", 0.22, 300, 0.35, 0.75, 1);
        s.dull(s.all(), 0.55, 1);
        for (int i = 0; i < 240; i++) {
            double x = s.w * scene.random.nextDouble();
            double y = s.h * scene.random.nextDouble();
            s.raise(Relief.disc(x, y, 1.2 + scene.random.nextDouble()), -0.8, 0.5);
        }
    }

    private void bubbles() {
        double x0 = s.w * scene.params.number("rx", 0.5);
        double y0 = s.h * scene.params.number("ry", 0.62);
        for (int i = 0; i < 90; i++) {
            double a = scene.random.nextDouble() * Math.PI * 2;
            double d = 170 * Math.sqrt(scene.random.nextDouble());
            double radius = 4 + 13 * Math.pow(scene.random.nextDouble(), 2);
            Shape blister =
                    Blob.around(scene.random, x0 + 1.5 * d * Math.cos(a), y0 + d * Math.sin(a), radius, 0.25, 12);
            s.raise(blister, radius * 0.5, radius * 0.35);
            if (scene.random.nextInt(4) == 0) {
                s.dye(Relief.stroke(blister, 2.5), "#6b3d1c", 1.5, 0.7);
            }
        }
    }

    private void runs() {
        for (int i = 0; i < 7; i++) {
            double x = s.w * (0.2 + 0.09 * i + 0.03 * scene.random.nextDouble());
            double y = s.h * (0.30 + 0.1 * scene.random.nextDouble());
            double length = 60 + 150 * scene.random.nextDouble();
            Path2D p = new Path2D.Double();
            p.moveTo(x, y);
            p.lineTo(x + 3, y + length);
            s.raise(Relief.stroke(p, 9), 2.2, 3.5);
            s.raise(Relief.disc(x + 3, y + length, 9), 3.4, 4);
        }
    }

    private void stencil() {
        Shape text = scene.type.struck("F2 K7", s.w * 0.16, s.h * 0.80, 120, 82, scene.random);
        s.mottle(text, "#e4dfcf", 0.85, 26, 0.22, 0.5, 1.2);
    }

    private void differs() {
        Path2D beyond = new Path2D.Double();
        beyond.moveTo(s.w * 0.53, -20);
        beyond.lineTo(s.w + 20, -20);
        beyond.lineTo(s.w + 20, s.h + 20);
        beyond.lineTo(s.w * 0.52, s.h + 20);
        beyond.closePath();
        s.dye(beyond, scene.params.text("over", "#5c7a6a"), 1, 0.25);
        s.rough(beyond, 0.9, 7, 2);
    }
}
