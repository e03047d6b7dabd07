package quarterlight.ui.kit.visit;

import java.awt.Component;
import java.awt.event.ActionEvent;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javax.swing.AbstractAction;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import net.miginfocom.swing.MigLayout;
import quarterlight.car.Car;
import quarterlight.car.Zone;
import quarterlight.car.ZoneFinder;
import quarterlight.car.ZoneId;
import quarterlight.ui.kit.Listeners;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.field.TypedText;
import quarterlight.ui.kit.look.Look;

/**
 * Picks zones by a few typed letters: Enter takes the zone that is named below, Shift+Enter takes it beside those taken, Up and Down go
 * through what suits, Escape lets go of all. Event thread only.
 */
public final class ZoneField extends JPanel {
    private static final int NAMED = 3;

    private final transient UiContext parts;
    private final transient OpenVisit visit;
    private final JTextField field = new JTextField();
    private final JLabel said = new JLabel(" ");
    private final transient Listeners changed = new Listeners();
    private transient Set<ZoneId> zones = Set.of();
    private transient List<Zone> found = List.of();
    private transient int at;
    private transient Optional<Component> next = Optional.empty();

    public ZoneField(UiContext parts, OpenVisit visit) {
        super(new MigLayout("insets 0, gap 0, wrap 1, fillx", "[grow,fill]", "[26!][18!]"));
        this.parts = parts;
        this.visit = visit;
        Look.named(field, parts.texts().get("zonefield.name"));
        TypedText.ownEscape(field).setName("zone-field");
        field.putClientProperty("JTextField.placeholderText", parts.texts().get("zonefield.hint"));
        field.getDocument().addDocumentListener(new DocumentListener() {
            @Override
            public void insertUpdate(DocumentEvent e) {
                typed();
            }

            @Override
            public void removeUpdate(DocumentEvent e) {
                typed();
            }

            @Override
            public void changedUpdate(DocumentEvent e) {
                typed();
            }
        });
        TypedText.keeping(field, this::takeOnLeaving);
        key("ENTER", () -> take(false));
        key("shift ENTER", () -> take(true));
        key("DOWN", () -> step(1));
        key("UP", () -> step(-1));
        key("ESCAPE", this::clear);
        add(field);
        add(Look.secondary(said), "wmin 0");
        say();
    }

    private void key(String stroke, Runnable work) {
        field.getInputMap().put(KeyStroke.getKeyStroke(stroke), stroke);
        field.getActionMap().put(stroke, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent e) {
                work.run();
            }
        });
    }

    /** Where the keyboard goes when a zone was taken; to the next control unless this says otherwise. */
    public void then(Component other) {
        next = Optional.of(other);
    }

    /** The field that takes the keyboard. */
    public JTextField field() {
        return field;
    }

    /** The zones taken, in the order in which they were. */
    public Set<ZoneId> zones() {
        return zones;
    }

    /** Shows zones without telling. */
    public void zones(Set<ZoneId> taken) {
        zones = java.util.Collections.unmodifiableSet(new LinkedHashSet<>(taken));
        say();
    }

    /** Told when the user takes a zone or lets go of all. */
    public void onChange(Runnable listener) {
        changed.add(listener);
    }

    private void typed() {
        Car car = visit.visit().facts().car();
        List<Zone> all = parts.catalog().zonesOf(car.body());
        found = ZoneFinder.matches(field.getText(), car.drive(), all);
        at = 0;
        say();
    }

    private void step(int by) {
        if (!found.isEmpty()) {
            at = Math.floorMod(at + by, found.size());
            say();
        }
    }

    private void take(boolean beside) {
        if (found.isEmpty()) {
            if (field.getText().isBlank() && !zones.isEmpty()) {
                goOn();
            }
            return;
        }
        take(found.get(at), beside);
        if (!beside) {
            goOn();
        }
    }

    private void takeOnLeaving() {
        if (!found.isEmpty()) {
            take(found.get(at), false);
        }
    }

    private void take(Zone zone, boolean beside) {
        Set<ZoneId> taken = beside ? new LinkedHashSet<>(zones) : new LinkedHashSet<>();
        taken.add(zone.id());
        zones = java.util.Collections.unmodifiableSet(taken);
        field.setText("");
        changed.tell();
    }

    private void goOn() {
        next.ifPresentOrElse(Component::requestFocusInWindow, field::transferFocus);
    }

    private void clear() {
        field.setText("");
        zones = Set.of();
        say();
        changed.tell();
    }

    private void say() {
        String text;
        if (!found.isEmpty()) {
            List<String> names = new ArrayList<>();
            for (int i = 0; i < Math.min(NAMED, found.size()); i++) {
                names.add(found.get((at + i) % found.size()).label());
            }
            text = "\u21b5 " + String.join("  \u00b7  ", names);
        } else if (!field.getText().isBlank()) {
            text = parts.texts().get("zonefield.none");
        } else {
            text = zones.stream().map(visit::label).collect(Collectors.joining("; "));
        }
        said.setText(text.isEmpty() ? parts.texts().get("zonefield.empty") : text);
        said.setToolTipText(said.getText());
        field.getAccessibleContext().setAccessibleDescription(said.getText());
    }

    @Override
    public void setEnabled(boolean enabled) {
        super.setEnabled(enabled);
        field.setEnabled(enabled);
    }
}
