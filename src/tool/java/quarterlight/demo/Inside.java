package quarterlight.demo;

import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;

/** The cabin and what one tries there: instruments, odometer, seats, door panel, pedals, carpet, headliner. */
final class Inside {
    private final Scene scene;
    private final Relief s;

    Inside(Scene scene) {
        this.scene = scene;
        this.s = scene.s;
    }

    void draw() {
        if (!scene.params.has("light")) {
            scene.light = Light.SHED;
        }
        switch (scene.params.text("part", "dash")) {
            case "dash" -> dash();
            case "odometer" -> odometer();
            case "seat" -> seat();
            case "panel" -> panel();
            case "pedals" -> pedals();
            case "carpet" -> cloth("#2b2a28", 7, 2.4);
            case "headliner" -> headliner();
            default -> throw new IllegalArgumentException("no part " + scene.params.text("part", ""));
        }
    }

    private Stuff vinyl() {
        return new Stuff(Tint.hex(scene.car.trim()), 0.035, 0, 22);
    }

    private void dash() {
        s.cover(s.all(), vinyl());
        s.rough(s.all(), 1.4, 4, 2);
        s.form((x, y) -> 90 * Math.exp(-Math.pow((y / s.h - 0.16) / 0.13, 2)));
        Shape cluster = new RoundRectangle2D.Double(s.w * 0.08, s.h * 0.30, s.w * 0.84, s.h * 0.42, 60, 60);
        s.cover(cluster, new Stuff(Tint.hex("#17191a"), 0.04, 0, 40));
        s.raise(Relief.stroke(cluster, 16), 12, 5);
        s.cover(Relief.stroke(cluster, 10), Stuff.chrome(), 1, 0.9);
        s.raise(cluster, -12, 5);
        dial(0.27, 0.51, 0.165, 12, 120, "MPH", scene.params.text("odo", "064312"), 0);
        dial(0.57, 0.51, 0.165, 8, 8, "OIL  AMP", "", 0.3);
        dial(0.80, 0.46, 0.085, 4, 4, "FUEL", "", 0.18);
        dial(0.80, 0.64, 0.065, 4, 4, "TEMP", "", 0.0);
        wheel();
        if (scene.params.has("cracked")) {
            crack(0.60);
            crack(0.34);
        }
    }

    private void dial(double fx, double fy, double fr, int marks, int most, String name, String count, double needle) {
        double x = s.w * fx;
        double y = s.h * fy;
        double radius = s.h * fr;
        s.cover(Relief.disc(x, y, radius * 1.10), Stuff.chrome());
        s.raise(Relief.disc(x, y, radius * 1.10), 9, 4);
        s.cover(Relief.disc(x, y, radius), new Stuff(Tint.hex("#0d0e0e"), 0.07, 0, 170));
        s.raise(Relief.disc(x, y, radius), -14, 2);
        for (int i = 0; i <= marks; i++) {
            double a = Math.toRadians(-225 + 270.0 * i / marks);
            Path2D tick = new Path2D.Double();
            tick.moveTo(x + radius * 0.90 * Math.cos(a), y + radius * 0.90 * Math.sin(a));
            tick.lineTo(x + radius * 0.78 * Math.cos(a), y + radius * 0.78 * Math.sin(a));
            s.dye(Relief.stroke(tick, 4), "#dfe2da", 0.4, 1);
            if (marks > 8 && i % 2 == 0) {
                String n = Integer.toString(most * i / marks);
                s.dye(
                        scene.type.plain(
                                n,
                                x + radius * 0.60 * Math.cos(a) - scene.type.width(n, radius * 0.15) / 2,
                                y + radius * 0.60 * Math.sin(a) + radius * 0.05,
                                radius * 0.15),
                        "#dfe2da",
                        0.4,
                        1);
            }
        }
        double wide = scene.type.width(name, radius * 0.14);
        s.dye(scene.type.plain(name, x - wide / 2, y - radius * 0.24, radius * 0.14), "#b9beb6", 0.4, 1);
        if (!count.isEmpty()) {
            counter(count, x - radius * 0.42, y + radius * 0.34, radius * 0.84, radius * 0.22);
        }
        double a = Math.toRadians(-225 + 270 * needle);
        Path2D hand = new Path2D.Double();
        hand.moveTo(x, y);
        hand.lineTo(x + radius * 0.80 * Math.cos(a), y + radius * 0.80 * Math.sin(a));
        s.dye(Relief.stroke(hand, 6), "#d5642a", 0.5, 1);
        s.cover(Relief.disc(x, y, radius * 0.09), Stuff.plastic("#1d1d1d"));
        s.raise(Relief.disc(x, y, radius * 0.09), 8, 3);
    }

    private void counter(String digits, double x, double y, double w, double h) {
        Shape window = new RoundRectangle2D.Double(x - 6, y - 5, w + 12, h + 10, 8, 8);
        s.cover(window, Stuff.dull("#050505"));
        double cell = w / digits.length();
        for (int i = 0; i < digits.length(); i++) {
            boolean tenth = i == digits.length() - 1;
            Shape drum = new Rectangle2D.Double(x + cell * i + 2, y, cell - 4, h);
            s.cover(drum, Stuff.plastic(tenth ? "#d9d6cb" : "#161718"));
            double lift = i == digits.length() - 2 ? h * 0.10 : 0;
            String d = digits.substring(i, i + 1);
            double size = h * 0.92;
            s.dye(
                    scene.type.strong(
                            d, x + cell * (i + 0.5) - scene.type.width(d, size) / 2, y + h * 0.80 - lift, size),
                    tenth ? "#9b1c31" : "#e6e4da",
                    0.5,
                    1);
        }
        s.shadow(new Rectangle2D.Double(x - 6, y - 5, w + 12, h * 0.28), 0, 0, h * 0.1, 0.6);
        s.shadow(new Rectangle2D.Double(x - 6, y + h * 0.82, w + 12, h * 0.3), 0, 0, h * 0.1, 0.5);
    }

    private void wheel() {
        Shape rim = Relief.stroke(Relief.disc(s.w * 0.40, s.h * 1.10, s.h * 0.62), 44);
        s.shadow(rim, 6, 20, 14, 0.55);
        s.clearShadow(rim);
        s.flatten(rim, 40);
        s.raise(rim, 30, 12);
        s.cover(rim, new Stuff(Tint.hex("#111212"), 0.06, 0, 90));
    }

    private void crack(double fx) {
        Path2D p = new Path2D.Double();
        double x = s.w * fx;
        p.moveTo(x, s.h * 0.02);
        for (int i = 1; i < 12; i++) {
            x += scene.random.nextDouble(-16, 16);
            p.lineTo(x, s.h * (0.02 + 0.018 * i));
        }
        s.groove(p, 7, 14, 1);
        s.dye(Relief.stroke(p, 6), "#b08d4a", 1, 0.8);
    }

    private void odometer() {
        s.cover(s.all(), new Stuff(Tint.hex("#0e0f10"), 0.06, 0, 120));
        s.rough(s.all(), 0.6, 3, 2);
        double wide = scene.type.width("MILES", 60);
        s.dye(scene.type.plain("MILES", s.w * 0.5 - wide / 2, s.h * 0.30, 60), "#cfd3ca", 0.5, 1);
        counter(scene.params.text("odo", "064312"), s.w * 0.14, s.h * 0.40, s.w * 0.72, s.h * 0.26);
        for (int i = 0; i < 9; i++) {
            double a = Math.toRadians(200 + 17.5 * i);
            Path2D tick = new Path2D.Double();
            tick.moveTo(s.w * 0.5 + s.h * 1.0 * Math.cos(a), s.h * 1.05 + s.h * 1.0 * Math.sin(a));
            tick.lineTo(s.w * 0.5 + s.h * 0.93 * Math.cos(a), s.h * 1.05 + s.h * 0.93 * Math.sin(a));
            s.dye(Relief.stroke(tick, 9), "#dfe2da", 0.6, 1);
        }
        s.mottle(s.all(), "#8d8672", 0.25, 9, 0.66, 0.8, 1);
    }

    private void seat() {
        s.cover(s.all(), vinyl());
        s.rough(s.all(), 1.6, 4, 2);
        s.form((x, y) -> 26 * Math.sin(Math.PI * y / s.h) + 14 * Math.abs(Math.sin(Math.PI * (x / s.w) * 7)));
        for (int i = 1; i < 7; i++) {
            Path2D p = new Path2D.Double();
            p.moveTo(s.w * i / 7.0, -10);
            p.curveTo(s.w * i / 7.0 + 6, s.h * 0.3, s.w * i / 7.0 - 6, s.h * 0.7, s.w * i / 7.0, s.h + 10);
            s.groove(p, 7, 9, 3);
            for (int j = 0; j < 60; j++) {
                s.raise(Relief.disc(s.w * i / 7.0 + 9, s.h * j / 60.0, 2.2), -2, 1);
            }
        }
        Path2D piping = new Path2D.Double();
        piping.moveTo(-20, s.h * 0.84);
        piping.curveTo(s.w * 0.3, s.h * 0.90, s.w * 0.7, s.h * 0.90, s.w + 20, s.h * 0.84);
        s.raise(Relief.stroke(piping, 22), 16, 6);
        s.shadow(Relief.stroke(piping, 14), 0, 18, 7, 0.5);
        if (scene.params.has("torn")) {
            Path2D tear = Blob.path(Blob.ring(scene.random, s.w * 0.56, s.h * 0.42, 130, 34, 0.3, 30));
            s.cover(tear, Stuff.dull("#b99a5a"), 1.5, 1);
            s.rough(tear, 14, 9, 4);
            s.raise(Relief.stroke(tear, 9), 7, 2.4);
        }
    }

    private void panel() {
        s.cover(s.all(), vinyl());
        s.rough(s.all(), 1.6, 4, 2);
        Shape inset = new RoundRectangle2D.Double(s.w * 0.08, s.h * 0.16, s.w * 0.84, s.h * 0.46, 50, 50);
        s.groove(inset, 12, 9, 4);
        for (int i = 1; i < 14; i++) {
            s.groove(new Rectangle2D.Double(s.w * (0.08 + 0.06 * i), s.h * 0.18, 1, s.h * 0.42), 6, 5, 3);
        }
        Shape rest = new RoundRectangle2D.Double(s.w * 0.30, s.h * 0.56, s.w * 0.44, s.h * 0.12, 60, 60);
        s.shadow(rest, 8, 20, 12, 0.6);
        s.clearShadow(rest);
        s.raise(rest, 44, 13);
        Shape crank = new RoundRectangle2D.Double(s.w * 0.20, s.h * 0.66, s.w * 0.20, 34, 30, 30);
        s.shadow(crank, 8, 14, 8, 0.6);
        s.clearShadow(crank);
        s.cover(crank, Stuff.chrome());
        s.raise(crank, 22, 7);
        s.cover(Relief.disc(s.w * 0.40, s.h * 0.68, 30), Stuff.plastic("#131313"));
        s.raise(Relief.disc(s.w * 0.40, s.h * 0.68, 30), 26, 9);
        s.cover(new Rectangle2D.Double(-20, s.h * 0.90, s.w + 40.0, 14), Stuff.chrome());
        s.raise(new Rectangle2D.Double(-20, s.h * 0.90, s.w + 40.0, 14), 10, 4);
        if (scene.params.has("worn")) {
            s.mottle(rest, "#8a7d63", 0.7, 60, 0.42, 0.7, 6);
        }
    }

    private void pedals() {
        cloth("#1d1c1b", 7, 2.2);
        s.form((x, y) -> 60 * (1 - y / s.h));
        pedal(0.34, 0.46, 0.15, 0.13);
        pedal(0.66, 0.36, 0.075, 0.36);
    }

    private void pedal(double fx, double fy, double fw, double fh) {
        Shape arm = new RoundRectangle2D.Double(s.w * fx - 16, -20, 32, s.h * fy, 20, 20);
        s.shadow(arm, 20, 30, 16, 0.6);
        s.clearShadow(arm);
        s.cover(arm, Stuff.dull("#25231f"));
        s.raise(arm, 30, 6);
        Shape pad = new RoundRectangle2D.Double(s.w * (fx - fw / 2), s.h * fy, s.w * fw, s.h * fh, 24, 24);
        s.shadow(pad, 24, 40, 18, 0.7);
        s.clearShadow(pad);
        s.flatten(pad, 80);
        s.raise(pad, 16, 5);
        s.cover(pad, Stuff.rubber());
        int ribs = (int) (s.h * fh / 26);
        for (int i = 1; i < ribs; i++) {
            s.groove(new Rectangle2D.Double(s.w * (fx - fw / 2) + 14, s.h * fy + 26 * i, s.w * fw - 28, 1), 7, 7, 2);
        }
        s.cover(Relief.stroke(pad, 7), Stuff.steel("#a7a9a8"), 1, 0.9);
    }

    private void cloth(String color, double scale, double amount) {
        s.cover(s.all(), Stuff.dull(color));
        s.rough(s.all(), amount * 7, scale, 3);
        s.rough(s.all(), 30, 260, 3);
        s.mottle(s.all(), "#6a6252", 0.4, 160, 0.45, 0.75, 1);
        if (scene.params.has("stain")) {
            s.mottle(
                    Blob.around(scene.random, s.w * 0.5, s.h * 0.55, 300, 0.3, 30), "#4a2c16", 0.75, 90, 0.25, 0.6, 20);
        }
    }

    private void headliner() {
        s.cover(s.all(), Stuff.dull("#b9b4a3"));
        s.rough(s.all(), 0.9, 3, 2);
        s.form((x, y) -> 22 * Math.abs(Math.sin(Math.PI * y / s.h * 3)));
        for (int i = 0; i < 46; i++) {
            for (int j = 0; j < 34; j++) {
                s.raise(Relief.disc(s.w * (i + 0.5) / 46, s.h * (j + 0.5) / 34, 2.6), -3, 1);
            }
        }
        s.mottle(s.all(), "#7c6a48", 0.5, 200, 0.5, 0.78, 1);
    }
}
