package quarterlight.ui.compare;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.GraphicsEnvironment;
import java.awt.Rectangle;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.swing.JButton;
import javax.swing.JFileChooser;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.JTable;
import javax.swing.WindowConstants;
import net.miginfocom.swing.MigLayout;
import quarterlight.car.ZoneId;
import quarterlight.compare.ComparedZone;
import quarterlight.diagram.ink.Highlight;
import quarterlight.page.ThicknessRamp;
import quarterlight.page.print.Paper;
import quarterlight.ui.kit.DeskParts;
import quarterlight.ui.kit.Dialogs;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.widget.FactTable;

/** The second window: two cars side by side on one scale, zone by zone, with what speaks for each. Event thread only. */
public final class TwoCarsWindow {
    private final DeskParts parts;
    private final Texts texts;
    private final Pair pair;
    private final JFrame frame;
    private final CarSheet sheetA;
    private final CarSheet sheetB;
    private final FactTable<ComparedZone> table;

    private TwoCarsWindow(DeskParts parts, Pair pair) {
        this.parts = parts;
        this.texts = parts.texts();
        this.pair = pair;
        ThicknessRamp ramp = ThicknessRamp.of(
                List.of(pair.a().findings(), pair.b().findings()),
                parts.settings().settings().unit());
        sheetA = new CarSheet(parts, pair.a(), ramp, this::hovered);
        sheetB = new CarSheet(parts, pair.b(), ramp, this::hovered);
        table = table(ramp);
        frame = new JFrame(texts.get("compare.title", pair.a().name(), pair.b().name()));
        frame.setName("two-cars");
        frame.setDefaultCloseOperation(WindowConstants.DISPOSE_ON_CLOSE);
        frame.add(tools(), BorderLayout.NORTH);
        frame.add(content(), BorderLayout.CENTER);
        frame.addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosed(WindowEvent e) {
                sheetA.stop();
                sheetB.stop();
            }
        });
        Dialogs.leaveByEscape(frame);
    }

    /** Reads both visits in the background and opens the window. */
    public static void open(DeskParts parts, Path a, Path b) {
        parts.jobs()
                .start(
                        parts.texts().get("compare.reading"),
                        progress -> Pair.of(parts.work(), a, b, progress),
                        pair -> {
                            pair.slips().forEach(slip -> parts.problems().tell(slip.text()));
                            new TwoCarsWindow(parts, pair).show();
                        },
                        parts.problems()::failed);
    }

    private void show() {
        Rectangle screen = GraphicsEnvironment.getLocalGraphicsEnvironment().getMaximumWindowBounds();
        frame.setSize(new Dimension(Math.min(1720, screen.width - 40), Math.min(980, screen.height - 40)));
        frame.setLocationByPlatform(true);
        frame.setVisible(true);
        table.requestFocusInWindow();
    }

    private JPanel tools() {
        JPanel bar = new JPanel(new MigLayout("insets 8 16 8 16, gap 8", "[][grow][]"));
        bar.add(Look.heading("A  " + pair.a().name() + "     B  " + pair.b().name()));
        bar.add(Look.secondary(new JLabel(texts.get("compare.lead"))), "wmin 0");
        JButton make = new JButton(texts.get("compare.make"));
        make.setName("compare-make");
        make.addActionListener(e -> make());
        bar.add(make);
        return bar;
    }

    private Component content() {
        JPanel sheets =
                new JPanel(new MigLayout("insets 0, gap 1, fill", "[grow,fill,sg][grow,fill,sg]", "[grow,fill]"));
        sheets.add(sheetA);
        sheets.add(sheetB);
        JScrollPane below = new JScrollPane(table);
        JSplitPane left = new JSplitPane(JSplitPane.VERTICAL_SPLIT, true, sheets, below);
        left.setResizeWeight(0.62);
        Look.bare(left);
        JScrollPane said = new JScrollPane(new SaidPane(texts, pair.comparison()));
        said.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        said.getVerticalScrollBar().setUnitIncrement(16);
        said.setPreferredSize(new Dimension(380, 400));
        Look.bare(said);
        JSplitPane all = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, true, left, said);
        all.setResizeWeight(0.78);
        Look.bare(all);
        return all;
    }

    private FactTable<ComparedZone> table(ThicknessRamp ramp) {
        FactTable<ComparedZone> made =
                new FactTable<>(texts.get("compare.table"), ZoneColumns.of(texts, ramp), ComparedZone::zone);
        made.setAutoResizeMode(JTable.AUTO_RESIZE_OFF);
        made.show(ZoneColumns.known(pair.comparison()));
        made.onChosen(() -> mark(Optional.empty()));
        return made;
    }

    private void hovered(Optional<ZoneId> zone) {
        mark(zone);
    }

    /** Marks the zone of the selected row, and the one under the pointer, on both cars. */
    private void mark(Optional<ZoneId> hovered) {
        Set<ZoneId> selected =
                table.chosen().map(row -> Set.of(row.zone().id())).orElse(Set.of());
        Highlight marked = new Highlight(selected, hovered);
        sheetA.show(marked);
        sheetB.show(marked);
    }

    private void make() {
        JFileChooser chooser = new JFileChooser(
                parts.settings().settings().text("folder.compare").orElse(null));
        chooser.setFileSelectionMode(JFileChooser.DIRECTORIES_ONLY);
        chooser.setDialogTitle(texts.get("compare.make"));
        if (chooser.showDialog(frame, texts.get("choice.choose")) != JFileChooser.APPROVE_OPTION) {
            return;
        }
        Path folder = chooser.getSelectedFile().toPath();
        parts.settings().change(settings -> settings.with("folder.compare", folder.toString()));
        parts.jobs()
                .start(
                        texts.get("compare.making"),
                        progress -> parts.work()
                                .comparisonPages(
                                        pair.a().folder(),
                                        pair.a().findings(),
                                        pair.b().folder(),
                                        pair.b().findings(),
                                        folder,
                                        Paper.A4),
                        made -> parts.problems().remark(texts.get("compare.made", made.size(), folder)),
                        parts.problems()::failed);
    }
}
