package quarterlight.ui.rust.draw;

import java.awt.image.BufferedImage;
import java.util.BitSet;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;
import quarterlight.rust.color.RustColor;
import quarterlight.task.LatestWork;
import quarterlight.ui.kit.Listeners;
import quarterlight.ui.kit.look.Look;
import quarterlight.visit.annotation.Outline;
import quarterlight.visit.annotation.PixelPoint;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoId;

/** The color share of the region at hand: whether it is looked for, threshold, what was brushed away, and the answer. Event thread only. */
public final class ShareModel {
    /** The long side at which colors are looked at, pixels. */
    public static final int LONG_SIDE_PX = 1600;

    /** What lies over the photo, in pixels of the photo. */
    public record Cover(BufferedImage image, int width, int height) {}

    private final BiConsumer<Photo, Consumer<BufferedImage>> fetch;
    private final LatestWork<ShareWork.Question, ShareWork.Answer> work;
    private final Listeners changed = new Listeners();
    private Optional<Photo> photo = Optional.empty();
    private Optional<Outline> region = Optional.empty();
    private Optional<BufferedImage> picture = Optional.empty();
    private Optional<ShareWork.Answer> answer = Optional.empty();
    private BitSet left = new BitSet();
    private double threshold = RustColor.USUAL_THRESHOLD;
    private boolean on;

    /**
     * @param fetch fetches the picture of a photo in the background and brings it on the event thread
     * @param failed told when counting failed
     */
    public ShareModel(BiConsumer<Photo, Consumer<BufferedImage>> fetch, Consumer<? super Exception> failed) {
        this.fetch = fetch;
        this.work = new LatestWork<>(
                "quarterlight-color-share",
                SwingUtilities::invokeLater,
                (question, course) -> ShareWork.answer(question),
                this::arrived,
                failed);
    }

    public Listeners.Registration onChange(Runnable listener) {
        return changed.add(listener);
    }

    public boolean isOn() {
        return on;
    }

    public double threshold() {
        return threshold;
    }

    public boolean hasRegion() {
        return region.isPresent();
    }

    /** The answer for the region as it is; empty while it is worked out. */
    public Optional<ShareWork.Answer> answer() {
        return on ? answer : Optional.empty();
    }

    public boolean isBrushed() {
        return !left.isEmpty();
    }

    public void switchTo(boolean wanted) {
        on = wanted;
        ask();
        changed.tell();
    }

    public void threshold(double least) {
        threshold = least;
        ask();
        changed.tell();
    }

    /** The region to look at; another photo forgets what was brushed away. */
    public void look(Optional<Photo> at, Optional<Outline> outline) {
        boolean other = !at.map(Photo::id).equals(photo.map(Photo::id));
        if (!other && outline.equals(region)) {
            return;
        }
        photo = at;
        region = outline;
        if (other) {
            picture = Optional.empty();
            left = new BitSet();
        }
        answer = Optional.empty();
        ask();
        changed.tell();
    }

    private void ask() {
        if (!on || region.isEmpty() || photo.isEmpty()) {
            return;
        }
        if (picture.isPresent()) {
            work.request(new ShareWork.Question(
                    picture.get(), region.get(), perPhotoPixel(), (BitSet) left.clone(), threshold, Look.palette()));
            return;
        }
        PhotoId asked = photo.get().id();
        fetch.accept(photo.get(), fetched -> {
            if (photo.map(Photo::id).equals(Optional.of(asked)) && picture.isEmpty()) {
                picture = Optional.of(fetched);
                ask();
            }
        });
    }

    private double perPhotoPixel() {
        int width =
                photo.orElseThrow().file().width().orElse(picture.orElseThrow().getWidth());
        return (double) picture.orElseThrow().getWidth() / width;
    }

    private void arrived(ShareWork.Answer fresh) {
        if (region.equals(Optional.of(fresh.question().outline()))
                && picture.equals(Optional.of(fresh.question().picture()))) {
            answer = Optional.of(fresh);
            changed.tell();
        }
    }

    /** Takes pixels under a round brush out of the count, or back in. */
    public void brush(PixelPoint p, double radiusPx, boolean away) {
        if (picture.isEmpty()) {
            return;
        }
        double scale = perPhotoPixel();
        double x = p.x() * scale;
        double y = p.y() * scale;
        double r = Math.max(0.5, radiusPx * scale);
        int width = picture.get().getWidth();
        int height = picture.get().getHeight();
        for (int row = Math.max(0, (int) Math.floor(y - r)); row <= Math.min(height - 1, (int) (y + r)); row++) {
            double half2 = r * r - (row + 0.5 - y) * (row + 0.5 - y);
            if (half2 > 0) {
                int from = Math.max(0, (int) Math.round(x - Math.sqrt(half2)));
                int to = Math.min(width, (int) Math.round(x + Math.sqrt(half2)));
                if (from < to) {
                    left.set(row * width + from, row * width + to, away);
                }
            }
        }
        ask();
    }

    public void brushNothing() {
        left = new BitSet();
        ask();
        changed.tell();
    }

    /** What lies over a photo; empty if nothing is looked for on it. */
    public Optional<Cover> cover(PhotoId shown) {
        return answer().filter(a -> photo.map(Photo::id).equals(Optional.of(shown)))
                .map(a -> new Cover(a.cover(), (int) Math.round(a.cover().getWidth() / perPhotoPixel()), (int)
                        Math.round(a.cover().getHeight() / perPhotoPixel())));
    }

    public void stop() {
        work.stop();
    }
}
