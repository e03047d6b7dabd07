package quarterlight.ui.compare;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.GraphicsEnvironment;
import java.awt.Rectangle;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.beans.PropertyChangeListener;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JFileChooser;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTabbedPane;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import javax.swing.WindowConstants;
import net.miginfocom.swing.MigLayout;
import quarterlight.compare.matter.Care;
import quarterlight.compare.said.ComparisonSheet;
import quarterlight.compare.said.RowText;
import quarterlight.edit.compare.ComparisonChoice;
import quarterlight.page.print.Paper;
import quarterlight.ui.kit.Dialogs;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.look.AppIcon;
import quarterlight.ui.kit.look.Look;

/** The second window: two to six cars side by side, what matters on each, and two of them in detail. Event thread only. */
public final class CarsWindow {
    private static final int PLACES = 1;

    private final UiContext parts;
    private final Texts texts;
    private final JFrame frame;
    private final PhotoSource photos;
    private final MattersPane matters;
    private final PlacesPane places;
    private final PaintPane paint;
    private final HoursPane hours;
    private final CareLine care;
    private final JTabbedPane tabs = new JTabbedPane();
    /** Inks are set when words are put up: light and dark put them up anew. */
    private final PropertyChangeListener looks = e -> SwingUtilities.invokeLater(this::showAll);

    private LoadedCars loaded;
    private ComparisonChoice choice;

    private CarsWindow(UiContext parts, LoadedCars loaded, ComparisonChoice choice) {
        this.parts = parts;
        this.texts = parts.texts();
        this.loaded = loaded;
        this.choice = choice;
        photos = new PhotoSource(loaded);
        matters = new MattersPane(texts, new CarPortraits(photos::ask), this::open);
        places = new PlacesPane(texts, photos);
        paint = new PaintPane(parts);
        hours = new HoursPane(texts);
        care = new CareLine(texts, this::care);
        frame = new JFrame(title());
        frame.setName("two-cars");
        AppIcon.on(frame);
        frame.setDefaultCloseOperation(WindowConstants.DISPOSE_ON_CLOSE);
        tabs.setName("compare-parts");
        tabs.addTab(texts.get("compare.tab.matters"), matters);
        tabs.addTab(texts.get("compare.tab.places"), places);
        tabs.addTab(texts.get("compare.tab.paint"), paint);
        tabs.addTab(texts.get("compare.tab.hour"), hours);
        JPanel top = new JPanel(new BorderLayout());
        top.add(tools(), BorderLayout.NORTH);
        top.add(care, BorderLayout.CENTER);
        frame.add(top, BorderLayout.NORTH);
        frame.add(tabs, BorderLayout.CENTER);
        frame.addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosed(WindowEvent e) {
                UIManager.removePropertyChangeListener(looks);
                paint.stop();
                photos.stop();
            }
        });
        UIManager.addPropertyChangeListener(looks);
        Dialogs.leaveByEscape(frame);
        showAll();
    }

    /** Reads two to six visits in the background and opens the window. */
    public static void open(UiContext parts, List<Path> visits) {
        ComparisonChoice choice =
                ComparisonChoice.USUAL.with(parts.settings().settings().unit());
        parts.jobs()
                .start(
                        parts.texts().get("compare.reading"),
                        progress -> LoadedCars.of(parts, visits, choice, progress),
                        loaded -> {
                            loaded.reports().forEach(report -> parts.problems().tell(report.text()));
                            new CarsWindow(parts, loaded, choice).show();
                        },
                        parts.problems()::failed);
    }

    private void show() {
        Rectangle screen = GraphicsEnvironment.getLocalGraphicsEnvironment().getMaximumWindowBounds();
        frame.setSize(new Dimension(Math.min(1720, screen.width - 40), Math.min(980, screen.height - 40)));
        frame.setLocationByPlatform(true);
        frame.setVisible(true);
        tabs.requestFocusInWindow();
    }

    private String title() {
        return loaded.cars().stream().map(LoadedCars.Car::name).collect(Collectors.joining(" \u00b7 "));
    }

    private JPanel tools() {
        JPanel bar = new JPanel(new MigLayout("insets 8 16 4 16, gap 8", "[grow,0::][][][]"));
        bar.add(Look.secondary(Sentence.of(ComparisonSheet.lead())), "growx, wmin 0");
        if (loaded.cars().size() > 2) {
            bar.add(detail());
        }
        JComboBox<Paper> paper = new JComboBox<>(new Paper[] {Paper.A4, Paper.LETTER});
        paper.setName("compare-paper");
        Look.named(paper, texts.get("compare.paper"));
        bar.add(paper);
        JButton make = new JButton(texts.get("compare.make"));
        make.setName("compare-make");
        make.addActionListener(e -> make((Paper) paper.getSelectedItem()));
        bar.add(make);
        return bar;
    }

    /** Which two of more cars stand in detail. */
    private JPanel detail() {
        String[] letters =
                loaded.sheet().cars().stream().map(car -> car.letter()).toArray(String[]::new);
        JComboBox<String> one = new JComboBox<>(letters);
        JComboBox<String> other = new JComboBox<>(letters);
        Look.named(one, texts.get("compare.detail.first"));
        Look.named(other, texts.get("compare.detail.second"));
        one.setName("detail-first");
        other.setName("detail-second");
        one.setSelectedIndex(choice.first());
        other.setSelectedIndex(choice.second());
        Runnable changed = () -> {
            if (one.getSelectedIndex() != other.getSelectedIndex()) {
                again(choice.of(one.getSelectedIndex(), other.getSelectedIndex()));
            }
        };
        one.addActionListener(e -> changed.run());
        other.addActionListener(e -> changed.run());
        JPanel panel = new JPanel(new MigLayout("insets 0, gap 6", "[][][]"));
        panel.add(new JLabel(texts.get("compare.detail")));
        panel.add(one);
        panel.add(other);
        return panel;
    }

    private void care(Care weights) {
        again(choice.with(weights));
    }

    /** Works the sheet out anew for another choice, in the background. */
    private void again(ComparisonChoice other) {
        choice = other;
        parts.jobs()
                .start(
                        texts.get("compare.working"),
                        progress -> LoadedCars.work(parts).sheet(loaded.candidates(), other),
                        sheet -> {
                            if (other.equals(choice)) {
                                loaded = loaded.with(sheet);
                                showAll();
                            }
                        },
                        parts.problems()::failed);
    }

    private void showAll() {
        matters.show(loaded.sheet());
        places.show(loaded.sheet(), choice.first(), choice.second());
        paint.show(loaded, choice.first(), choice.second());
        hours.show(loaded.sheet());
    }

    /** Shows the place of a matter on the two cars in detail. */
    private void open(RowText row) {
        if (places.open(row.row().subject().places())) {
            tabs.setSelectedIndex(PLACES);
        }
    }

    private void make(Paper paper) {
        JFileChooser chooser = new JFileChooser(
                parts.settings().settings().text("folder.compare").orElse(null));
        chooser.setFileSelectionMode(JFileChooser.DIRECTORIES_ONLY);
        chooser.setDialogTitle(texts.get("compare.make"));
        if (chooser.showDialog(frame, texts.get("choice.choose")) != JFileChooser.APPROVE_OPTION) {
            return;
        }
        Path folder = chooser.getSelectedFile().toPath();
        parts.settings().change(settings -> settings.with("folder.compare", folder.toString()));
        ComparisonChoice wanted = choice;
        parts.jobs()
                .start(
                        texts.get("compare.making"),
                        progress -> LoadedCars.work(parts).pages(loaded.candidates(), wanted, folder, paper),
                        made -> parts.problems().remark(texts.get("compare.made", made.size(), folder)),
                        parts.problems()::failed);
    }
}
