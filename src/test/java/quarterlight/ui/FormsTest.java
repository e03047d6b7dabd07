package quarterlight.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.awt.event.ActionEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JTabbedPane;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.car.PartialDate;
import quarterlight.car.ZoneCatalog;
import quarterlight.car.ZoneId;
import quarterlight.coverage.EvidenceKind;
import quarterlight.coverage.Gap;
import quarterlight.edit.row.RowEdits;
import quarterlight.store.SampleVisit;
import quarterlight.table.ZoneTable;
import quarterlight.ui.doubt.Doubts;
import quarterlight.ui.kit.OpenedVisit;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.visit.Doubt;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.ui.marks.MarksScreen;
import quarterlight.ui.notes.NotesScreen;
import quarterlight.ui.rust.RustScreen;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.annotation.Outline;
import quarterlight.visit.annotation.PhotoScale;
import quarterlight.visit.annotation.PixelPoint;
import quarterlight.visit.annotation.Trace;
import quarterlight.visit.annotation.TraceKind;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.row.RecordKind;

/** Forms and figures of the stations, without a display: what is at fault, what a date field takes, and of what a figure is. */
@Timeout(60)
class FormsTest {
    private static final Texts TEXTS = Texts.load();
    private static final List<PhotoId> PHOTOS = List.of(new PhotoId(1), new PhotoId(2));

    @TempDir
    Path folder;

    private OpenedVisit opened;
    private Container notes;
    private Container marks;
    private RustScreen rust;
    private NotesScreen notesScreen;

    @BeforeEach
    void open() throws Exception {
        opened = OpenedVisit.coupe(folder, store -> {
            store.change("take in", tx -> {
                for (PhotoId photo : PHOTOS) {
                    tx.addPhoto(SampleVisit.barePhoto((int) photo.value()));
                }
            });
            RowEdits edits = new RowEdits(store);
            edits.add(RecordKind.TRACES, List.of(patch()));
        });
        OpenedVisit.asked(() -> {
            notesScreen = new NotesScreen(opened.parts(), opened.visit());
            notes = notesScreen.side();
            marks = new MarksScreen(opened.parts(), opened.visit()).side();
            rust = new RustScreen(opened.parts(), opened.visit());
            return true;
        });
    }

    @AfterEach
    void close() {
        opened.close();
    }

    /** A patch of 100 by 50 mm, outlined beside a length of 100 mm. */
    private static Trace patch() {
        return new Trace(
                PHOTOS.get(0),
                TraceKind.SURFACE,
                new Outline(
                        List.of(
                                new PixelPoint(100, 100),
                                new PixelPoint(300, 100),
                                new PixelPoint(300, 200),
                                new PixelPoint(100, 200)),
                        List.of()),
                new PhotoScale.KnownLength(new PixelPoint(100, 300), new PixelPoint(300, 300), 100),
                new ZoneId("hood"),
                Optional.empty(),
                Optional.empty());
    }

    /** Types into fields, the last of which is left by Enter. */
    private static void enter(Container form, String... fieldsAndWords) throws Exception {
        OpenedVisit.asked(() -> {
            for (int i = 0; i < fieldsAndWords.length; i += 2) {
                WindowParts.named(form, JTextField.class, fieldsAndWords[i]).setText(fieldsAndWords[i + 1]);
            }
            WindowParts.named(form, JTextField.class, fieldsAndWords[0]).postActionEvent();
            return true;
        });
    }

    /** The fields at fault, as marked and as said in one line below. */
    private static void faults(Container form, Map<String, String> sentences, String... sound) throws Exception {
        OpenedVisit.asked(() -> {
            sentences.forEach((name, sentence) -> {
                JComponent field = WindowParts.named(form, JComponent.class, name);
                assertThat(field.getClientProperty("JComponent.outline"))
                        .as(name)
                        .isEqualTo("error");
                assertThat(field.getAccessibleContext().getAccessibleDescription())
                        .isEqualTo(sentence);
            });
            for (String name : sound) {
                assertThat(WindowParts.named(form, JComponent.class, name).getClientProperty("JComponent.outline"))
                        .as(name)
                        .isNull();
            }
            if (!sentences.isEmpty()) {
                assertThat(WindowParts.within(form)
                                .filter(one -> "faults".equals(one.getName()) && one.isVisible())
                                .map(one -> ((JLabel) one).getText()))
                        .singleElement()
                        .asString()
                        .contains(sentences.values());
            }
            return true;
        });
    }

    private VisitRecord record() throws Exception {
        return OpenedVisit.asked(() -> opened.visit().visit());
    }

    @Test
    void allFaultsOfAFormAreMarkedAtOnceAtTheirFieldsUntilTheyAreMended() throws Exception {
        enter(notes, "claim-text", "", "claim-date", "3/4/1999");
        faults(
                notes,
                Map.of("claim-text", TEXTS.get("notes.claim.needs"), "claim-date", TEXTS.get("notes.claim.date.bad")));
        enter(notes, "claim-text", "one owner");
        faults(notes, Map.of("claim-date", TEXTS.get("notes.claim.date.bad")), "claim-text");
        assertThat(record().claims()).isEmpty();
        enter(notes, "claim-text", "one owner", "claim-date", "");
        faults(notes, Map.of(), "claim-text", "claim-date");

        enter(notes, "figure-figure", "many", "figure-date", "in spring");
        faults(
                notes,
                Map.of(
                        "figure-figure",
                        TEXTS.get("notes.figure.needs"),
                        "figure-date",
                        TEXTS.get("notes.claim.date.bad")));
        enter(notes, "figure-figure", "64,312", "figure-date", "");

        enter(notes, "trial-item", "", "trial-value", "much");
        faults(
                notes,
                Map.of("trial-item", TEXTS.get("notes.trial.needs"), "trial-value", TEXTS.get("notes.trial.number")));

        enter(marks, "feature-feature", "", "feature-from", "long ago", "feature-to", "");
        faults(
                marks,
                Map.of(
                        "feature-feature",
                        TEXTS.get("marks.feature.needs"),
                        "feature-from",
                        TEXTS.get("marks.feature.from"),
                        "feature-to",
                        TEXTS.get("marks.feature.to")));
    }

    @Test
    void aStatementAndAMarkTellAllTheirFaultsAtOnce() throws Exception {
        enter(notes, "note-text", "");
        faults(
                notes,
                Map.of("note-zone", TEXTS.get("notes.needs.zone"), "note-text", TEXTS.get("notes.needs.text")),
                "facets");
        enter(notes, "note-text", "dented at the front");
        faults(
                notes,
                Map.of("note-zone", TEXTS.get("notes.needs.zone"), "facets", TEXTS.get("notes.needs.what")),
                "note-text");
        assertThat(record().statements()).isEmpty();
        OpenedVisit.asked(() -> {
            opened.visit().selection().zones(Set.of(SampleVisit.HOOD));
            WindowParts.named(notes, AbstractButton.class, "facet-damaged").doClick();
            return true;
        });
        enter(notes, "note-text", "dented at the front");
        faults(notes, Map.of(), "note-zone", "note-text", "facets");
        OpenedVisit.until(() -> opened.visit().visit().statements().size() == 1);

        keepMark("mark-note", "seen from below", "mark-lead", "soon");
        faults(
                marks,
                Map.of(
                        "mark-part",
                        TEXTS.get("marks.needs.part"),
                        "mark-text",
                        TEXTS.get("marks.needs.text"),
                        "mark-lead",
                        TEXTS.get("marks.needs.lead")));
        keepMark("mark-part", "Engine block", "mark-text", "H147");
        faults(marks, Map.of("mark-lead", TEXTS.get("marks.needs.lead")), "mark-part", "mark-text");
        assertThat(record().marks()).isEmpty();
        keepMark("mark-lead", "14");
        faults(marks, Map.of(), "mark-part", "mark-text", "mark-lead");
        OpenedVisit.until(() -> opened.visit().visit().marks().size() == 1);
    }

    /** Types into fields of the mark in hand and presses Enter in the last. */
    private void keepMark(String... fieldsAndWords) throws Exception {
        OpenedVisit.asked(() -> {
            for (int i = 0; i < fieldsAndWords.length; i += 2) {
                WindowParts.named(marks, JTextField.class, fieldsAndWords[i]).setText(fieldsAndWords[i + 1]);
            }
            JTextField last = WindowParts.named(marks, JTextField.class, fieldsAndWords[fieldsAndWords.length - 2]);
            last.getActionMap().get("keep").actionPerformed(new ActionEvent(last, 0, ""));
            return true;
        });
    }

    @Test
    void undoChoosesTheClaimTheTrialAndTheFigureThatCameBack() throws Exception {
        enter(notes, "claim-text", "one owner");
        enter(notes, "claim-text", "never welded");
        enter(notes, "trial-item", "Ashtray lamp");
        enter(notes, "trial-item", "Boot lamp");
        enter(notes, "figure-figure", "64,312");
        enter(notes, "figure-figure", "61,240");
        OpenedVisit.until(() -> opened.visit().visit().odometer().size() == 2);
        opened.visit().onStep(notesScreen::reveal);
        JTabbedPane tabs = WindowParts.named(notes, JTabbedPane.class, "notes-tabs");

        VisitRecord visit = record();
        comesBack(tabs, "claims", RecordKind.CLAIMS, visit.claims().get(0), "one owner");
        comesBack(tabs, "trials", RecordKind.TRIALS, visit.trials().get(0), "Ashtray lamp");
        comesBack(tabs, "figures", RecordKind.ODOMETER, visit.odometer().get(0), "64312");
    }

    /** Removes a row and takes that back: its tab comes to the front, and it is the row in hand. */
    private <T> void comesBack(JTabbedPane tabs, String table, RecordKind<T> kind, Recorded<T> row, String words)
            throws Exception {
        JTable rows = WindowParts.named(notes, JTable.class, table);
        OpenedVisit.asked(() -> {
            tabs.setSelectedIndex(0);
            opened.visit()
                    .edit(
                            store -> {
                                new RowEdits(store).remove(kind, List.of(row.id()));
                                return true;
                            },
                            done -> {
                                rows.clearSelection();
                                opened.visit().undo();
                            });
            return true;
        });
        OpenedVisit.until(() -> rows.getSelectedRow() >= 0);
        OpenedVisit.asked(() -> {
            assertThat(IntStream.range(0, rows.getColumnCount())
                            .mapToObj(column -> String.valueOf(rows.getValueAt(rows.getSelectedRow(), column)))
                            .collect(Collectors.joining(" ")))
                    .contains(words);
            assertThat(SwingUtilities.isDescendingFrom(rows, tabs.getSelectedComponent()))
                    .isTrue();
            return true;
        });
    }

    @Test
    void everyDateFieldTakesADateAsPeopleWriteIt() throws Exception {
        enter(notes, "claim-text", "one owner", "claim-date", "March 1971");
        OpenedVisit.until(() -> opened.visit().visit().claims().size() == 1);
        enter(notes, "figure-figure", "64,312", "figure-date", "14 June 2025");
        OpenedVisit.until(() -> opened.visit().visit().odometer().size() == 1);
        enter(
                marks,
                "feature-feature",
                "Side lamps",
                "feature-from",
                "Sept. 1968",
                "feature-to",
                "the 2nd of June 1971");
        OpenedVisit.until(() -> opened.visit().visit().features().size() == 1);

        VisitRecord visit = record();
        assertThat(visit.claims().get(0).value().date().map(PartialDate::text)).contains("1971-03");
        assertThat(visit.odometer().get(0).value().date().map(PartialDate::text))
                .contains("2025-06-14");
        assertThat(visit.features().get(0).value().from().text()).isEqualTo("1968-09");
        assertThat(visit.features().get(0).value().to().text()).isEqualTo("1971-06-02");
        assertThat(Stream.of(notes, marks, rust.side())
                        .flatMap(WindowParts::within)
                        .map(Component::getName)
                        .filter(name -> name != null && name.matches(".*-(date|from|to|day|built)")))
                .as("the date fields of these stations")
                .containsExactlyInAnyOrder("claim-date", "figure-date", "feature-from", "feature-to");
    }

    @Test
    void rustNeverShowsTheAreaOfOnePhotoUnderAnother() throws Exception {
        OpenVisit visit = opened.visit();
        JTable traces = WindowParts.named(rust.side(), JTable.class, "rust-traces");
        JLabel figure = WindowParts.named(rust.side(), JLabel.class, "rust-figure");
        OpenedVisit.until(() -> visit.findings().isPresent());
        OpenedVisit.asked(() -> {
            visit.selection().photos(List.of(PHOTOS.get(0)));
            rust.shown();
            traces.setRowSelectionInterval(0, 0);
            return true;
        });
        assertThat(OpenedVisit.asked(figure::getText)).as("of its own photo").contains("mm");

        OpenedVisit.asked(() -> {
            visit.selection().photos(List.of(PHOTOS.get(1)));
            return true;
        });
        assertThat(OpenedVisit.asked(figure::getText)).as("under another").isBlank();
        assertThat(OpenedVisit.asked(traces::getSelectedRow)).isEqualTo(-1);
    }

    @Test
    void aGapInDoubtIsChosenInTheListOfGaps() throws Exception {
        OpenedVisit.until(() -> !opened.visit().coverage().isEmpty());
        ZoneCatalog zones = ZoneTable.load();
        List<Doubt> doubts = OpenedVisit.asked(() -> Doubts.of(
                TEXTS,
                zone -> zones.get(zone).label(),
                opened.visit().visit(),
                Optional.empty(),
                opened.visit().coverage()));
        Gap second = doubts.stream()
                .flatMap(doubt -> doubt.gap().stream())
                .filter(gap -> gap.lacks() == EvidenceKind.SPOTS)
                .skip(1)
                .findFirst()
                .orElseThrow();
        JTable gaps = WindowParts.named(notes, JTable.class, "gaps");
        String row = OpenedVisit.asked(() -> {
            notesScreen.reveal(second);
            return gaps.getValueAt(gaps.getSelectedRow(), 0) + ": " + gaps.getValueAt(gaps.getSelectedRow(), 1);
        });
        assertThat(row).isEqualTo(second.zone().label() + ": " + second.lacks().word());
    }
}
