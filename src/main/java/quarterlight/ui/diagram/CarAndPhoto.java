package quarterlight.ui.diagram;

import java.awt.BorderLayout;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JPanel;
import quarterlight.ui.kit.Settings;
import quarterlight.ui.kit.SettingsFile;
import quarterlight.ui.kit.beside.PhotoBeside;
import quarterlight.ui.kit.look.ShareSplit;
import quarterlight.ui.kit.visit.Station;

/**
 * What stands beside the working pane of every station: the photo in hand above the drawing of the car, each of them there or not, as the
 * user last chose it for the station. Event thread only.
 */
public final class CarAndPhoto extends JPanel {
    /** How much of the drawing is shown. */
    public enum Extent {
        WHOLE,
        IN_HAND,
        AWAY
    }

    private static final String EXTENT = "window.diagram";
    private static final String BESIDE = "window.beside.";
    private static final String SHARE = "window.beside.share";
    private static final int USUAL_PERMILLE = 560;
    private static final int DIVIDER_PX = 5;

    private final transient SettingsFile settings;
    private final PhotoBeside photo;
    private final DiagramSide car;
    private final transient Runnable changed;
    private final ShareSplit split;
    private Extent extent;
    private Station station = Station.PHOTOS;

    /** @param changed told when there is something to lay out anew */
    public CarAndPhoto(SettingsFile settings, PhotoBeside photo, DiagramSide car, Runnable changed) {
        super(new BorderLayout());
        this.settings = Objects.requireNonNull(settings, "settings");
        this.photo = photo;
        this.car = car;
        this.changed = changed;
        this.extent =
                settings.settings().text(EXTENT).flatMap(CarAndPhoto::extent).orElse(Extent.WHOLE);
        int permille = settings.settings().number(SHARE, USUAL_PERMILLE);
        this.split = ShareSplit.stacked(photo, car, Math.min(800, Math.max(200, permille)) / 1000.0);
        add(split);
        lay();
    }

    private static Optional<Extent> extent(String word) {
        return Stream.of(Extent.values()).filter(one -> one.name().equals(word)).findFirst();
    }

    /** True if there is anything to see here. */
    public boolean isAnything() {
        return photo.isVisible() || car.isVisible();
    }

    /** True while the photo in hand stands here. */
    public boolean isPhotoShown() {
        return photo.isVisible();
    }

    public void show(Station front) {
        station = front;
        lay();
    }

    /** The drawing whole, then the one view of what is in hand, then away, and whole again. */
    public Extent nextExtent() {
        extent = Extent.values()[(extent.ordinal() + 1) % Extent.values().length];
        settings.change(s -> s.with(EXTENT, extent.name()));
        lay();
        return extent;
    }

    /** Brings the photo beside the station in front, or puts it away; false where the station shows it itself. */
    public boolean togglePhoto() {
        if (hasOwn(station)) {
            return false;
        }
        boolean wanted = !isWanted(settings.settings());
        settings.change(s -> s.with(BESIDE + station.name(), wanted));
        lay();
        return true;
    }

    private static boolean hasOwn(Station station) {
        return station == Station.PHOTOS || station == Station.RUST;
    }

    private boolean isWanted(Settings known) {
        return !hasOwn(station)
                && known.yes(BESIDE + station.name(), station == Station.MARKS || station == Station.NOTES);
    }

    /** Keeps the share of the photo for the next time. */
    public void close() {
        int permille = (int) Math.round(1000 * split.share());
        settings.change(s -> s.with(SHARE, permille));
    }

    private void lay() {
        boolean withPhoto = isWanted(settings.settings());
        photo.setVisible(withPhoto);
        car.setVisible(extent != Extent.AWAY);
        car.follow(extent == Extent.IN_HAND);
        split.setDividerSize(withPhoto && extent != Extent.AWAY ? DIVIDER_PX : 0);
        split.again();
        changed.run();
    }
}
