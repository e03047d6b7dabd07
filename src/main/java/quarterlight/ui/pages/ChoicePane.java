package quarterlight.ui.pages;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import quarterlight.car.ZoneId;
import quarterlight.language.Language;
import quarterlight.ui.kit.Listeners;
import quarterlight.ui.kit.SettingsFile;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.field.TypedText;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.look.TallPanel;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.visit.ReportExclusion;
import quarterlight.visit.ReportLength;

/** What goes into the report: short or full, which zones, which photos, the inspector's terms and limits. Event thread only. */
final class ChoicePane extends TallPanel {
    private static final String LANGUAGE = "pages.language";

    private final transient OpenVisit visit;
    private final transient PagesActions actions;
    private final transient Texts texts;
    private final Map<ZoneId, JCheckBox> zones = new LinkedHashMap<>();
    private final JComboBox<String> length = new JComboBox<>();
    private final JTextArea brief = area();
    private final JTextArea terms = area();
    private final JTextArea limits = area();
    private final JLabel photos = new JLabel(" ");
    private final transient List<Listeners.Registration> registrations = new ArrayList<>();
    private boolean showing;

    ChoicePane(UiContext parts, OpenVisit visit, PagesModel model, PagesActions actions) {
        super(new MigLayout("insets 8 16 16 24, wrap 1, gapy 6, fillx", "[grow,fill,0::]"));
        this.visit = visit;
        this.actions = actions;
        this.texts = parts.texts();
        add(Look.heading(texts.get("pages.choice")));
        for (ReportLength one : ReportLength.values()) {
            length.addItem(texts.get("pages.length." + one.word()));
        }
        Look.named(length, texts.get("pages.length"));
        length.addActionListener(e -> lengthChosen());
        add(new JLabel(texts.get("pages.length")));
        add(length);
        add(new JLabel(texts.get("pages.language")));
        add(languages(parts.settings(), model));
        addText("brief", brief);
        addText("terms", terms);
        addText("limits", limits);
        add(new JLabel(texts.get("pages.photos")), "gaptop 8");
        add(Look.secondary(photos));
        add(new JButton(actions.leaveOutPhotosInHand()), "growx 0");
        add(new JLabel(texts.get("pages.zones")), "gaptop 8");
        visit.zones().forEach(this::addZone);
    }

    /** The language of the pages is chosen apart from the window's, which it is until one is chosen. */
    private JComboBox<String> languages(SettingsFile settings, PagesModel model) {
        List<Language> offered = Language.offered();
        JComboBox<String> box = new JComboBox<>();
        offered.forEach(one -> box.addItem(one.ownName()));
        Language window = offered.contains(Language.inHand()) ? Language.inHand() : Language.ENGLISH;
        Language kept =
                settings.settings().text(LANGUAGE).flatMap(Language::coded).orElse(window);
        model.language(kept);
        box.setSelectedIndex(offered.indexOf(kept));
        box.setName("pages-language");
        Look.named(box, texts.get("pages.language"));
        box.addActionListener(e -> {
            Language chosen = offered.get(box.getSelectedIndex());
            model.language(chosen);
            settings.change(now -> now.with(LANGUAGE, chosen.code()));
        });
        return box;
    }

    private static JTextArea area() {
        JTextArea area = new JTextArea(3, 20);
        area.setLineWrap(true);
        area.setWrapStyleWord(true);
        area.setFocusTraversalKeys(java.awt.KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
        return area;
    }

    private void addText(String key, JTextArea area) {
        String name = texts.get("pages." + key);
        Look.named(area, name);
        area.setName(key);
        TypedText.keeping(area, () -> keep(key, area));
        JLabel label = new JLabel(name);
        label.setLabelFor(area);
        add(label, "gaptop 8");
        add(new JScrollPane(area), "h 64!");
    }

    private void keep(String key, JTextArea area) {
        String before = text(key);
        if (visit.isEditable() && !area.getText().strip().equals(before)) {
            actions.fact(key, area.getText().strip());
        }
    }

    private String text(String key) {
        var choices = visit.visit().facts().choices();
        return switch (key) {
            case "brief" -> choices.brief().paragraph().orElse("");
            case "terms" -> choices.terms().orElse("");
            default -> choices.limits().orElse("");
        };
    }

    private void addZone(ZoneId zone) {
        JCheckBox box = new JCheckBox(visit.label(zone), true);
        box.addActionListener(e -> {
            if (!showing) {
                actions.leaveOut(List.of(ReportExclusion.of(zone)));
            }
        });
        box.setToolTipText(box.getText());
        zones.put(zone, box);
        add(box, "h 24!");
    }

    private void lengthChosen() {
        ReportLength chosen = List.of(ReportLength.values()).get(Math.max(0, length.getSelectedIndex()));
        if (!showing && chosen != visit.visit().facts().choices().length()) {
            actions.fact("report", chosen.word());
        }
    }

    @Override
    public void addNotify() {
        super.addNotify();
        registrations.add(visit.onVisit(this::render));
        registrations.add(visit.selection().onSelected(this::render));
        render();
    }

    @Override
    public void removeNotify() {
        registrations.forEach(Listeners.Registration::remove);
        registrations.clear();
        super.removeNotify();
    }

    private void render() {
        showing = true;
        Set<ReportExclusion> out = new HashSet<>();
        visit.visit().leftOut().forEach(row -> out.add(row.value()));
        zones.forEach((zone, box) -> {
            box.setSelected(!out.contains(ReportExclusion.of(zone)));
            box.setEnabled(visit.isEditable());
        });
        long left = out.stream().filter(one -> one.photo().isPresent()).count();
        photos.setText(
                texts.get("pages.photos.out", left, visit.selection().photos().size()));
        length.setSelectedIndex(List.of(ReportLength.values())
                .indexOf(visit.visit().facts().choices().length()));
        length.setEnabled(visit.isEditable());
        show(brief, "brief");
        show(terms, "terms");
        show(limits, "limits");
        actions.enable();
        showing = false;
    }

    private void show(JTextArea area, String key) {
        area.setEditable(visit.isEditable());
        if (!area.isFocusOwner() && !area.getText().equals(text(key))) {
            area.setText(text(key));
        }
    }
}
