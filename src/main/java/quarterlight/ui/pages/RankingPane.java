package quarterlight.ui.pages;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Color;
import java.awt.Component;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.ListSelectionModel;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import quarterlight.findings.Findings;
import quarterlight.matters.Matter;
import quarterlight.matters.Matters;
import quarterlight.ui.kit.Command;
import quarterlight.ui.kit.Listeners;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.look.TallPanel;
import quarterlight.ui.kit.place.Subject;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.ui.kit.widget.ContextMenu;
import quarterlight.visit.MatterDecision;
import quarterlight.visit.statement.Severity;

/** What matters, most severe first, as the first page has it; the inspector can set another severity with the reason. Event thread only. */
final class RankingPane extends TallPanel {
    private static final int ROWS = 9;
    /** What a cell takes up beside its words: margins, letter and gap. */
    private static final int BESIDE_WORDS = 6 + 16 + 6 + 6;

    private final transient UiContext parts;
    private final transient OpenVisit visit;
    private final transient PagesActions actions;
    private final transient Texts texts;
    private final DefaultListModel<Matter> rows = new DefaultListModel<>();
    private final JList<Matter> list;
    private final JTextArea whole = new JTextArea();
    private final JComboBox<String> severity = new JComboBox<>();
    private final JTextField reason = new JTextField();
    private final JButton set;
    private final JButton back;
    private final transient List<Listeners.Registration> registrations = new ArrayList<>();
    private transient Optional<Matters> matters = Optional.empty();
    /** The matter whose reason stands in the field, so that what is typed outlives a change elsewhere. */
    private transient Optional<String> reasoned = Optional.empty();

    private boolean showing;
    private int measuredFor;

    RankingPane(UiContext parts, OpenVisit visit, PagesActions actions) {
        super(new MigLayout("insets 8 16 8 24, wrap 1, gapy 6, fillx", "[grow,fill,0::]"));
        this.parts = parts;
        this.visit = visit;
        this.actions = actions;
        this.texts = parts.texts();
        list = new JList<>(rows) {
            @Override
            public String getToolTipText(MouseEvent e) {
                int row = locationToIndex(e.getPoint());
                boolean on = row >= 0 && getCellBounds(row, row).contains(e.getPoint());
                return on ? visit.glance(subject(rows.get(row))).orElse(null) : null;
            }
        };
        menu();
        set = new JButton(texts.get("pages.rank.set"));
        back = new JButton(texts.get("pages.rank.back"));
        list.setName("matters");
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setVisibleRowCount(ROWS);
        list.setFixedCellWidth(1);
        list.addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent e) {
                measureRows();
            }
        });
        list.setCellRenderer((shown, matter, index, selected, focused) -> cell(matter, selected));
        list.addListSelectionListener(e -> {
            if (!showing) {
                render();
            }
        });
        Look.named(list, texts.get("pages.matters"));
        whole.setEditable(false);
        whole.setFocusable(false);
        whole.setOpaque(false);
        whole.setLineWrap(true);
        whole.setWrapStyleWord(true);
        whole.setName("matter-whole");
        for (Severity one : Severity.values()) {
            severity.addItem(one.said());
        }
        severity.setName("matter-severity");
        Look.named(severity, texts.get("pages.rank.severity"));
        reason.setName("matter-reason");
        Look.named(reason, texts.get("pages.rank.reason"));
        reason.addActionListener(e -> setIt());
        set.setName("matter-set");
        set.addActionListener(e -> setIt());
        back.setName("matter-back");
        back.addActionListener(e -> chosen().ifPresent(matter -> {
            reasoned = Optional.empty();
            actions.rankByRule(matters.orElseThrow(), matter.id());
        }));
        add(Look.heading(texts.get("pages.matters")));
        add(new JScrollPane(list), "h 120:240:");
        add(whole, "wmin 0");
        JLabel label = new JLabel(texts.get("pages.rank.reason"));
        label.setLabelFor(reason);
        add(label);
        add(reason);
        JPanel buttons = new JPanel(new MigLayout("insets 0, gap 8, fillx, wrap 2", "[grow,fill,sg][grow,fill,sg]"));
        buttons.add(severity, "span, growx");
        buttons.add(set);
        buttons.add(back);
        add(buttons);
    }

    private void menu() {
        Command grounds = visit.grounds(this::subject);
        ContextMenu.on(list, () -> {
            grounds.setEnabled(chosen().isPresent());
            return List.of(grounds);
        });
        list.addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent e) {
                if (SwingUtilities.isRightMouseButton(e)) {
                    list.setSelectedIndex(list.locationToIndex(e.getPoint()));
                }
            }
        });
    }

    /** Rows are as high as their words at the width of the list; a list asks for heights anew only if its fixed height changes. */
    private void measureRows() {
        if (list.getWidth() != measuredFor) {
            measuredFor = list.getWidth();
            list.setFixedCellHeight(1);
            list.setFixedCellHeight(-1);
        }
    }

    private Optional<Matter> chosen() {
        return Optional.ofNullable(list.getSelectedValue());
    }

    /** The matter in hand. */
    Optional<Subject> subject() {
        return chosen().map(RankingPane::subject);
    }

    private static Subject subject(Matter matter) {
        return new Subject.OfMatter(matter.id());
    }

    private void setIt() {
        Severity wanted = Severity.values()[Math.max(0, severity.getSelectedIndex())];
        chosen().ifPresent(matter ->
                matters.ifPresent(known -> actions.rank(known, matter.id(), wanted, reason.getText())));
    }

    private Component cell(Matter matter, boolean selected) {
        JPanel cell = new JPanel(new MigLayout("insets 3 6 3 6, gap 6 2, fillx", "[16!][grow,fill,0::]"));
        cell.setBackground(selected ? list.getSelectionBackground() : list.getBackground());
        Color ink = selected ? list.getSelectionForeground() : list.getForeground();
        boolean grave = matter.severity() == Severity.GRAVE && !selected;
        JLabel letter = new JLabel(matter.letter().map(String::valueOf).orElse(""));
        letter.setForeground(grave ? Look.palette().grave() : ink);
        JTextArea words = wrapped(matter.sentence(), ink);
        JTextArea below = wrapped(
                severity(matter) + " \u00b7 " + matter.place(),
                grave ? Look.palette().grave() : selected ? ink : Look.palette().secondInk());
        cell.add(letter, "ay top");
        cell.add(words, "wmin 0, wrap");
        cell.add(below, "skip 1, wmin 0");
        cell.getAccessibleContext()
                .setAccessibleName(
                        letter.getText() + " " + severity(matter) + ", " + matter.place() + ": " + matter.sentence());
        return cell;
    }

    /** Words as high as they are when they are wrapped at the width of the list. */
    private JTextArea wrapped(String text, Color ink) {
        JTextArea words = new JTextArea(text);
        words.setFont(list.getFont());
        words.setBorder(BorderFactory.createEmptyBorder());
        words.setOpaque(false);
        words.setLineWrap(true);
        words.setWrapStyleWord(true);
        words.setForeground(ink);
        words.setSize(Math.max(1, list.getWidth() - UIScale.scale(BESIDE_WORDS)), Short.MAX_VALUE);
        // held: the layout would ask again at a width of its own
        words.setPreferredSize(words.getPreferredSize());
        return words;
    }

    private String severity(Matter matter) {
        return matter.isOverridden()
                ? texts.get("pages.rank.own", matter.severity().said())
                : matter.severity().said();
    }

    @Override
    public void addNotify() {
        super.addNotify();
        registrations.add(visit.onFindings(this::workOut));
        workOut();
    }

    @Override
    public void removeNotify() {
        registrations.forEach(Listeners.Registration::remove);
        registrations.clear();
        super.removeNotify();
    }

    /** Works out what matters of the findings that stand; an answer to earlier ones is dropped. */
    private void workOut() {
        Optional<Findings> asked = visit.findings();
        asked.ifPresent(findings -> parts.jobs()
                .start(
                        texts.get("pages.matters"),
                        progress -> parts.work()
                                .matters(visit.folder(), parts.work().open(visit.folder(), findings)),
                        found -> {
                            if (visit.findings().equals(asked)) {
                                show(found);
                            }
                        },
                        parts.problems()::failed));
    }

    private void show(Matters found) {
        Optional<String> held = chosen().map(Matter::id);
        matters = Optional.of(found);
        showing = true;
        rows.clear();
        found.all().forEach(rows::addElement);
        for (int row = 0; row < rows.size(); row++) {
            if (held.equals(Optional.of(rows.get(row).id()))) {
                list.setSelectedIndex(row);
            }
        }
        showing = false;
        render();
    }

    private void render() {
        Optional<Matter> matter = chosen();
        whole.setText(matter.map(one -> one.sentence() + "\n" + one.why())
                .orElseGet(() -> texts.get(
                        matters.isEmpty()
                                ? "pages.matters.later"
                                : rows.isEmpty() ? "pages.matters.none" : "pages.matters.hint")));
        Optional<String> id = matter.map(Matter::id);
        if (!id.equals(reasoned)) {
            reasoned = id;
            matter.ifPresent(one -> severity.setSelectedIndex(one.severity().ordinal()));
            reason.setText(
                    matter.flatMap(Matter::decision).map(MatterDecision::reason).orElse(""));
        }
        boolean can = matter.isPresent() && visit.isEditable();
        severity.setEnabled(can);
        reason.setEnabled(can);
        set.setEnabled(can);
        back.setEnabled(can && matter.flatMap(Matter::decision).isPresent());
    }
}
