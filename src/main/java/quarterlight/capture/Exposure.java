package quarterlight.capture;

import java.util.Objects;

/**
 * How a picture is exposed: a hint, with the numbers behind it.
 * <p>Common practice without a source: a picture is called dark or bright by the share of its pixels at the ends of the scale.
 *
 * @param mean mean grey level, 0 to 255
 * @param shareBlack share of pixels at or below {@link #BLACK}
 * @param shareWhite share of pixels at or above {@link #WHITE}
 */
public record Exposure(double mean, double shareBlack, double shareWhite, Hint hint) {
    public static final int BLACK = 10;
    public static final int WHITE = 245;
    private static final double MUCH_BLACK = 0.5;
    private static final double DARK_MEAN = 40;
    private static final double MUCH_WHITE = 0.35;
    private static final double BRIGHT_MEAN = 215;

    /** What the inspector may want to look at. */
    public enum Hint {
        NONE,
        DARK,
        BRIGHT
    }

    public Exposure {
        Objects.requireNonNull(hint, "hint");
    }

    public static Exposure of(GreyPicture picture) {
        long sum = 0;
        long black = 0;
        long white = 0;
        for (int y = 0; y < picture.height(); y++) {
            for (int x = 0; x < picture.width(); x++) {
                int value = picture.at(x, y);
                sum += value;
                black += value <= BLACK ? 1 : 0;
                white += value >= WHITE ? 1 : 0;
            }
        }
        double count = (double) picture.width() * picture.height();
        double mean = sum / count;
        Hint hint = Hint.NONE;
        if (black / count >= MUCH_BLACK || mean <= DARK_MEAN) {
            hint = Hint.DARK;
        } else if (white / count >= MUCH_WHITE || mean >= BRIGHT_MEAN) {
            hint = Hint.BRIGHT;
        }
        return new Exposure(mean, black / count, white / count, hint);
    }
}
