package quarterlight.demo;

/** Softens a field of numbers in place: three box filters each way, close to a normal curve. */
final class Blur {
    private Blur() {}

    /** @param sd standard deviation wanted, px; edges repeat the outermost value */
    static void box3(float[] a, int w, int h, double sd) {
        int radius = Math.max(1, (int) Math.round(sd * 0.97));
        float[] line = new float[Math.max(w, h)];
        for (int pass = 0; pass < 3; pass++) {
            for (int y = 0; y < h; y++) {
                run(a, y * w, 1, w, radius, line);
            }
            for (int x = 0; x < w; x++) {
                run(a, x, w, h, radius, line);
            }
        }
    }

    /** Along x only: what a moving hand does to a picture. */
    static void along(float[] a, int w, int h, double sd) {
        int radius = Math.max(1, (int) Math.round(sd));
        float[] line = new float[w];
        for (int pass = 0; pass < 2; pass++) {
            for (int y = 0; y < h; y++) {
                run(a, y * w, 1, w, radius, line);
            }
        }
    }

    private static void run(float[] a, int start, int step, int n, int radius, float[] line) {
        for (int i = 0; i < n; i++) {
            line[i] = a[start + i * step];
        }
        double sum = line[0] * (double) radius;
        for (int i = 0; i < radius; i++) {
            sum += line[Math.min(i, n - 1)];
        }
        float width = 2 * radius + 1;
        for (int i = 0; i < n; i++) {
            sum += line[Math.min(i + radius, n - 1)];
            a[start + i * step] = (float) (sum / width);
            sum -= line[Math.max(i - radius, 0)];
        }
    }
}
