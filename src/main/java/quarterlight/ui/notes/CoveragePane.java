package quarterlight.ui.notes;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSpinner;
import javax.swing.SpinnerNumberModel;
import net.miginfocom.swing.MigLayout;
import quarterlight.car.ZoneId;
import quarterlight.coverage.Gap;
import quarterlight.table.list.UserList;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.ui.kit.widget.FactTable;
import quarterlight.ui.kit.widget.UserListDialog;
import quarterlight.visit.CoverageOverride;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.row.RecordKind;

/** What the visit still lacks, in the order of a walk round the car, to be closed before leaving. Event thread only. */
final class CoveragePane extends JPanel {
    private final transient OpenVisit visit;
    private final transient NotesActions actions;
    private final transient Texts texts;
    private final FactTable<Gap> table;
    private final JLabel head = new JLabel(" ");
    private final JSpinner want = new JSpinner(new SpinnerNumberModel(1, 0, CoverageOverride.MAX_WANT, 1));
    private final JButton here;
    private final JButton everywhere;
    private final JButton usual;
    private final JButton why;
    private final JButton list;

    /** @param excuse told of a zone that will not be looked at */
    CoveragePane(UiContext parts, OpenVisit visit, NotesActions actions, Consumer<ZoneId> excuse) {
        super(new MigLayout("insets 0, gap 0, wrap 1, fill", "[grow,fill]", "[][grow,fill][]"));
        this.visit = visit;
        this.actions = actions;
        this.texts = parts.texts();
        table = new FactTable<>(
                texts.get("notes.tab.coverage"),
                List.of(
                        column("zone", 170, gap -> gap.zone().label()),
                        column("lacks", 150, CoveragePane::lacks),
                        column("have", 64, gap -> texts.get("notes.have", gap.have(), gap.want())),
                        column("why", 300, gap -> gap.excuse()
                                .map(words -> texts.get("notes.excuse", words))
                                .orElse(gap.why()))),
                gap -> gap.zone().id() + lacks(gap));
        table.setName("gaps");
        here = new JButton(texts.get("notes.wish.here"));
        everywhere = new JButton(texts.get("notes.wish.everywhere"));
        usual = new JButton(texts.get("notes.wish.usual"));
        why = new JButton(texts.get("notes.wish.excuse"));
        list = new JButton(texts.get("notes.list"));
        list.setName("coverage-list");
        list.addActionListener(e -> UserListDialog.open(this, parts, UserList.COVERAGE, visit::workOutAgain));
        Look.named(want, texts.get("notes.wish.want"));
        want.setName("wish-want");
        here.setName("wish-here");
        table.onChosen(this::chosen);
        table.onKey("ENTER", this::chosen);
        here.addActionListener(e -> wish(true));
        everywhere.addActionListener(e -> wish(false));
        usual.addActionListener(e -> actions.remove(
                RecordKind.COVERAGE,
                visit.visit().coverage().stream().map(Recorded::id).toList()));
        why.addActionListener(
                e -> table.chosen().ifPresent(gap -> excuse.accept(gap.zone().id())));
        JPanel above = new JPanel(new MigLayout("insets 8 16 8 16, gap 8, fillx", "[grow,fill][][]"));
        above.add(Look.secondary(head), "wmin 0");
        above.add(list);
        JButton walk = new JButton(texts.get("notes.walk"));
        walk.addActionListener(e -> UserListDialog.open(this, parts, UserList.WALK, visit::workOutAgain));
        above.add(walk);
        add(above);
        JScrollPane scroll = new JScrollPane(table);
        Look.bare(scroll);
        add(scroll);
        add(form());
    }

    private static String lacks(Gap gap) {
        return gap.lacks().said() + gap.part().map(part -> " of " + part).orElse("");
    }

    private FactTable.Column<Gap> column(String name, int width, Function<Gap, String> words) {
        return new FactTable.Column<>(texts.get("notes.column." + name), width, words);
    }

    private JComponent form() {
        JPanel form = new JPanel(new MigLayout("insets 8 16 8 16, gap 8, fillx", "[][][][][]push[]"));
        form.add(new JLabel(texts.get("notes.wish.want")));
        form.add(want, "w 72!");
        form.add(here);
        form.add(everywhere);
        form.add(usual);
        form.add(why, "wrap");
        form.add(Look.secondary(new JLabel(texts.get("notes.coverage.hint"))), "span, wmin 0");
        return form;
    }

    private void chosen() {
        table.chosen().ifPresent(gap -> {
            want.setValue(gap.want());
            visit.selection().zones(Set.of(gap.zone().id()));
        });
        allow();
    }

    private void wish(boolean onlyHere) {
        table.chosen()
                .ifPresent(gap -> actions.wish(new CoverageOverride(
                        onlyHere ? Optional.of(gap.zone().id()) : Optional.empty(),
                        gap.lacks().said(),
                        ((Number) want.getValue()).intValue())));
    }

    private void allow() {
        boolean chosen = visit.isEditable() && table.chosen().isPresent();
        List.of(here, everywhere, why).forEach(button -> button.setEnabled(chosen));
        want.setEnabled(chosen);
        usual.setEnabled(visit.isEditable() && !visit.visit().coverage().isEmpty());
    }

    /** Chooses what is missing, as long as it is. */
    void choose(Gap gap) {
        table.choose(gap::equals);
    }

    JComponent first() {
        return table;
    }

    void render() {
        List<Gap> gaps =
                visit.coverage().stream().flatMap(zone -> zone.gaps().stream()).toList();
        table.show(gaps);
        long zones = gaps.stream().map(gap -> gap.zone().id()).distinct().count();
        head.setText(
                visit.coverage().isEmpty()
                        ? texts.get("notes.coverage.working")
                        : texts.get(
                                "notes.coverage.head",
                                gaps.size(),
                                zones,
                                visit.visit().coverage().size()));
        allow();
    }
}
