package quarterlight.ui.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import quarterlight.edit.EditRefused;
import quarterlight.edit.spoken.DraftDropping;
import quarterlight.edit.spoken.DraftKeeping;
import quarterlight.edit.spoken.DraftTeaching;
import quarterlight.table.cell.RowContext;
import quarterlight.ui.kit.Command;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.play.Player;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.words.Draft;

/** What can be done with drafts: keep, drop, change, go to what is in doubt, hear. Event thread only. */
final class WordsActions {
    private final UiContext parts;
    private final OpenVisit visit;
    private final WordsModel model;
    private final DraftTable table;
    private final List<Command> commands = new ArrayList<>();
    private final Command keep;
    private final Command drop;
    private final Command sure;
    private final List<Command> drafts;

    WordsActions(
            UiContext parts,
            OpenVisit visit,
            WordsModel model,
            DraftTable table,
            Player player,
            Runnable hear,
            Runnable turnList,
            Command fromSound) {
        this.parts = parts;
        this.visit = visit;
        this.model = model;
        this.table = table;
        keep = add("words.keep", this::keep).menuKey("ENTER");
        drop = add("words.drop", this::drop).menuKey("DELETE");
        sure = add("words.sure", table::chooseSure).menuKey("shift ENTER");
        drafts = List.of(
                add("words.next", () -> table.turnToDoubt(1)).key("F7"),
                add("words.previous", () -> table.turnToDoubt(-1)).key("shift F7"),
                add("words.all", () -> model.showAll(!model.showsAll())).key("F9"));
        add("words.hear", hear).key("F8");
        add("play.toggle.do", player::toggle).key("F4");
        add("words.slower", () -> speed(player, -1)).key("shift F8");
        add("words.faster", () -> speed(player, 1)).key("alt F8");
        add("words.questions.turn", turnList).key("shift F9");
        commands.add(fromSound.begins());
    }

    private static void speed(Player player, int by) {
        int at = Player.SPEEDS.indexOf(player.speed()) + by;
        if (at >= 0 && at < Player.SPEEDS.size()) {
            player.speed(Player.SPEEDS.get(at));
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

    Command keepIt() {
        return keep;
    }

    Command dropIt() {
        return drop;
    }

    Command sureOnes() {
        return sure;
    }

    /** @param shown whether the drafts are on the screen */
    void enable(boolean shown) {
        drafts.forEach(command -> command.setEnabled(shown));
        boolean open = shown && table.allChosen().stream().anyMatch(DraftRow::isOpen);
        keep.setEnabled(visit.isEditable() && open);
        drop.setEnabled(visit.isEditable() && open);
        sure.setEnabled(visit.isEditable() && shown);
    }

    /** The open drafts that are selected and stood on the screen; nothing enters unseen. */
    private List<DraftRow> chosen() {
        return table.allChosen().stream()
                .filter(DraftRow::isOpen)
                .filter(row -> model.wasSeen(row.id()))
                .toList();
    }

    /** Keeps what is selected; says of what is left why. */
    void keep() {
        List<DraftRow> chosen = chosen();
        List<DraftRow> whole =
                chosen.stream().filter(row -> row.lacks().isEmpty()).toList();
        Optional<WalkReading.Walk> walk = model.walk();
        if (!visit.isEditable() || walk.isEmpty() || chosen.isEmpty()) {
            return;
        }
        if (whole.isEmpty()) {
            parts.problems()
                    .remark(parts.texts()
                            .get("words.lacks", chosen.get(0).lacks().orElseThrow()));
            return;
        }
        long open = table.allChosen().stream().filter(DraftRow::isOpen).count();
        List<DraftKeeping.Choice> choices = whole.stream()
                .map(row -> new DraftKeeping.Choice(row.read(), row.written()))
                .toList();
        if (whole.size() == open) {
            table.turnToNext();
        }
        List<Draft> right = whole.stream()
                .filter(row -> !row.isChanged())
                .map(DraftRow::read)
                .toList();
        List<Draft> wrong =
                whole.stream().filter(DraftRow::isChanged).map(DraftRow::read).toList();
        visit.edit(
                store -> {
                    DraftKeeping.Outcome kept = new DraftKeeping(store)
                            .keep(
                                    walk.get().walk(),
                                    choices,
                                    RowContext.of(
                                            store.read(),
                                            parts.catalog(),
                                            walk.get().patterns()));
                    return new Done(kept, notLearned(right, wrong));
                },
                done -> said(done, open - whole.size()));
    }

    /** What was kept, and why nothing was learned from it, if so. */
    private record Done(DraftKeeping.Outcome kept, Optional<String> notLearned) {}

    /** Kept drafts count as right, changed and dropped ones as wrong; rows stay whether or not that can be written down. */
    private Optional<String> notLearned(List<Draft> right, List<Draft> wrong) {
        try {
            new DraftTeaching(parts.settings().folder()).teach(right, wrong);
            return Optional.empty();
        } catch (EditRefused e) {
            return Optional.of(e.getMessage());
        }
    }

    private void said(Done done, long left) {
        done.notLearned().ifPresent(parts.problems()::remark);
        DraftKeeping.Outcome kept = done.kept();
        if (kept.kept().size() > 1 || left > 0) {
            parts.problems().remark(parts.texts().get("words.kept", kept.kept().size(), kept.rows(), left));
        }
    }

    /** Drops what is selected; undo offers it again. */
    void drop() {
        List<DraftRow> chosen = chosen();
        List<String> ids = chosen.stream().map(DraftRow::id).toList();
        Optional<WalkReading.Walk> walk = model.walk();
        if (!visit.isEditable() || walk.isEmpty() || ids.isEmpty()) {
            return;
        }
        table.turnToNext();
        visit.edit(
                store -> {
                    new DraftDropping(store).drop(walk.get().walk(), ids);
                    return notLearned(
                            List.of(), chosen.stream().map(DraftRow::read).toList());
                },
                notLearned -> notLearned.ifPresent(parts.problems()::remark));
    }
}
