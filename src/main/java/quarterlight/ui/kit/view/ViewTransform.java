package quarterlight.ui.kit.view;

import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Point2D;

/**
 * How an upright photo lies in its frame: fitted or zoomed, moved, turned by quarters for viewing. Immutable.
 *
 * @param photoWidth pixels of the upright photo
 * @param viewWidth device pixels of the frame
 * @param quarters turns clockwise, 0 to 3
 * @param zoom device pixels per pixel of the photo; 0 to fit
 * @param centerX pixel of the photo in the middle of the frame
 */
record ViewTransform(
        double photoWidth,
        double photoHeight,
        double viewWidth,
        double viewHeight,
        int quarters,
        double zoom,
        double centerX,
        double centerY) {
    private static final double MAX_ZOOM = 8;

    ViewTransform {
        if (!(photoWidth > 0 && photoHeight > 0 && viewWidth > 0 && viewHeight > 0)) {
            throw new IllegalArgumentException("a photo and its frame have a size");
        }
        quarters = Math.floorMod(quarters, 4);
    }

    static ViewTransform fit(double photoWidth, double photoHeight, double viewWidth, double viewHeight) {
        return new ViewTransform(photoWidth, photoHeight, viewWidth, viewHeight, 0, 0, photoWidth / 2, photoHeight / 2);
    }

    boolean isFit() {
        return zoom == 0;
    }

    private boolean lies() {
        return quarters % 2 == 1;
    }

    /** The zoom at which the whole photo is seen. */
    double fitting() {
        double w = lies() ? photoHeight : photoWidth;
        double h = lies() ? photoWidth : photoHeight;
        return Math.min(viewWidth / w, viewHeight / h);
    }

    /** Device pixels per pixel of the photo. */
    double scale() {
        return isFit() ? fitting() : zoom;
    }

    /** From pixels of the photo to device pixels of the frame. */
    AffineTransform toView() {
        AffineTransform t = AffineTransform.getTranslateInstance(viewWidth / 2, viewHeight / 2);
        t.quadrantRotate(quarters);
        t.scale(scale(), scale());
        if (isFit()) {
            t.translate(-photoWidth / 2, -photoHeight / 2);
        } else {
            t.translate(-centerX, -centerY);
        }
        return t;
    }

    /** The pixel of the photo at a place of the frame. */
    Point2D toPhoto(double x, double y) {
        try {
            return toView().inverseTransform(new Point2D.Double(x, y), null);
        } catch (NoninvertibleTransformException e) {
            throw new IllegalStateException("a photo is never shown at scale 0", e);
        }
    }

    /** Zoomed by a factor; what lies at a place of the frame stays there. Fitting again when zoomed out to it. */
    ViewTransform zoomed(double factor, double x, double y) {
        double next = Math.min(MAX_ZOOM, scale() * factor);
        if (next <= fitting() * 1.001) {
            return fitted();
        }
        Point2D held = toPhoto(x, y);
        ViewTransform changed = new ViewTransform(
                photoWidth, photoHeight, viewWidth, viewHeight, quarters, next, held.getX(), held.getY());
        Point2D now = changed.toPhoto(x, y);
        return new ViewTransform(
                        photoWidth,
                        photoHeight,
                        viewWidth,
                        viewHeight,
                        quarters,
                        next,
                        2 * held.getX() - now.getX(),
                        2 * held.getY() - now.getY())
                .held();
    }

    /** At so many device pixels per pixel of the photo, about a place of the frame. */
    ViewTransform at(double zoomWanted, double x, double y) {
        return zoomed(zoomWanted / scale(), x, y);
    }

    ViewTransform fitted() {
        return new ViewTransform(
                photoWidth, photoHeight, viewWidth, viewHeight, quarters, 0, photoWidth / 2, photoHeight / 2);
    }

    /** Moved by device pixels of the frame. */
    ViewTransform moved(double dx, double dy) {
        if (isFit()) {
            return this;
        }
        Point2D center = toPhoto(viewWidth / 2 - dx, viewHeight / 2 - dy);
        return new ViewTransform(
                        photoWidth, photoHeight, viewWidth, viewHeight, quarters, zoom, center.getX(), center.getY())
                .held();
    }

    ViewTransform turned(int by) {
        return new ViewTransform(photoWidth, photoHeight, viewWidth, viewHeight, quarters + by, zoom, centerX, centerY);
    }

    ViewTransform inFrame(double width, double height) {
        return new ViewTransform(photoWidth, photoHeight, width, height, quarters, zoom, centerX, centerY);
    }

    /** The middle of the frame stays within the photo. */
    private ViewTransform held() {
        return new ViewTransform(
                photoWidth,
                photoHeight,
                viewWidth,
                viewHeight,
                quarters,
                zoom,
                Math.max(0, Math.min(photoWidth, centerX)),
                Math.max(0, Math.min(photoHeight, centerY)));
    }
}
