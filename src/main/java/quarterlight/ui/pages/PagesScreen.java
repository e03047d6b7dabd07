package quarterlight.ui.pages;

import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JToggleButton;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import quarterlight.page.check.PageCheck;
import quarterlight.page.print.Paper;
import quarterlight.ui.kit.Command;
import quarterlight.ui.kit.Format;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.look.Hairline;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.look.TallPanel;
import quarterlight.ui.kit.place.ChangedRows;
import quarterlight.ui.kit.place.Subject;
import quarterlight.ui.kit.view.ZoomScroll;
import quarterlight.ui.kit.visit.Doubt;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.ui.kit.visit.Station;
import quarterlight.ui.kit.visit.StationScreen;
import quarterlight.ui.kit.widget.ContextMenu;
import quarterlight.units.ThicknessUnit;

/** The Pages station: what the buyer gets is chosen, made, looked at page by page, opened, printed and archived. Event thread only. */
public final class PagesScreen implements StationScreen {
    private static final double MOST_ZOOM = 5;
    private static final double STEP = 1.3;

    private final OpenVisit visit;
    private final Texts texts;
    private final PagesModel model = new PagesModel();
    private final JPanel side =
            new JPanel(new MigLayout("insets 0, gap 0, wrap 2", "[grow,fill,0::][300::300,fill]", "[][grow,fill]"));
    private final PagesActions actions;
    private final PreviewPane preview;
    private final JButton make;
    private final JComboBox<String> file = new JComboBox<>();
    private final JLabel number = new JLabel(" ");
    private final JLabel note = new JLabel(" ");
    private final JLabel check = new JLabel(" ");
    private final ZoomScroll pages;
    private final RankingPane ranking;
    private final JPanel look = row();
    private boolean showing;
    private boolean inFront;

    public PagesScreen(UiContext parts, OpenVisit visit) {
        this.visit = visit;
        this.texts = parts.texts();
        this.actions = new PagesActions(parts, visit, model, side);
        this.preview = new PreviewPane(parts, visit, model);
        this.make = new JButton(actions.makeIt());
        side.add(tools(), "span 2");
        pages = new ZoomScroll(preview, MOST_ZOOM, preview::factor);
        // always there, so that its coming does not change the width that a page is drawn at
        pages.setVerticalScrollBarPolicy(JScrollPane.VERTICAL_SCROLLBAR_ALWAYS);
        pages.setName("pages-zoom");
        side.add(pages);
        Command grounds = visit.grounds(preview::evidence);
        Command larger = Command.of(texts, "pages.closer", () -> pages.zoom(STEP));
        Command smaller = Command.of(texts, "pages.away", () -> pages.zoom(1 / STEP));
        ContextMenu.on(preview, () -> {
            grounds.setEnabled(preview.point().isPresent());
            return List.of(grounds, larger, smaller, actions.back(), actions.next());
        });
        TallPanel right = new TallPanel(new MigLayout("insets 0, wrap 1, gap 0, fillx", "[grow,fill,0::]"));
        ranking = new RankingPane(parts, visit, actions);
        right.add(ranking);
        right.add(new ChoicePane(parts, visit, model, actions));
        JScrollPane choices = new JScrollPane(right);
        choices.setBorder(new Hairline(Hairline.Side.LEFT));
        choices.getVerticalScrollBar().setUnitIncrement(16);
        choices.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        side.add(choices, "hidemode 3");
        JToggleButton contents = tool(texts.get("pages.contents"));
        contents.setName("pages-contents");
        contents.setSelected(true);
        contents.addActionListener(e -> {
            choices.setVisible(contents.isSelected());
            side.revalidate();
            SwingUtilities.invokeLater(preview::refresh);
        });
        look.add(contents);
        pages.getViewport().addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent e) {
                preview.refresh();
            }
        });
        model.onChange(this::render);
        visit.onVisit(this::visitChanged);
    }

    private JPanel tools() {
        JPanel bar = new JPanel(new MigLayout("insets 8 16 8 16, gapy 4, fillx, wrap 1, hidemode 2", "[grow,fill]"));
        JComboBox<String> paper = new JComboBox<>();
        for (Paper one : Paper.values()) {
            paper.addItem(texts.get("pages.paper." + one.word()));
        }
        Look.named(paper, texts.get("pages.paper"));
        paper.addActionListener(e -> model.paper(List.of(Paper.values()).get(paper.getSelectedIndex())));
        JComboBox<String> unit = new JComboBox<>();
        unit.addItem(texts.get("pages.unit.usual"));
        for (ThicknessUnit one : ThicknessUnit.values()) {
            unit.addItem(texts.get("pages.unit." + one.word()));
        }
        unit.setName("pages-unit");
        Look.named(unit, texts.get("pages.unit"));
        unit.addActionListener(e -> model.unit(List.of(ThicknessUnit.values()).stream()
                .skip(Math.max(0, unit.getSelectedIndex() - 1))
                .findFirst()
                .filter(one -> unit.getSelectedIndex() > 0)));
        make.setName("pages-make");
        make.putClientProperty("JButton.buttonType", "default");
        Look.named(file, texts.get("pages.file"));
        file.addActionListener(e -> fileChosen());
        JPanel first = row();
        first.add(make);
        first.add(paper);
        first.add(unit);
        first.add(file, "growx, pushx, wmin 90");
        first.add(new JButton(actions.back()));
        first.add(number, "w 56!, align center");
        first.add(new JButton(actions.next()));
        JPanel second = row();
        second.add(new JButton(actions.openIt()));
        second.add(new JButton(actions.printIt()));
        second.add(new JButton(actions.archives().archive()));
        second.add(named("pages-archive-buyer", new JButton(actions.archives().archiveForBuyer())));
        second.add(named("pages-export", new JButton(actions.archives().exportIt())));
        JButton closer = new JButton("+");
        Look.named(closer, texts.get("pages.closer"));
        closer.addActionListener(e -> pages.zoom(STEP));
        JButton away = new JButton("\u2212");
        Look.named(away, texts.get("pages.away"));
        away.addActionListener(e -> pages.zoom(1 / STEP));
        look.add(away);
        look.add(closer);
        second.add(look);
        bar.add(first);
        bar.add(second);
        bar.add(Look.secondary(note), "wmin 0");
        note.setName("pages-note");
        check.setName("pages-check");
        bar.add(check, "wmin 0");
        return bar;
    }

    private static JButton named(String name, JButton button) {
        button.setName(name);
        return button;
    }

    private static JToggleButton tool(String words) {
        return Look.toggle(new JToggleButton(words));
    }

    private static JPanel row() {
        return new JPanel(new MigLayout("insets 0, gap 8, nogrid"));
    }

    private void fileChosen() {
        if (!showing && file.getSelectedIndex() >= 0) {
            pdfs().stream().skip(file.getSelectedIndex()).findFirst().ifPresent(model::choose);
        }
    }

    private List<MadeFile> pdfs() {
        return model.state().files().stream().filter(MadeFile::isPdf).toList();
    }

    private void render() {
        showing = true;
        PagesModel.State state = model.state();
        file.removeAllItems();
        pdfs().forEach(one -> file.addItem(one.name()));
        state.file().ifPresent(one -> file.setSelectedItem(one.name()));
        number.setText(state.pages() == 0 ? " " : texts.get("pages.number", state.page() + 1, state.pages()));
        note.setText(note(state));
        note.setForeground(
                state.file().isPresent()
                                && state.since().filter(list -> !list.isEmpty()).isPresent()
                        ? Look.palette().caution()
                        : Look.palette().secondInk());
        note.setToolTipText(note.getText());
        check.setVisible(state.check().isPresent());
        state.check().ifPresent(this::renderCheck);
        showing = false;
        actions.enable();
        preview.refresh();
    }

    private void renderCheck(PageCheck found) {
        check.setText(found.sentence());
        check.setToolTipText(found.sentence());
        check.setForeground(
                found.faults().isEmpty()
                        ? Look.palette().secondInk()
                        : Look.palette().caution());
    }

    private String note(PagesModel.State state) {
        if (state.since().isEmpty()) {
            return texts.get("pages.looking");
        }
        if (state.file().isEmpty()) {
            return texts.get("pages.none");
        }
        LocalDateTime made = LocalDateTime.ofInstant(
                state.file().get().made(), visit.visit().facts().timezone());
        String when = texts.get("pages.made", Format.day(made), Format.clock(made));
        List<String> since = state.since().get();
        return since.isEmpty()
                ? when + " " + texts.get("pages.fresh")
                : when + " " + texts.get("pages.older", since.size(), String.join("; ", since));
    }

    /** Pages that do not show what was changed since; looked up again each time, told from the second time on. */
    @Override
    public List<Doubt> doubts() {
        PagesModel.State state = model.state();
        actions.look();
        boolean stale = state.since().filter(since -> !since.isEmpty()).isPresent();
        if (state.since().isEmpty() || state.file().isPresent() && !stale) {
            return List.of();
        }
        return List.of(new Doubt(
                Station.PAGES,
                new ChangedRows(Optional.empty(), List.of(), Set.of(), List.of()),
                Optional.empty(),
                state.file().isEmpty()
                        ? texts.get("doubt.pages.none")
                        : texts.get("doubt.pages", state.since().get().size())));
    }

    private void visitChanged() {
        if (inFront) {
            actions.look();
        }
    }

    @Override
    public Station station() {
        return Station.PAGES;
    }

    @Override
    public JComponent side() {
        return side;
    }

    @Override
    public JComponent first() {
        return make;
    }

    @Override
    public Optional<Subject> subject() {
        return ranking.subject();
    }

    @Override
    public List<Command> commands() {
        return actions.commands();
    }

    @Override
    public void shown() {
        inFront = true;
        actions.look();
    }

    @Override
    public void hidden() {
        inFront = false;
    }

    @Override
    public Optional<String> hint() {
        return Optional.of(texts.get("pages.hint"));
    }
}
