package quarterlight.ui.gauge;

import java.util.ArrayList;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JTabbedPane;
import quarterlight.ui.gauge.check.CheckPane;
import quarterlight.ui.gauge.entry.GaugeEntry;
import quarterlight.ui.gauge.history.HistoryPane;
import quarterlight.ui.gauge.panel.PanelsPane;
import quarterlight.ui.gauge.sign.SignsPane;
import quarterlight.ui.kit.Command;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.place.ChangedRows;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.visit.row.RecordKind;

/** The pages of the Gauge station: readings, panels, finish history, signs, gauge check. Event thread only. */
final class GaugeTabs {
    private final Texts texts;
    private final JTabbedPane tabs = new JTabbedPane();
    private final List<JComponent> firsts = new ArrayList<>();
    private final List<Command> commands = new ArrayList<>();
    private final PanelsPane panels;
    private final HistoryPane history;
    private static final int SIGNS = 3;
    private static final int CHECK = 4;

    private final SignsPane signs;
    private final CheckPane check;

    GaugeTabs(UiContext parts, OpenVisit visit, JComponent readings, JComponent field, GaugeEntry entry) {
        texts = parts.texts();
        history = new HistoryPane(parts, visit, entry::mode);
        tab("readings", readings, field);
        signs = new SignsPane(parts, visit);
        panels = new PanelsPane(parts, visit);
        tab("panels", panels, panels.first());
        tab("history", history, history.first());
        check = new CheckPane(parts, visit, entry);
        tab("signs", signs, signs.first());
        tab("check", check, check.first());
        tabs.setName("gauge-tabs");
        tabs.addChangeListener(e -> refresh());
        visit.onVisit(this::refresh);
        visit.onFindings(this::refresh);
        visit.selection().onSelected(this::refresh);
    }

    private void tab(String name, JComponent pane, JComponent first) {
        tabs.addTab(texts.get("gauge.tab." + name), pane);
        firsts.add(first);
        commands.add(Command.of(texts, "gauge.go." + name, () -> {
                    tabs.setSelectedComponent(pane);
                    first.requestFocusInWindow();
                })
                .key("alt " + firsts.size()));
        if (firsts.size() == 1) {
            commands.get(0).begins();
        }
    }

    JTabbedPane component() {
        return tabs;
    }

    /** What takes the keyboard. */
    JComponent first() {
        return firsts.get(tabs.getSelectedIndex());
    }

    List<Command> commands() {
        return List.copyOf(commands);
    }

    /** Brings what is in front up to date. */
    void refresh() {
        if (panels.isShowing()) {
            panels.refresh();
        }
        if (history.isShowing()) {
            history.refresh();
        }
        if (signs.isShowing()) {
            signs.refresh();
        }
        if (check.isShowing()) {
            check.refresh();
        }
    }

    /** Brings the tab to the front where changed rows stand. */
    void reveal(ChangedRows changed) {
        tabs.setSelectedIndex(changed.isOf(RecordKind.GAUGE) ? CHECK : changed.isOf(RecordKind.SIGNS) ? SIGNS : 0);
    }

    void closed() {
        history.closed();
    }
}
