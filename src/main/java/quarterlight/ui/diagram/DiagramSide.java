package quarterlight.ui.diagram;

import java.awt.event.ActionEvent;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.AbstractAction;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import javax.swing.KeyStroke;
import javax.swing.ToolTipManager;
import net.miginfocom.swing.MigLayout;
import quarterlight.car.View;
import quarterlight.car.ZoneId;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.look.WrapBar;
import quarterlight.ui.kit.view.ZoomHolder;
import quarterlight.ui.kit.view.ZoomScroll;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.ui.kit.visit.StationScreen;

/** The middle of the window: the layers above and the diagram; it tells the foot of the window what lies under the pointer. */
public final class DiagramSide extends JPanel {
    private static final int IN_HAND = 1;
    private static final double MOST_ZOOM = 4;
    private static final double STEP = 1.3;
    /** Judgment: below it the words in eight views crowd out the drawing. */
    private static final int LOW_PX = 360;

    private final transient UiContext parts;
    private final transient OpenVisit visit;
    private final DiagramPanel diagram;
    private final transient ZoneWords words;
    private final transient Consumer<String> foot;
    private final transient Supplier<Optional<StationScreen>> front;
    private final Map<Layer, JToggleButton> layers = new EnumMap<>(Layer.class);
    private final JComboBox<String> views = new JComboBox<>();
    private final transient ViewInHand inHand;
    private final ZoomScroll scroll;
    private boolean following;
    private boolean followed;

    /**
     * @param front the station in front
     * @param foot shows one sentence at the foot of the window
     */
    public DiagramSide(
            UiContext parts, OpenVisit visit, Supplier<Optional<StationScreen>> front, Consumer<String> foot) {
        super(new MigLayout("insets 0, gap 0, wrap 1", "[grow,fill]", "[][grow,fill]"));
        this.foot = foot;
        this.parts = parts;
        this.visit = visit;
        this.front = front;
        this.diagram = new DiagramPanel(parts, visit);
        this.words = new ZoneWords(parts, visit, diagram::layers);
        this.inHand = new ViewInHand(visit);
        DiagramGestures.install(diagram, front);
        ToolTipManager.sharedInstance().registerComponent(diagram);
        add(tools());
        ZoomHolder holder = new ZoomHolder(diagram);
        scroll = new ZoomScroll(holder, MOST_ZOOM, holder::factor);
        scroll.setName("diagram-zoom");
        key("PLUS", () -> scroll.zoom(STEP));
        key("EQUALS", () -> scroll.zoom(STEP));
        key("MINUS", () -> scroll.zoom(1 / STEP));
        key("ADD", () -> scroll.zoom(STEP));
        key("SUBTRACT", () -> scroll.zoom(1 / STEP));
        add(scroll);
        visit.selection().onHovered(this::say);
        visit.selection().onSelected(this::say);
        visit.selection().onSelected(this::look);
        visit.onVisit(this::look);
        diagram.addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent e) {
                look();
            }
        });
    }

    /** Shows the one view of what is in hand, or as chosen above the drawing. */
    public void follow(boolean inHandOnly) {
        following = inHandOnly;
        chosen();
    }

    /** All eight views in a low room would be too small to read: then it is the one in hand. */
    private boolean isFollowing() {
        return views.getSelectedIndex() == IN_HAND || (following || isLow()) && views.getSelectedIndex() <= 0;
    }

    private boolean isLow() {
        return scroll.getHeight() > 0 && scroll.getHeight() < LOW_PX;
    }

    private void look() {
        Optional<View> one = inHand.look();
        if (isFollowing()) {
            diagram.show(one.or(() -> isLow() ? Optional.of(View.LEFT) : Optional.empty()));
        } else if (views.getSelectedIndex() <= 0 && followed) {
            diagram.show(Optional.empty());
        }
        followed = isFollowing();
    }

    private void chosen() {
        int at = views.getSelectedIndex();
        if (isFollowing()) {
            look();
        } else {
            diagram.show(
                    at <= IN_HAND
                            ? Optional.empty()
                            : Optional.of(List.of(View.values()).get(at - IN_HAND - 1)));
        }
        followed = isFollowing();
    }

    private void key(String stroke, Runnable work) {
        diagram.getInputMap(WHEN_FOCUSED).put(KeyStroke.getKeyStroke(stroke), stroke);
        diagram.getActionMap().put(stroke, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent e) {
                work.run();
            }
        });
    }

    public DiagramPanel diagram() {
        return diagram;
    }

    private JPanel tools() {
        JPanel bar = new WrapBar();
        for (Layer layer : Layer.values()) {
            String name = parts.texts().get(layer.textKey());
            JToggleButton button = new JToggleButton(name, diagram.layers().contains(layer));
            Look.named(Look.toggle(button), parts.texts().get("layer.name", name))
                    .setName("layer-" + layer.name().toLowerCase(Locale.ROOT));
            button.addActionListener(e -> diagram.show(layer, button.isSelected()));
            layers.put(layer, button);
            bar.add(button);
        }
        views.addItem(parts.texts().get("view.all"));
        views.addItem(parts.texts().get("view.in-hand"));
        for (View view : View.values()) {
            views.addItem(parts.texts().get("view." + view.word()));
        }
        Look.named(views, parts.texts().get("view.name"));
        views.setName("diagram-view");
        views.addActionListener(e -> chosen());
        bar.add(views);
        return bar;
    }

    /** Switches a layer on or off, with its button. */
    public void show(Layer layer, boolean on) {
        layers.get(layer).setSelected(on);
        diagram.show(layer, on);
    }

    /** Says again what the foot has to say, for another station. */
    public void say() {
        Optional<ZoneId> zone = visit.selection().hoveredZone();
        foot.accept(zone.map(words::of)
                .or(() -> front.get().flatMap(StationScreen::hint))
                .orElse(""));
    }
}
