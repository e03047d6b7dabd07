package quarterlight.ui.pages;

import java.awt.Component;
import java.awt.Desktop;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JFileChooser;
import javax.swing.JOptionPane;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import quarterlight.diagram.file.DiagramRefused;
import quarterlight.diagram.file.VisitDiagram;
import quarterlight.edit.EditRefused;
import quarterlight.edit.archive.Archived;
import quarterlight.edit.archive.Archiving;
import quarterlight.edit.export.DisclosurePreview;
import quarterlight.edit.export.Exporting;
import quarterlight.edit.fact.FactEdits;
import quarterlight.edit.row.RowEdits;
import quarterlight.page.DiagramDrawing;
import quarterlight.page.print.PagePreview;
import quarterlight.page.print.Paper;
import quarterlight.store.problem.VisitUnreadable;
import quarterlight.table.TableUnreadable;
import quarterlight.task.Job;
import quarterlight.ui.kit.Command;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.visit.ReportExclusion;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.row.RecordKind;

/** What can be done in the Pages station: make, look, open, print, archive, export, and choose what goes in. Event thread only. */
final class PagesActions {
    private final UiContext parts;
    private final OpenVisit visit;
    private final PagesModel model;
    private final Texts texts;
    private final Component owner;
    private volatile Optional<ChangesSince> madeHere = Optional.empty();
    private final List<Command> commands = new ArrayList<>();
    private static final int GOING_ROWS = 16;
    private static final int GOING_COLUMNS = 64;
    private final Command make;
    private final Command open;
    private final Command print;
    private final Command next;
    private final Command back;
    private final Command archive;
    private final Command forBuyer;
    private final Command export;
    private final Command leaveOutPhotos;

    PagesActions(UiContext parts, OpenVisit visit, PagesModel model, Component owner) {
        this.parts = parts;
        this.visit = visit;
        this.model = model;
        this.texts = parts.texts();
        this.owner = owner;
        make = add("pages.make", this::make).menuKey("ENTER");
        open = add("pages.open", this::open).menuKey("shift O");
        print = add("pages.print", this::print).menuKey("P");
        back = add("pages.back", () -> model.turnTo(model.state().page() - 1)).key("PAGE_UP");
        next = add("pages.next", () -> model.turnTo(model.state().page() + 1)).key("PAGE_DOWN");
        leaveOutPhotos = add("pages.leave-out-photos", this::leaveOutPhotos).menuKey("L");
        archive = add("pages.archive", () -> archive(false)).menuKey("E");
        forBuyer = add("pages.archive-buyer", () -> archive(true)).menuKey("shift E");
        export = add("pages.export", this::export);
    }

    private Command add(String key, Runnable work) {
        Command command = Command.of(texts, key, work);
        commands.add(command);
        return command;
    }

    List<Command> commands() {
        return List.copyOf(commands);
    }

    /** What can be done in the state shown. */
    void enable() {
        PagesModel.State state = model.state();
        open.setEnabled(state.file().isPresent());
        print.setEnabled(state.file().isPresent());
        back.setEnabled(state.page() > 0);
        next.setEnabled(state.page() + 1 < state.pages());
        leaveOutPhotos.setEnabled(
                visit.isEditable() && !visit.selection().photos().isEmpty());
    }

    Command makeIt() {
        return make;
    }

    Command openIt() {
        return open;
    }

    Command printIt() {
        return print;
    }

    Command next() {
        return next;
    }

    Command back() {
        return back;
    }

    Command archive() {
        return archive;
    }

    Command archiveForBuyer() {
        return forBuyer;
    }

    Command exportIt() {
        return export;
    }

    Command leaveOutPhotosInHand() {
        return leaveOutPhotos;
    }

    private Path folder() {
        return visit.store().folder().pages();
    }

    private void make() {
        Paper paper = model.state().paper();
        parts.jobs()
                .start(
                        texts.get("pages.making"),
                        progress -> {
                            int entries = visit.store().editLog().size();
                            parts.work().pages(visit.store(), folder(), paper, progress);
                            List<MadeFile> files = MadeFile.in(folder());
                            madeHere = made(files).map(at -> new ChangesSince(at, Optional.of(entries)));
                            return looked(files);
                        },
                        this::show,
                        parts.problems()::failed);
    }

    /** What lies on the disk, and what was changed since. */
    private record Looked(List<MadeFile> files, List<String> since) {}

    /** Off the event thread. */
    private Looked looked(List<MadeFile> files) throws VisitUnreadable {
        Optional<Instant> made = made(files);
        if (made.isEmpty()) {
            return new Looked(files, List.of());
        }
        ChangesSince since = madeHere.filter(here -> made.equals(Optional.of(here.made())))
                .orElseGet(() -> new ChangesSince(made.get(), Optional.empty()));
        return new Looked(files, since.in(visit.store().editLog()));
    }

    private static Optional<Instant> made(List<MadeFile> files) {
        return files.stream().filter(MadeFile::isPdf).map(MadeFile::made).min(Comparator.naturalOrder());
    }

    private void show(Looked looked) {
        model.files(looked.files(), looked.since());
    }

    /** Looks at what lies in the folder of pages. */
    void look() {
        parts.jobs()
                .start(
                        texts.get("pages.looking"),
                        progress -> looked(MadeFile.in(folder())),
                        this::show,
                        parts.problems()::failed);
    }

    private void open() {
        model.state().file().ifPresent(file -> open(file.path()));
    }

    /** Opens a file in the program that the computer has for it. */
    void open(Path file) {
        parts.jobs()
                .start(
                        texts.get("pages.opening", String.valueOf(file.getFileName())),
                        progress -> opened(file),
                        done -> {},
                        failure -> parts.problems().tell(texts.get("pages.not-opened", file)));
    }

    static boolean opened(Path file) throws IOException {
        if (!Desktop.isDesktopSupported() || !Desktop.getDesktop().isSupported(Desktop.Action.OPEN)) {
            throw new IOException("no program opens files here");
        }
        Desktop.getDesktop().open(file.toFile());
        return true;
    }

    private void print() {
        model.state().file().ifPresent(file -> parts.jobs()
                .start(
                        texts.get("pages.printing"),
                        progress -> {
                            try (PagePreview preview = PagePreview.open(file.path())) {
                                return preview.print(file.name());
                            }
                        },
                        done -> {},
                        parts.problems()::failed));
    }

    private Optional<Path> target(String key, String name) {
        JFileChooser chooser = new JFileChooser(
                parts.settings().settings().text("folder.archive").orElse(null));
        chooser.setDialogTitle(texts.get(key));
        chooser.setSelectedFile(new java.io.File(chooser.getCurrentDirectory(), name));
        if (chooser.showSaveDialog(owner) != JFileChooser.APPROVE_OPTION) {
            return Optional.empty();
        }
        String folder = chooser.getCurrentDirectory().getPath();
        parts.settings().change(settings -> settings.with("folder.archive", folder));
        return Optional.of(chooser.getSelectedFile().toPath());
    }

    /** Whether the user agrees to what goes out, and what stays, once it is told. */
    private boolean isAgreed() {
        JTextArea told = new JTextArea(
                DisclosurePreview.of(visit.visit(), parts.catalog()).text(), GOING_ROWS, GOING_COLUMNS);
        told.setName("going-out");
        told.setEditable(false);
        told.setLineWrap(true);
        told.setWrapStyleWord(true);
        told.setCaretPosition(0);
        Look.named(told, texts.get("pages.going-out"));
        return JOptionPane.showConfirmDialog(
                        owner, new JScrollPane(told), texts.get("pages.going-out"), JOptionPane.OK_CANCEL_OPTION)
                == JOptionPane.OK_OPTION;
    }

    private void archive(boolean buyer) {
        if (buyer && !isAgreed()) {
            return;
        }
        String base = String.valueOf(visit.folder().getFileName());
        target(buyer ? "pages.archive-buyer" : "pages.archive", base + (buyer ? "-buyer.zip" : ".zip"))
                .ifPresent(file -> parts.jobs()
                        .start(
                                texts.get("pages.archiving"),
                                archiving(file, buyer),
                                made -> archived(made, buyer),
                                parts.problems()::failed));
    }

    private Job<Archived> archiving(Path file, boolean buyer) {
        Paper paper = model.state().paper();
        return progress -> new Archiving(parts.catalog(), parts.clock(), (pages, reports) -> {
                    try {
                        parts.work().pages(visit.store(), pages, paper, reports);
                    } catch (DiagramRefused | TableUnreadable e) {
                        throw new EditRefused("pages", e.getMessage());
                    }
                })
                .withListsOf(parts.settings().folder())
                .make(visit.store(), file, buyer, progress);
    }

    private void archived(Archived made, boolean buyer) {
        String sentence = buyer
                ? texts.get("pages.archived.buyer", made.file(), made.sha256())
                : texts.get("pages.archived", made.file(), made.originals(), made.sha256());
        if (made.ok()) {
            parts.problems().remark(sentence);
        } else {
            parts.problems()
                    .tell(sentence + "\n"
                            + texts.get(
                                    "pages.archived.changed",
                                    made.changed().size(),
                                    made.missing().size()));
        }
    }

    private void export() {
        String base = String.valueOf(visit.folder().getFileName());
        target("pages.export", base + "-export").ifPresent(folder -> parts.jobs()
                .start(
                        texts.get("pages.exporting"),
                        progress -> {
                            var record = visit.store().read();
                            String drawing = DiagramDrawing.svg(
                                    parts.work().findings(visit.folder(), record),
                                    VisitDiagram.of(visit.folder(), record.facts()));
                            return new Exporting(parts.catalog(), held -> drawing)
                                    .write(visit.store(), folder, false, progress);
                        },
                        made -> parts.problems().remark(texts.get("pages.exported", made.size(), folder)),
                        parts.problems()::failed));
    }

    /** Leaves things out of the report, or takes them in again if all of them are out already. */
    void leaveOut(List<ReportExclusion> things) {
        List<Recorded<ReportExclusion>> out = visit.visit().leftOut();
        List<RecordId> there = out.stream()
                .filter(row -> things.contains(row.value()))
                .map(Recorded::id)
                .toList();
        List<ReportExclusion> fresh = new ArrayList<>(things);
        out.forEach(row -> fresh.remove(row.value()));
        if (fresh.isEmpty()) {
            visit.edit(
                    store -> {
                        new RowEdits(store).remove(RecordKind.LEFT_OUT, there);
                        return true;
                    },
                    done -> {});
        } else {
            visit.edit(store -> new RowEdits(store).add(RecordKind.LEFT_OUT, fresh), done -> {});
        }
    }

    private void leaveOutPhotos() {
        List<PhotoId> photos = visit.selection().photos();
        leaveOut(photos.stream().map(ReportExclusion::of).toList());
    }

    /** Sets one fact that the pages print. */
    void fact(String key, String value) {
        visit.edit(store -> new FactEdits(parts.catalog()).set(store, Map.of(key, value)), done -> {});
    }
}
