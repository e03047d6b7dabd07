package quarterlight.demo;

/** Smooth value noise in the plane, the same for the same seed on every machine; results lie between 0 and 1. */
final class Noise {
    private final int seed;

    Noise(long seed) {
        this.seed = (int) (seed ^ (seed >>> 32));
    }

    /** Sum of octaves, each half as strong and twice as fine as the one before. */
    float fractal(double x, double y, int octaves) {
        double sum = 0;
        double weight = 0;
        double strength = 1;
        double px = x;
        double py = y;
        for (int i = 0; i < octaves; i++) {
            sum += strength * value(px + 17.3 * i, py - 9.1 * i);
            weight += strength;
            strength *= 0.5;
            px *= 2.03;
            py *= 2.03;
        }
        return (float) (sum / weight);
    }

    float value(double x, double y) {
        int ix = (int) Math.floor(x);
        int iy = (int) Math.floor(y);
        double fx = ease(x - ix);
        double fy = ease(y - iy);
        double top = lattice(ix, iy) * (1 - fx) + lattice(ix + 1, iy) * fx;
        double bottom = lattice(ix, iy + 1) * (1 - fx) + lattice(ix + 1, iy + 1) * fx;
        return (float) (top * (1 - fy) + bottom * fy);
    }

    private static double ease(double t) {
        return t * t * t * (t * (t * 6 - 15) + 10);
    }

    private double lattice(int x, int y) {
        int h = seed + x * 0x27d4eb2d + y * 0x165667b1;
        h ^= h >>> 15;
        h *= 0x2c1b3c6d;
        h ^= h >>> 12;
        h *= 0x297a2d39;
        h ^= h >>> 15;
        return (h & 0xffffff) / (double) 0x1000000;
    }
}
