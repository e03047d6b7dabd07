package quarterlight.ui.gauge.sign;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;
import quarterlight.car.Zone;
import quarterlight.car.ZoneId;
import quarterlight.edit.gauge.FinishEdits;
import quarterlight.ui.kit.Command;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.trial.SignKind;

/** Signs taken down in one pass: zones by signs, many at once, with a photo. Event thread only. */
public final class SignsPane extends JPanel {
    private final transient UiContext parts;
    private final transient OpenVisit visit;
    private final transient Texts texts;
    private final SignGrid grid;
    private final JLabel said = new JLabel(" ");
    private final JComboBox<String> photo = new JComboBox<>();
    private final JComboBox<String> panel = new JComboBox<>();
    private final JLabel panelLabel;
    private final transient Map<ZoneId, Optional<ZoneId>> wanted = new LinkedHashMap<>();
    private transient List<PhotoId> photos = List.of();
    private transient List<ZoneId> panels = List.of();
    private final transient List<Command> commands = new ArrayList<>();
    private transient Set<FinishEdits.Place> last = Set.of();
    private boolean goingOn;
    private boolean filling;

    public SignsPane(UiContext parts, OpenVisit visit) {
        super(new MigLayout("insets 12 16 12 16, gapy 8, wrap 1, fill", "[grow,fill,0::]", "[][grow,fill][][]"));
        this.parts = parts;
        this.visit = visit;
        this.texts = parts.texts();
        grid = new SignGrid(texts, visit::label);
        JPanel tools = new JPanel(new MigLayout("insets 0, gap 8"));
        tools.add(button("signs.note.seen", "S", () -> note(Optional.of(true))));
        tools.add(button("signs.note.not-seen", "N", () -> note(Optional.of(false))));
        tools.add(button("signs.note.not-looked", "DELETE", () -> note(Optional.empty())));
        tools.add(button("signs.round.not-seen", "shift N", () -> allRound(false)), "gapleft 16");
        tools.add(button("signs.round.seen", "shift S", () -> allRound(true)));
        grid.onKey("S", () -> noteAndGoOn(true));
        grid.onKey("N", () -> noteAndGoOn(false));
        for (SignKind kind : SignKind.values()) {
            grid.onKey(String.valueOf(grid.letter(kind)), () -> noteHere(kind, true));
            grid.onKey("shift " + grid.letter(kind), () -> noteHere(kind, false));
        }
        grid.onKey("SPACE", this::cycle);
        grid.onKey("BACK_SPACE", () -> note(Optional.empty()));
        grid.onKey("P", this::photoInHand);
        JScrollPane scroll = new JScrollPane(grid);
        Look.named(photo, texts.get("signs.photo"));
        photo.setName("sign-photo");
        photo.addActionListener(e -> photoChosen());
        Look.named(panel, texts.get("signs.speaks-for"));
        panel.setName("sign-panel");
        panel.addActionListener(e -> panelChosen());
        panelLabel = new JLabel(texts.get("signs.speaks-for"));
        panelLabel.setLabelFor(panel);
        JLabel photoLabel = new JLabel(texts.get("signs.photo"));
        photoLabel.setLabelFor(photo);
        JPanel foot = new JPanel(
                new MigLayout("insets 0, gap 8, hidemode 3", "[][grow,fill,::220]16[][grow,fill,::220]push"));
        foot.add(photoLabel);
        foot.add(photo, "wmin 80");
        foot.add(panelLabel);
        foot.add(panel, "wmin 80");
        add(tools, "wmin 0");
        add(scroll, "wmin 0, hmin 80");
        add(said, "wmin 0");
        add(foot, "wmin 0");
        grid.getSelectionModel().addListSelectionListener(e -> chosen());
        grid.getColumnModel().getSelectionModel().addListSelectionListener(e -> chosen());
        refresh();
    }

    private JButton button(String key, String stroke, Runnable work) {
        Command command = Command.of(texts, key, work).tip(texts.get(key + ".tip"));
        commands.add(command);
        grid.onKey(stroke, work);
        JButton button = new JButton(command);
        button.setName(key);
        return button;
    }

    public JComponent first() {
        return grid;
    }

    /** The visit or what is selected in it has changed. */
    public void refresh() {
        filling = true;
        Set<ZoneId> zones = visit.selection().zones();
        zones.forEach(zone -> {
            if (!parts.catalog().get(zone).finish()) {
                wanted.putIfAbsent(zone, Optional.empty());
            }
        });
        wanted.keySet().removeIf(zone -> !zones.contains(zone));
        grid.show(SignSheet.of(visit.visit(), parts.catalog(), wanted));
        if (!grid.zones().equals(zones)) {
            grid.choose(zones);
        }
        if (grid.getSelectedRow() < 0 && grid.getRowCount() > 0 && zones.isEmpty()) {
            grid.changeSelection(0, 1, false, false);
        }
        foot();
        filling = false;
    }

    private void chosen() {
        if (filling) {
            return;
        }
        if (!goingOn) {
            last = Set.of();
        }
        Set<ZoneId> zones = grid.zones();
        if (!zones.isEmpty() && !zones.equals(visit.selection().zones())) {
            visit.selection().zones(zones);
        }
        filling = true;
        foot();
        filling = false;
    }

    private void note(Optional<Boolean> seen) {
        edit(grid.places(), seen);
    }

    /** By key a sign is noted in one zone after the other; several cells stay chosen. */
    private void noteAndGoOn(boolean seen) {
        Set<FinishEdits.Place> places = grid.places();
        note(Optional.of(seen));
        if (places.size() == 1 && visit.isEditable()) {
            goingOn = true;
            last = grid.goOn() ? places : Set.of();
            goingOn = false;
            foot();
        }
    }

    /** By its letter a sign is noted in the zone in hand, which stays in hand for the next sign. */
    private void noteHere(SignKind kind, boolean seen) {
        if (grid.goTo(kind)) {
            note(Optional.of(seen));
        }
    }

    /** Goes from not looked for to seen, to not seen, and back. */
    private void cycle() {
        cell().ifPresent(cell -> note(
                cell.seen().isEmpty() ? Optional.of(true) : cell.seen().get() ? Optional.of(false) : Optional.empty()));
    }

    private void allRound(boolean seen) {
        Set<SignKind> kinds = grid.kinds();
        if (kinds.isEmpty()) {
            parts.problems().remark(texts.get("signs.choose-sign"));
            return;
        }
        edit(grid.sheet().allRound(kinds), Optional.of(seen));
    }

    private void edit(Set<FinishEdits.Place> places, Optional<Boolean> seen) {
        if (visit.isEditable() && !places.isEmpty()) {
            Set<FinishEdits.Place> these = new LinkedHashSet<>(places);
            visit.edit(
                    store -> {
                        new FinishEdits(store).note(these, seen);
                        return these;
                    },
                    done -> {});
        }
    }

    private void photoInHand() {
        visit.selection().photo().ifPresentOrElse(this::tie, () -> parts.problems()
                .remark(texts.get("signs.no-photo")));
    }

    private void tie(PhotoId id) {
        photo(Optional.of(id));
    }

    private void photo(Optional<PhotoId> id) {
        Set<FinishEdits.Place> places = new LinkedHashSet<>(last.isEmpty() ? grid.places() : last);
        visit.edit(
                store -> {
                    new FinishEdits(store).photo(places, id);
                    return places;
                },
                done -> {});
    }

    private void photoChosen() {
        int at = photo.getSelectedIndex();
        if (!filling && at >= 0) {
            last = Set.of();
            photo(at == 0 ? Optional.empty() : Optional.of(photos.get(at - 1)));
        }
    }

    private void panelChosen() {
        int at = panel.getSelectedIndex();
        if (filling || at < 0 || grid.zones().size() != 1) {
            return;
        }
        ZoneId zone = grid.zones().iterator().next();
        Optional<ZoneId> chosen = at == 0 ? Optional.empty() : Optional.of(panels.get(at - 1));
        wanted.put(zone, chosen);
        visit.edit(
                store -> {
                    new FinishEdits(store).speakFor(zone, chosen);
                    return zone;
                },
                done -> refresh());
    }

    /** The cell in hand. */
    private Optional<SignSheet.Cell> cell() {
        return grid.places().stream().findFirst().map(place -> grid.sheet().cell(place.zone(), place.kind()));
    }

    private void foot() {
        Optional<FinishEdits.Place> place = grid.places().stream().findFirst();
        Optional<SignSheet.Cell> cell = cell();
        int count = grid.places().size();
        String here = place.map(one -> count == 1 ? words(one, cell.orElseThrow()) : texts.get("signs.many", count))
                .orElse(texts.get("signs.choose"));
        said.setText(last.stream()
                .findFirst()
                .map(one -> texts.get("signs.went-on", words(one, grid.sheet().cell(one.zone(), one.kind())), here))
                .orElse(here));
        said.setToolTipText(said.getText());
        boolean noted = visit.isEditable() && cell.flatMap(SignSheet.Cell::seen).isPresent();
        photos = place.map(one -> photos(one.zone(), cell.flatMap(SignSheet.Cell::photo)))
                .orElse(List.of());
        photo.removeAllItems();
        photo.addItem(texts.get("signs.photo.none"));
        photos.forEach(id -> photo.addItem(file(id)));
        photo.setSelectedIndex(
                cell.flatMap(SignSheet.Cell::photo).map(photos::indexOf).orElse(-1) + 1);
        photo.setEnabled(noted);
        Optional<SignSheet.Row> row = place.flatMap(one -> grid.sheet().rows().stream()
                .filter(each -> each.zone().equals(one.zone()))
                .findFirst());
        boolean elsewhere = row.filter(each -> !each.panel()).isPresent();
        panels = parts.catalog().zonesOf(visit.visit().facts().car().body()).stream()
                .filter(Zone::finish)
                .map(Zone::id)
                .toList();
        panel.removeAllItems();
        panel.addItem(texts.get("signs.speaks-for.none"));
        panels.forEach(id -> panel.addItem(visit.label(id)));
        panel.setSelectedIndex(
                row.flatMap(SignSheet.Row::speaksFor).map(panels::indexOf).orElse(-1) + 1);
        panel.setVisible(elsewhere);
        panelLabel.setVisible(elsewhere);
        panel.setEnabled(visit.isEditable());
        commands.forEach(command -> command.setEnabled(visit.isEditable()));
    }

    private String words(FinishEdits.Place place, SignSheet.Cell cell) {
        String state = texts.get(
                cell.seen().isEmpty() ? "signs.not-looked" : cell.seen().get() ? "signs.seen" : "signs.not-seen");
        return texts.get("signs.one", visit.label(place.zone()), SignGrid.words(place.kind()), state)
                + cell.note().map(note -> " (" + note + ")").orElse("")
                + cell.elsewhere()
                        .map(seen -> ". " + texts.get(seen ? "signs.elsewhere.seen" : "signs.elsewhere.not-seen"))
                        .orElse("");
    }

    /** Photos to choose among: the one tied, the one in hand, those pinned to the zone. */
    private List<PhotoId> photos(ZoneId zone, Optional<PhotoId> tied) {
        Set<PhotoId> ids = new LinkedHashSet<>();
        tied.ifPresent(ids::add);
        visit.selection().photo().ifPresent(ids::add);
        visit.visit().pins().stream()
                .filter(row -> row.value().zone().equals(zone))
                .forEach(row -> ids.add(row.value().photo()));
        return List.copyOf(ids);
    }

    private String file(PhotoId id) {
        return visit.visit().photo(id).map(one -> one.file().name()).orElse("");
    }
}
