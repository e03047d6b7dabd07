package quarterlight.ui.tables;

import java.awt.Window;
import java.awt.event.ActionEvent;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.swing.AbstractAction;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;
import quarterlight.edit.EditRefused;
import quarterlight.edit.gauge.ForeignReadings;
import quarterlight.edit.gauge.ProfileReading;
import quarterlight.settings.ColumnProfiles;
import quarterlight.table.foreign.ForeignTable;
import quarterlight.table.foreign.ReadingProfile;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.ui.kit.widget.FactTable;

/** Asks which column of a table is what, beside its first rows and what comes of them. Event thread only. */
final class ColumnSheet {
    private static final int ROWS_SHOWN = 8;
    private static final int COLUMN_PX = 130;

    private final UiContext parts;
    private final Texts texts;
    private final OpenVisit visit;
    private final ForeignTables.Begun begun;
    private final ColumnChoice choice;
    private final ZoneMatches matches;
    private final JLabel heading;
    private final JLabel outcome = new JLabel(" ");
    private final JLabel trouble = new JLabel(" ");
    private final JTextField name = new JTextField();
    private final JButton take = new JButton();
    private Optional<Answer> answer = Optional.empty();

    /** What the user said, and what the table then gives. */
    record Answer(ProfileReading.Named named, ForeignReadings readings) {}

    ColumnSheet(UiContext parts, OpenVisit visit, ForeignTables.Begun begun) {
        this.parts = parts;
        this.texts = parts.texts();
        this.visit = visit;
        this.begun = begun;
        this.matches = new ZoneMatches(texts, visit);
        this.heading = Look.heading(texts.get("tables.heading", begun.table().file()));
        this.choice = new ColumnChoice(texts, begun.table(), begun.named().profile(), this::refresh);
    }

    /** Empty if the user leaves it. */
    Optional<Answer> ask(Window owner) {
        JDialog dialog = new JDialog(owner, texts.get("tables.title"), java.awt.Dialog.ModalityType.DOCUMENT_MODAL);
        dialog.setName("columns");
        dialog.setContentPane(laidOut(dialog));
        dialog.getRootPane().setDefaultButton(take);
        refresh();
        dialog.pack();
        dialog.setLocationRelativeTo(owner);
        dialog.setVisible(true);
        return answer;
    }

    private JPanel laidOut(JDialog dialog) {
        JPanel panel = new JPanel(
                new MigLayout("insets 16, gapy 8, wrap 1, hidemode 3", "[640::,grow,fill]", "[][][grow,fill][][][][]"));
        panel.add(heading, "wmin 0");
        panel.add(choice);
        panel.add(preview(), "h 120:250:");
        JScrollPane names = new JScrollPane(matches);
        Look.bare(names);
        panel.add(names, "hmax 200, hidemode 3");
        panel.add(outcome, "wmin 0");
        trouble.setForeground(Look.palette().caution());
        panel.add(trouble, "wmin 0");
        name.setText(begun.named().name());
        name.setName("tables-name");
        JLabel label = new JLabel(texts.get(begun.known() ? "tables.name.known" : "tables.name"));
        label.setLabelFor(name);
        panel.add(label, "split 4, growx 0");
        panel.add(Look.named(name, texts.get("tables.name")), "growx, wmin 120");
        JButton leave = new JButton(texts.get("choice.cancel"));
        leave.addActionListener(e -> dialog.dispose());
        panel.add(leave, "growx 0, gapleft 24");
        take.setText(texts.get("tables.take"));
        take.setName("tables-take");
        take.addActionListener(e -> {
            answer = answered();
            if (answer.isPresent()) {
                dialog.dispose();
            }
        });
        panel.add(take, "growx 0");
        panel.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke("ESCAPE"), "leave");
        panel.getActionMap().put("leave", new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent e) {
                dialog.dispose();
            }
        });
        return panel;
    }

    private JScrollPane preview() {
        ForeignTable table = begun.table();
        List<FactTable.Column<ForeignTable.Line>> columns = IntStream.range(
                        0, table.columns().size())
                .mapToObj(i -> new FactTable.Column<ForeignTable.Line>(
                        table.columns().get(i), COLUMN_PX, line -> line.cells().get(i)))
                .toList();
        FactTable<ForeignTable.Line> rows =
                new FactTable<>(texts.get("tables.preview"), columns, ForeignTable.Line::number);
        rows.show(table.rows().stream().limit(ROWS_SHOWN).toList());
        if (table.columns().size() > 6) {
            rows.setAutoResizeMode(FactTable.AUTO_RESIZE_OFF);
        }
        return new JScrollPane(rows);
    }

    private void refresh() {
        try {
            ForeignReadings read = read(choice.profile());
            matches.show(read.unknown());
            outcome.setText(words(read));
            outcome.setToolTipText(outcome.getText());
            trouble.setText(
                    read.refused().isEmpty()
                            ? " "
                            : texts.get(
                                    "tables.refused",
                                    read.refused().size(),
                                    read.refused().get(0).sentence(begun.table().file())));
            trouble.setToolTipText(trouble.getText());
            take.setEnabled(!read.readings().isEmpty()
                    || !read.withoutZone().isEmpty()
                    || !read.unknown().isEmpty());
        } catch (EditRefused e) {
            trouble.setText(e.getMessage());
            take.setEnabled(false);
        }
    }

    private String words(ForeignReadings read) {
        int waiting = read.unknown().values().stream()
                .mapToInt(ForeignReadings.Unknown::rows)
                .sum();
        return texts.get(
                "tables.outcome",
                read.readings().size(),
                waiting,
                read.withoutZone().size());
    }

    private ForeignReadings read(ReadingProfile profile) throws EditRefused {
        return ForeignReadings.of(begun.table(), profile, visit.visit(), parts.catalog());
    }

    private Optional<Answer> answered() {
        String called = name.getText().strip();
        if (!ColumnProfiles.isName(called)) {
            trouble.setText(texts.get("tables.name.bad"));
            name.requestFocusInWindow();
            return Optional.empty();
        }
        try {
            ReadingProfile profile = choice.profile().knowing(matches.matched());
            return Optional.of(new Answer(new ProfileReading.Named(called, profile), read(profile)));
        } catch (EditRefused e) {
            trouble.setText(e.getMessage());
            return Optional.empty();
        }
    }
}
