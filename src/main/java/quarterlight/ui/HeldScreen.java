package quarterlight.ui;

import java.util.List;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import quarterlight.store.RecordKind;
import quarterlight.ui.kit.Command;
import quarterlight.ui.kit.DeskParts;
import quarterlight.ui.kit.Look;
import quarterlight.ui.kit.OpenVisit;
import quarterlight.ui.kit.Station;
import quarterlight.ui.kit.StationScreen;

/** A station that shows what the visit holds, for reading. Event thread only. */
final class HeldScreen implements StationScreen {
    private final Station station;
    private final JPanel panel = new JPanel(new MigLayout("insets 16, wrap 1, gapy 8"));

    HeldScreen(DeskParts parts, OpenVisit visit, Station station) {
        this.station = station;
        panel.setFocusable(true);
        panel.add(Look.heading(parts.texts().get(station.textKey())));
        RecordKind.all()
                .forEach(kind ->
                        panel.add(new JLabel(kind.count(kind.of(visit.visit()).size()))));
    }

    @Override
    public Station station() {
        return station;
    }

    @Override
    public JComponent side() {
        return panel;
    }

    @Override
    public JComponent first() {
        return panel;
    }

    @Override
    public List<Command> commands() {
        return List.of();
    }
}
