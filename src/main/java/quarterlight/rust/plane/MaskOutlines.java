package quarterlight.rust.plane;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.simplify.TopologyPreservingSimplifier;
import quarterlight.visit.annotation.Outline;
import quarterlight.visit.annotation.PixelPoint;

/**
 * Outlines of the groups of pixels in a mask, with what they enclose left out. Pixels hang together by their sides. The border of each group
 * is followed along the edges of its pixels; without thinning the outlines enclose exactly as many square pixels as the mask has.
 */
public final class MaskOutlines {
    private static final int[] DX = {1, 0, -1, 0};
    private static final int[] DY = {0, 1, 0, -1};

    private final BitSet mask;
    private final int width;
    private final int height;
    private final int[] group;

    /**
     * What was found.
     *
     * @param outlines the largest groups, the largest first; pixels of the mask, of which (0, 0) is the corner of the first one
     * @param leftPixels how many pixels lie in groups that were left out
     */
    public record Found(List<Outline> outlines, int leftPixels) {
        public Found {
            outlines = List.copyOf(outlines);
        }
    }

    private MaskOutlines(BitSet mask, int width, int height) {
        this.mask = mask;
        this.width = width;
        this.height = height;
        this.group = new int[width * height];
    }

    /**
     * The outlines of a mask.
     *
     * @param mask index y * width + x
     * @param leastPixels smaller groups are left out
     * @param most no more groups than this
     * @param tolerancePx how far a border may be drawn off to save corners; 0 for none
     */
    public static Found of(BitSet mask, int width, int height, int leastPixels, int most, double tolerancePx) {
        return new MaskOutlines(mask, width, height).find(leastPixels, most, tolerancePx);
    }

    private Found find(int leastPixels, int most, double tolerancePx) {
        List<Integer> sizes = groups();
        List<Integer> wanted = new ArrayList<>();
        for (int i = 0; i < sizes.size(); i++) {
            if (sizes.get(i) >= leastPixels) {
                wanted.add(i + 1);
            }
        }
        wanted.sort(Comparator.comparing((Integer label) -> -sizes.get(label - 1)));
        List<Integer> kept = wanted.subList(0, Math.min(most, wanted.size()));
        Map<Integer, List<List<PixelPoint>>> rings = rings();
        List<Outline> outlines = new ArrayList<>();
        int pixels = 0;
        for (int label : kept) {
            pixels += sizes.get(label - 1);
            outlines.addAll(outlines(rings.get(label), tolerancePx));
        }
        return new Found(outlines, mask.cardinality() - pixels);
    }

    /** Numbers the groups from 1 and counts their pixels. */
    private List<Integer> groups() {
        List<Integer> sizes = new ArrayList<>();
        Deque<Integer> waiting = new ArrayDeque<>();
        for (int i = mask.nextSetBit(0); i >= 0; i = mask.nextSetBit(i + 1)) {
            if (group[i] == 0) {
                int label = sizes.size() + 1;
                int size = 0;
                group[i] = label;
                waiting.push(i);
                while (!waiting.isEmpty()) {
                    int at = waiting.pop();
                    size++;
                    for (int d = 0; d < 4; d++) {
                        int x = at % width + DX[d];
                        int y = at / width + DY[d];
                        if (isSet(x, y) && group[y * width + x] == 0) {
                            group[y * width + x] = label;
                            waiting.push(y * width + x);
                        }
                    }
                }
                sizes.add(size);
            }
        }
        return sizes;
    }

    private boolean isSet(int x, int y) {
        return x >= 0 && y >= 0 && x < width && y < height && mask.get(y * width + x);
    }

    /** The borders of each group, the group on the right hand; at a corner where groups touch, the turn to the right parts them. */
    private Map<Integer, List<List<PixelPoint>>> rings() {
        byte[] edges = edges();
        Map<Integer, List<List<PixelPoint>>> rings = new HashMap<>();
        for (int start = 0; start < edges.length; start++) {
            while (edges[start] != 0) {
                int d = Integer.numberOfTrailingZeros(edges[start]);
                rings.computeIfAbsent(groupRightOf(start, d), label -> new ArrayList<>())
                        .add(ring(edges, start, d));
            }
        }
        return rings;
    }

    /** For each corner of pixels the directions (bits, right, down, left, up) in which a border leaves it. */
    private byte[] edges() {
        byte[] edges = new byte[(width + 1) * (height + 1)];
        for (int i = mask.nextSetBit(0); i >= 0; i = mask.nextSetBit(i + 1)) {
            int x = i % width;
            int y = i / width;
            leave(edges, x, y, 0, !isSet(x, y - 1));
            leave(edges, x + 1, y, 1, !isSet(x + 1, y));
            leave(edges, x + 1, y + 1, 2, !isSet(x, y + 1));
            leave(edges, x, y + 1, 3, !isSet(x - 1, y));
        }
        return edges;
    }

    private void leave(byte[] edges, int x, int y, int direction, boolean border) {
        if (border) {
            edges[y * (width + 1) + x] |= (byte) (1 << direction);
        }
    }

    private int groupRightOf(int corner, int d) {
        int x = corner % (width + 1);
        int y = corner / (width + 1);
        int px = d == 1 || d == 2 ? x - 1 : x;
        int py = d == 2 || d == 3 ? y - 1 : y;
        return group[py * width + px];
    }

    private List<PixelPoint> ring(byte[] edges, int start, int first) {
        List<PixelPoint> ring = new ArrayList<>();
        int at = start;
        int d = first;
        int before = -1;
        do {
            if (d != before) {
                int row = at / (width + 1);
                ring.add(new PixelPoint(at % (width + 1), row));
            }
            edges[at] &= (byte) ~(1 << d);
            at += DX[d] + DY[d] * (width + 1);
            before = d;
            d = next(edges[at], d);
        } while (d >= 0);
        return ring;
    }

    private static int next(byte leaving, int d) {
        for (int turn : new int[] {1, 0, 3}) {
            int next = (d + turn) % 4;
            if ((leaving & 1 << next) != 0) {
                return next;
            }
        }
        return -1;
    }

    private static List<Outline> outlines(List<List<PixelPoint>> rings, double tolerancePx) {
        List<PixelPoint> shell = List.of();
        List<List<PixelPoint>> holes = new ArrayList<>();
        for (List<PixelPoint> ring : rings) {
            if (Shoelace.signedArea(ring) > 0) {
                shell = ring;
            } else {
                holes.add(ring);
            }
        }
        Geometry shape = OutlineShape.of(new Outline(shell, holes));
        if (!shape.isValid()) {
            shape = GeometryFixer.fix(shape);
        }
        return OutlineShape.outlines(
                tolerancePx > 0 ? TopologyPreservingSimplifier.simplify(shape, tolerancePx) : shape);
    }
}
