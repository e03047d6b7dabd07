package quarterlight.ui.compare;

import java.util.EnumMap;
import java.util.Map;
import java.util.function.Consumer;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSlider;
import javax.swing.JSpinner;
import javax.swing.SpinnerNumberModel;
import net.miginfocom.swing.MigLayout;
import quarterlight.compare.matter.Care;
import quarterlight.compare.matter.Concern;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.look.Look;

/** Asks in one line what the buyer cares about: a weight for each concern, by dragging or by its number; none by default. Event thread only. */
final class CareLine extends JPanel {
    private final transient Map<Concern, JSlider> weights = new EnumMap<>(Concern.class);
    private final transient Consumer<Care> told;
    private boolean filling;

    /** @param told the weights, whenever one changes */
    CareLine(Texts texts, Consumer<Care> told) {
        super(new MigLayout("insets 0 16 8 16, gap 4 0, novisualpadding", "[]push"));
        this.told = told;
        add(new JLabel(texts.get("compare.care")), "gapright 12");
        for (Concern concern : Concern.values()) {
            String name = texts.get("compare.care." + concern.name().toLowerCase(java.util.Locale.ROOT));
            JSlider slider = new JSlider(0, Care.MAX, 0);
            slider.setName("care-" + concern.word().replace(' ', '-'));
            slider.setSnapToTicks(true);
            Look.named(slider, texts.get("compare.care.weight", name));
            JSpinner number = new JSpinner(new SpinnerNumberModel(0, 0, Care.MAX, 1));
            number.setName(slider.getName() + "-number");
            Look.named(number, texts.get("compare.care.weight", name));
            slider.addChangeListener(e -> {
                number.setValue(slider.getValue());
                changed();
            });
            number.addChangeListener(e -> slider.setValue((Integer) number.getValue()));
            weights.put(concern, slider);
            add(new JLabel(name));
            add(slider, "w 40:64:72");
            add(number, "w 48!, gapright 10");
        }
    }

    private void changed() {
        boolean dragging = weights.values().stream().anyMatch(JSlider::getValueIsAdjusting);
        if (!filling && !dragging) {
            told.accept(care());
        }
    }

    Care care() {
        Map<Concern, Integer> set = new EnumMap<>(Concern.class);
        weights.forEach((concern, slider) -> set.put(concern, slider.getValue()));
        return new Care(set);
    }

    /** Shows weights without telling of them. */
    void show(Care care) {
        filling = true;
        weights.forEach((concern, slider) -> slider.setValue(care.of(concern)));
        filling = false;
    }
}
