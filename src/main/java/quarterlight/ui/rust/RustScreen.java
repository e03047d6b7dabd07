package quarterlight.ui.rust;

import java.awt.BorderLayout;
import java.awt.event.ActionEvent;
import java.util.List;
import java.util.Optional;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.JTabbedPane;
import javax.swing.KeyStroke;
import quarterlight.car.ZoneId;
import quarterlight.ui.kit.Command;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.place.ChangedRows;
import quarterlight.ui.kit.view.PhotoCanvas;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.ui.kit.visit.Station;
import quarterlight.ui.kit.visit.StationScreen;
import quarterlight.ui.rust.draw.RustModel;
import quarterlight.ui.rust.draw.ShareModel;
import quarterlight.ui.rust.draw.TraceDesk;
import quarterlight.ui.rust.draw.TraceDraft;
import quarterlight.ui.rust.draw.TraceKeys;
import quarterlight.visit.annotation.Outline;
import quarterlight.visit.annotation.Trace;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.pin.ViewPoint;
import quarterlight.visit.row.RecordKind;

/**
 * The Rust station: the photo with its outlines and its scale, what the outline in hand comes to, every zone with grade and need, all
 * outlines, and the color share. Event thread only.
 */
public final class RustScreen implements StationScreen {
    private static final int ZONES_TAB = 1;
    private static final int SHARE_TAB = 3;

    private final UiContext parts;
    private final OpenVisit visit;
    private final Texts texts;
    private final RustModel model = new RustModel();
    private final ShareModel share;
    private final PhotoCanvas canvas;
    private final TraceDesk desk;
    private final RustActions actions;
    private final DraftPane draft;
    private final ZonesPane zones;
    private final TracesPane traces;
    private final JPanel side = new JPanel(new BorderLayout());
    private final JTabbedPane tabs = new JTabbedPane();
    private final PhotoPane photoPane;
    private boolean drawn;
    private int before = ZONES_TAB;

    public RustScreen(UiContext parts, OpenVisit visit) {
        this.parts = parts;
        this.visit = visit;
        this.texts = parts.texts();
        this.canvas = new PhotoCanvas(texts, visit);
        canvas.setName("rust-photo");
        this.share = new ShareModel(
                (photo, done) -> visit.images()
                        .large(photo.file(), ShareModel.LONG_SIDE_PX, done, problem -> parts.problems()
                                .tell(problem.getMessage())),
                parts.problems()::failed);
        this.desk = new TraceDesk(texts, visit, canvas, model, share, this::choose);
        this.actions = new RustActions(parts, visit, model, share, canvas);
        new TraceKeys(canvas, model, share, desk, actions::remove);
        this.draft = new DraftPane(parts, visit, model, actions);
        this.zones = new ZonesPane(texts, visit, actions);
        this.traces = new TracesPane(texts, visit, actions);
        actions.onZoneLacking(() -> {
            tabs.setSelectedIndex(0);
            draft.askZone();
        });
        draft.then(canvas);
        this.photoPane = new PhotoPane(canvas, actions);
        laidOut();
        undoWhileDrawing();
        model.onChange(this::renderDrawing);
        actions.onChosen(this::render);
        visit.onVisit(this::render);
        visit.onFindings(this::render);
        visit.selection().onSelected(this::selected);
        selected();
    }

    private void laidOut() {
        tabs.setName("rust-tabs");
        tabs.setOpaque(true);
        tabs.addTab(texts.get("trace.tab.outline"), scrolled(draft));
        tabs.addTab(texts.get("trace.tab.zones"), zones);
        tabs.addTab(texts.get("trace.tab.traces"), traces);
        tabs.addTab(texts.get("trace.tab.share"), scrolled(new SharePane(texts, share, actions, this::outlineShare)));
        for (int i = 0; i < tabs.getTabCount(); i++) {
            int at = i;
            actions.tab(i + 1, tabs.getTitleAt(i), () -> tabs.setSelectedIndex(at));
        }
        tabs.setSelectedIndex(ZONES_TAB);
        JSplitPane split = new JSplitPane(JSplitPane.VERTICAL_SPLIT, true, photoPane, tabs);
        Look.bare(split);
        split.setDividerSize(5);
        split.setResizeWeight(0.62);
        tabs.setPreferredSize(new java.awt.Dimension(400, 270));
        side.add(split, BorderLayout.CENTER);
    }

    private static JScrollPane scrolled(JComponent inside) {
        JScrollPane scroll = new JScrollPane(inside);
        scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.getVerticalScrollBar().setUnitIncrement(16);
        return Look.bare(scroll);
    }

    /** While an outline is drawn, undo and redo are steps of drawing; else those of the visit. */
    private void undoWhileDrawing() {
        bind("ctrl Z", () -> {
            if (!model.undo()) {
                visit.undo();
            }
        });
        bind("ctrl shift Z", () -> {
            if (!model.redo()) {
                visit.redo();
            }
        });
    }

    private void bind(String stroke, Runnable work) {
        side.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke(stroke), stroke);
        side.getActionMap().put(stroke, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent e) {
                work.run();
            }
        });
    }

    private void choose(Optional<RecordId> trace) {
        actions.chosen(trace);
        actions.chosen().ifPresent(actions::show);
    }

    private void selected() {
        model.photo(visit.selection().photo());
        actions.letGoUnless(visit.selection().photo());
        render();
    }

    private Optional<Photo> photo() {
        return visit.selection().photo().flatMap(id -> visit.visit().photo(id));
    }

    /** What is known of an outline comes to the front while it is drawn; what was there before, once it is not. */
    private void turnTabs() {
        boolean drawing = model.draft().isPresent();
        if (drawing && !drawn && tabs.getSelectedIndex() != SHARE_TAB) {
            before = tabs.getSelectedIndex();
            tabs.setSelectedIndex(0);
        } else if (!drawing && drawn && tabs.getSelectedIndex() == 0) {
            tabs.setSelectedIndex(before);
        }
        drawn = drawing;
    }

    private void render() {
        Optional<Photo> photo = photo();
        canvas.show(photo);
        desk.chosen(actions.chosen().map(Recorded::id));
        photoPane.name(photo.map(this::named).orElse(texts.get("trace.photo.none")));
        zones.render();
        traces.render(actions.chosen().map(Recorded::id));
        renderDrawing();
    }

    /** What changes with every point. */
    private void renderDrawing() {
        turnTabs();
        say();
        draft.render();
        actions.enable();
        share.look(photo(), region());
    }

    private void say() {
        Optional<TraceWords.Said> said = model.draft().map(one -> TraceWords.of(texts, visit, one));
        draft.say(said.map(TraceWords.Said::sentences).orElse(List.of()));
        String unfinished =
                model.unfinished() == 0 ? "" : "  \u00b7  " + texts.get("trace.unfinished", model.unfinished());
        photoPane.say(
                model.state().tool(),
                said.map(TraceWords.Said::figure).orElseGet(this::figureOfChosen),
                TraceWords.next(texts, model.state()) + unfinished);
    }

    private String figureOfChosen() {
        return actions.chosen()
                .flatMap(row -> visit.findings().flatMap(found -> found.rust().traces().stream()
                        .filter(area -> area.id().equals(row.id()))
                        .findFirst()))
                .map(TraceWords::figure)
                .filter(words -> !words.isEmpty())
                .orElse(" ");
    }

    private String named(Photo photo) {
        List<PhotoId> list = actions.photoSteps().all();
        int at = list.indexOf(photo.id());
        return at < 0
                ? photo.file().name()
                : texts.get("trace.photo.named", photo.file().name(), at + 1, list.size());
    }

    /** What the color share looks at: the outline being drawn, else the chosen one. */
    private Optional<Outline> region() {
        return model.draft().map(TraceDraft::outline).orElseGet(() -> actions.chosen()
                .map(Recorded::value)
                .filter(trace -> visit.selection().photo().equals(Optional.of(trace.photo())))
                .map(Trace::outline));
    }

    private void outlineShare() {
        share.answer().ifPresent(answer -> new ShareEdits(parts, visit, model, actions).outlines(answer));
    }

    @Override
    public Station station() {
        return Station.RUST;
    }

    @Override
    public JComponent side() {
        return side;
    }

    @Override
    public JComponent first() {
        return canvas;
    }

    @Override
    public Optional<PhotoCanvas> picture() {
        return Optional.of(canvas);
    }

    @Override
    public List<Command> commands() {
        return actions.commands();
    }

    @Override
    public void zoneChosen(ZoneId zone, ViewPoint point) {
        if (model.draft().isPresent()) {
            model.write(model.draft().get().on(Optional.of(zone)));
            canvas.requestFocusInWindow();
        }
    }

    /** A photo is there to draw on: one with an outline, else the first. */
    @Override
    public void shown() {
        if (visit.selection().photo().isEmpty()) {
            visit.visit().traces().stream()
                    .map(row -> row.value().photo())
                    .findFirst()
                    .or(() -> actions.photoSteps().all().stream().findFirst())
                    .ifPresent(id -> visit.selection().photos(List.of(id)));
        }
        render();
    }

    @Override
    public void reveal(ChangedRows changed) {
        if (changed.isOf(RecordKind.TRACES)) {
            actions.chosen(changed.rows().stream().findFirst());
        }
    }

    @Override
    public void hidden() {
        actions.keepIfComplete();
    }

    @Override
    public void closed() {
        share.stop();
    }

    @Override
    public Optional<String> hint() {
        return Optional.of(texts.get(model.draft().isPresent() ? "trace.hint.zone" : "rust.hint"));
    }
}
