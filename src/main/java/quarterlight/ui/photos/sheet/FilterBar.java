package quarterlight.ui.photos.sheet;

import java.awt.Dimension;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import javax.swing.AbstractListModel;
import javax.swing.ComboBoxModel;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSlider;
import javax.swing.JTextField;
import javax.swing.JToggleButton;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import net.miginfocom.swing.MigLayout;
import quarterlight.capture.CorrectedTimes;
import quarterlight.ui.kit.DeferredTask;
import quarterlight.ui.kit.Format;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.photos.list.PhotoItem;
import quarterlight.ui.photos.list.PhotoScope;
import quarterlight.ui.photos.list.PhotosModel;
import quarterlight.visit.photo.CameraId;

/** The bar above the contact sheet: which photos are shown, and how large. Event thread only. */
public final class FilterBar extends JPanel {
    private static final List<PhotoScope> CHOICES = List.of(PhotoScope.values());
    private static final String CELL = "photos.cell";

    private final transient PhotosModel model;
    private final transient Texts texts;
    private final JComboBox<String> showing = new JComboBox<>();
    private final JToggleButton zones = new JToggleButton();
    private final JComboBox<String> cameras = new JComboBox<>();
    private final JComboBox<String> groups = new JComboBox<>();
    private final JTextField name = new JTextField();
    private final JLabel count = new JLabel(" ");
    private transient List<CameraId> known = List.of();
    private transient Optional<CorrectedTimes> timesKnown = Optional.empty();
    private int groupsKnown;
    private int photosKnown = -1;
    private transient List<String> shownChoices = List.of();
    private final transient DeferredTask later = new DeferredTask(this::fill);
    private boolean filling;

    public FilterBar(UiContext parts, PhotosModel model, ContactSheet sheet) {
        super(new MigLayout("insets 4 8 4 8, gap 6, fillx", "[][][][][grow,fill][][]", "[28!]"));
        this.model = model;
        this.texts = parts.texts();
        showing.setName("photos-showing");
        add(Look.named(showing, texts.get("photos.filter.showing")), "wmin 90");
        zones.setText(texts.get("photos.filter.zone"));
        zones.setToolTipText(texts.get("photos.filter.zone.tip"));
        Look.toggle(zones);
        add(Look.named(zones, texts.get("photos.filter.zone.tip")));
        add(Look.named(cameras, texts.get("photos.filter.camera")), "w 60:128:180");
        add(Look.named(groups, texts.get("photos.filter.group")), "w 60:112:150");
        onlyAll(cameras, texts.get("photos.filter.camera.all"));
        onlyAll(groups, texts.get("photos.filter.group.all"));
        name.putClientProperty("JTextField.placeholderText", texts.get("photos.filter.name"));
        name.putClientProperty("JTextField.showClearButton", true);
        add(Look.named(name, texts.get("photos.filter.name")), "wmin 60");
        add(Look.secondary(count));
        add(slider(parts, sheet), "w 56:84:100");
        fill();
        listen();
        model.onList(later::ask);
        model.onHints(later::ask);
    }

    /** Until its list is filled. */
    private static void onlyAll(JComboBox<String> box, String all) {
        box.setPrototypeDisplayValue(all);
        box.addItem(all);
    }

    private JSlider slider(UiContext parts, ContactSheet sheet) {
        int kept = parts.settings().settings().number(CELL, sheet.cell());
        JSlider slider = new JSlider(72, 288, Math.max(72, Math.min(288, kept)));
        sheet.cell(slider.getValue());
        slider.setToolTipText(texts.get("photos.filter.size"));
        slider.setMinimumSize(new Dimension(56, 24));
        slider.addChangeListener(e -> {
            sheet.cell(slider.getValue());
            if (!slider.getValueIsAdjusting()) {
                parts.settings().change(s -> s.with(CELL, slider.getValue()));
            }
        });
        return Look.named(slider, texts.get("photos.filter.size"));
    }

    private void listen() {
        showing.addActionListener(e -> {
            if (!filling && showing.getSelectedIndex() >= 0) {
                model.filter(model.filter().with(CHOICES.get(showing.getSelectedIndex())));
            }
        });
        zones.addActionListener(e -> model.filter(model.filter().withZonesOnly(zones.isSelected())));
        cameras.addActionListener(e -> {
            if (!filling) {
                int at = cameras.getSelectedIndex();
                model.filter(model.filter().withCamera(at <= 0 ? Optional.empty() : Optional.of(known.get(at - 1))));
            }
        });
        groups.addActionListener(e -> {
            if (!filling) {
                int at = groups.getSelectedIndex();
                model.filter(model.filter().withGroup(at <= 0 ? OptionalInt.empty() : OptionalInt.of(at)));
            }
        });
        name.getDocument().addDocumentListener(new DocumentListener() {
            @Override
            public void insertUpdate(DocumentEvent e) {
                model.filter(model.filter().withName(name.getText()));
            }

            @Override
            public void removeUpdate(DocumentEvent e) {
                insertUpdate(e);
            }

            @Override
            public void changedUpdate(DocumentEvent e) {
                insertUpdate(e);
            }
        });
    }

    /** Shows only photos that still want a pin, or all again. */
    public void toggleUnpinned() {
        model.filter(model.filter()
                .with(model.filter().showing() == PhotoScope.UNPINNED ? PhotoScope.ALL : PhotoScope.UNPINNED));
    }

    public void toggleZones() {
        zones.doClick();
    }

    public JTextField name() {
        return name;
    }

    private void fill() {
        filling = true;
        try {
            Map<PhotoScope, Integer> counts = model.counts();
            List<String> choices = CHOICES.stream()
                    .map(one -> texts.get(
                            one.textKey(), model.hints().isKnown(one) ? Integer.toString(counts.get(one)) : "\u2026"))
                    .toList();
            if (!choices.equals(shownChoices)) {
                shownChoices = choices;
                showing.setModel(new DefaultComboBoxModel<>(choices.toArray(String[]::new)));
            }
            showing.setSelectedIndex(CHOICES.indexOf(model.filter().showing()));
            zones.setSelected(model.filter().zonesOnly());
            count.setText(texts.get("photos.filter.count", model.shown().size()));
        } finally {
            filling = false;
        }
        model.visit().afterPainting(this::fillPlaces);
    }

    /** All groups, then each one; what a choice says is worked out when it is seen: thousands of photos have thousands of groups. */
    private final class GroupChoices extends AbstractListModel<String> implements ComboBoxModel<String> {
        private final transient List<PhotoItem> first;
        private transient Object chosen;

        GroupChoices(List<PhotoItem> first) {
            this.first = first;
            // without one, every choice would be asked for its words
            this.chosen = getElementAt(0);
        }

        @Override
        public int getSize() {
            return 1 + first.size();
        }

        @Override
        public String getElementAt(int at) {
            if (at == 0) {
                return texts.get("photos.filter.group.all");
            }
            PhotoItem item = first.get(at - 1);
            return texts.get(
                    "photos.filter.group.one",
                    item.group().getAsInt(),
                    item.local().map(Format::clock).orElse(""));
        }

        @Override
        public void setSelectedItem(Object item) {
            chosen = item;
            fireContentsChanged(this, -1, -1);
        }

        @Override
        public Object getSelectedItem() {
            return chosen;
        }
    }

    /** Cameras and groups follow from photos and times alone. */
    private void fillPlaces() {
        CorrectedTimes times = model.visit().times();
        if (photosKnown != model.all().size() || timesKnown.isEmpty() || timesKnown.get() != times) {
            photosKnown = model.all().size();
            timesKnown = Optional.of(times);
            filling = true;
            try {
                fillCameras();
                fillGroups();
            } finally {
                filling = false;
            }
        }
    }

    private void fillCameras() {
        List<CameraId> now = model.all().items().stream()
                .flatMap(item -> item.photo().file().camera().stream())
                .distinct()
                .sorted()
                .toList();
        if (!now.equals(known)) {
            known = now;
            DefaultComboBoxModel<String> choices = new DefaultComboBoxModel<>();
            choices.addElement(texts.get("photos.filter.camera.all"));
            now.forEach(camera -> choices.addElement(camera.value()));
            cameras.setModel(choices);
            cameras.setSelectedIndex(
                    1 + model.filter().camera().map(now::indexOf).orElse(-1));
        }
    }

    private void fillGroups() {
        Map<Integer, PhotoItem> first = new TreeMap<>();
        model.all().items().forEach(item -> item.group().ifPresent(group -> first.putIfAbsent(group, item)));
        if (first.size() != groupsKnown) {
            groupsKnown = first.size();
            groups.setModel(new GroupChoices(List.copyOf(first.values())));
            model.filter().group().ifPresent(group -> groups.setSelectedIndex(Math.min(groupsKnown, group)));
        }
    }
}
