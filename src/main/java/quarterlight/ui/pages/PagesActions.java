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
import quarterlight.edit.fact.FactEdits;
import quarterlight.edit.matter.MatterEdits;
import quarterlight.edit.row.RowEdits;
import quarterlight.matters.Matters;
import quarterlight.page.PagesChoice;
import quarterlight.page.check.PageCheck;
import quarterlight.page.print.PagePreview;
import quarterlight.store.problem.VisitUnreadable;
import quarterlight.ui.kit.Command;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.visit.ReportExclusion;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.row.RecordKind;
import quarterlight.visit.statement.Severity;

/** What can be done in the Pages station: make, look, open, print, and choose what goes in. Event thread only. */
final class PagesActions {
    private final UiContext parts;
    private final OpenVisit visit;
    private final PagesModel model;
    private final Texts texts;
    private volatile Optional<ChangesSince> madeHere = Optional.empty();
    private volatile Optional<PageCheck> check = Optional.empty();
    private final List<Command> commands = new ArrayList<>();
    private final Command make;
    private final Command open;
    private final Command print;
    private final Command next;
    private final Command back;
    private final ArchiveActions archives;
    private final Command leaveOutPhotos;

    PagesActions(UiContext parts, OpenVisit visit, PagesModel model, Component owner) {
        this.parts = parts;
        this.visit = visit;
        this.model = model;
        this.texts = parts.texts();
        make = add("pages.make", this::make).menuKey("ENTER");
        open = add("pages.open", this::open).menuKey("shift O");
        print = add("pages.print", this::print).menuKey("P");
        back = add("pages.back", () -> model.turnTo(model.state().page() - 1))
                .key("PAGE_UP")
                .begins();
        next = add("pages.next", () -> model.turnTo(model.state().page() + 1)).key("PAGE_DOWN");
        leaveOutPhotos =
                add("pages.leave-out-photos", this::leaveOutPhotos).menuKey("L").begins();
        archives = new ArchiveActions(parts, visit, model, owner);
        commands.addAll(archives.commands());
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

    ArchiveActions archives() {
        return archives;
    }

    Command leaveOutPhotosInHand() {
        return leaveOutPhotos;
    }

    private Path folder() {
        return visit.store().folder().pages();
    }

    private void make() {
        PagesChoice choice = model.state().choice();
        parts.jobs()
                .start(
                        texts.get("pages.making"),
                        progress -> {
                            int entries = visit.store().editLog().size();
                            check = Optional.of(parts.work()
                                    .pages(visit.store(), folder(), choice, progress)
                                    .check());
                            List<MadeFile> files = MadeFile.in(folder());
                            madeHere = made(files).map(at -> new ChangesSince(at, Optional.of(entries)));
                            return looked(files);
                        },
                        this::show,
                        parts.problems()::failed);
    }

    /** What lies on the disk, and what was changed since. */
    private record Looked(List<MadeFile> files, List<String> since, Optional<PageCheck> check) {}

    /** Off the event thread. */
    private Looked looked(List<MadeFile> files) throws VisitUnreadable {
        Optional<Instant> made = made(files);
        if (made.isEmpty()) {
            return new Looked(files, List.of(), Optional.empty());
        }
        Optional<ChangesSince> here = madeHere.filter(one -> made.equals(Optional.of(one.made())));
        ChangesSince since = here.orElseGet(() -> new ChangesSince(made.get(), Optional.empty()));
        return new Looked(files, since.in(visit.store().editLog()), here.flatMap(one -> check));
    }

    private static Optional<Instant> made(List<MadeFile> files) {
        return files.stream().filter(MadeFile::isPdf).map(MadeFile::made).min(Comparator.naturalOrder());
    }

    private void show(Looked looked) {
        model.files(looked.files(), looked.since(), looked.check());
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

    /** Sets the inspector's own severity of something that matters, as the matters stood when it was chosen. */
    void rank(Matters matters, String matter, Severity severity, String reason) {
        visit.edit(
                store -> {
                    new MatterEdits(store).set(matters, matter, severity, reason);
                    return matter;
                },
                done -> {});
    }

    /** Lets the rule's severity hold again. */
    void rankByRule(Matters matters, String matter) {
        visit.edit(
                store -> {
                    new MatterEdits(store).takeBack(matters, matter);
                    return matter;
                },
                done -> {});
    }

    /** Sets one fact that the pages print. */
    void fact(String key, String value) {
        visit.edit(store -> new FactEdits(parts.catalog()).set(store, Map.of(key, value)), done -> {});
    }
}
