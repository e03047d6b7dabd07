package quarterlight.rust.plane;

import java.util.Locale;

/** Prints the table of docs/methods/rust.md: how often two standard deviations cover the truth, by scale and tilt. */
final class ScaleCoverStudy {
    private static final int PHOTOS = 4000;

    private ScaleCoverStudy() {}

    public static void main(String[] arguments) {
        for (ScaleCover.Kind kind : ScaleCover.Kind.values()) {
            StringBuilder line = new StringBuilder(kind.name());
            double sum = 0;
            for (int tilt = 0; tilt <= 45; tilt += 5) {
                double share = 100.0 * ScaleCover.covered(kind, tilt, PHOTOS, tilt + 1) / PHOTOS;
                sum += share;
                line.append(String.format(Locale.ROOT, " %d:%.1f", tilt, share));
            }
            System.out.println(line + String.format(Locale.ROOT, " all:%.1f", sum / 10));
        }
        double[] card = {85.60, 53.98};
        for (int tilt = 0; tilt <= 45; tilt += 5) {
            System.out.printf(
                    Locale.ROOT,
                    "tilt %d: caught of 1000 cards called card %d, A4 long side first %d, short side first %d%n",
                    tilt,
                    ScaleCover.caught(card, card, tilt, 1000, 1),
                    ScaleCover.caught(card, new double[] {297, 210}, tilt, 1000, 1),
                    ScaleCover.caught(card, new double[] {210, 297}, tilt, 1000, 1));
        }
    }
}
