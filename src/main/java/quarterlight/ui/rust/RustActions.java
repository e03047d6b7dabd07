package quarterlight.ui.rust;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import quarterlight.edit.row.RowEdits;
import quarterlight.ui.kit.Command;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.view.PhotoCanvas;
import quarterlight.ui.kit.view.PhotoShapes;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.ui.kit.visit.PhotoSteps;
import quarterlight.ui.rust.draw.RustModel;
import quarterlight.ui.rust.draw.RustTool;
import quarterlight.ui.rust.draw.ScaleKind;
import quarterlight.ui.rust.draw.ShareModel;
import quarterlight.ui.rust.draw.TraceDraft;
import quarterlight.visit.annotation.PhotoScale;
import quarterlight.visit.annotation.Trace;
import quarterlight.visit.annotation.TraceKind;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.row.RecordKind;

/** What can be done in the Rust station: draw, keep, change and remove outlines, state that a zone is clean. Event thread only. */
final class RustActions {
    private final UiContext parts;
    private final OpenVisit visit;
    private final RustModel model;
    private final ShareModel share;
    private final PhotoCanvas canvas;
    private final PhotoSteps photos;
    private final List<Command> commands = new ArrayList<>();
    private final Map<RustTool, Command> tools = new EnumMap<>(RustTool.class);
    private final Command keep;
    private final Command drop;
    private final Command change;
    private final Command remove;
    private final Command clean;
    private final Command color;
    private Optional<RecordId> chosen = Optional.empty();
    private Runnable zoneLacking = () -> {};
    private Runnable chosenChanged = () -> {};

    RustActions(UiContext parts, OpenVisit visit, RustModel model, ShareModel share, PhotoCanvas canvas) {
        this.parts = parts;
        this.visit = visit;
        this.model = model;
        this.share = share;
        this.canvas = canvas;
        this.photos = new PhotoSteps(visit);
        for (RustTool tool : RustTool.values()) {
            Command command = add(tool.textKey(), () -> take(tool)).key("typed " + tool.key());
            command.tip(parts.texts().get(tool.textKey() + ".tip", String.valueOf(Character.toUpperCase(tool.key()))));
            tools.put(tool, command);
        }
        keep = add("trace.keep", this::keep).menuKey("ENTER").begins();
        drop = add("trace.drop", this::drop);
        change = add("trace.change", this::change).key("F2");
        remove = add("trace.remove", this::remove).menuKey("DELETE");
        clean = add("trace.clean", () -> CleanZones.state(parts, visit)).key("F9");
        color = add("trace.color", () -> share.switchTo(!share.isOn())).key("typed r");
        int digit = 0;
        for (TraceKind kind : TraceKind.values()) {
            digit++;
            Command command = add("trace.kind.is", () -> model.kind(kind)).key("typed " + digit);
            command.rename(parts.texts().get("trace.kind.is", kind.said()));
            if (digit == 1) {
                command.begins();
            }
        }
        add("trace.photo.next", () -> photos.step(1)).key("alt RIGHT").begins();
        add("trace.photo.previous", () -> photos.step(-1)).key("alt LEFT");
        add("trace.zoom-in", () -> canvas.zoom(1.25)).key("typed +");
        add("trace.zoom-out", () -> canvas.zoom(0.8)).key("typed -");
        add("trace.whole", canvas::toggleWhole).key("typed 0");
        enable();
    }

    /** A command that brings a tab to the front. */
    void tab(int digit, String name, Runnable bring) {
        Command command = add("trace.tab.show", bring).key("alt " + digit);
        command.rename(parts.texts().get("trace.tab.show", name));
        if (digit == 1) {
            command.begins();
        }
    }

    private Command add(String key, Runnable work) {
        Command command = Command.of(parts.texts(), key, work);
        commands.add(command);
        return command;
    }

    List<Command> commands() {
        return List.copyOf(commands);
    }

    Command tool(RustTool tool) {
        return tools.get(tool);
    }

    /** The photos that Alt and arrows go through. */
    PhotoSteps photoSteps() {
        return photos;
    }

    Command keepIt() {
        return keep;
    }

    Command dropIt() {
        return drop;
    }

    Command changeIt() {
        return change;
    }

    Command removeIt() {
        return remove;
    }

    Command cleanIt() {
        return clean;
    }

    Command colorIt() {
        return color;
    }

    /** Does something when an outline cannot be kept because its zone is not known. */
    void onZoneLacking(Runnable listener) {
        zoneLacking = listener;
    }

    /** The kept outline that changing and removing mean. */
    void chosen(Optional<RecordId> trace) {
        boolean other = !trace.equals(chosen);
        chosen = trace;
        enable();
        if (other) {
            chosenChanged.run();
        }
    }

    /** An outline of another photo than the one in hand is not chosen any more. */
    void letGoUnless(Optional<PhotoId> photo) {
        if (chosen().map(row -> row.value().photo())
                .filter(of -> !photo.equals(Optional.of(of)))
                .isPresent()) {
            chosen(Optional.empty());
        }
    }

    /** Does something when another outline is chosen, or none. */
    void onChosen(Runnable listener) {
        chosenChanged = listener;
    }

    Optional<Recorded<Trace>> chosen() {
        return chosen.flatMap(id -> visit.visit().traces().stream()
                .filter(row -> row.id().equals(id))
                .findFirst());
    }

    void enable() {
        boolean edits = visit.isEditable();
        boolean photo = visit.selection().photo().isPresent();
        tools.forEach((tool, command) ->
                command.setEnabled(tool == RustTool.LOOK || photo && (edits || tool == RustTool.BRUSH)));
        keep.setEnabled(edits && model.draft().map(TraceDraft::isClosed).orElse(false));
        drop.setEnabled(model.draft().isPresent());
        change.setEnabled(edits && chosen().isPresent() && model.draft().isEmpty());
        remove.setEnabled(edits && chosen().isPresent() && model.draft().isEmpty());
        clean.setEnabled(edits && !visit.selection().zones().isEmpty());
    }

    private Optional<Photo> photo() {
        return visit.selection().photo().flatMap(id -> visit.visit().photo(id));
    }

    /** Takes a tool; one that draws begins an outline if none is being drawn. */
    private void take(RustTool tool) {
        canvas.requestFocusInWindow();
        if (tool == RustTool.BRUSH) {
            share.switchTo(true);
        }
        boolean needsDraft = tool.draws() || tool == RustTool.SCALE;
        if (model.draft().isPresent() || !needsDraft) {
            if (tool == RustTool.EDIT && model.draft().isEmpty()) {
                change();
            } else {
                model.tool(tool);
            }
            return;
        }
        photo().ifPresent(photo -> begin(photo, tool));
    }

    private void begin(Photo photo, RustTool tool) {
        if (photo.file().kind() != MediaKind.PHOTO) {
            parts.problems()
                    .remark(parts.texts()
                            .get(
                                    "trace.film",
                                    photo.file().name(),
                                    photo.file().kind().said()));
            return;
        }
        Optional<PhotoScale> scale = PhotoShapes.scale(visit.visit(), photo.id());
        scale.ifPresent(known -> model.wish(ScaleKind.of(known)));
        model.begin(TraceDraft.empty(photo.id(), model.state().kind(), TraceWords.zoneOf(visit, photo), scale), tool);
    }

    /** Keeps the outline; says in one sentence what is lacking if it cannot be. */
    void keep() {
        Optional<TraceDraft> draft = model.draft();
        if (draft.isEmpty() || !visit.isEditable() || !draft.get().isClosed()) {
            return;
        }
        Optional<String> problem = visit.visit().photo(draft.get().photo()).flatMap(photo -> draft.get()
                .problem(photo.file()));
        Optional<Trace> trace = draft.get().trace();
        if (problem.isPresent()) {
            parts.problems().remark(TraceWords.sentence(problem.get()));
        } else if (draft.get().scale().isEmpty()) {
            parts.problems().remark(parts.texts().get("trace.said.scale.why"));
        } else if (trace.isEmpty()) {
            zoneLacking.run();
            parts.problems().remark(parts.texts().get("trace.said.zone"));
        } else {
            keep(draft.get().row(), trace.get());
        }
    }

    /** An outline that undo took out of the visit while it was changed is added anew. */
    private void keep(Optional<RecordId> row, Trace trace) {
        boolean stands = visit.visit().traces().stream().anyMatch(kept -> row.equals(Optional.of(kept.id())));
        visit.edit(
                store -> {
                    RowEdits edits = new RowEdits(store);
                    if (row.isPresent() && stands) {
                        edits.update(RecordKind.TRACES, row.get(), trace);
                        return row.get();
                    }
                    return edits.add(RecordKind.TRACES, List.of(trace)).ids().get(0);
                },
                kept -> {
                    chosen(Optional.of(kept));
                    visit.selection().zones(java.util.Set.of(trace.zone()));
                });
        model.end();
        canvas.requestFocusInWindow();
    }

    /** Keeps what is complete without a word, when the station is left. */
    void keepIfComplete() {
        model.draft()
                .filter(draft -> visit.isEditable() && draft.open().isEmpty())
                .filter(draft -> visit.visit()
                        .photo(draft.photo())
                        .flatMap(photo -> draft.problem(photo.file()))
                        .isEmpty())
                .ifPresent(draft -> draft.trace().ifPresent(trace -> keep(draft.row(), trace)));
    }

    private void drop() {
        model.drop();
        canvas.requestFocusInWindow();
    }

    /** Takes the chosen outline in hand to change it. */
    void change() {
        chosen().filter(row -> visit.isEditable()).ifPresent(row -> {
            show(row);
            model.wish(ScaleKind.of(row.value().scale()));
            model.begin(TraceDraft.of(row), RustTool.EDIT);
            canvas.requestFocusInWindow();
        });
    }

    /** Brings an outline's photo and zone into hand. */
    void show(Recorded<Trace> row) {
        if (!visit.selection().photo().equals(Optional.of(row.value().photo()))) {
            visit.selection().photos(List.of(row.value().photo()));
        }
        visit.selection().zones(java.util.Set.of(row.value().zone()));
    }

    void remove() {
        chosen().filter(row -> visit.isEditable())
                .ifPresent(row -> visit.edit(
                        store -> {
                            new RowEdits(store).remove(RecordKind.TRACES, List.of(row.id()));
                            return row.id();
                        },
                        done -> chosen(Optional.empty())));
    }
}
