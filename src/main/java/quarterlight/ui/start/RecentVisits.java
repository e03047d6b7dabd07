package quarterlight.ui.start;

import java.awt.Insets;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import quarterlight.photo.PictureUnreadable;
import quarterlight.photo.decode.Pictures;
import quarterlight.store.folder.ThumbnailStore;
import quarterlight.store.folder.VisitFolder;
import quarterlight.task.LatestWork;
import quarterlight.ui.kit.Settings;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.look.Look;

/** The visits opened of late by the names of their cars, each with a picture; what is not there any more says so. Event thread only. */
final class RecentVisits extends JPanel {
    private static final System.Logger LOG = System.getLogger(RecentVisits.class.getName());

    private final transient Texts texts;
    private final transient Map<Path, Entry> entries = new HashMap<>();

    /** What stands there of a visit. */
    private record Entry(JButton button, CarPicture picture, JLabel car, JLabel below) {}

    /** What was found of a visit on the disk. */
    private record Found(boolean there, Optional<BufferedImage> picture) {}

    RecentVisits(UiContext parts, Consumer<Path> open) {
        super(new MigLayout("insets 0, wrap 2, gap 8 4", "[grow,fill,sg,0::]8[grow,fill,sg,0::]"));
        this.texts = parts.texts();
        Settings settings = parts.settings().settings();
        List<RecentVisit> visits = settings.recent().stream()
                .map(folder -> RecentVisit.of(settings, folder))
                .toList();
        visits.forEach(visit -> add(entry(visit, open), "wmin 0"));
        LatestWork.once(
                "quarterlight-recent",
                SwingUtilities::invokeLater,
                progress -> found(visits),
                this::show,
                failure -> LOG.log(System.Logger.Level.WARNING, "recent visits could not be looked at", failure));
    }

    private JButton entry(RecentVisit visit, Consumer<Path> open) {
        CarPicture picture = new CarPicture();
        JLabel below = Look.secondary(new JLabel(visit.folder().toString()));
        JLabel car = new JLabel(visit.car());
        car.putClientProperty("FlatLaf.style", "font: bold");
        JButton button = new JButton();
        button.setLayout(new MigLayout("insets 6 0 6 6, gap 12 2, fillx", "[][grow,fill,0::]"));
        button.add(new JLabel(picture));
        button.add(car, "wmin 0, split 2, flowy, growx");
        button.add(below, "wmin 0, growx");
        button.setName("recent-" + (entries.size() + 1));
        button.putClientProperty("JButton.buttonType", "borderless");
        button.setMargin(new Insets(0, 0, 0, 0));
        button.setToolTipText(visit.folder().toString());
        Look.named(button, visit.car());
        button.addActionListener(e -> open.accept(visit.folder()));
        entries.put(visit.folder(), new Entry(button, picture, car, below));
        return button;
    }

    /** Not on the event thread. */
    private static Map<Path, Found> found(List<RecentVisit> visits) {
        Map<Path, Found> found = new HashMap<>();
        for (RecentVisit visit : visits) {
            boolean there = RecentVisit.isThere(visit.folder());
            found.put(visit.folder(), new Found(there, there ? picture(visit) : Optional.empty()));
        }
        return found;
    }

    private static Optional<BufferedImage> picture(RecentVisit visit) {
        VisitFolder folder = new VisitFolder(visit.folder());
        if (visit.picture().isEmpty() || !Files.isRegularFile(folder.thumbs())) {
            return Optional.empty();
        }
        try (ThumbnailStore small = ThumbnailStore.open(folder)) {
            Optional<byte[]> jpeg = small.get(visit.picture().get(), Pictures.THUMBNAIL);
            return jpeg.isPresent() ? Optional.of(Pictures.ofThumbnail(jpeg.get())) : Optional.empty();
        } catch (PictureUnreadable e) {
            LOG.log(System.Logger.Level.INFO, "no picture of " + visit.folder(), e);
            return Optional.empty();
        }
    }

    private void show(Map<Path, Found> found) {
        found.forEach((folder, one) -> {
            Entry entry = entries.get(folder);
            one.picture().ifPresent(entry.picture()::show);
            if (!one.there()) {
                entry.button().setEnabled(false);
                entry.car().setEnabled(false);
                entry.below().setText(texts.get("start.gone", folder));
                entry.button().setToolTipText(entry.below().getText());
            }
            entry.button().repaint();
        });
    }

    /** How many pictures stand there. */
    int shown() {
        return (int) entries.values().stream()
                .filter(entry -> entry.picture().isShown())
                .count();
    }
}
