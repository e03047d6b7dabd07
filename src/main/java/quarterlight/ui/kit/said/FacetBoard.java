package quarterlight.ui.kit.said;

import java.awt.event.ActionEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import javax.swing.KeyStroke;
import javax.swing.border.Border;
import net.miginfocom.swing.MigLayout;
import quarterlight.ui.kit.Listeners;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.look.Look;
import quarterlight.units.Worded;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Facets;
import quarterlight.visit.statement.Origin;
import quarterlight.words.rule.SaidFacets;

/**
 * Every origin and condition with its letter, by families. What the words suggest is framed and named below, and is chosen only by its
 * letter or a click. With the keyboard here a bare letter chooses; within a sentence it takes a slash. Event thread only.
 */
public final class FacetBoard extends JPanel {
    private static final Map<String, List<Worded>> FAMILIES = new LinkedHashMap<>();

    static {
        FAMILIES.put(
                "origin",
                List.of(
                        Origin.ORIGINAL,
                        Origin.REPLACED,
                        Origin.DOES_NOT_BELONG,
                        Condition.PRESENT,
                        Condition.MISSING));
        FAMILIES.put(
                "rust",
                List.of(
                        Condition.NO_RUST,
                        Condition.SURFACE_RUST,
                        Condition.SCALE,
                        Condition.PITTED,
                        Condition.RUSTED_THROUGH));
        FAMILIES.put(
                "state",
                List.of(
                        Condition.SOUND,
                        Condition.WORN,
                        Condition.DAMAGED,
                        Condition.LEAKING,
                        Condition.BLOCKED,
                        Condition.NOISE,
                        Condition.SMELL));
        FAMILIES.put(
                "work",
                List.of(
                        Condition.REPAIRED,
                        Condition.REFINISHED,
                        Condition.FILLER,
                        Condition.REPLATED,
                        Condition.ADDED_COATING));
    }

    private final transient Texts texts;
    private final transient Map<Worded, JToggleButton> chips = new LinkedHashMap<>();
    private final transient Map<Character, Worded> letters = new LinkedHashMap<>();
    private final transient Listeners chosenByLetter = new Listeners();
    private final transient Border plain = BorderFactory.createEmptyBorder(3, 7, 3, 7);
    private final JLabel suggests = new JLabel(" ");
    private Optional<Origin> origin = Optional.empty();
    private Optional<Condition> condition = Optional.empty();
    private transient SaidFacets suggested = SaidFacets.NONE;

    public FacetBoard(Texts texts) {
        super(new MigLayout("insets 4, gap 4 2, fillx, wrap 2", "[][grow,fill]"));
        this.texts = texts;
        setName("facets");
        Look.named(this, texts.get("notes.needs.what"));
        setOpaque(false);
        FAMILIES.forEach((family, words) -> {
            add(Look.secondary(new JLabel(texts.get("notes.family." + family))));
            JPanel row = new JPanel(new MigLayout("insets 0, gap 2"));
            row.setOpaque(false);
            words.forEach(word -> row.add(chip(word), "hmin 24"));
            add(row, "wmin 0");
        });
        suggests.setName("facets-suggested");
        add(Look.secondary(suggests), "span, wmin 0");
        keys();
        render();
    }

    private JToggleButton chip(Worded word) {
        char letter = texts.get("notes.letter." + word.word().replace(' ', '_')).charAt(0);
        letters.put(letter, word);
        JToggleButton chip = new JToggleButton("<html><b>" + letter + "</b>&nbsp; " + word.said() + "</html>");
        chip.setName("facet-" + word.word().replace(' ', '-'));
        chip.setFocusable(false);
        chip.putClientProperty("JButton.buttonType", "toolBarButton");
        chip.putClientProperty("FlatLaf.style", "toolbar.selectedBackground: $quarterlight.ink");
        Look.named(chip, texts.get("notes.letter.name", word.said(), String.valueOf(letter)));
        chip.addActionListener(e -> turn(word));
        chips.put(word, chip);
        return chip;
    }

    private void keys() {
        setFocusable(true);
        addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent e) {
                render();
            }

            @Override
            public void focusLost(FocusEvent e) {
                render();
            }
        });
        addKeyListener(new KeyAdapter() {
            @Override
            public void keyTyped(KeyEvent e) {
                if (isEnabled() && letter(e.getKeyChar())) {
                    e.consume();
                    chosenByLetter.tell();
                }
            }
        });
        for (String stroke : List.of("ENTER", "ESCAPE")) {
            getInputMap().put(KeyStroke.getKeyStroke(stroke), "back");
        }
        getActionMap().put("back", new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent e) {
                chosenByLetter.tell();
            }
        });
    }

    /** Told when a letter was pressed here, so that the keyboard can go back to the sentence. */
    public void onDone(Runnable listener) {
        chosenByLetter.add(listener);
    }

    /** Chooses, or lets go of, the word of a letter; false if no word has it. */
    public boolean letter(char typed) {
        Worded word = letters.get(Character.toUpperCase(typed));
        if (word == null) {
            return false;
        }
        turn(word);
        return true;
    }

    private void turn(Worded word) {
        if (word instanceof Origin one) {
            origin = origin.equals(Optional.of(one)) ? Optional.empty() : Optional.of(one);
        } else if (word instanceof Condition one) {
            condition = condition.equals(Optional.of(one)) ? Optional.empty() : Optional.of(one);
        }
        render();
    }

    /** Empty while nothing is chosen, whatever is suggested. */
    public Optional<Facets> chosen() {
        return origin.isEmpty() && condition.isEmpty() ? Optional.empty() : Optional.of(new Facets(origin, condition));
    }

    public void choose(Optional<Facets> facets) {
        origin = facets.flatMap(Facets::origin);
        condition = facets.flatMap(Facets::condition);
        render();
    }

    /** Shows what the words of the sentence suggest; chooses nothing. */
    public void suggest(SaidFacets said) {
        if (!suggested.equals(said)) {
            suggested = said;
            render();
        }
    }

    private List<Worded> suggestions() {
        List<Worded> all = new ArrayList<>();
        chips.keySet().stream()
                .filter(word -> suggested.origins().contains(word)
                        || suggested.conditions().contains(word))
                .forEach(all::add);
        return all;
    }

    private boolean isChosen(Worded word) {
        return origin.filter(word::equals).isPresent()
                || condition.filter(word::equals).isPresent();
    }

    private void render() {
        List<Worded> ready = suggestions();
        chips.forEach((word, chip) -> {
            chip.setSelected(isChosen(word));
            chip.setForeground(
                    isChosen(word) ? Look.palette().paper() : Look.palette().ink());
            boolean framed = ready.contains(word) && !isChosen(word);
            chip.setBorder(
                    framed
                            ? BorderFactory.createCompoundBorder(
                                    BorderFactory.createLineBorder(
                                            Look.palette().accent(), 1, true),
                                    BorderFactory.createEmptyBorder(2, 6, 2, 6))
                            : plain);
        });
        setBorder(BorderFactory.createLineBorder(
                isFocusOwner() ? Look.palette().accent() : Look.palette().line(), 1));
        suggests.setText(line(ready));
        suggests.setForeground(
                isFocusOwner() && chosen().isEmpty()
                        ? Look.palette().caution()
                        : Look.palette().secondInk());
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (chips != null) {
            render();
        }
    }

    private String line(List<Worded> ready) {
        Optional<Facets> chosen = chosen();
        if (chosen.isPresent()) {
            return texts.get("notes.facets.chosen", chosen.get().words());
        }
        if (ready.isEmpty()) {
            return texts.get(isFocusOwner() ? "notes.facets.here" : "notes.facets.none");
        }
        String named = ready.stream()
                .map(word -> texts.get("notes.facets.one", word.said(), letterOf(word)))
                .collect(Collectors.joining(", "));
        return texts.get("notes.facets.suggested", named);
    }

    private String letterOf(Worded word) {
        return letters.entrySet().stream()
                .filter(entry -> entry.getValue().equals(word))
                .map(entry -> String.valueOf(entry.getKey()).toUpperCase(Locale.ROOT))
                .findFirst()
                .orElse("");
    }

    /** The words and their letters, as they stand. */
    Map<Character, Worded> letters() {
        return Map.copyOf(letters);
    }
}
