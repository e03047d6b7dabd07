package quarterlight.ui.words;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JMenuItem;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import quarterlight.edit.spoken.DraftLine;
import quarterlight.edit.spoken.SpokenQuote;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.look.Hairline;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.look.Prose;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.ui.kit.visit.ZoneField;
import quarterlight.words.Draft;

/** The draft in hand: its words, where it goes and what it says, how likely it is right and why. Event thread only. */
final class DraftPane extends JPanel {
    private static final int PERCENT = 100;
    private static final int REASONS = 4;

    private final transient UiContext parts;
    private final transient Texts texts;
    private final transient WordsModel model;
    private final ZoneField zones;
    private final JButton value = new JButton(" ");
    private final JTextArea quote = Prose.area();
    private final JLabel why = new JLabel(" ");
    private final JLabel lacks = new JLabel(" ");
    private transient JComponent home;

    DraftPane(UiContext parts, OpenVisit visit, WordsModel model, JComponent home) {
        super(new MigLayout("insets 8 16 8 16, gap 4 12, fillx, wrap 2, hidemode 3", "[240!,fill][grow,fill]", "[][]"));
        this.parts = parts;
        this.texts = parts.texts();
        this.model = model;
        this.home = home;
        setBorder(new Hairline(Hairline.Side.TOP));
        zones = new ZoneField(parts, visit);
        zones.then(home);
        zones.onChange(() -> model.inHand()
                .filter(DraftRow::isOpen)
                .ifPresent(row -> model.write(DraftChoices.at(row.written(), List.copyOf(zones.zones())))));
        value.setName("words-value");
        value.setHorizontalAlignment(JButton.LEADING);
        value.addActionListener(e -> change());
        quote.setName("words-quote");
        quote.setRows(2);
        quote.setFocusable(false);
        why.setName("words-why");
        lacks.setName("words-lacks");
        lacks.putClientProperty("FlatLaf.style", "foreground: $quarterlight.caution");
        add(quote, "span 2, wmin 0");
        add(zones, "aligny top");
        JPanel right = new JPanel(new MigLayout("insets 0, gap 2, wrap 1, hidemode 3", "[grow,fill]", "[26!][]"));
        right.add(value, "growx 0, wmin 200");
        right.add(Look.secondary(why), "wmin 0");
        right.add(lacks, "wmin 0");
        add(right, "wmin 0, aligny top");
    }

    /** Goes on to say where it is, beginning with a letter. */
    void typeZone(char letter) {
        zones.field().setText(String.valueOf(letter));
        zones.field().requestFocusInWindow();
    }

    /** Offers what else it can say: by a letter of a menu, or as typed text. */
    void change() {
        Optional<DraftRow> row = model.inHand().filter(DraftRow::isOpen);
        if (row.isEmpty()) {
            return;
        }
        Draft draft = row.get().written();
        Optional<String> typed = DraftChoices.value(draft);
        if (typed.isPresent()) {
            parts.problems()
                    .ask(texts.get("words.value.ask"), texts.get("words.value.title"), typed.get())
                    .ifPresent(text -> model.write(DraftChoices.valued(draft, text.strip())));
            home.requestFocusInWindow();
            return;
        }
        menu(draft)
                .filter(menu -> value.isShowing())
                .ifPresent(menu -> menu.show(value, 0, -menu.getPreferredSize().height));
    }

    private Optional<JPopupMenu> menu(Draft draft) {
        List<DraftChoices.Choice> choices = DraftChoices.of(draft, texts);
        JPopupMenu menu = new JPopupMenu();
        menu.setName("words-choices");
        for (DraftChoices.Choice choice : choices) {
            JMenuItem item = new JMenuItem(choice.letter() + "   " + choice.label());
            item.setMnemonic(choice.letter());
            item.setDisplayedMnemonicIndex(-1);
            item.addActionListener(e -> {
                model.write(choice.draft());
                home.requestFocusInWindow();
            });
            menu.add(item);
        }
        return choices.isEmpty() ? Optional.empty() : Optional.of(menu);
    }

    /** @param several how many drafts are selected together */
    void render(boolean editable, int several) {
        Optional<DraftRow> row = several > 1 ? Optional.empty() : model.inHand();
        boolean open = editable && row.filter(DraftRow::isOpen).isPresent();
        zones.setEnabled(open);
        zones.zones(row.map(DraftRow::written)
                .map(draft -> new LinkedHashSet<>(draft.zones()))
                .orElseGet(LinkedHashSet::new));
        value.setEnabled(open);
        quote.setText(
                several > 1
                        ? texts.get("words.several", several)
                        : row.map(one -> texts.get(
                                        "words.quote",
                                        SpokenQuote.clock(one.read().atSeconds()),
                                        one.read().words().strip()))
                                .orElse(texts.get("words.none-in-hand")));
        value.setText(
                row.map(one -> texts.get("words.says", said(one.written()))).orElse(" "));
        why.setText(row.map(this::reasons).orElse(" "));
        why.setToolTipText(
                row.map(one -> String.join("; ", one.read().because())).orElse(null));
        lacks.setText(row.flatMap(DraftRow::lacks)
                .map(reason -> texts.get("words.lacks", reason))
                .orElse(""));
        lacks.setToolTipText(lacks.getText().isEmpty() ? null : lacks.getText());
        lacks.setVisible(!lacks.getText().isEmpty());
    }

    private String said(Draft draft) {
        String said = DraftTable.value(draft);
        return said.isEmpty() ? draft.what().said() : draft.what().said() + ": " + said;
    }

    private String reasons(DraftRow row) {
        String because =
                String.join("; ", row.read().because().stream().limit(REASONS).toList());
        return row.isChanged()
                ? texts.get("words.changed", DraftLine.of(row.read()))
                : texts.get(
                        "words.because",
                        String.format(Locale.ROOT, "%d", Math.round(row.read().p() * PERCENT)),
                        because);
    }
}
