package quarterlight.ui.library;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.GraphicsEnvironment;
import java.awt.Rectangle;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.util.Collections;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.function.BiConsumer;
import javax.swing.DefaultListModel;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.WindowConstants;
import net.miginfocom.swing.MigLayout;
import quarterlight.store.VisitOpening;
import quarterlight.task.Threads;
import quarterlight.ui.kit.Dialogs;
import quarterlight.ui.kit.SwingJobRunner;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.look.AppIcon;
import quarterlight.ui.kit.look.Hairline;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.place.Subject;
import quarterlight.ui.kit.widget.ProgressLine;

/**
 * All visits in the folders that the user names, and what they say, with pictures. Event thread only.
 */
final class LibraryWindow {
    private static final double LIST_SHARE = 0.56;

    private final UiContext parts;
    private final Texts texts;
    private final BiConsumer<Path, Optional<Subject.OfRow>> opened;
    private final JFrame frame;
    private final ProgressLine progress;
    private final ExecutorService thread = Threads.inOrderDaemon("quarterlight-library");
    private final LibraryModel model;
    private final LibraryPictures pictures;
    private final DefaultListModel<LibraryItem> lines = new DefaultListModel<>();
    private final JList<LibraryItem> list = new JList<>(lines);
    private final FoundPane found;
    private final FoldersLine folders;
    private final LibrarySearch search;

    /** @param opened opens a visit in the window of visits, at a row if one was found */
    LibraryWindow(UiContext parts, BiConsumer<Path, Optional<Subject.OfRow>> opened) {
        this.parts = parts;
        this.texts = parts.texts();
        this.opened = opened;
        frame = new JFrame(texts.get("library.name"));
        frame.setName("library");
        AppIcon.on(frame);
        frame.setDefaultCloseOperation(WindowConstants.DISPOSE_ON_CLOSE);
        progress = new ProgressLine(texts);
        model = new LibraryModel(texts, parts.problems(), new SwingJobRunner(thread, progress), shelf());
        pictures = new LibraryPictures(this::pictureCame);
        found = new FoundPane(texts, pictures, this::open);
        folders = new FoldersLine(parts, model);
        search = new LibrarySearch(texts, model, this::intoList);
        layOut();
        bindKeys();
        model.onChange(this::showAnswer);
        frame.addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosed(WindowEvent e) {
                model.stop();
                thread.shutdown();
                pictures.stop();
            }
        });
        model.change(question -> question.in(LibraryFolders.of(parts.settings().settings())));
        showAnswer();
    }

    private LibraryShelf shelf() {
        Path settings = parts.settings().folder();
        return new LibraryShelf(
                settings,
                parts.catalog(),
                () -> VisitOpening.by(parts.clock()).onThisComputer(settings),
                folder -> texts.get("library.folder.gone", folder));
    }

    private void layOut() {
        JPanel top = new JPanel(new MigLayout("insets 12 16 8 16, wrap 1, gapy 6", "[grow,fill,0::]"));
        top.add(search, "growx, wmin 0");
        top.add(folders, "growx, wmin 0");
        list.setName("library-list");
        Look.named(list, texts.get("library.list"));
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setCellRenderer(new LibraryCell(texts, pictures));
        list.addListSelectionListener(e -> found.show(inHand()));
        list.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent e) {
                if (e.getClickCount() == 2) {
                    openInHand();
                }
            }
        });
        JScrollPane scroll = Look.bare(new JScrollPane(list));
        scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        JSplitPane split = new JSplitPane(JSplitPane.HORIZONTAL_SPLIT, scroll, found);
        split.setResizeWeight(LIST_SHARE);
        split.setBorder(new Hairline(Hairline.Side.TOP));
        frame.add(top, BorderLayout.NORTH);
        frame.add(split, BorderLayout.CENTER);
        frame.add(progress, BorderLayout.SOUTH);
        Rectangle screen = GraphicsEnvironment.getLocalGraphicsEnvironment().getMaximumWindowBounds();
        frame.setSize(new Dimension(Math.min(1280, screen.width - 40), Math.min(820, screen.height - 40)));
        split.setDividerLocation((int) (frame.getWidth() * LIST_SHARE));
    }

    private void bindKeys() {
        Dialogs.leaveByEscape(frame);
        bind("F5", this::lookAgain);
        bind("ctrl F", search::take);
        bind("meta F", search::take);
        list.registerKeyboardAction(e -> openInHand(), KeyStroke.getKeyStroke("ENTER"), JComponent.WHEN_FOCUSED);
    }

    private void bind(String key, Runnable work) {
        frame.getRootPane()
                .registerKeyboardAction(
                        e -> work.run(), KeyStroke.getKeyStroke(key), JComponent.WHEN_IN_FOCUSED_WINDOW);
    }

    /** Shows the window in front, ready to be asked. */
    void show() {
        if (frame.isVisible()) {
            frame.toFront();
        } else {
            frame.setLocationByPlatform(true);
            frame.setVisible(true);
        }
        search.take();
    }

    boolean isOpen() {
        return frame.isVisible();
    }

    /** Looks through the folders again: visits may have changed, a drive be back. */
    void lookAgain() {
        pictures.again();
        model.again();
    }

    private Optional<LibraryItem> inHand() {
        return Optional.ofNullable(list.getSelectedValue());
    }

    private void openInHand() {
        inHand().ifPresent(this::open);
    }

    private void open(LibraryItem item) {
        opened.accept(item.visit().folder(), item.place());
    }

    private void intoList() {
        if (!lines.isEmpty()) {
            list.requestFocusInWindow();
            if (list.isSelectionEmpty()) {
                list.setSelectedIndex(0);
            }
        }
    }

    private void pictureCame() {
        list.repaint();
        found.refresh();
    }

    private void showAnswer() {
        folders.showFolders();
        Optional<LibraryItem> before = inHand();
        Optional<LibraryAnswer> answer = model.answer();
        if (answer.isPresent() && !answer.get().items().equals(Collections.list(lines.elements()))) {
            lines.clear();
            lines.addAll(answer.get().items());
            before.ifPresent(item -> list.setSelectedValue(item, true));
        }
        found.show(inHand());
        progress.say(answer.map(this::said).orElse(" "));
        progress.hint(answer.filter(one -> !one.items().isEmpty())
                .map(one -> texts.get("library.hint"))
                .orElse(""));
    }

    /** How much was found, and what could not be read. */
    private String said(LibraryAnswer answer) {
        String first;
        if (model.question().folders().isEmpty()) {
            first = texts.get("library.folders.none");
        } else if (answer.all() == 0) {
            first = texts.get("library.empty");
        } else if (model.question().isForAll()) {
            first = texts.get("library.all", answer.all());
        } else {
            first = texts.get(
                    answer.isCut() ? "library.cut" : "library.rows", answer.rows(), answer.visits(), answer.all());
        }
        return answer.remarks().isEmpty() ? first : first + " " + String.join(" ", answer.remarks());
    }
}
