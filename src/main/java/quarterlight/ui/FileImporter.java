package quarterlight.ui;

import java.awt.Window;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javax.swing.JOptionPane;
import javax.swing.SwingUtilities;
import quarterlight.edit.EditRefused;
import quarterlight.edit.intake.ImportPreview;
import quarterlight.edit.intake.Intake;
import quarterlight.edit.intake.IntakeResult;
import quarterlight.edit.row.RowEdits;
import quarterlight.edit.row.TableFiles;
import quarterlight.table.TableRead;
import quarterlight.table.TableUnreadable;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.ui.tables.ForeignTables;
import quarterlight.visit.VisitRecord;

/** Takes photos and tables into the visit at hand and says what came of it. Event thread only. */
final class FileImporter {
    private static final int MAX_SHOWN = 8;

    private final UiContext parts;
    private final OpenVisit visit;
    private final Window owner;
    private final Consumer<String> foot;

    /** @param foot says what asks for nothing: keys go on to pin meanwhile, and a dialog would take them */
    FileImporter(UiContext parts, OpenVisit visit, Window owner, Consumer<String> foot) {
        this.parts = parts;
        this.visit = visit;
        this.owner = owner;
        this.foot = foot;
    }

    void take(Dropped dropped) {
        if (!visit.isEditable()) {
            parts.problems().tell(parts.texts().get("visit.reading.only"));
            return;
        }
        if (!dropped.words().isEmpty()) {
            new WordsImporter(parts, visit).take(dropped.words());
        }
        if (!dropped.photos().isEmpty()) {
            photos(dropped.photos());
        }
        dropped.tables().forEach(file -> table(file, Optional.empty()));
    }

    /** Shows what the folders hold, by the headers of the files, then takes it in while that is shown. */
    private void photos(List<Path> folders) {
        VisitRecord before = visit.visit();
        parts.jobs()
                .start(
                        parts.texts().get("coming.looking"),
                        progress ->
                                ImportPreview.of(before, folders, visit.images().decoding(), parts.clock(), progress),
                        sheet -> {
                            visit.coming(sheet.glances());
                            takeIn(folders);
                        },
                        failure -> takeIn(folders));
    }

    private void takeIn(List<Path> folders) {
        Intake intake = new Intake(
                visit.store(),
                parts.clock(),
                visit.images().shelf(),
                visit.images().decoding());
        parts.jobs()
                .start(
                        parts.texts().get("take.photos"),
                        progress -> {
                            try {
                                return intake.run(folders, progress);
                            } finally {
                                SwingUtilities.invokeLater(() -> visit.coming(List.of()));
                            }
                        },
                        this::say,
                        parts.problems()::failed);
    }

    private void say(IntakeResult result) {
        String told = told(result, parts.texts());
        if (result.refused().isEmpty() && result.notPhotos().isEmpty()) {
            foot.accept(told);
        } else if (result.refused().isEmpty()) {
            parts.problems().remark(told);
        } else {
            parts.problems().tell(told);
        }
    }

    /** How many were taken in; what was refused and why; what was left alone. */
    static String told(IntakeResult result, Texts texts) {
        List<String> paragraphs = new ArrayList<>();
        paragraphs.add(texts.get(
                "take.done",
                result.added(),
                result.alreadyPresent(),
                result.refused().size()));
        if (!result.refused().isEmpty()) {
            paragraphs.add(listed(
                    result.refused().stream()
                            .map(one -> one.file() + ": " + one.reason())
                            .toList(),
                    texts));
        }
        if (!result.notPhotos().isEmpty()) {
            paragraphs.add(texts.get("take.left-alone", result.notPhotos().size())
                    + "\n"
                    + listed(result.notPhotos().stream().map(Path::toString).toList(), texts));
        }
        return String.join("\n\n", paragraphs);
    }

    private static String listed(List<String> lines, Texts texts) {
        String first = lines.stream().limit(MAX_SHOWN).collect(Collectors.joining("\n"));
        return lines.size() > MAX_SHOWN ? first + "\n" + texts.get("take.more", lines.size() - MAX_SHOWN) : first;
    }

    private void table(Path file, Optional<String> sheet) {
        parts.jobs()
                .start(
                        parts.texts().get("take.table", String.valueOf(file.getFileName())),
                        progress -> new TableFiles(
                                        visit.store(),
                                        parts.catalog(),
                                        parts.work().patterns(visit.folder()))
                                .read(file, sheet),
                        this::add,
                        failure -> {
                            if (failure instanceof EditRefused refused
                                    && refused.subject().equals("table")) {
                                new ForeignTables(parts, visit, owner).take(file, sheet);
                            } else if (failure instanceof TableUnreadable unreadable
                                    && !unreadable.sheets().isEmpty()) {
                                chooseSheet(file, unreadable.sheets());
                            } else {
                                parts.problems().failed(failure);
                            }
                        });
    }

    /** A workbook of several sheets: one is chosen. */
    private void chooseSheet(Path file, List<String> sheets) {
        Object chosen = JOptionPane.showInputDialog(
                owner,
                parts.texts().get("take.which-sheet", String.valueOf(file.getFileName())),
                parts.texts().get("app.name"),
                JOptionPane.QUESTION_MESSAGE,
                null,
                sheets.toArray(),
                sheets.get(0));
        if (chosen instanceof String sheet) {
            table(file, Optional.of(sheet));
        }
    }

    private void add(TableFiles.Known<?> known) {
        TableRead<?> table = known.table();
        int good = table.values().size();
        if (!table.refused().isEmpty() && !goOn(table, good) || good == 0) {
            return;
        }
        visit.edit(known::add, added -> told(known, added));
    }

    private boolean goOn(TableRead<?> table, int good) {
        String refused = table.refused().stream()
                .limit(MAX_SHOWN)
                .map(row -> row.sentence(table.file()))
                .collect(Collectors.joining("\n"));
        String question = parts.texts().get("take.refused", table.refused().size(), good) + "\n\n" + refused;
        if (good == 0) {
            parts.problems().tell(question);
            return false;
        }
        Object[] choices = {
            parts.texts().get("take.keep-good", good), parts.texts().get("choice.cancel")
        };
        return JOptionPane.showOptionDialog(
                        owner,
                        question,
                        parts.texts().get("app.name"),
                        JOptionPane.DEFAULT_OPTION,
                        JOptionPane.WARNING_MESSAGE,
                        null,
                        choices,
                        choices[1])
                == 0;
    }

    private <T> void told(TableFiles.Known<T> known, RowEdits.Added added) {
        String sentence = parts.texts()
                .get("take.added", known.kind().kind().count(added.ids().size()));
        parts.problems()
                .remark(RowEdits.remark(known.kind().kind(), added)
                        .map(remark -> sentence + " " + remark)
                        .orElse(sentence));
    }
}
