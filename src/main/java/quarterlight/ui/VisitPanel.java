package quarterlight.ui;

import static quarterlight.visit.row.RecordKind.CLAIMS;
import static quarterlight.visit.row.RecordKind.COVERAGE;
import static quarterlight.visit.row.RecordKind.DROPPED;
import static quarterlight.visit.row.RecordKind.FEATURES;
import static quarterlight.visit.row.RecordKind.GAUGE;
import static quarterlight.visit.row.RecordKind.LEFT_OUT;
import static quarterlight.visit.row.RecordKind.MARKS;
import static quarterlight.visit.row.RecordKind.ODOMETER;
import static quarterlight.visit.row.RecordKind.READINGS;
import static quarterlight.visit.row.RecordKind.SIGNS;
import static quarterlight.visit.row.RecordKind.STATEMENTS;
import static quarterlight.visit.row.RecordKind.TRACES;
import static quarterlight.visit.row.RecordKind.TRIALS;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.SwingUtilities;
import quarterlight.ui.diagram.CarAndPhoto;
import quarterlight.ui.diagram.DiagramSide;
import quarterlight.ui.diagram.Layer;
import quarterlight.ui.doubt.DoubtWalk;
import quarterlight.ui.doubt.Doubts;
import quarterlight.ui.kit.Command;
import quarterlight.ui.kit.DeferredTask;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.beside.PhotoBeside;
import quarterlight.ui.kit.beside.PictureKeys;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.look.Roomy;
import quarterlight.ui.kit.look.ShareSplit;
import quarterlight.ui.kit.place.ChangedRows;
import quarterlight.ui.kit.place.Subject;
import quarterlight.ui.kit.view.PhotoCanvas;
import quarterlight.ui.kit.visit.Doubt;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.ui.kit.visit.Station;
import quarterlight.ui.kit.visit.StationScreen;
import quarterlight.ui.kit.widget.ProgressLine;
import quarterlight.ui.lens.EvidenceLens;

/** One visit in the window: the rail, the diagram, and what the station in front puts beside it. Event thread only. */
final class VisitPanel extends JPanel {
    private static final String DIVIDER = "window.divider";
    /** What a station is laid out for, px: the home size of the window less the drawing. */
    private static final int SIDE_WIDTH = 690;

    private static final int SIDE_HEIGHT = 700;
    private static final int USUAL_SHARE = 340;
    private static final int DIVIDER_PX = 5;

    private final transient UiContext parts;
    private final transient OpenVisit visit;
    private final transient Map<Station, StationScreen> screens = new EnumMap<>(Station.class);
    private final CardLayout cards = new CardLayout();
    private final transient DeskActions actions;
    private final JPanel sides = new JPanel(cards);
    private final Rail rail;
    private final DiagramSide diagram;
    private final PhotoBeside photo;
    private final CarAndPhoto left;
    private final transient PictureKeys pictureKeys;
    private final ShareSplit split;
    private final transient EvidenceLens lens;
    private Station station;
    private final transient DoubtWalk walk;
    private final transient DeferredTask correction = new DeferredTask(this::correctDoubt);
    private final ProgressLine foot;

    VisitPanel(UiContext parts, OpenVisit visit, DeskActions actions, ProgressLine foot) {
        super(new BorderLayout());
        this.parts = parts;
        this.actions = actions;
        this.visit = visit;
        this.station = Station.PHOTOS;
        this.foot = foot;
        walk = new DoubtWalk(parts.texts());
        rail = new Rail(parts.texts(), this::show);
        diagram = new DiagramSide(parts, visit, this::front, foot::hint);
        int permille = parts.settings().settings().number(DIVIDER, USUAL_SHARE);
        photo = new PhotoBeside(parts.texts(), visit);
        left = new CarAndPhoto(parts.settings(), photo, diagram, this::layOut);
        pictureKeys = new PictureKeys(parts.texts(), this::picture, photo, left::isPhotoShown);
        split = new ShareSplit(left, sides, Math.min(900, Math.max(100, permille)) / 1000.0);
        visit.onStep(this::reveal);
        visit.onVisit(this::follow);
        visit.onFindings(this::follow);
        lens = new EvidenceLens(parts, visit, () -> SwingUtilities.getWindowAncestor(this), this::reveal);
        add(railWithRoom(), BorderLayout.WEST);
        add(split, BorderLayout.CENTER);
        layOut();
    }

    /** The commands for the picture in hand, in every station. */
    List<Command> pictureCommands() {
        return pictureKeys.commands();
    }

    private Optional<PhotoCanvas> picture() {
        return front().flatMap(StationScreen::picture);
    }

    private void layOut() {
        if (split != null) {
            left.setVisible(left.isAnything());
            split.setDividerSize(left.isAnything() ? DIVIDER_PX : 0);
            split.again();
        }
    }

    private JScrollPane railWithRoom() {
        JScrollPane scroll = Look.bare(new JScrollPane(rail));
        scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        return scroll;
    }

    OpenVisit visit() {
        return visit;
    }

    DiagramSide diagram() {
        return diagram;
    }

    Station station() {
        return station;
    }

    /** The station in front. */
    Optional<StationScreen> front() {
        return Optional.ofNullable(screens.get(station));
    }

    /** Of every station, in their order. */
    List<StationScreen> screens() {
        return Stream.of(Station.values()).map(this::screen).toList();
    }

    /** A station is built when it is first asked for, so that a visit opens sooner. */
    private StationScreen screen(Station wanted) {
        StationScreen known = screens.get(wanted);
        if (known == null) {
            known = Stations.screen(wanted, parts, visit, actions.takeWords(), actions.takeIn(), actions.sheet());
            screens.put(wanted, known);
            sides.add(Roomy.around(known.side(), SIDE_WIDTH, SIDE_HEIGHT), wanted.name());
            visit.tellAll();
        }
        return known;
    }

    void show(Station next) {
        front().ifPresent(old -> {
            pictureKeys.commands().forEach(this::unbind);
            old.commands().forEach(this::unbind);
            old.hidden();
        });
        station = next;
        rail.show(next);
        StationScreen screen = screen(next);
        cards.show(sides, next.name());
        left.show(next);
        pictureKeys.commands().forEach(command -> command.bindTo(this));
        screen.commands().stream()
                .filter(command -> command.getValue(Command.ACCELERATOR_KEY) != null)
                .forEach(command -> command.bindTo(this));
        screen.shown();
        diagram.show(Layer.PINS, next == Station.PHOTOS);
        diagram.say();
        screen.first().requestFocusInWindow();
    }

    /** The drawing whole, then its one view of what is in hand, then away. */
    String nextExtent() {
        return parts.texts().get("diagram.extent." + left.nextExtent().name().toLowerCase(Locale.ROOT));
    }

    /** Brings the photo in hand beside the work, or puts it away. */
    String togglePhoto() {
        return parts.texts().get(left.togglePhoto() ? "beside.toggled" : "beside.own");
    }

    private List<Doubt> doubts() {
        List<Doubt> open = new ArrayList<>(screen(Station.PHOTOS).doubts());
        open.addAll(Doubts.of(parts.texts(), visit::label, visit.visit(), visit.findings(), visit.coverage()));
        open.addAll(screen(Station.PAGES).doubts());
        return open;
    }

    /** Leaves the doubt in hand as it is for this sitting, and goes to the next. */
    String leaveDoubt() {
        walk.leave(doubts());
        return showDoubt();
    }

    /** Goes to the next thing that is open, and says what it is and how many there are. */
    String nextDoubt() {
        walk.next(doubts());
        return showDoubt();
    }

    private String showDoubt() {
        walk.inHand().ifPresent(one -> {
            if (one.station() != station) {
                show(one.station());
            }
            reveal(one.station(), one.where());
            one.gap().ifPresent(screen(one.station())::reveal);
            // later: what a changed station or tab asks for the keyboard is answered first
            SwingUtilities.invokeLater(() -> screen(one.station()).revealed().requestFocusInWindow());
        });
        return walk.say(visit.findings().isPresent());
    }

    private void follow() {
        if (walk.inHand().isPresent()) {
            correction.ask();
        }
    }

    /** What the foot says of the doubt in hand is told anew when that was settled, or when fewer or more are open. */
    private void correctDoubt() {
        walk.follow(doubts(), visit.findings().isPresent())
                .ifPresent(told -> foot.sayInstead(told.before(), told.now()));
    }

    /** Shows what the row or zone in hand rests on; says what to choose if nothing is. */
    String askGrounds() {
        Optional<Subject> subject = front().flatMap(StationScreen::subject)
                .or(() -> visit.selection().zones().stream().findFirst().map(Subject.OfZone::new))
                .or(() -> visit.selection().photo().flatMap(photo -> visit.zonesOf(photo).stream()
                        .findFirst()
                        .map(Subject.OfZone::new)));
        subject.ifPresent(visit::ask);
        return subject.isEmpty()
                ? parts.texts().get("lens.choose")
                : visit.findings().isEmpty() ? parts.texts().get("working.out") : " ";
    }

    /** Goes to a row that was found in another window; says so if the visit holds it no more. */
    String show(Subject.OfRow row) {
        Optional<ChangedRows> place = ChangedRows.of(row, visit.visit());
        place.ifPresent(this::reveal);
        return place.isPresent() ? " " : parts.texts().get("library.row.gone");
    }

    /** Goes where undo or redo acted. */
    private void reveal(ChangedRows changed) {
        Station home = home(changed);
        if (home != station) {
            show(home);
        }
        reveal(home, changed);
    }

    private void reveal(Station home, ChangedRows changed) {
        if (!changed.photos().isEmpty()) {
            visit.selection().photos(changed.photos());
        }
        if (!changed.zones().isEmpty()) {
            visit.selection().zones(changed.zones());
        }
        screen(home).reveal(changed);
    }

    /** The station that shows rows of a kind; the one in front if it shows them too. */
    private Station home(ChangedRows changed) {
        boolean spoken = changed.isOf(READINGS, SIGNS, MARKS, TRIALS, STATEMENTS, CLAIMS, ODOMETER);
        if (changed.isOf(DROPPED) || station == Station.WORDS && spoken) {
            return Station.WORDS;
        } else if (changed.isOf(READINGS, GAUGE, SIGNS)) {
            return Station.GAUGE;
        } else if (changed.isOf(MARKS, FEATURES)) {
            return Station.MARKS;
        } else if (changed.isOf(TRACES)) {
            return Station.RUST;
        } else if (changed.isOf(LEFT_OUT)) {
            return Station.PAGES;
        } else if (changed.isOf(STATEMENTS) && station != Station.NOTES) {
            return station == Station.RUST || station == Station.PHOTOS ? station : Station.NOTES;
        }
        return changed.isOf(STATEMENTS, TRIALS, CLAIMS, ODOMETER, COVERAGE) ? Station.NOTES : Station.PHOTOS;
    }

    private void unbind(Command command) {
        Object key = command.getValue(Command.ACCELERATOR_KEY);
        if (key instanceof javax.swing.KeyStroke stroke) {
            getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).remove(stroke);
        }
    }

    void unitChanged() {
        diagram.diagram().redraw();
        diagram.say();
        screens.values().forEach(StationScreen::unitChanged);
    }

    /** Stops what runs for this visit; the bench is not used after that. */
    void leave() {
        front().ifPresent(StationScreen::hidden);
        screens.values().forEach(StationScreen::closed);
        diagram.diagram().stop();
        left.close();
        lens.stop();
        int permille = (int) Math.round(1000 * split.share());
        parts.settings().change(s -> s.with(DIVIDER, permille));
    }
}
