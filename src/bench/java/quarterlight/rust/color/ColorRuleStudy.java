package quarterlight.rust.color;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.LongStream;
import javax.imageio.ImageIO;

/**
 * Color rules for rust on drawn pictures with known masks: overlap with the truth and how far the share is off. Each rule's threshold is the
 * one that overlaps most on the pictures 1 to 60; the figures are of the pictures 1,001 to 1,100. Results stand in docs/methods/rust.md.
 * <p>Argument, if wanted: a folder that takes some of the pictures, to be looked at.
 */
public final class ColorRuleStudy {
    private static final int W = RenderedRust.WIDTH;
    private static final int H = RenderedRust.HEIGHT;
    private static final int STEPS = 60;

    private ColorRuleStudy() {}

    public static void main(String[] arguments) throws IOException {
        List<RenderedRust> first = drawn(1, 60);
        List<RenderedRust> others = drawn(1001, 100);
        if (arguments.length > 0) {
            for (int n = 0; n < 12; n++) {
                BufferedImage image = new BufferedImage(2 * W, H, BufferedImage.TYPE_INT_RGB);
                image.setRGB(0, 0, W, H, first.get(n).srgb(), 0, W);
                first.get(n).truth().stream().forEach(i -> image.setRGB(W + i % W, i / W, 0xFFFFFF));
                ImageIO.write(
                        image,
                        "png",
                        Path.of(arguments[0], "rust-" + n + ".png").toFile());
            }
        }
        Map<String, Function<int[], double[]>> rules = new LinkedHashMap<>();
        rules.put("CIELAB windows", ColorRuleStudy::likeness);
        for (int half : new int[] {1, 2, 4, 7}) {
            rules.put("CIELAB windows, mean over " + (2 * half + 1) + " px", s -> smoothed(likeness(s), half));
        }
        rules.put("CIELAB windows, several scales", ColorRuleStudy::scales);
        rules.put("red chromaticity", OtherColorRules::red);
        rules.put("red chromaticity, mean over 5 px", s -> smoothed(OtherColorRules.red(s), 2));
        rules.put("excess red", OtherColorRules::excessRed);
        rules.put("excess red, mean over 5 px", s -> smoothed(OtherColorRules.excessRed(s), 2));
        rules.forEach((name, rule) -> report(name, rule, best(rule, first), others));
        for (double threshold : new double[] {.5, .7, RustColor.USUAL_THRESHOLD, .9}) {
            report("CIELAB windows", ColorRuleStudy::likeness, threshold, others);
        }
        report("excess red above 0", OtherColorRules::excessRed, 0, others);
        double[] otsu = new double[2];
        for (RenderedRust picture : others) {
            double[] score = OtherColorRules.red(picture.srgb());
            BitSet mask = mask(score, OtherColorRules.otsu(score));
            otsu[0] += picture.overlap(mask) / others.size();
            otsu[1] += Math.abs(picture.shareOff(mask)) / others.size();
        }
        System.out.printf(Locale.ROOT, "red chromaticity by Otsu: overlap %.3f, off %.1f%n", otsu[0], 100 * otsu[1]);
    }

    private static List<RenderedRust> drawn(long from, int count) {
        return LongStream.range(from, from + count).mapToObj(RenderedRust::of).toList();
    }

    private static double best(Function<int[], double[]> rule, List<RenderedRust> pictures) {
        List<double[]> scores = new ArrayList<>();
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (RenderedRust picture : pictures) {
            double[] score = rule.apply(picture.srgb());
            scores.add(score);
            for (double one : score) {
                low = Math.min(low, one);
                high = Math.max(high, one);
            }
        }
        double best = 0;
        double at = low;
        for (int step = 1; step < STEPS; step++) {
            double threshold = low + (high - low) * step / STEPS;
            double sum = 0;
            for (int n = 0; n < pictures.size(); n++) {
                sum += pictures.get(n).overlap(mask(scores.get(n), threshold));
            }
            if (sum > best) {
                best = sum;
                at = threshold;
            }
        }
        return at;
    }

    private static void report(
            String name, Function<int[], double[]> rule, double threshold, List<RenderedRust> pictures) {
        double overlap = 0;
        double off = 0;
        double more = 0;
        for (RenderedRust picture : pictures) {
            BitSet mask = mask(rule.apply(picture.srgb()), threshold);
            overlap += picture.overlap(mask) / pictures.size();
            off += Math.abs(picture.shareOff(mask)) / pictures.size();
            more += picture.shareOff(mask) / pictures.size();
        }
        System.out.printf(
                Locale.ROOT, "| %s | %.3f | %.3f | %.1f | %+.1f |%n", name, threshold, overlap, 100 * off, 100 * more);
    }

    private static BitSet mask(double[] score, double threshold) {
        BitSet mask = new BitSet(score.length);
        for (int i = 0; i < score.length; i++) {
            if (score[i] >= threshold) {
                mask.set(i);
            }
        }
        return mask;
    }

    private static double[] likeness(int[] srgb) {
        double[] score = new double[srgb.length];
        for (int i = 0; i < score.length; i++) {
            score[i] = RustColor.V1.likeness(srgb[i]);
        }
        return score;
    }

    private static double[] scales(int[] srgb) {
        double[] one = likeness(srgb);
        double[] two = smoothed(one, 2);
        double[] three = smoothed(one, 6);
        double[] mean = new double[one.length];
        for (int i = 0; i < mean.length; i++) {
            mean[i] = (one[i] + two[i] + three[i]) / 3;
        }
        return mean;
    }

    private static double[] smoothed(double[] score, int half) {
        double[] sums = new double[(W + 1) * (H + 1)];
        for (int y = 0; y < H; y++) {
            double row = 0;
            for (int x = 0; x < W; x++) {
                row += score[y * W + x];
                sums[(y + 1) * (W + 1) + x + 1] = sums[y * (W + 1) + x + 1] + row;
            }
        }
        double[] mean = new double[score.length];
        for (int i = 0; i < mean.length; i++) {
            int left = Math.max(0, i % W - half);
            int right = Math.min(W, i % W + half + 1);
            int top = Math.max(0, i / W - half);
            int bottom = Math.min(H, i / W + half + 1);
            mean[i] = (sums[bottom * (W + 1) + right]
                            - sums[top * (W + 1) + right]
                            - sums[bottom * (W + 1) + left]
                            + sums[top * (W + 1) + left])
                    / ((right - left) * (bottom - top));
        }
        return mean;
    }
}
