package quarterlight.ui.pages;

import java.awt.Component;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JFileChooser;
import javax.swing.JOptionPane;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import quarterlight.archive.signature.SignatureVerdict;
import quarterlight.diagram.BodyDiagram;
import quarterlight.diagram.file.DiagramRefused;
import quarterlight.diagram.file.VisitDiagram;
import quarterlight.edit.EditRefused;
import quarterlight.edit.archive.ArchiveProof;
import quarterlight.edit.archive.Archived;
import quarterlight.edit.archive.Archiving;
import quarterlight.edit.export.DisclosurePreview;
import quarterlight.edit.export.ExportChoice;
import quarterlight.edit.export.ExportForm;
import quarterlight.edit.export.Exporting;
import quarterlight.findings.Findings;
import quarterlight.language.Language;
import quarterlight.page.DiagramDrawing;
import quarterlight.page.PagesChoice;
import quarterlight.store.problem.VisitProblem;
import quarterlight.table.TableUnreadable;
import quarterlight.task.Job;
import quarterlight.ui.kit.Command;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.units.Worded;
import quarterlight.visit.VisitRecord;

/** What leaves the visit as one file or folder: an archive, one for the buyer, an export; and an archive checked. Event thread only. */
final class ArchiveActions {
    private static final int GOING_ROWS = 16;
    private static final int GOING_COLUMNS = 64;

    private final UiContext parts;
    private final OpenVisit visit;
    private final PagesModel model;
    private final Texts texts;
    private final Component owner;
    private final SigningKeyDialog keys;
    private final Command archive;
    private final Command forBuyer;
    private final Command export;
    private final Command check;
    private final Command key;

    ArchiveActions(UiContext parts, OpenVisit visit, PagesModel model, Component owner) {
        this.parts = parts;
        this.visit = visit;
        this.model = model;
        this.texts = parts.texts();
        this.owner = owner;
        this.keys = new SigningKeyDialog(parts, owner);
        archive = Command.of(texts, "pages.archive", () -> archive(false))
                .menuKey("E")
                .begins();
        forBuyer = Command.of(texts, "pages.archive-buyer", () -> archive(true)).menuKey("shift E");
        export = Command.of(texts, "pages.export", this::export);
        check = Command.of(texts, "pages.check", this::check).begins();
        key = Command.of(texts, "pages.key", keys::show);
    }

    List<Command> commands() {
        return List.of(archive, forBuyer, export, check, key);
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

    /** Reads an archive again and tells what became of it, its signature too. */
    private void check() {
        JFileChooser chooser = new JFileChooser(
                parts.settings().settings().text("folder.archive").orElse(null));
        chooser.setDialogTitle(texts.get("pages.check"));
        if (chooser.showOpenDialog(owner) == JFileChooser.APPROVE_OPTION) {
            check(chooser.getSelectedFile().toPath());
        }
    }

    void check(Path file) {
        parts.jobs()
                .start(
                        texts.get("pages.checking"),
                        progress -> {
                            ArchiveProof proof =
                                    ArchiveProof.of(file, parts.work().visits(slip -> {}), parts.catalog(), progress);
                            return new Checked(
                                    proof,
                                    new SignatureVerdict(
                                            proof.signature(), keys.file().open(), Optional.empty()));
                        },
                        checked -> checked(file, checked.proof(), checked.signature()),
                        parts.problems()::failed);
    }

    private record Checked(ArchiveProof proof, SignatureVerdict signature) {}

    private void checked(Path file, ArchiveProof proof, SignatureVerdict signature) {
        String files = proof.bag().ok() && proof.database().isEmpty()
                ? texts.get("pages.checked", file, proof.bag().files())
                : texts.get("pages.checked.faults", file, String.join("; ", proof.faults()));
        if (proof.ok()) {
            parts.problems().remark(files + "\n" + signature.text());
        } else {
            parts.problems().tell(files + "\n" + signature.text());
        }
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
        keys.unlocked(passphrase -> archive(buyer, passphrase));
    }

    private void archive(boolean buyer, Optional<char[]> passphrase) {
        String base = String.valueOf(visit.folder().getFileName());
        target(buyer ? "pages.archive-buyer" : "pages.archive", base + (buyer ? "-buyer.zip" : ".zip"))
                .ifPresent(file -> parts.jobs()
                        .start(
                                texts.get("pages.archiving"),
                                archiving(file, buyer, passphrase),
                                made -> archived(made, buyer),
                                parts.problems()::failed));
    }

    private Job<Archived> archiving(Path file, boolean buyer, Optional<char[]> passphrase) {
        PagesChoice choice = model.state().choice();
        return progress -> Language.ENGLISH.during(
                () -> new Archiving(parts.catalog(), parts.clock(), (pages, pictures, reports) -> {
                            try {
                                parts.work().pagesWithin(visit.store(), pages, choice, reports);
                                parts.work().pictures(visit.store(), pictures, reports);
                            } catch (DiagramRefused | TableUnreadable e) {
                                throw new EditRefused("pages", e.getMessage());
                            }
                        })
                        .withListsOf(parts.settings().folder())
                        .signedBy(keys.file().key(passphrase))
                        .make(visit.store(), file, buyer, progress));
    }

    private void archived(Archived made, boolean buyer) {
        String sentence = buyer
                ? texts.get("pages.archived.buyer", made.file(), made.sha256())
                : texts.get("pages.archived", made.file(), made.originals(), made.sha256());
        String told =
                sentence + "\n" + texts.get("pages.archived.key", made.key().orElse(""));
        if (made.ok()) {
            parts.problems().remark(told);
        } else {
            parts.problems()
                    .tell(told + "\n"
                            + texts.get(
                                    "pages.archived.changed",
                                    made.changed().size(),
                                    made.missing().size()));
        }
    }

    private void export() {
        ExportForm before = parts.settings()
                .settings()
                .text("export.form")
                .flatMap(word -> Worded.find(ExportForm.class, word))
                .orElse(ExportForm.TABLES);
        new ExportDialog(texts, owner).ask(before).ifPresent(choice -> {
            parts.settings()
                    .change(settings ->
                            settings.with("export.form", choice.form().word()));
            String base = String.valueOf(visit.folder().getFileName());
            String name = choice.form().isFolder()
                    ? base + "-" + choice.form().word()
                    : base + choice.form().ending();
            target("pages.export", name).ifPresent(file -> export(choice, file));
        });
    }

    private void export(ExportChoice choice, Path target) {
        parts.jobs()
                .start(
                        texts.get("pages.exporting"),
                        progress -> Language.ENGLISH.during(() -> new Exporting(parts.catalog(), drawings(choice))
                                .write(visit.store(), target, choice, progress)),
                        made -> parts.problems().remark(texts.get("pages.exported", made.size(), target)),
                        parts.problems()::failed);
    }

    private Map<String, byte[]> drawings(ExportChoice choice)
            throws VisitProblem, DiagramRefused, TableUnreadable, IOException {
        if (!choice.form().isDrawn()) {
            return Map.of();
        }
        VisitRecord record = choice.disclosure().of(visit.store().read());
        Findings findings = parts.work().findings(visit.folder(), record);
        BodyDiagram diagram = VisitDiagram.of(visit.folder(), record.facts());
        return choice.form() == ExportForm.VIEWS
                ? DiagramDrawing.views(findings, diagram)
                : Map.of("diagram.svg", DiagramDrawing.svg(findings, diagram).getBytes(StandardCharsets.UTF_8));
    }
}
