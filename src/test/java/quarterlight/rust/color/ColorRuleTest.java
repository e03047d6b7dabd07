package quarterlight.rust.color;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.BitSet;
import java.util.List;
import java.util.function.Function;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import quarterlight.visit.annotation.Outline;
import quarterlight.visit.annotation.PixelPoint;

/**
 * The program's color rule on drawn pictures with known masks, beside published rules; docs/methods/rust.md has the figures of a hundred pictures
 * ({@code ColorRuleStudy}). The published rules get thresholds that were fitted on such pictures, the program's has its usual one.
 */
class ColorRuleTest {
    private static final List<RenderedRust> PICTURES =
            LongStream.range(4001, 4081).mapToObj(RenderedRust::of).toList();
    private static final Outline ALL = new Outline(
            List.of(
                    new PixelPoint(0, 0),
                    new PixelPoint(RenderedRust.WIDTH, 0),
                    new PixelPoint(RenderedRust.WIDTH, RenderedRust.HEIGHT),
                    new PixelPoint(0, RenderedRust.HEIGHT)),
            List.of());

    private static BitSet ours(RenderedRust picture) {
        return ColorShare.of(
                        picture.srgb(),
                        RenderedRust.WIDTH,
                        RenderedRust.HEIGHT,
                        ALL,
                        new BitSet(),
                        RustColor.V1,
                        RustColor.USUAL_THRESHOLD)
                .mask();
    }

    private static BitSet above(double[] score, double threshold) {
        BitSet mask = new BitSet(score.length);
        for (int i = 0; i < score.length; i++) {
            if (score[i] >= threshold) {
                mask.set(i);
            }
        }
        return mask;
    }

    private static double overlap(Function<RenderedRust, BitSet> rule) {
        return PICTURES.stream()
                .mapToDouble(picture -> picture.overlap(rule.apply(picture)))
                .average()
                .orElseThrow();
    }

    @Test
    void itOverlapsTheTruthMoreThanPublishedRulesDo() {
        double ours = overlap(ColorRuleTest::ours);
        assertThat(ours).isBetween(.68, .82);
        assertThat(overlap(picture -> above(OtherColorRules.red(picture.srgb()), .463)))
                .isLessThan(ours);
        assertThat(overlap(picture -> above(OtherColorRules.excessRed(picture.srgb()), .307)))
                .isLessThan(ours);
        assertThat(overlap(picture -> {
                    double[] red = OtherColorRules.red(picture.srgb());
                    return above(red, OtherColorRules.otsu(red));
                }))
                .isLessThan(ours);
    }

    /** Good enough to propose an outline, not to tell a share: so no share of it is told. */
    @Test
    void theShareIsOffByPoints() {
        double off = PICTURES.stream()
                .mapToDouble(picture -> Math.abs(picture.shareOff(ours(picture))))
                .average()
                .orElseThrow();
        assertThat(off).isBetween(.02, .11);
    }

    @Test
    void overlapIsTheCommonPartOfBoth() {
        RenderedRust picture = PICTURES.get(0);
        assertThat(picture.overlap(picture.truth())).isEqualTo(1);
        assertThat(picture.overlap(new BitSet())).isZero();
        assertThat(picture.truth().cardinality()).isBetween(1000, RenderedRust.WIDTH * RenderedRust.HEIGHT / 2 + 5000);
    }
}
