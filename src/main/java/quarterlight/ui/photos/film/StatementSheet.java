package quarterlight.ui.photos.film;

import java.awt.Window;
import java.awt.event.ActionEvent;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;
import quarterlight.car.ZoneId;
import quarterlight.edit.row.RowEdits;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.said.DetailsLine;
import quarterlight.ui.kit.said.FacetBoard;
import quarterlight.ui.kit.said.SentenceReading;
import quarterlight.ui.kit.said.SlashLetter;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.ui.kit.visit.ZoneField;
import quarterlight.ui.kit.widget.TextChange;
import quarterlight.ui.kit.widget.WordChoice;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.row.RecordKind;
import quarterlight.visit.statement.Basis;
import quarterlight.visit.statement.Facets;
import quarterlight.visit.statement.Severity;
import quarterlight.visit.statement.Statement;
import quarterlight.words.rule.SaidFacets;

/** Says something of the photo in hand, or of the moment of the film that is shown, without leaving it. Event thread only. */
public final class StatementSheet {
    private final UiContext parts;
    private final Texts texts;
    private final OpenVisit visit;
    private final ZoneField zone;
    private final JTextField words = new JTextField();
    private final FacetBoard what;
    private final DetailsLine details;
    private final WordChoice<Severity> severity;
    private final WordChoice<Basis> basis;
    private final JLabel trouble = new JLabel(" ");
    private Function<String, SaidFacets> reading = sentence -> SaidFacets.NONE;

    public StatementSheet(UiContext parts, OpenVisit visit) {
        this.parts = Objects.requireNonNull(parts, "parts");
        this.visit = Objects.requireNonNull(visit, "visit");
        this.texts = parts.texts();
        this.zone = new ZoneField(parts, visit);
        this.what = new FacetBoard(texts);
        this.details = new DetailsLine(texts, false);
        this.severity = new WordChoice<>(
                Severity.class, texts.get("notes.severity"), Optional.of(texts.get("notes.severity.unsaid")));
        this.basis =
                new WordChoice<>(Basis.class, texts.get("notes.basis"), Optional.of(texts.get("notes.basis.unsaid")));
    }

    /** Asks for the statement about what is in hand now. */
    public void show(Window owner) {
        Optional<PhotoId> photo = visit.selection().photo();
        if (!visit.isEditable() || photo.isEmpty()) {
            parts.problems().tell(texts.get(visit.isEditable() ? "photos.pin.none-selected" : "visit.reading.only"));
            return;
        }
        OptionalDouble moment = visit.selection().moment();
        Set<ZoneId> likely = visit.zonesOf(photo.get());
        zone.zones(
                likely.isEmpty()
                        ? visit.selection().zones()
                        : Set.of(likely.iterator().next()));
        zone.then(words);
        basis.choose(Optional.of(Basis.SEEN));
        JDialog dialog = new JDialog(owner, texts.get("film.do.state"), JDialog.ModalityType.DOCUMENT_MODAL);
        dialog.setName("statement-sheet");
        dialog.setContentPane(laidOut(dialog, about(photo.get(), moment), () -> {
            if (keep(photo.get(), moment)) {
                dialog.dispose();
            }
        }));
        suggest();
        dialog.pack();
        dialog.setLocationRelativeTo(owner);
        if (!zone.zones().isEmpty()) {
            words.requestFocusInWindow();
        }
        dialog.setVisible(true);
    }

    private String about(PhotoId photo, OptionalDouble moment) {
        String name = visit.visit().photo(photo).map(one -> one.file().name()).orElse("");
        boolean paper = visit.visit()
                .photo(photo)
                .filter(one -> one.file().kind() == MediaKind.PAPER)
                .isPresent();
        if (paper && moment.isPresent()) {
            return texts.get("paper.about", name, (int) moment.getAsDouble());
        }
        return moment.isPresent() ? texts.get("film.about", name, FilmBar.clock(moment.getAsDouble())) : name;
    }

    private JPanel laidOut(JDialog dialog, String about, Runnable keep) {
        JPanel panel = new JPanel(new MigLayout("insets 16, gap 8, wrap 1, fillx", "[640!,fill]"));
        panel.add(Look.secondary(new JLabel(about)), "wmin 0");
        panel.add(zone);
        words.setName("statement-words");
        words.putClientProperty("JTextField.placeholderText", texts.get("film.words"));
        words.addActionListener(e -> keep.run());
        words.addKeyListener(new SlashLetter(words, what));
        panel.add(Look.named(words, texts.get("film.words")));
        what.onDone(words::requestFocusInWindow);
        panel.add(what, "wmin 0");
        panel.add(severity, "split 2, growx, wmin 60");
        panel.add(basis, "growx, wmin 60");
        details.onEnter(keep);
        panel.add(details, "wmin 0");
        trouble.setForeground(Look.palette().caution());
        panel.add(trouble, "split 3, growx, wmin 0");
        JButton done = new JButton(texts.get("notes.keep"));
        done.setName("statement-keep");
        done.addActionListener(e -> keep.run());
        JButton leave = new JButton(texts.get("choice.cancel"));
        leave.addActionListener(e -> dialog.dispose());
        panel.add(leave, "growx 0");
        panel.add(done, "growx 0");
        panel.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke("ESCAPE"), "leave");
        panel.getActionMap().put("leave", leave(dialog, Optional.empty()));
        Action letGo = zone.field().getActionMap().get("ESCAPE");
        zone.field().getActionMap().put("ESCAPE", leave(dialog, Optional.of(letGo)));
        return panel;
    }

    /** Frames what the words suggest, as soon as the lists of words are read; chooses nothing. */
    private void suggest() {
        SentenceReading lists = new SentenceReading(parts, visit);
        parts.jobs()
                .start(
                        texts.get("notes.loading"),
                        progress -> lists.load(),
                        loaded -> {
                            reading = loaded;
                            what.suggest(reading.apply(words.getText()));
                        },
                        parts.problems()::failed);
        words.getDocument().addDocumentListener(new TextChange(() -> what.suggest(reading.apply(words.getText()))));
    }

    /** Leaves the sheet; from the field of zones only when there is no zone to let go of first. */
    private Action leave(JDialog dialog, Optional<Action> letGo) {
        return new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent e) {
                boolean empty = zone.zones().isEmpty() && zone.field().getText().isBlank();
                if (letGo.isEmpty() || empty) {
                    dialog.dispose();
                } else {
                    letGo.get().actionPerformed(e);
                }
            }
        };
    }

    private boolean keep(PhotoId photo, OptionalDouble moment) {
        String text = words.getText().strip();
        if (zone.zones().isEmpty() || text.isEmpty()) {
            trouble.setText(texts.get(zone.zones().isEmpty() ? "notes.needs.zone" : "notes.needs.text"));
            (zone.zones().isEmpty() ? zone.field() : words).requestFocusInWindow();
            return false;
        }
        Optional<Facets> said = what.chosen();
        if (said.isEmpty()) {
            trouble.setText(texts.get("notes.needs.what"));
            what.requestFocusInWindow();
            return false;
        }
        Optional<Double> at = moment.isPresent() ? Optional.of(moment.getAsDouble()) : Optional.empty();
        List<Statement> rows = zone.zones().stream()
                .map(one -> new Statement(
                        one,
                        said.get(),
                        text,
                        severity.chosen(),
                        basis.chosen(),
                        Optional.of(photo),
                        at,
                        List.of(),
                        details.details()))
                .toList();
        visit.edit(store -> new RowEdits(store).add(RecordKind.STATEMENTS, rows), added -> {});
        return true;
    }
}
