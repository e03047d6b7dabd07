package quarterlight.demo;

/** Where the picture was taken: what stands around the sheet and mirrors in it, and how its light falls. */
enum Light {
    /** Open shade under a bright overcast sky, a dark line of trees at the horizon. */
    YARD(1.0, -0.35, 0.62, 0.70, 0.72),
    /** Low sun from the left. */
    EVENING(0.95, -0.75, 0.35, 0.55, 1.05),
    /** A shed with two high windows. */
    SHED(0.8, -0.30, 0.55, 0.78, 0.62),
    /** A work lamp held to one side in the dark. */
    LAMP(0.35, -0.62, -0.18, 0.62, 1.35),
    /** The same lamp held flat, so that stamped letters throw shadows. */
    RAKING(0.28, -0.93, 0.10, 0.33, 1.75);

    private final double around;
    private final double lx;
    private final double ly;
    private final double lz;
    private final double key;
    private static final Noise SKY = new Noise(771);

    Light(double around, double x, double y, double z, double key) {
        this.around = around;
        double n = Math.sqrt(x * x + y * y + z * z);
        this.lx = x / n;
        this.ly = y / n;
        this.lz = z / n;
        this.key = key;
    }

    /** The picture in linear light: three fields of {@code w × h}. */
    float[][] fallOn(Relief s) {
        int n = s.w * s.h;
        float[] near = s.z.clone();
        Blur.box3(near, s.w, s.h, 5);
        float[] far = s.z.clone();
        Blur.box3(far, s.w, s.h, 22);
        float[][] out = {new float[n], new float[n], new float[n]};
        float[] c = new float[3];
        for (int y = 0; y < s.h; y++) {
            for (int x = 0; x < s.w; x++) {
                int i = y * s.w + x;
                double hollow = Math.max(0, near[i] - s.z[i]) * 0.10 + Math.max(0, far[i] - s.z[i]) * 0.045;
                double open = 1 / (1 + hollow) * (1 - s.dark[i]);
                point(s, x, y, i, open, c);
                out[0][i] = c[0];
                out[1][i] = c[1];
                out[2][i] = c[2];
            }
        }
        return out;
    }

    private void point(Relief s, int x, int y, int i, double open, float[] c) {
        int left = x > 0 ? i - 1 : i;
        int right = x < s.w - 1 ? i + 1 : i;
        int up = y > 0 ? i - s.w : i;
        int down = y < s.h - 1 ? i + s.w : i;
        double nx = -(s.z[right] - s.z[left]) * 0.5 + s.leanX + s.bendX * (x - s.w * 0.5) / s.w;
        double ny = (s.z[down] - s.z[up]) * 0.5 + s.leanY - s.bendY * (y - s.h * 0.5) / s.h;
        double nz = 1;
        double len = Math.sqrt(nx * nx + ny * ny + nz * nz);
        nx /= len;
        ny /= len;
        nz /= len;
        double lit = Math.max(0, nx * lx + ny * ly + nz * lz);
        double sky = 0.62 + 0.38 * ny;
        double bright = (around * 0.62 * sky + key * lit * (1 - s.dark[i])) * open;
        double vx = (x - s.w * 0.5) / s.w * 0.5;
        double vy = -(y - s.h * 0.5) / s.w * 0.5;
        double vz = 1;
        double vl = Math.sqrt(vx * vx + vy * vy + 1);
        vx = -vx / vl;
        vy = -vy / vl;
        vz = vz / vl;
        double dot = nx * vx + ny * vy + nz * vz;
        double rx = 2 * dot * nx - vx;
        double ry = 2 * dot * ny - vy;
        double rz = 2 * dot * nz - vz;
        double glance = Math.pow(Math.max(0, 1 - Math.max(0, dot)), 4);
        double m = Math.min(0.95, s.mirror[i] * (1 + 1.6 * glance)) * Math.sqrt(open);
        double blurred = 1 - Math.min(1, s.shine[i] / 150);
        double spec =
                Math.pow(Math.max(0, rx * lx + ry * ly + rz * lz), s.shine[i]) * key * (0.1 + 1.6 * s.mirror[i]) * open;
        environment(rx, ry, rz, blurred, c);
        double t = s.metal[i];
        double keep = 1 - m;
        c[0] = (float) (s.r[i] * bright * keep + m * c[0] * (1 - t + t * s.r[i]) + spec);
        c[1] = (float) (s.g[i] * bright * keep + m * c[1] * (1 - t + t * s.g[i]) + spec);
        c[2] = (float) (s.b[i] * bright * keep + m * c[2] * (1 - t + t * s.b[i]) + spec * 0.96);
    }

    private void environment(double rx, double ry, double rz, double blurred, float[] c) {
        double soft = 0.02 + 0.30 * blurred;
        switch (this) {
            case YARD -> yard(rx, ry, soft, 1.25, 0.30, c);
            case EVENING -> yard(rx, ry, soft, 1.45, 0.05, c);
            case SHED -> shed(rx, ry, soft, c);
            case LAMP, RAKING -> {
                double spot = Relief.step(0.80 - soft, 0.99, rx * lx + ry * ly + rz * lz) * 2.2;
                set(c, 0.05 + spot, 0.05 + spot * 0.97, 0.055 + spot * 0.88);
            }
        }
    }

    private void yard(double rx, double ry, double soft, double sky, double cool, float[] c) {
        double trees = 0.06 + 0.10 * SKY.fractal(rx * 7 + 3, 0.5, 4) + 0.02 * SKY.fractal(rx * 40, 3, 2);
        double aboveTrees = Relief.step(trees - soft, trees + soft, ry);
        double aboveGround = Relief.step(-0.03 - soft, -0.03 + soft, ry);
        double high = Math.max(0, Math.min(1, ry));
        double cloud = 0.85 + 0.3 * SKY.fractal(rx * 2.2 / (0.35 + high), 2.5 / (0.3 + high), 4);
        double sr = sky * cloud * (1.0 - (0.25 + cool) * high);
        double sg = sky * cloud * (1.01 - (0.18 + cool * 0.6) * high);
        double sb = sky * cloud * (1.04 - 0.08 * high);
        double gr = 0.20 + 0.10 * ry;
        double gg = 0.185 + 0.10 * ry;
        double gb = 0.16 + 0.08 * ry;
        double tr = 0.075;
        double tg = 0.085;
        double tb = 0.065;
        double lowR = gr + (tr - gr) * aboveGround;
        double lowG = gg + (tg - gg) * aboveGround;
        double lowB = gb + (tb - gb) * aboveGround;
        set(c, lowR + (sr - lowR) * aboveTrees, lowG + (sg - lowG) * aboveTrees, lowB + (sb - lowB) * aboveTrees);
    }

    private void shed(double rx, double ry, double soft, float[] c) {
        double wall = 0.16 + 0.10 * ry;
        double a = window(rx, ry, -0.42, 0.34, 0.17, 0.10, soft);
        double b = window(rx, ry, 0.30, 0.40, 0.13, 0.09, soft);
        double light = 1.9 * Math.max(a, b);
        double floor = Relief.step(0.0, -0.25, ry) * 0.10;
        set(c, wall + floor + light, wall * 0.95 + floor + light * 1.02, wall * 0.86 + floor * 0.9 + light * 1.05);
    }

    private static double window(double rx, double ry, double x, double y, double halfW, double halfH, double soft) {
        double inX = Relief.step(halfW + soft, halfW - soft * 0.5, Math.abs(rx - x));
        double inY = Relief.step(halfH + soft, halfH - soft * 0.5, Math.abs(ry - y));
        double bar = 1 - 0.8 * Relief.step(0.012 + soft * 0.3, 0.0, Math.abs(rx - x));
        return inX * inY * bar;
    }

    private static void set(float[] c, double r, double g, double b) {
        c[0] = (float) Math.max(0, r);
        c[1] = (float) Math.max(0, g);
        c[2] = (float) Math.max(0, b);
    }
}
