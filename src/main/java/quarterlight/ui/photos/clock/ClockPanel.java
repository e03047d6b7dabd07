package quarterlight.ui.photos.clock;

import java.awt.BorderLayout;
import java.awt.Window;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import quarterlight.capture.CameraClock;
import quarterlight.edit.EditRefused;
import quarterlight.edit.fact.ClockEdits;
import quarterlight.ui.kit.Dialogs;
import quarterlight.ui.kit.Listeners;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.field.TypedText;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.ui.photos.list.PhotoItem;
import quarterlight.ui.photos.list.PhotosModel;
import quarterlight.visit.photo.CameraId;

/**
 * Sets cameras' clocks right beside a time axis that shows what follows: by a shift, by a photo of a clock, or by two photos of one
 * moment. Recorded times stay as they are. Event thread only.
 */
public final class ClockPanel {
    private final UiContext parts;
    private final Texts texts;
    private final PhotosModel model;
    private final OpenVisit visit;
    private final ClockLines lines;
    private final JComboBox<String> camera = new JComboBox<>();
    private final JTextField shift = new JTextField(10);
    private final JTextField shown = new JTextField(14);
    private final JLabel hand = new JLabel(" ");
    private final JLabel pair = new JLabel(" ");
    private final JButton byPhoto;
    private final JButton byPair;
    private Optional<JDialog> open = Optional.empty();

    public ClockPanel(UiContext parts, PhotosModel model) {
        this.parts = parts;
        this.texts = parts.texts();
        this.model = model;
        this.visit = model.visit();
        this.lines = new ClockLines(texts, model);
        this.byPhoto = button("clock.by-photo.do", this::byPhoto);
        this.byPair = button("clock.by-pair.do", this::byPair);
        camera.addActionListener(e -> fillShift());
        shift.setName("clock-shift");
        shift.addActionListener(e -> byShift());
        TypedText.keeping(shift, this::byShift);
        shown.setName("clock-shown");
    }

    private JButton button(String key, Runnable work) {
        JButton button = new JButton(texts.get(key));
        button.setName(key);
        button.addActionListener(e -> work.run());
        return button;
    }

    /** Shows the panel; photos are chosen in the station while it is open. */
    public void show(Window owner) {
        if (open.filter(JDialog::isShowing).isPresent()) {
            open.get().toFront();
            return;
        }
        JDialog dialog = new JDialog(owner, texts.get("clock.title"));
        dialog.setDefaultCloseOperation(JDialog.DISPOSE_ON_CLOSE);
        dialog.setName("clocks");
        JScrollPane scroll = new JScrollPane(lines);
        Look.bare(scroll);
        dialog.add(scroll, BorderLayout.CENTER);
        dialog.add(controls(), BorderLayout.SOUTH);
        Dialogs.leaveByEscape(dialog);
        List<Listeners.Registration> registrations =
                List.of(model.onList(this::refresh), visit.selection().onSelected(this::refresh));
        dialog.addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosed(WindowEvent e) {
                registrations.forEach(Listeners.Registration::remove);
            }
        });
        camera.setModel(new DefaultComboBoxModel<>(visit.times().cameras().stream()
                .map(clock -> clock.camera().value())
                .toArray(String[]::new)));
        refresh();
        fillShift();
        open = Optional.of(dialog);
        dialog.setSize(820, 460);
        dialog.setLocationRelativeTo(owner);
        dialog.setVisible(true);
    }

    private JPanel controls() {
        JPanel panel = new JPanel(new MigLayout("insets 12, gap 8 6, wrap 4, fillx", "[][][grow][]"));
        panel.add(new JLabel(texts.get("clock.by-shift")));
        panel.add(Look.named(camera, texts.get("clock.camera")), "w 120:220:240");
        panel.add(Look.named(shift, texts.get("clock.shift")), "growx");
        panel.add(button("clock.by-shift.do", this::byShift), "split 2");
        panel.add(button("clock.reset", this::reset));
        panel.add(new JLabel(texts.get("clock.by-photo")));
        panel.add(Look.secondary(hand), "w 120:220:240");
        shown.putClientProperty("JTextField.placeholderText", texts.get("clock.shown"));
        panel.add(Look.named(shown, texts.get("clock.shown")), "growx");
        panel.add(byPhoto);
        panel.add(new JLabel(texts.get("clock.by-pair")));
        panel.add(Look.secondary(pair), "span 2, growx, wmin 0");
        panel.add(byPair);
        return panel;
    }

    private void refresh() {
        lines.revalidate();
        lines.repaint();
        Optional<PhotoItem> item = model.inHand().filter(ClockPanel::hasClock);
        hand.setText(item.map(PhotoItem::name).orElse(texts.get("clock.choose-one")));
        byPhoto.setEnabled(item.isPresent());
        pair.setText(pairOf().map(moment -> moment.words(texts)).orElse(texts.get("clock.choose-two")));
        pair.setToolTipText(pair.getText());
        byPair.setEnabled(pairOf().isPresent());
    }

    private static boolean hasClock(PhotoItem item) {
        return item.photo().file().camera().isPresent() && item.local().isPresent();
    }

    /** Two photos of one moment by two cameras. */
    private record Moment(PhotoItem right, PhotoItem wrong) {
        String words(Texts texts) {
            return texts.get("clock.pair", wrong.name(), right.name());
        }
    }

    /** The photo in hand is by the camera whose clock is right. */
    private Optional<Moment> pairOf() {
        List<PhotoItem> two = model.selected();
        return two.size() == 2
                        && two.stream().allMatch(ClockPanel::hasClock)
                        && !two.get(0)
                                .photo()
                                .file()
                                .camera()
                                .equals(two.get(1).photo().file().camera())
                ? Optional.of(new Moment(two.get(0), two.get(1)))
                : Optional.empty();
    }

    private Optional<CameraId> chosen() {
        return Optional.ofNullable((String) camera.getSelectedItem()).map(CameraId::new);
    }

    private void fillShift() {
        shift.setText(ClockWords.shift(chosen().flatMap(id -> visit.times().cameras().stream()
                        .filter(clock -> clock.camera().equals(id))
                        .findFirst())
                .map(CameraClock::shift)
                .orElse(Duration.ZERO)));
    }

    private void byShift() {
        try {
            Optional<Duration> said = ClockWords.typedShift(shift.getText());
            Duration by = said.isPresent() ? said.get() : ClockEdits.shift(shift.getText());
            chosen().ifPresent(id ->
                    visit.edit(store -> new ClockEdits(store).shift(id, by, Optional.empty()), done -> fillShift()));
        } catch (EditRefused e) {
            parts.problems().tell(e.getMessage());
        }
    }

    private void reset() {
        chosen().ifPresent(id -> visit.edit(
                store -> {
                    new ClockEdits(store).reset(id);
                    return id;
                },
                done -> fillShift()));
    }

    private void byPhoto() {
        model.inHand().filter(ClockPanel::hasClock).ifPresent(item -> {
            Optional<LocalDateTime> shows =
                    ClockWords.shown(shown.getText(), item.local().orElseThrow().toLocalDate());
            shows.ifPresentOrElse(time -> set(item, time), () -> parts.problems()
                    .tell(texts.get("clock.not-a-time", shown.getText())));
        });
    }

    /** The wrong camera is set so that its photo falls on the moment of the other one. */
    private void byPair() {
        pairOf().ifPresent(moment -> set(moment.wrong(), moment.right().local().orElseThrow()));
    }

    private void set(PhotoItem item, LocalDateTime shows) {
        CameraId id = item.photo().file().camera().orElseThrow();
        visit.edit(
                store -> new ClockEdits(store).fromPhoto(id, item.id(), shows, Optional.empty()), done -> fillShift());
    }
}
