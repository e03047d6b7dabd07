package quarterlight.ui.marks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import quarterlight.car.ZoneId;
import quarterlight.edit.row.RowEdits;
import quarterlight.ui.kit.Command;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.visit.mark.Mark;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.row.RecordKind;

/** What can be done with marks: begin, keep, remove, tie to the photo in hand. Event thread only. */
final class MarksActions {
    private final UiContext parts;
    private final OpenVisit visit;
    private final MarksModel model;
    private final List<Command> commands = new ArrayList<>();
    private final Command begin;
    private final Command keep;
    private final Command again;
    private final Command remove;
    private final Command photo;
    private Runnable refused = () -> {};
    private Runnable begun = () -> {};

    MarksActions(UiContext parts, OpenVisit visit, MarksModel model) {
        this.parts = parts;
        this.visit = visit;
        this.model = model;
        begin = add("marks.begin", this::begin).menuKey("M");
        keep = add("marks.keep", this::keep).menuKey("ENTER");
        again = add("marks.again", this::again).menuKey("shift M");
        photo = add("marks.photo", this::tiePhoto).menuKey("shift H").begins();
        remove = add("marks.remove", this::remove).menuKey("DELETE").begins();
    }

    private Command add(String key, Runnable work) {
        Command command = Command.of(parts.texts(), key, work);
        commands.add(command);
        return command;
    }

    List<Command> commands() {
        return List.copyOf(commands);
    }

    Command beginIt() {
        return begin;
    }

    Command keepIt() {
        return keep;
    }

    Command removeIt() {
        return remove;
    }

    Command tieIt() {
        return photo;
    }

    /** Shows what keeps the mark from being kept. */
    void onRefused(Runnable shown) {
        refused = shown;
    }

    /** Does something when a new mark is begun, such as to bring the keyboard to its first field. */
    void onBegin(Runnable listener) {
        begun = listener;
    }

    void enable() {
        MarksModel.State state = model.state();
        begin.setEnabled(visit.isEditable());
        keep.setEnabled(visit.isEditable() && state.isChanged());
        again.setEnabled(visit.isEditable() && state.row().isPresent());
        remove.setEnabled(visit.isEditable() && state.row().isPresent());
        photo.setEnabled(visit.isEditable() && visit.selection().photo().isPresent());
    }

    private void begin() {
        if (model.state().row().isEmpty() && model.state().isChanged()) {
            model.beginWith(seen());
        } else {
            model.turnToNew(seen());
        }
        begun.run();
    }

    /** What the photo in hand tells of a mark that is read off it: the photo, and its zone if it has one only. */
    private MarkDraft seen() {
        Optional<PhotoId> inHand = visit.selection().photo();
        Set<ZoneId> zones = inHand.map(visit::zonesOf).orElse(Set.of());
        Optional<ZoneId> only = zones.size() == 1 ? zones.stream().findFirst() : Optional.empty();
        return MarkDraft.EMPTY.with(inHand).at(only, Optional.empty());
    }

    /** Another view of the same stamp: the same part, kind and stage, read anew. */
    private void again() {
        MarkDraft old = model.state().draft();
        model.begin(new MarkDraft(
                old.part(),
                old.kind(),
                "",
                old.stage(),
                old.pattern(),
                old.expected(),
                old.leadDays(),
                old.zone(),
                old.point(),
                visit.selection().photo(),
                "",
                old.origin()));
        begun.run();
    }

    /** Keeps what was written of a mark that is held already, if it can be. */
    void keepRow() {
        if (model.state().row().isPresent() && model.state().draft().problem().isEmpty()) {
            keep();
        }
    }

    /** Keeps the mark as written; says in one sentence what is lacking if it cannot be. */
    void keep() {
        MarksModel.State state = model.state();
        Optional<String> problem = state.draft().problem();
        if (!visit.isEditable() || !state.isChanged()) {
            return;
        }
        if (problem.isPresent()) {
            refused.run();
            return;
        }
        Mark mark = state.draft().mark().orElseThrow();
        if (state.row().isPresent()) {
            RecordId id = state.row().get();
            visit.edit(
                    store -> {
                        new RowEdits(store).update(RecordKind.MARKS, id, mark);
                        return id;
                    },
                    done -> model.follow(visit.visit().marks()));
        } else {
            visit.edit(store -> new RowEdits(store).add(RecordKind.MARKS, List.of(mark)), added -> {
                RecordId id = added.ids().get(0);
                model.take(new Recorded<>(id, mark));
            });
        }
    }

    /** Removes the mark in hand; undo brings it back. */
    void remove() {
        model.state().row().filter(row -> visit.isEditable()).ifPresent(row -> {
            model.begin(MarkDraft.EMPTY);
            visit.edit(
                    store -> {
                        new RowEdits(store).remove(RecordKind.MARKS, List.of(row));
                        return row;
                    },
                    done -> {});
        });
    }

    private void tiePhoto() {
        model.write(model.state().draft().with(visit.selection().photo()));
    }
}
