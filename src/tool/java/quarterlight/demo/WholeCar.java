package quarterlight.demo;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;

/** The whole car from the side, from ahead and from behind, standing on gravel before a plank wall. */
final class WholeCar {
    private static final double LENGTH_MM = 4690;
    private final Scene scene;
    private final Relief s;
    private double k;
    private double left;
    private double ground;

    WholeCar(Scene scene) {
        this.scene = scene;
        this.s = scene.s;
    }

    void draw() {
        String from = scene.params.text("from", "left");
        backdrop();
        if (from.equals("left") || from.equals("right")) {
            k = s.w * 0.86 / LENGTH_MM;
            left = s.w * 0.07;
            ground = s.h * 0.76;
            side();
            if (from.equals("right")) {
                mirror();
            }
        } else {
            k = s.w * 0.56 / 1810;
            left = s.w * 0.5;
            ground = s.h * 0.82;
            end(from.equals("front"));
        }
    }

    private void backdrop() {
        s.cover(s.all(), Stuff.dull("#7d7361"));
        s.mottle(s.all(), "#5b5142", 0.8, 130, 0.35, 0.7, 1);
        double floor = s.h * 0.60;
        for (int i = 0; i < 26; i++) {
            Path2D p = new Path2D.Double();
            double x = s.w * (0.02 + i * 0.0415);
            p.moveTo(x, -10);
            p.lineTo(x, floor);
            s.groove(p, 5, 9, 1.3);
            s.dye(
                    new Rectangle2D.Double(x, -10, s.w * 0.0415, floor + 10),
                    i % 3 == 0 ? "#4d4436" : "#95886f",
                    0.5,
                    0.10 + 0.05 * (i * 7 % 4));
        }
        s.form((x, y) -> y < floor ? 1.4 * s.noise.fractal(x / 5, y / 160, 3) : 0);
        Shape gravel = new Rectangle2D.Double(-20, floor, s.w + 40.0, s.h);
        s.cover(gravel, Stuff.dull("#8d8574"), 3, 1);
        s.rough(gravel, 7, 5, 3);
        s.mottle(gravel, "#5e574a", 0.7, 60, 0.40, 0.72, 1);
        s.mottle(gravel, "#6b6a45", 0.45, 90, 0.60, 0.8, 1);
        s.shadow(new Rectangle2D.Double(-20, floor - 8, s.w + 40.0, 18), 0, 0, 9, 0.45);
    }

    private double x(double mm) {
        return left + (mm + 850) * k;
    }

    private double y(double mm) {
        return ground - mm * k;
    }

    private void side() {
        Path2D body = body();
        Shape under = new java.awt.geom.Ellipse2D.Double(x(-860), y(60), LENGTH_MM * k * 1.01, 190 * k);
        s.shadow(under, 0, 0, 26 * k + 8, 0.92);
        s.shadow(new Rectangle2D.Double(x(-700), y(330), 4300 * k, 300 * k), 0, 0, 9, 0.95);
        s.clearShadow(body);
        s.flatten(body, 30);
        s.cover(body, scene.car.paint());
        s.each(body, 0.4, (i, a) -> {
            int row = i / s.w;
            double mm = (ground - row) / k;
            s.z[i] += (float) (a * profile(mm) * k * 2.2);
        });
        s.raise(body, 6, 5);
        roof();
        glass();
        wheels();
        details();
    }

    /** How far the flank stands out at a height, mm: turned under at the sill, full at mid height, leaning in above the belt. */
    private static double profile(double mm) {
        double low = -70 * Math.pow(Relief.step(480, 180, mm), 1.4);
        double shoulder = -60 * Relief.step(700, 930, mm);
        double crease = 9 * Relief.step(640, 660, mm) - 9 * Relief.step(668, 760, mm);
        double house = -150 * Relief.step(880, 1340, mm);
        return low + shoulder + crease + house;
    }

    private Path2D body() {
        Path2D p = new Path2D.Double();
        p.moveTo(x(-850), y(520));
        p.curveTo(x(-845), y(640), x(-830), y(715), x(-770), y(735));
        p.curveTo(x(-400), y(840), x(100), y(905), x(620), y(935));
        p.curveTo(x(780), y(1090), x(960), y(1240), x(1180), y(1280));
        p.curveTo(x(1450), y(1340), x(1850), y(1335), x(2130), y(1270));
        p.curveTo(x(2400), y(1190), x(2620), y(1050), x(2790), y(955));
        p.curveTo(x(3100), y(950), x(3500), y(930), x(3760), y(905));
        p.curveTo(x(3830), y(860), x(3838), y(700), x(3836), y(560));
        p.curveTo(x(3835), y(420), x(3800), y(330), x(3700), y(310));
        p.lineTo(x(3160), y(262));
        p.lineTo(x(-380), y(232));
        p.curveTo(x(-600), y(250), x(-800), y(300), x(-838), y(400));
        p.closePath();
        return p;
    }

    private void roof() {
        Path2D edge = new Path2D.Double();
        edge.moveTo(x(620), y(935));
        edge.curveTo(x(780), y(1090), x(960), y(1240), x(1180), y(1280));
        edge.curveTo(x(1450), y(1340), x(1850), y(1335), x(2130), y(1270));
        edge.curveTo(x(2400), y(1190), x(2620), y(1050), x(2790), y(955));
        Shape band = Relief.stroke(edge, 34 * k);
        s.raise(band, -8, 4);
    }

    private void glass() {
        Path2D house = new Path2D.Double();
        house.moveTo(x(760), y(925));
        house.curveTo(x(900), y(1080), x(1040), y(1205), x(1200), y(1240));
        house.curveTo(x(1450), y(1285), x(1800), y(1280), x(2010), y(1232));
        house.curveTo(x(2120), y(1190), x(2200), y(1080), x(2240), y(928));
        house.closePath();
        s.cover(house, new Stuff(Tint.hex("#0d1213"), 0.20, 0, 190));
        s.raise(house, -6, 2);
        Shape seatBack = new RoundRectangle2D.Double(x(1420), y(1010), 210 * k, 120 * k, 40 * k, 40 * k);
        s.dye(new Area(seatBack), scene.car.trim(), 3, 0.6);
        s.cover(Relief.stroke(house, 16 * k), Stuff.chrome(), 0.4, 1);
        s.raise(Relief.stroke(house, 16 * k), 3, 2);
        line(5, 1700, 925, 1690, 1252);
    }

    private void wheels() {
        for (double at : new double[] {0, 2740}) {
            double cx = x(at);
            double cy = y(325);
            Path2D arch = new Path2D.Double();
            arch.append(
                    new java.awt.geom.Arc2D.Double(
                            cx - 385 * k, cy - 375 * k, 770 * k, 750 * k, -16, 212, java.awt.geom.Arc2D.CHORD),
                    false);
            Area opening = new Area(arch);
            opening.intersect(new Area(body()));
            s.raise(Relief.stroke(arch, 26 * k), 3, 2);
            s.cover(opening, Stuff.dull("#060606"), 0.8, 1);
            s.raise(opening, -26, 1.5);
            Shape tire = Relief.disc(cx, cy, 325 * k);
            s.clearShadow(tire);
            s.cover(tire, Stuff.rubber(), 0.6, 1);
            s.flatten(tire, 26);
            s.raise(tire, 9, 4);
            s.raise(Relief.stroke(Relief.disc(cx, cy, 262 * k), 60 * k), 5, 5);
            Shape rim = Relief.disc(cx, cy, 205 * k);
            s.cover(rim, Stuff.steel("#9a9c9d"), 0.6, 1);
            s.raise(rim, -7, 2.5);
            Shape cap = Relief.disc(cx, cy, 150 * k);
            s.cover(cap, Stuff.chrome(), 0.6, 1);
            s.raise(cap, 18, 13);
            s.raise(Relief.disc(cx, cy, 46 * k), 6, 3);
            for (int i = 0; i < 12; i++) {
                double a = Math.PI * i / 6;
                s.cover(
                        Relief.disc(cx + 178 * k * Math.cos(a), cy + 178 * k * Math.sin(a), 13 * k),
                        Stuff.dull("#15150f"),
                        0.5,
                        0.9);
            }
        }
    }

    private void details() {
        line(5, 560, 935, 545, 300);
        line(5, 1760, 925, 1748, 262);
        line(4, 545, 300, 1748, 300);
        line(4, 2795, 952, 2870, 925, 3775, 898);
        line(4, -745, 730, 540, 905);
        chrome(1560, 770, 130, 26);
        chrome(-870, 545, 120, 150);
        chrome(3725, 565, 150, 150);
        lamp("#c98a2e", -690, 480, 110, 44);
        lamp("#7e1015", 3560, 700, 120, 44);
        line(3, -640, 655, 3600, 655);
        if (scene.params.has("worn")) {
            s.mottle(new Rectangle2D.Double(x(-800), y(330), 4600 * k, 90 * k), "#7a5a3c", 0.6, 40, 0.5, 0.75, 4);
        }
        if (scene.params.has("patch")) {
            Shape q = new Rectangle2D.Double(x(1900), y(900), 1900 * k, 620 * k);
            s.dye(q, scene.params.text("patch", scene.car.body()), 60 * k, 0.16);
        }
    }

    private void chrome(double mmX, double mmY, double w, double h) {
        Shape p = new RoundRectangle2D.Double(x(mmX), y(mmY), w * k, h * k, 24 * k, 24 * k);
        s.clearShadow(p);
        s.cover(p, Stuff.chrome(), 0.4, 1);
        s.raise(p, 8, 4);
    }

    private void lamp(String color, double mmX, double mmY, double w, double h) {
        Shape p = new RoundRectangle2D.Double(x(mmX), y(mmY), w * k, h * k, 10 * k, 10 * k);
        s.cover(p, new Stuff(Tint.hex(color), 0.12, 0, 120), 0.4, 1);
        s.raise(p, 3, 1.5);
    }

    private void line(double width, double... mm) {
        Path2D p = new Path2D.Double();
        p.moveTo(x(mm[0]), y(mm[1]));
        for (int i = 2; i < mm.length; i += 2) {
            p.lineTo(x(mm[i]), y(mm[i + 1]));
        }
        s.groove(p, Math.max(1.6, width * k * 2), 7, 0.8);
        s.dye(Relief.stroke(p, Math.max(1.4, width * k * 1.6)), "#050505", 0.5, 0.85);
    }

    private void mirror() {
        for (float[] field : new float[][] {s.z, s.r, s.g, s.b, s.mirror, s.metal, s.shine, s.dark}) {
            for (int row = 0; row < s.h; row++) {
                for (int i = 0; i < s.w / 2; i++) {
                    int a = row * s.w + i;
                    int b = row * s.w + s.w - 1 - i;
                    float keep = field[a];
                    field[a] = field[b];
                    field[b] = keep;
                }
            }
        }
    }

    /** From ahead or behind, drawn for the right half and mirrored about the middle. */
    private void end(boolean front) {
        double m = left;
        Path2D body = half(m, new double[][] {
            {0, front ? 905 : 930},
            {560, front ? 893 : 915},
            {800, 858},
            {890, 800},
            {908, 700},
            {910, 450},
            {895, 330},
            {850, 258},
            {0, 250}
        });
        Path2D house = half(m, new double[][] {
            {0, 1335}, {430, 1322}, {545, 1290}, {610, 1215}, {735, 965}, {800, 850}, {800, 780}, {0, 780}
        });
        s.shadow(new java.awt.geom.Ellipse2D.Double(m - 960 * k, y(70), 1920 * k, 170 * k), 0, 0, 20, 0.95);
        s.shadow(new Rectangle2D.Double(m - 880 * k, y(330), 1760 * k, 320 * k), 0, 0, 8, 0.95);
        for (int side = -1; side <= 1; side += 2) {
            Shape tire =
                    new RoundRectangle2D.Double(m + side * 735 * k - 100 * k, y(640), 200 * k, 640 * k, 60 * k, 60 * k);
            s.clearShadow(tire);
            s.cover(tire, Stuff.rubber());
            s.flatten(tire, 8);
            s.raise(tire, 12, 8);
            for (int i = -2; i <= 2; i++) {
                s.groove(new Rectangle2D.Double(m + side * 735 * k + i * 34 * k, y(640), 1, 640 * k), 5, 5, 1.2);
            }
        }
        layer(house, 900, 1340, 60);
        Path2D pane = half(
                m, new double[][] {{0, 1292}, {420, 1280}, {520, 1246}, {575, 1160}, {690, 945}, {700, 905}, {0, 905}});
        s.cover(pane, new Stuff(Tint.hex("#0d1213"), 0.20, 0, 190), 0.5, 1);
        s.cover(Relief.stroke(pane, 20 * k), Stuff.chrome(), 0.4, 1);
        layer(body, 250, 900, 90);
        Shape bumper = new RoundRectangle2D.Double(m - 880 * k, y(530), 1760 * k, 130 * k, 60 * k, 60 * k);
        s.shadow(bumper, 0, 16, 8, 0.7);
        s.clearShadow(bumper);
        s.cover(bumper, Stuff.chrome());
        s.raise(bumper, 30, 12);
        if (front) {
            nose(m);
        } else {
            tail(m);
        }
    }

    private void nose(double m) {
        Shape grille = new RoundRectangle2D.Double(m - 470 * k, y(770), 940 * k, 190 * k, 30 * k, 30 * k);
        s.cover(grille, Stuff.dull("#0b0b0b"), 0.6, 1);
        s.raise(grille, -20, 2);
        for (int i = 1; i < 8; i++) {
            Shape bar = new Rectangle2D.Double(m - 465 * k, y(770 - 190 * i / 8.0), 930 * k, 6 * k);
            s.cover(bar, Stuff.chrome(), 0.5, 1);
            s.raise(bar, 12, 1.4);
        }
        for (int side = -1; side <= 1; side += 2) {
            double cx = m + side * 640 * k;
            s.cover(Relief.disc(cx, y(680), 118 * k), Stuff.chrome(), 0.5, 1);
            s.raise(Relief.disc(cx, y(680), 118 * k), 12, 5);
            s.cover(Relief.disc(cx, y(680), 90 * k), new Stuff(Tint.hex("#b9c0c2"), 0.42, 0, 160), 0.5, 1);
            s.raise(Relief.disc(cx, y(680), 90 * k), 16, 14);
            for (int i = -3; i <= 3; i++) {
                s.groove(new Rectangle2D.Double(cx + i * 22 * k, y(740), 1, 120 * k), 2.4, 2, 0.8);
            }
            Shape turn = new RoundRectangle2D.Double(m + side * 560 * k - 90 * k, y(360), 180 * k, 54 * k, 16, 16);
            s.cover(turn, new Stuff(Tint.hex("#c98a2e"), 0.12, 0, 120));
        }
        Path2D ridge = new Path2D.Double();
        ridge.moveTo(m, y(900));
        ridge.lineTo(m, y(785));
        s.raise(Relief.stroke(ridge, 60 * k), 6, 12 * k);
    }

    private void tail(double m) {
        Path2D gap = half(m, new double[][] {{0, 905}, {510, 896}, {585, 876}, {592, 712}, {582, 692}, {0, 690}});
        s.groove(gap, 5, 8, 0.9);
        s.dye(Relief.stroke(gap, 3.4), "#050505", 0.5, 0.9);
        for (int side = -1; side <= 1; side += 2) {
            Shape lamp = new RoundRectangle2D.Double(m + side * 735 * k - 130 * k, y(745), 260 * k, 150 * k, 20, 20);
            s.cover(Relief.stroke(lamp, 18 * k), Stuff.chrome(), 0.5, 1);
            s.cover(lamp, new Stuff(Tint.hex("#86101a"), 0.12, 0, 150));
            s.raise(lamp, 6, 3);
            for (int i = 0; i < 7; i++) {
                s.groove(
                        new Rectangle2D.Double(m + side * 735 * k - 128 * k, y(725 - 20 * i), 256 * k, 1),
                        2.4,
                        2.5,
                        0.8);
            }
        }
        Shape plate = new RoundRectangle2D.Double(m - 155 * k, y(400), 310 * k, 120 * k, 12, 12);
        s.clearShadow(plate);
        s.cover(plate, Stuff.paper("#cfc9b6"));
        s.cover(new Rectangle2D.Double(m - 140 * k, y(350), 280 * k, 24 * k), Stuff.dull("#8b8778"), 6, 0.8);
        Shape lock = Relief.disc(m, y(775), 24 * k);
        s.cover(lock, Stuff.chrome());
        s.raise(lock, 5, 2);
    }

    private void layer(Path2D shape, double fromMm, double toMm, double swell) {
        s.clearShadow(shape);
        s.flatten(shape, 30);
        s.cover(shape, scene.car.paint());
        double m = left;
        s.each(shape, 0.4, (i, a) -> {
            int row = i / s.w;
            double mm = (ground - row) / k;
            double u = (mm - fromMm) / (toMm - fromMm) * 2 - 0.9;
            double v = (i % s.w - m) / (910 * k);
            s.z[i] += (float) (a * swell * k * 2.6 * (1 - 0.8 * u * u * Math.abs(u) - 1.1 * v * v * v * v));
        });
        s.raise(shape, 5, 5);
    }

    /** An outline of the right half, its corners rounded, joined with its mirror image. */
    private Path2D half(double m, double[][] corners) {
        double[][] points = rounded(rounded(corners));
        Path2D right = new Path2D.Double();
        right.moveTo(m + points[0][0] * k, y(points[0][1]));
        for (int i = 1; i < points.length; i++) {
            right.lineTo(m + points[i][0] * k, y(points[i][1]));
        }
        right.closePath();
        AffineTransform flip = AffineTransform.getTranslateInstance(2 * m, 0);
        flip.scale(-1, 1);
        Area both = new Area(right);
        both.add(new Area(flip.createTransformedShape(right)));
        Area rounded = new Area(both);
        rounded.add(new Area(Relief.stroke(both, 30 * k)));
        return new Path2D.Double(rounded);
    }

    /** Cuts every corner but the ends at a quarter and three quarters of its sides (Chaikin). */
    private static double[][] rounded(double[][] p) {
        double[][] out = new double[2 * p.length - 2][];
        out[0] = p[0];
        for (int i = 0; i < p.length - 1; i++) {
            double from = i == 0 ? 0 : 0.25;
            double to = i == p.length - 2 ? 1 : 0.75;
            out[2 * i] = between(p[i], p[i + 1], from);
            out[2 * i + 1] = between(p[i], p[i + 1], to);
        }
        return out;
    }

    private static double[] between(double[] a, double[] b, double share) {
        return new double[] {a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share};
    }
}
