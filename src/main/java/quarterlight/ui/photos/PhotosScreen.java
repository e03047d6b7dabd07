package quarterlight.ui.photos;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Component;
import java.awt.KeyEventPostProcessor;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import javax.swing.Timer;
import javax.swing.text.JTextComponent;
import net.miginfocom.swing.MigLayout;
import quarterlight.capture.CorrectedTimes;
import quarterlight.car.ZoneId;
import quarterlight.ui.kit.Command;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.look.Prose;
import quarterlight.ui.kit.look.ShareSplit;
import quarterlight.ui.kit.place.ChangedRows;
import quarterlight.ui.kit.place.Subject;
import quarterlight.ui.kit.view.PhotoCanvas;
import quarterlight.ui.kit.visit.Doubt;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.ui.kit.visit.Station;
import quarterlight.ui.kit.visit.StationScreen;
import quarterlight.ui.kit.widget.ContextMenu;
import quarterlight.ui.photos.clock.ClockPanel;
import quarterlight.ui.photos.film.FrameWork;
import quarterlight.ui.photos.film.StatementSheet;
import quarterlight.ui.photos.list.PhotoFilter;
import quarterlight.ui.photos.list.PhotoHints;
import quarterlight.ui.photos.list.PhotosModel;
import quarterlight.ui.photos.pins.PinBox;
import quarterlight.ui.photos.pins.PinTable;
import quarterlight.ui.photos.pins.PinWork;
import quarterlight.ui.photos.sheet.ContactSheet;
import quarterlight.ui.photos.sheet.FilterBar;
import quarterlight.ui.photos.view.LargeView;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.Pin;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.pin.ViewPoint;
import quarterlight.visit.row.RecordKind;

/** The Photos station: the contact sheet, the photo in hand from near, and where it is pinned. Event thread only. */
public final class PhotosScreen implements StationScreen {
    private static final String DIVIDER = "photos.divider";
    private static final int DIVIDER_PX = 5;
    private static final int FIRST_ASK_MS = 400;
    private static final int USUAL_SHARE = 420;

    private final UiContext parts;
    private final Texts texts;
    private final OpenVisit visit;
    private final PhotosModel model;
    private final PinWork work;
    private final ContactSheet sheet;
    private final FilterBar filter;
    private final LargeView large;
    private final Command state;
    private final Command keepFrame;
    private final PinBox pinBox;
    private final PinTable pinTable;
    private final SuggestionWork suggestions;
    private final HintWork hints;
    private final AsideMenu aside;
    private final ClockPanel clocks;
    private final PhotosActions actions;
    private final JPanel side = new JPanel(new BorderLayout());
    private final CardLayout cards = new CardLayout();
    private final JPanel sheets = new JPanel(cards);
    private final ShareSplit split;
    private final KeyEventPostProcessor typing = this::typed;
    private Optional<Asked> asked = Optional.empty();
    private boolean wasEmpty;
    private boolean open;

    /** What the last suggestions were asked for; pins that are being stored do not count. */
    private record Asked(
            List<Photo> photos,
            List<Recorded<Pin>> pins,
            CorrectedTimes times,
            OpenVisit.Drawing drawing,
            PhotoHints hints) {}

    /** @param whenEmpty what is offered while there are no photos */
    public PhotosScreen(UiContext parts, OpenVisit visit, Command... whenEmpty) {
        this.parts = parts;
        this.texts = parts.texts();
        this.visit = visit;
        this.model = new PhotosModel(visit);
        this.work = new PinWork(parts, model);
        this.sheet = new ContactSheet(texts, model);
        this.filter = new FilterBar(parts, model, sheet);
        this.state = Command.of(texts, "film.do.state", this::state).key("F4");
        this.keepFrame =
                Command.of(texts, "film.do.keep-frame", this::keepFrame).menuKey("E");
        this.large = new LargeView(texts, model, this::askLine, List.of(state), List.of(keepFrame));
        this.pinTable = new PinTable(parts, model, work, sheet::requestFocusInWindow);
        this.pinBox = new PinBox(parts, model, work, sheet::requestFocusInWindow, pinTable::writeOf);
        this.suggestions = new SuggestionWork(parts, model::suggestions);
        this.hints = new HintWork(visit.images(), visit.times(), model::hints, parts.problems()::failed);
        this.aside = new AsideMenu(texts, model, work);
        this.clocks = new ClockPanel(parts, model);
        this.actions = commandsOfStation();
        this.split = laidOut(whenEmpty);
        Command grounds = visit.grounds(() -> visit.selection()
                .photo()
                .flatMap(photo -> visit.zonesOf(photo).stream().findFirst().map(Subject.OfZone::new)));
        ContextMenu.on(sheet, () -> Stream.concat(Stream.of(grounds), actions.ofPhoto().stream())
                .toList());
        ContextMenu.on(large.canvas(), () -> Stream.concat(Stream.of(grounds), actions.ofPhoto().stream())
                .toList());
        sheet.onLarge(this::toggleSheet);
        model.onList(this::listChanged);
        model.onHints(this::ask);
        visit.selection().onSelected(hints::rest);
        listChanged();
        visit.afterValues(this::begin);
        model.takeFirst();
    }

    private ShareSplit laidOut(Command... whenEmpty) {
        JScrollPane scroll =
                new JScrollPane(sheet, JScrollPane.VERTICAL_SCROLLBAR_ALWAYS, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        Look.bare(scroll);
        scroll.getVerticalScrollBar().setUnitIncrement(48);
        sheets.add(scroll, "photos");
        sheets.add(empty("photos.empty", Stream.of(whenEmpty).map(JButton::new).toArray(JButton[]::new)), "empty");
        JButton all = new JButton(texts.get("photos.none.all"));
        all.addActionListener(e -> model.filter(PhotoFilter.ALL));
        sheets.add(empty("photos.none", all), "none");
        JPanel near = new JPanel(new BorderLayout());
        near.add(large, BorderLayout.CENTER);
        near.add(new PinStrip(pinBox, pinTable), BorderLayout.SOUTH);
        int permille = parts.settings().settings().number(DIVIDER, USUAL_SHARE);
        ShareSplit pane = new ShareSplit(sheets, near, Math.min(850, Math.max(150, permille)) / 1000.0);
        side.add(filter, BorderLayout.NORTH);
        side.add(pane, BorderLayout.CENTER);
        return pane;
    }

    private JPanel empty(String key, JButton... buttons) {
        JPanel panel = new JPanel(new MigLayout("wrap 1, insets 24, ay center", "[grow, fill]"));
        JTextArea words = Prose.area();
        words.setText(texts.get(key));
        words.setFocusable(false);
        panel.add(words, "wmin 0");
        for (JButton button : buttons) {
            panel.add(button, "ax left, grow 0");
        }
        return panel;
    }

    private PhotosActions commandsOfStation() {
        return new PhotosActions(texts)
                .digits(PinBox.ROWS, "photos.do.take", pinBox::take)
                .section()
                .digitsWith("alt", PinBox.ROWS, "photos.do.take-and-stay", pinBox::takeAndStay)
                .section()
                .with("photos.do.next", "alt RIGHT", () -> model.step(1))
                .with("photos.do.previous", "alt LEFT", () -> model.step(-1))
                .with("photos.do.next-unpinned", "F8", model::nextOpen)
                .with("photos.do.next-in-group", "F7", model::nextInGroup)
                .section()
                .with("photos.do.unpinned", "F9", filter::toggleUnpinned)
                .with("photos.do.of-zone", "F10", filter::toggleZones)
                .withMenuKey("photos.do.search", "F", () -> filter.name().requestFocusInWindow())
                .section()
                .with("photos.do.caption", "F2", pinTable::editLast)
                .withMenuKey("photos.do.draw", "D", () -> large.notes().begin(Optional.empty()))
                .with("photos.do.aside", "DELETE", this::setAsideOrRemoveNote)
                .with("photos.do.leave", "ESCAPE", this::leaveDrawing)
                .with("photos.do.large", "alt ENTER", this::toggleSheet)
                .with("photos.do.back", "shift DELETE", work::takeBack)
                .withMenuKey("photos.do.release", "B", () -> large.release().toggle())
                .section()
                .with("photos.do.zoom-in", "typed +", () -> large.canvas().zoom(1.25))
                .with("photos.do.zoom-out", "typed -", () -> large.canvas().zoom(0.8))
                .with("photos.do.whole", "typed 0", () -> large.canvas().toggleWhole())
                .withMenuKey("photos.do.clocks", "L", () -> clocks.show(SwingUtilities.getWindowAncestor(side)))
                .withMenuKey("photos.do.turn", "R", () -> large.canvas().turn(1))
                .withMenuKey(
                        "photos.do.turn-back", "shift R", () -> large.canvas().turn(-1))
                .section()
                .with("film.frame-back", "typed ,", () -> large.film().step(-1))
                .with("film.frame-on", "typed .", () -> large.film().step(1))
                .with("film.second-back", "typed <", () -> large.film().skip(-1))
                .with("film.second-on", "typed >", () -> large.film().skip(1))
                .with("film.whole", "typed /", () -> large.film().whole())
                .with(state, keepFrame);
    }

    private void listChanged() {
        boolean none = model.all().size() == 0;
        boolean isFilled = wasEmpty && !none && sheets.isShowing();
        wasEmpty = none;
        cards.show(sheets, none ? "empty" : model.shown().size() == 0 ? "none" : "photos");
        if (isFilled) {
            // the keyboard was at the button that took the photos in, or nowhere
            sheet.requestFocusInWindow();
        }
        hints.request(visit.visit().photos(), visit.times());
        ask();
    }

    /** Asks for suggestions if pins, times or near-duplicates are others than before; the window comes first. */
    private void ask() {
        VisitRecord held = visit.visit();
        Asked now = new Asked(held.photos(), held.pins(), visit.times(), visit.drawing(), model.hints());
        if (open && !asked.equals(Optional.of(now))) {
            asked = Optional.of(now);
            suggestions.request(visit, model.hints());
        }
    }

    private void begin() {
        Timer first = new Timer(FIRST_ASK_MS, e -> {
            open = true;
            ask();
        });
        first.setRepeats(false);
        first.start();
    }

    private void setAsideOrRemoveNote() {
        if (!large.notes().isDrawing()) {
            aside.show(sheet);
        } else {
            large.notes().removeChosen();
        }
    }

    private void state() {
        new StatementSheet(parts, visit).show(SwingUtilities.getWindowAncestor(side));
    }

    private void keepFrame() {
        new FrameWork(parts, visit).keep(model.inHand());
    }

    /** The photo in hand takes the room of the sheet, or gives it back. */
    private void toggleSheet() {
        sheets.setVisible(!sheets.isVisible());
        split.setDividerSize(sheets.isVisible() ? DIVIDER_PX : 0);
        split.again();
        (sheets.isVisible() ? sheet : large.canvas()).requestFocusInWindow();
    }

    private void leaveDrawing() {
        if (!sheets.isVisible() && !large.notes().isDrawing()) {
            toggleSheet();
        }
        large.notes().end();
        sheet.requestFocusInWindow();
    }

    private Optional<String> askLine(String question) {
        return parts.problems().ask(question, texts.get("photos.tool.draw"), "");
    }

    /** Letters typed anywhere in the station that nothing else wanted begin a search for a zone. */
    private boolean typed(KeyEvent e) {
        Component focus = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        boolean letter = e.getID() == KeyEvent.KEY_TYPED
                && Character.isLetter(e.getKeyChar())
                && !e.isControlDown()
                && !e.isAltDown()
                && !e.isMetaDown();
        if (letter
                && !e.isConsumed()
                && focus != null
                && !(focus instanceof JTextComponent)
                && SwingUtilities.getWindowAncestor(focus) == SwingUtilities.getWindowAncestor(side)) {
            if (large.notes().isDrawing()) {
                return large.notes().type(e.getKeyChar());
            }
            pinBox.type(e.getKeyChar());
            return true;
        }
        return false;
    }

    @Override
    public Station station() {
        return Station.PHOTOS;
    }

    @Override
    public JComponent side() {
        return side;
    }

    @Override
    public JComponent first() {
        return sheet;
    }

    @Override
    public List<Doubt> doubts() {
        return PhotoDoubts.of(texts, model);
    }

    @Override
    public Optional<PhotoCanvas> picture() {
        return Optional.of(large.canvas());
    }

    @Override
    public List<Command> commands() {
        return actions.all();
    }

    @Override
    public void zoneChosen(ZoneId zone, ViewPoint point) {
        if (!model.filter().zonesOnly()) {
            work.pinSelected(zone, Optional.of(point));
        }
    }

    @Override
    public void photosDropped(List<PhotoId> photos, ZoneId zone, ViewPoint point) {
        if (photos.equals(visit.selection().photos())) {
            work.pinSelected(zone, Optional.of(point));
        } else {
            work.pin(photos, zone, Optional.of(point));
        }
    }

    @Override
    public void pinMoved(RecordId pin, ZoneId zone, ViewPoint point) {
        work.move(pin, zone, point);
    }

    @Override
    public void reveal(ChangedRows changed) {
        if (changed.isOf(RecordKind.PINS)) {
            pinTable.choose(changed.rows());
        }
    }

    @Override
    public void shown() {
        KeyboardFocusManager.getCurrentKeyboardFocusManager().addKeyEventPostProcessor(typing);
    }

    @Override
    public void hidden() {
        KeyboardFocusManager.getCurrentKeyboardFocusManager().removeKeyEventPostProcessor(typing);
        int share = (int) Math.round(1000 * split.share());
        parts.settings().change(s -> s.with(DIVIDER, share));
    }

    @Override
    public void closed() {
        suggestions.stop(visit);
        hints.stop();
        sheet.stop();
        large.film().stop();
    }

    @Override
    public Optional<String> hint() {
        int count = visit.selection().photos().size();
        return Optional.of(
                count == 0
                        ? texts.get("photos.click.none")
                        : model.filter().zonesOnly()
                                ? texts.get("photos.click.filter")
                                : texts.get("photos.click.pin", count));
    }
}
