package quarterlight.ui;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.GraphicsEnvironment;
import java.awt.Rectangle;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.JFrame;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import quarterlight.task.LatestWork;
import quarterlight.ui.dialog.FileDrop;
import quarterlight.ui.dialog.MainFrame;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.field.TypedText;
import quarterlight.ui.kit.place.Subject;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.ui.kit.visit.VisitOpener;
import quarterlight.ui.kit.visit.VisitReading;
import quarterlight.ui.kit.widget.ProgressLine;
import quarterlight.ui.start.RecentVisit;
import quarterlight.ui.start.SampleVisits;
import quarterlight.ui.start.StartPage;
import quarterlight.visit.VisitFacts;
import quarterlight.visit.VisitRecord;

/** The window: the start page, or one visit with its stations. Event thread only. */
final class MainWindow {
    private static final String BOUNDS = "window.bounds";

    private final UiContext parts;
    private final MainFrame frame;
    private final ProgressLine progress;
    private final VisitOpener door;
    private final JPanel middle = new JPanel(new BorderLayout());
    private final DeskActions actions;
    private final TypedText typing = TypedText.watch();
    private Optional<VisitPanel> bench = Optional.empty();

    MainWindow(UiContext parts, MainFrame frame, ProgressLine progress, SampleVisits samples) {
        this.parts = parts;
        this.frame = frame;
        this.progress = progress;
        this.door = new VisitOpener(parts);
        this.actions = new DeskActions(parts, this, samples);
        frame.getContentPane().add(middle, BorderLayout.CENTER);
        frame.getContentPane().add(progress, BorderLayout.SOUTH);
        frame.setJMenuBar(new MainMenu(parts.texts(), actions, this));
        frame.getRootPane().setTransferHandler(new FileDrop(this::taken));
        frame.addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosing(WindowEvent e) {
                quit();
            }
        });
        actions.visitChanged();
    }

    void show() {
        frame.setBounds(remembered());
        if (parts.settings().settings().yes("window.whole", false)) {
            frame.setExtendedState(JFrame.MAXIMIZED_BOTH);
        }
        frame.setVisible(true);
    }

    MainFrame frame() {
        return frame;
    }

    DeskActions actions() {
        return actions;
    }

    Optional<VisitPanel> bench() {
        return bench;
    }

    private Rectangle remembered() {
        Rectangle screen = GraphicsEnvironment.getLocalGraphicsEnvironment().getMaximumWindowBounds();
        Rectangle usual = new Rectangle(screen);
        usual.setSize(new Dimension(Math.min(1600, screen.width), Math.min(1000, screen.height)));
        usual.setLocation(screen.x + (screen.width - usual.width) / 2, screen.y + (screen.height - usual.height) / 2);
        return parts.settings()
                .settings()
                .text(BOUNDS)
                .map(MainWindow::bounds)
                .filter(screen::contains)
                .orElse(usual);
    }

    private static Rectangle bounds(String text) {
        String[] n = text.split(" ");
        try {
            return new Rectangle(
                    Integer.parseInt(n[0]), Integer.parseInt(n[1]), Integer.parseInt(n[2]), Integer.parseInt(n[3]));
        } catch (NumberFormatException | ArrayIndexOutOfBoundsException e) {
            return new Rectangle(-1, -1, 0, 0);
        }
    }

    /** Says something in the line at the foot. */
    void say(String sentence) {
        progress.say(sentence);
    }

    /** What stands there while no visit does. */
    void startPage() {
        frame.titled("");
        progress.hint(parts.texts().get("start.hint"));
        put(new StartPage(parts, actions.beginnings(), this::open));
        actions.visitChanged();
    }

    private void put(Component content) {
        middle.removeAll();
        middle.add(content, BorderLayout.CENTER);
        middle.revalidate();
        middle.repaint();
    }

    /** Opens a visit in place of the one at hand. */
    void open(Path folder) {
        leaveThen(() -> door.open(folder, this::opened));
    }

    /** Comes to the front with a visit that was chosen in another window, at a row if one was found; the visit at hand stays open if it is that one. */
    void openInFront(Path folder, Optional<Subject.OfRow> row) {
        frame.toFront();
        Optional<VisitPanel> same =
                bench.filter(one -> one.visit().folder().toAbsolutePath().equals(folder));
        if (same.isPresent()) {
            row.map(same.get()::show).ifPresent(this::say);
        } else {
            leaveThen(() -> door.open(folder, visit -> {
                opened(visit);
                bench.ifPresent(fresh -> row.map(fresh::show).ifPresent(this::say));
            }));
        }
    }

    /** Opens a visit that is being read already; for a window that has shown nothing yet. */
    void open(VisitReading reading) {
        door.open(reading, this::opened, failure -> {
            startPage();
            parts.problems().failed(failure);
        });
    }

    void create(Path folder, VisitFacts facts) {
        leaveThen(() -> door.create(folder, facts, this::opened));
    }

    private void opened(OpenVisit visit) {
        parts.settings().change(settings -> settings.withRecent(visit.folder()));
        visit.afterValues(() -> rememberSoon(visit));
        VisitPanel fresh = new VisitPanel(parts, visit, actions, progress);
        bench = Optional.of(fresh);
        frame.titled(visit.visit().facts().car().name());
        visit.onVisit(() -> {
            frame.titled(visit.visit().facts().car().name());
            actions.visitChanged();
        });
        put(fresh);
        ((MainMenu) frame.getJMenuBar()).visitOpened(fresh);
        fresh.show(fresh.station());
        actions.visitChanged();
        if (!visit.isEditable()) {
            progress.say(parts.texts().get("visit.reading.only"));
        }
        actions.takeWaiting();
    }

    /** The same, while the window goes on. */
    private void rememberSoon(OpenVisit visit) {
        VisitRecord now = visit.visit();
        LatestWork.once(
                "quarterlight-recent",
                SwingUtilities::invokeLater,
                progress -> RecentVisit.remembering(visit.folder(), now, parts.catalog()),
                parts.settings()::change,
                parts.problems()::failed);
    }

    /** The first page shows the car by its name and its picture. */
    private void remember(OpenVisit visit) {
        parts.settings()
                .change(settings -> RecentVisit.remember(settings, visit.folder(), visit.visit(), parts.catalog()));
    }

    /** Closes the visit at hand, if there is one, then goes on. */
    private void leaveThen(Runnable next) {
        if (bench.isEmpty()) {
            next.run();
            return;
        }
        typing.leave();
        VisitPanel old = bench.get();
        bench = Optional.empty();
        remember(old.visit());
        old.leave();
        startPage();
        old.visit().close(next);
    }

    void closeVisit() {
        leaveThen(() -> {});
    }

    /** Closes the visit and the window. */
    void quit() {
        boolean whole = (frame.getExtendedState() & JFrame.MAXIMIZED_BOTH) == JFrame.MAXIMIZED_BOTH;
        Rectangle b = frame.getBounds();
        parts.settings().change(settings -> {
            var changed = settings.with("window.whole", whole);
            return whole ? changed : changed.with(BOUNDS, b.x + " " + b.y + " " + b.width + " " + b.height);
        });
        leaveThen(() -> {
            typing.close();
            frame.dispose();
        });
    }

    /** Files or folders were dropped on the window. */
    private void taken(java.util.List<Path> dropped) {
        actions.take(dropped);
    }
}
