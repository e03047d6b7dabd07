package quarterlight.ui;

import java.awt.Component;
import java.awt.Frame;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JDialog;
import javax.swing.JFileChooser;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import quarterlight.edit.compare.ComparisonWork;
import quarterlight.task.LatestWork;
import quarterlight.ui.compare.CarsWindow;
import quarterlight.ui.kit.Dialogs;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.start.RecentVisit;

/** Asks which two to six visits are laid side by side. Event thread only. */
final class CompareDialog {
    private final UiContext parts;
    private final Frame owner;

    CompareDialog(UiContext parts, Frame owner) {
        this.parts = parts;
        this.owner = owner;
    }

    /** @param open the visit at hand, offered as the first */
    void ask(Optional<Path> open) {
        List<Path> first =
                open.map(visit -> visit.toAbsolutePath().normalize()).stream().toList();
        List<Path> recent = new ArrayList<>(parts.settings().settings().recent());
        recent.removeAll(first);
        JDialog dialog = new JDialog(owner, parts.texts().get("do.two-cars"), true);
        dialog.setName("two-visits");
        JPanel form = new JPanel(new MigLayout("insets 16, gap 8, wrap 3", "[right][480!,fill][]"));
        List<JComboBox<Path>> boxes = new ArrayList<>();
        for (int car = 0; car < ComparisonWork.MAX_CARS; car++) {
            boxes.add(box(form, String.valueOf((char) ('A' + car)), first, car));
        }
        LatestWork.once(
                "quarterlight-recent",
                SwingUtilities::invokeLater,
                progress -> RecentVisit.there(recent),
                there -> offer(boxes, there),
                parts.problems()::failed);
        JButton go = new JButton(parts.texts().get("two.go"));
        go.setName("two-go");
        go.addActionListener(e -> {
            List<Path> visits = chosen(boxes);
            if (visits.size() < ComparisonWork.MIN_CARS) {
                parts.problems().tell(parts.texts().get("two.same"));
            } else {
                dialog.dispose();
                CarsWindow.open(parts, visits);
            }
        });
        Dialogs.ask(dialog, form, go, parts.texts(), owner);
    }

    /** Offers more visits; where none is chosen yet, the first of them that is chosen nowhere else. */
    private static void offer(List<JComboBox<Path>> boxes, List<Path> more) {
        for (int car = 0; car < boxes.size(); car++) {
            JComboBox<Path> box = boxes.get(car);
            boolean open = car < ComparisonWork.MIN_CARS && box.getSelectedIndex() < 0;
            List<Path> taken = chosen(boxes);
            more.forEach(box::addItem);
            box.setSelectedItem(
                    open
                            ? more.stream()
                                    .filter(visit -> !taken.contains(visit))
                                    .findFirst()
                                    .orElse(null)
                            : box.getSelectedItem());
        }
    }

    private static List<Path> chosen(List<JComboBox<Path>> boxes) {
        return boxes.stream()
                .flatMap(box -> box.getSelectedItem() instanceof Path visit ? Stream.of(visit) : Stream.empty())
                .distinct()
                .toList();
    }

    private JComboBox<Path> box(JPanel form, String name, List<Path> known, int chosen) {
        JComboBox<Path> box = new JComboBox<>(known.toArray(Path[]::new));
        box.setName("two-" + name);
        Look.named(box, parts.texts().get("two.visit", name));
        if (chosen < ComparisonWork.MIN_CARS) {
            // never one car beside itself: what is not known yet is chosen
            box.setSelectedIndex(chosen < known.size() ? chosen : -1);
            box.setRenderer(new NoCar("two.choose.first"));
        } else {
            box.insertItemAt(null, 0);
            box.setSelectedIndex(0);
            box.setRenderer(new NoCar("two.none"));
        }
        JButton choose = new JButton(parts.texts().get("two.choose"));
        Look.named(choose, parts.texts().get("two.choose.name", name));
        choose.setName("two-choose-" + name);
        choose.addActionListener(e -> choose(box));
        JLabel label = new JLabel(name);
        label.setLabelFor(box);
        form.add(label);
        form.add(box, "wmin 0");
        form.add(choose);
        return box;
    }

    private void choose(JComboBox<Path> box) {
        JFileChooser chooser = new JFileChooser(box.getSelectedItem() instanceof Path visit ? visit.toString() : null);
        chooser.setFileSelectionMode(JFileChooser.DIRECTORIES_ONLY);
        if (chooser.showDialog(owner, parts.texts().get("choice.choose")) == JFileChooser.APPROVE_OPTION) {
            Path visit = chooser.getSelectedFile().toPath();
            box.addItem(visit);
            box.setSelectedItem(visit);
        }
    }

    private String named(Path visit) {
        String car = RecentVisit.of(parts.settings().settings(), visit).car();
        return car.equals(String.valueOf(visit.getFileName()))
                ? visit.toString()
                : parts.texts().get("two.visit.named", car, visit);
    }

    /** A visit by its car and folder; says what no choice means. */
    private final class NoCar extends DefaultListCellRenderer {
        private final String none;

        /** @param key of the words for no choice */
        NoCar(String key) {
            this.none = parts.texts().get(key);
        }

        @Override
        public Component getListCellRendererComponent(
                JList<?> list, Object value, int index, boolean selected, boolean focus) {
            Object shown = value instanceof Path visit ? named(visit) : none;
            super.getListCellRendererComponent(list, shown, index, selected, focus);
            setToolTipText(value instanceof Path visit ? visit.toString() : null);
            return this;
        }
    }
}
