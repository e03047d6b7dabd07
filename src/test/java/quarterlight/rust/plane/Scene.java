package quarterlight.rust.plane;

import java.util.ArrayList;
import java.util.List;
import quarterlight.visit.annotation.PixelPoint;

/**
 * A flat panel seen by a pinhole camera, for pictures of known truth. Panel coordinates are mm about the middle of the
 * picture, y down.
 *
 * @param tilt how far the panel is turned from the camera, degrees
 * @param azimuth which way, degrees
 * @param mmPerPx scale at the middle
 */
record Scene(double tilt, double azimuth, double mmPerPx, int width, int height) {
    private static final double FOCAL_PX = 1800;

    interface Paint {
        /** 0xRRGGBB of a point of the panel, mm. */
        int at(double x, double y);
    }

    private double distance() {
        return FOCAL_PX * mmPerPx;
    }

    /** Where a point of the panel lies on the photo. */
    PixelPoint project(double x, double y) {
        double a = Math.toRadians(azimuth);
        double t = Math.toRadians(tilt);
        double u = x * Math.cos(a) + y * Math.sin(a);
        double v = -x * Math.sin(a) + y * Math.cos(a);
        double depth = distance() + u * Math.sin(t);
        double along = u * Math.cos(t);
        double px = along * Math.cos(a) - v * Math.sin(a);
        double py = along * Math.sin(a) + v * Math.cos(a);
        return new PixelPoint(width / 2.0 + FOCAL_PX * px / depth, height / 2.0 + FOCAL_PX * py / depth);
    }

    /** The picture, row-major, each pixel painted as the panel is at its middle. */
    int[] render(Paint paint) {
        double cosA = Math.cos(Math.toRadians(azimuth));
        double sinA = Math.sin(Math.toRadians(azimuth));
        double cosT = Math.cos(Math.toRadians(tilt));
        double sinT = Math.sin(Math.toRadians(tilt));
        int[] srgb = new int[width * height];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                double dx = (x + 0.5 - width / 2.0) / FOCAL_PX;
                double dy = (y + 0.5 - height / 2.0) / FOCAL_PX;
                double du = dx * cosA + dy * sinA;
                double dv = -dx * sinA + dy * cosA;
                double u = du * distance() / (cosT - du * sinT);
                double v = dv * (distance() + u * sinT);
                srgb[y * width + x] = paint.at(u * cosA - v * sinA, u * sinA + v * cosA);
            }
        }
        return srgb;
    }

    /** The border of the region of one color, along the edges of its pixels; the region hangs together. */
    List<PixelPoint> border(int[] srgb, int color) {
        int start = 0;
        while (srgb[start] != color) {
            start++;
        }
        int x0 = start % width;
        int y0 = start / width;
        List<PixelPoint> ring = new ArrayList<>();
        int x = x0;
        int y = y0;
        int dx = 1;
        int dy = 0;
        do {
            ring.add(new PixelPoint(x, y));
            x += dx;
            y += dy;
            // keep the region on the right hand: turn left if both pixels ahead belong to it, right if neither does
            boolean left = is(srgb, color, ahead(x, dx, dy), ahead(y, dy, -dx));
            boolean right = is(srgb, color, ahead(x, dx, -dy), ahead(y, dy, dx));
            int oldX = dx;
            if (left) {
                dx = dy;
                dy = -oldX;
            } else if (!right) {
                dx = -dy;
                dy = oldX;
            }
        } while (x != x0 || y != y0);
        return ring;
    }

    /** Index of the pixel ahead of a corner on one side, along one axis. */
    private static int ahead(int corner, int forward, int side) {
        return forward + side > 0 ? corner : corner - 1;
    }

    private boolean is(int[] srgb, int color, int x, int y) {
        return x >= 0 && y >= 0 && x < width && y < height && srgb[y * width + x] == color;
    }
}
