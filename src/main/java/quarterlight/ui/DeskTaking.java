package quarterlight.ui;

import java.io.File;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JFileChooser;
import quarterlight.ui.dialog.ChooseDrawing;
import quarterlight.ui.dialog.VisitForm;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.visit.OpenVisit;

/** What is chosen on the disk or dropped on the window: visits, photos, tables, a drawing. Event thread only. */
final class DeskTaking {
    private final UiContext parts;
    private final MainWindow window;
    private final Texts texts;
    private List<Path> waiting = List.of();

    DeskTaking(UiContext parts, MainWindow window) {
        this.parts = parts;
        this.window = window;
        this.texts = parts.texts();
    }

    private Optional<OpenVisit> visit() {
        return window.bench().map(VisitPanel::visit);
    }

    void chooseDrawing(Optional<Path> dropped) {
        visit().ifPresent(visit -> new ChooseDrawing(parts, window.frame(), visit).ask(dropped));
    }

    void chooseVisit() {
        choose("do.open", JFileChooser.DIRECTORIES_ONLY, false).stream()
                .findFirst()
                .ifPresent(window::open);
    }

    void choosePhotos() {
        take(choose("do.take-in", JFileChooser.FILES_AND_DIRECTORIES, true));
    }

    void chooseWords() {
        take(choose("do.take-words", JFileChooser.FILES_AND_DIRECTORIES, true));
    }

    void chooseTable() {
        take(choose("do.add-table", JFileChooser.FILES_ONLY, true));
    }

    private List<Path> choose(String title, int mode, boolean many) {
        JFileChooser chooser = new JFileChooser(
                parts.settings().settings().text("folder." + title).orElse(null));
        chooser.setFileSelectionMode(mode);
        chooser.setMultiSelectionEnabled(many);
        chooser.setDialogTitle(texts.get(title));
        if (chooser.showDialog(window.frame(), texts.get("choice.choose")) != JFileChooser.APPROVE_OPTION) {
            return List.of();
        }
        String folder = chooser.getCurrentDirectory().getPath();
        parts.settings().change(settings -> settings.with("folder." + title, folder));
        List<Path> chosen = new ArrayList<>();
        for (File file : many ? chooser.getSelectedFiles() : new File[] {chooser.getSelectedFile()}) {
            chosen.add(file.toPath());
        }
        return chosen;
    }

    /** Takes what was chosen or dropped: a visit is opened, tables are added, all else is taken in as photos. */
    void take(List<Path> paths) {
        if (paths.isEmpty()) {
            return;
        }
        parts.jobs()
                .start(
                        texts.get("take.looking"),
                        progress -> Dropped.sorted(paths),
                        dropped -> take(paths, dropped),
                        parts.problems()::failed);
    }

    private void take(List<Path> paths, Dropped dropped) {
        if (dropped.drawing().isPresent()
                && visit().filter(OpenVisit::isEditable).isPresent()) {
            chooseDrawing(dropped.drawing());
        } else if (dropped.visit().isPresent()) {
            window.open(dropped.visit().get());
        } else {
            visit().ifPresentOrElse(
                            visit -> new FileImporter(parts, visit, window.frame(), window::say).take(dropped),
                            () -> makeVisitFor(paths));
        }
    }

    /** Photos without a visit ask for one first; then they are taken in. */
    private void makeVisitFor(List<Path> paths) {
        waiting = List.of();
        new VisitForm(parts, window.frame()).make().ifPresent(made -> {
            waiting = paths;
            window.create(made.folder(), made.facts());
        });
    }

    /** A visit is open: what waited for one is taken in. */
    void takeWaiting() {
        List<Path> paths = waiting;
        waiting = List.of();
        take(paths);
    }
}
