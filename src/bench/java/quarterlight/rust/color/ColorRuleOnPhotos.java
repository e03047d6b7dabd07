package quarterlight.rust.color;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import javax.imageio.ImageIO;

/**
 * The color rules on real photos whose rust somebody else marked. Arguments: a folder with pairs NAME.jpg and NAME.txt, and if wanted another one
 * that takes pictures of what was marked and found. A text holds one mark a line, in shares of width and height: a 0, then either the middle, width
 * and height of a box or the corners of an outline. Photos stand upright. Looked at is a region as an inspector would draw it, the box
 * around each mark grown by half its size to every side. Results stand in docs/methods/rust.md.
 */
public final class ColorRuleOnPhotos {
    private static final int LONGEST = 1600;
    private static final int BOX = 4;

    /**
     * A photo as it is looked at.
     *
     * @param boxed true if its marks are boxes, which hold more than the rust
     * @param truth pixels within a mark
     * @param region pixels looked at
     */
    private record Marked(String name, BufferedImage image, boolean boxed, BitSet truth, BitSet region) {
        int[] srgb() {
            return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
        }

        double[] figures(BitSet found) {
            BitSet here = (BitSet) found.clone();
            here.and(region);
            BitSet both = (BitSet) here.clone();
            both.and(truth);
            BitSet either = (BitSet) here.clone();
            either.or(truth);
            double all = here.cardinality();
            return new double[] {
                either.isEmpty() ? 1 : (double) both.cardinality() / either.cardinality(),
                Math.abs(all - truth.cardinality()) / region.cardinality(),
                (double) both.cardinality() / truth.cardinality(),
                (all - both.cardinality()) / (region.cardinality() - truth.cardinality())
            };
        }
    }

    private ColorRuleOnPhotos() {}

    public static void main(String[] arguments) throws IOException {
        List<Marked> photos = new ArrayList<>();
        try (Stream<Path> files = Files.list(Path.of(arguments[0]))) {
            for (Path text :
                    files.filter(f -> f.toString().endsWith(".txt")).sorted().toList()) {
                photos.add(read(text));
            }
        }
        Map<String, Function<int[], BitSet>> rules = new LinkedHashMap<>();
        for (double threshold : new double[] {RustColor.USUAL_THRESHOLD, .5}) {
            rules.put("windows in CIELAB at " + threshold, s -> mask(likeness(s), threshold));
        }
        rules.put("red chromaticity at .463", s -> mask(OtherColorRules.red(s), .463));
        rules.put("red chromaticity by Otsu", s -> {
            double[] red = OtherColorRules.red(s);
            return mask(red, OtherColorRules.otsu(red));
        });
        rules.put("excess red at .307", s -> mask(OtherColorRules.excessRed(s), .307));
        rules.put("excess red above 0", s -> mask(OtherColorRules.excessRed(s), 0));
        for (boolean boxed : new boolean[] {false, true}) {
            List<Marked> some =
                    photos.stream().filter(photo -> photo.boxed == boxed).toList();
            System.out.println(some.size() + (boxed ? " with boxes" : " with outlines")
                    + ": overlap, share off, found of what is marked, found of what is not");
            rules.forEach((name, rule) -> {
                double[] sums = new double[4];
                for (Marked photo : some) {
                    double[] figures = photo.figures(rule.apply(photo.srgb()));
                    for (int k = 0; k < sums.length; k++) {
                        sums[k] += figures[k] / some.size();
                    }
                }
                System.out.printf(
                        Locale.ROOT, "| %s | %.2f | %.2f | %.2f | %.2f |%n", name, sums[0], sums[1], sums[2], sums[3]);
            });
        }
        if (arguments.length > 1) {
            for (Marked photo : photos) {
                paint(photo, new File(arguments[1], photo.name + ".png"));
            }
        }
    }

    private static Marked read(Path text) throws IOException {
        String name = text.getFileName().toString().replace(".txt", "");
        BufferedImage photo = ImageIO.read(text.resolveSibling(name + ".jpg").toFile());
        double by = Math.min(1, (double) LONGEST / Math.max(photo.getWidth(), photo.getHeight()));
        int width = (int) (photo.getWidth() * by);
        int height = (int) (photo.getHeight() * by);
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
        g.drawImage(photo, 0, 0, width, height, null);
        g.dispose();
        Area marks = new Area();
        Area regions = new Area();
        boolean boxed = true;
        for (String line : Files.readAllLines(text)) {
            String[] cells = line.strip().split("\\s+");
            double[] xy = new double[cells.length - 1];
            for (int k = 0; k < xy.length; k++) {
                xy[k] = Double.parseDouble(cells[k + 1]) * (k % 2 == 0 ? width : height);
            }
            boxed &= xy.length == BOX;
            Shape mark = xy.length == BOX
                    ? new Rectangle2D.Double(xy[0] - xy[2] / 2, xy[1] - xy[3] / 2, xy[2], xy[3])
                    : outline(xy);
            Rectangle2D box = mark.getBounds2D();
            marks.add(new Area(mark));
            regions.add(new Area(new Rectangle2D.Double(
                    box.getX() - box.getWidth() / 2,
                    box.getY() - box.getHeight() / 2,
                    2 * box.getWidth(),
                    2 * box.getHeight())));
        }
        return new Marked(name, image, boxed, pixels(marks, width, height), pixels(regions, width, height));
    }

    private static Shape outline(double[] xy) {
        Path2D path = new Path2D.Double();
        path.moveTo(xy[0], xy[1]);
        for (int k = 2; k + 1 < xy.length; k += 2) {
            path.lineTo(xy[k], xy[k + 1]);
        }
        path.closePath();
        return path;
    }

    private static BitSet pixels(Area area, int width, int height) {
        BitSet inside = new BitSet(width * height);
        BufferedImage mask = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_BINARY);
        Graphics2D g = mask.createGraphics();
        g.setColor(Color.WHITE);
        g.fill(area);
        g.dispose();
        for (int i = 0; i < width * height; i++) {
            if ((mask.getRGB(i % width, i / width) & 1) != 0) {
                inside.set(i);
            }
        }
        return inside;
    }

    private static double[] likeness(int[] srgb) {
        double[] score = new double[srgb.length];
        for (int i = 0; i < score.length; i++) {
            score[i] = RustColor.V1.likeness(srgb[i]);
        }
        return score;
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

    private static void paint(Marked photo, File file) throws IOException {
        int width = photo.image.getWidth();
        int height = photo.image.getHeight();
        BufferedImage both = new BufferedImage(2 * width, height, BufferedImage.TYPE_INT_RGB);
        int[] srgb = photo.srgb();
        BitSet found = mask(likeness(srgb), RustColor.USUAL_THRESHOLD);
        found.and(photo.region);
        for (int i = 0; i < width * height; i++) {
            int rgb = srgb[i];
            boolean edge = photo.truth.get(i) != (i > 0 && photo.truth.get(i - 1));
            both.setRGB(i % width, i / width, edge ? 0x00FFFF : rgb);
            both.setRGB(width + i % width, i / width, found.get(i) ? 0x00FFFF : rgb);
        }
        ImageIO.write(both, "png", file);
    }
}
