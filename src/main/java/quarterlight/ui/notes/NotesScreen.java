package quarterlight.ui.notes;

import java.awt.Component;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTabbedPane;
import net.miginfocom.swing.MigLayout;
import quarterlight.car.ZoneId;
import quarterlight.coverage.Gap;
import quarterlight.ui.kit.Command;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.place.ChangedRows;
import quarterlight.ui.kit.place.Subject;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.ui.kit.visit.Station;
import quarterlight.ui.kit.visit.StationScreen;
import quarterlight.visit.pin.ViewPoint;
import quarterlight.visit.row.RecordKind;

/** The Notes station: statements, what was not looked at, trials, the odometer, claims, and what the visit lacks. Event thread only. */
public final class NotesScreen implements StationScreen {
    private final Texts texts;
    private final OpenVisit visit;
    private final NotesModel model = new NotesModel();
    private final NotesActions actions;
    private final JPanel side = new JPanel(new MigLayout("insets 0, fill", "[grow,fill]", "[grow,fill]"));
    private final JTabbedPane tabs = new JTabbedPane();
    private final StatementsPane statements;
    private final StatementsPane not;
    private final TrialsPane trials;
    private final OdometerPane odometer;
    private final ClaimsPane claims;
    private final CoveragePane coverage;
    private final List<Command> commands = new ArrayList<>();

    public NotesScreen(UiContext parts, OpenVisit visit) {
        this.texts = parts.texts();
        this.visit = visit;
        this.actions = new NotesActions(parts, visit, model);
        statements = new StatementsPane(parts, visit, model, actions, false);
        not = new StatementsPane(parts, visit, model, actions, true);
        trials = new TrialsPane(parts, visit, model, actions);
        odometer = new OdometerPane(parts, visit, actions);
        claims = new ClaimsPane(parts, visit, actions);
        coverage = new CoveragePane(parts, visit, actions, this::excuse);
        tab("statements", statements, statements.first(), "1");
        tab("not", not, not.first(), "2");
        tab("trials", trials, trials.first(), "3");
        tab("odometer", odometer, odometer, "4");
        tab("coverage", coverage, coverage.first(), "5");
        tab("claims", claims, claims.first(), "6");
        tabs.setName("notes-tabs");
        side.add(tabs);
        visit.onVisit(this::render);
        visit.onFindings(coverage::render);
        visit.onFindings(claims::render);
        visit.selection().onSelected(this::selected);
        model.onChange(trials::render);
        render();
        selected();
    }

    private void tab(String name, JComponent pane, JComponent first, String key) {
        tabs.addTab(texts.get("notes.tab." + name), pane);
        commands.add(Command.of(texts, "notes.go." + name, () -> {
                    tabs.setSelectedComponent(pane);
                    first.requestFocusInWindow();
                })
                .key("alt " + key));
    }

    /** Goes on to say why a zone is not looked at. */
    private void excuse(ZoneId zone) {
        visit.selection().zones(Set.of(zone));
        tabs.setSelectedComponent(not);
        not.first().requestFocusInWindow();
    }

    private void render() {
        statements.render();
        not.render();
        trials.render();
        odometer.render();
        coverage.render();
        claims.render();
    }

    private void selected() {
        statements.selected();
        not.selected();
        claims.selected();
    }

    @Override
    public Station station() {
        return Station.NOTES;
    }

    @Override
    public JComponent side() {
        return side;
    }

    @Override
    public JComponent first() {
        return statements.first();
    }

    @Override
    public JComponent revealed() {
        Component tab = tabs.getSelectedComponent();
        return tab == coverage
                ? coverage.first()
                : tab == claims
                        ? claims.table()
                        : tab == not ? not.table() : tab == statements ? statements.table() : first();
    }

    @Override
    public List<Command> commands() {
        return List.copyOf(commands);
    }

    @Override
    public Optional<Subject> subject() {
        Component tab = tabs.getSelectedComponent();
        return tab == statements
                ? statements.subject()
                : tab == not
                        ? not.subject()
                        : tab == claims ? claims.subject() : tab == trials ? trials.subject() : Optional.empty();
    }

    @Override
    public void zoneChosen(ZoneId zone, ViewPoint point) {
        if (tabs.getSelectedComponent() instanceof StatementsPane pane) {
            pane.zoneChosen();
        } else if (tabs.getSelectedComponent() == claims) {
            claims.zoneChosen(zone);
        }
    }

    @Override
    public void reveal(ChangedRows changed) {
        if (changed.isOf(RecordKind.STATEMENTS)) {
            boolean isNot = not.choose(changed.rows());
            boolean isSaid = statements.choose(changed.rows());
            tabs.setSelectedComponent(isNot && !isSaid ? not : statements);
        } else if (changed.isOf(RecordKind.TRIALS)) {
            tabs.setSelectedComponent(trials);
            trials.choose(changed.rows());
        } else if (changed.isOf(RecordKind.CLAIMS)) {
            tabs.setSelectedComponent(claims);
            claims.choose(changed.rows());
        } else if (changed.isOf(RecordKind.ODOMETER)) {
            tabs.setSelectedComponent(odometer);
            odometer.choose(changed.rows());
        } else if (changed.isOf(RecordKind.COVERAGE)) {
            tabs.setSelectedComponent(coverage);
        }
    }

    @Override
    public void reveal(Gap gap) {
        coverage.choose(gap);
    }

    @Override
    public void shown() {
        actions.load(model::lists);
    }

    @Override
    public Optional<String> hint() {
        return Optional.of(texts.get("notes.hint"));
    }
}
