package quarterlight.ui.words;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import quarterlight.edit.spoken.SpokenQuote;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.look.Hairline;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.look.Prose;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.ui.kit.widget.FactTable;
import quarterlight.words.Utterance;

/** What the walk leaves open, as a list; the one chosen says who says what, and plays it. Event thread only. */
final class QuestionList extends JPanel {
    private static final int MOST_NAMED = 3;

    private final transient Texts texts;
    private final transient OpenVisit visit;
    private final transient Consumer<Utterance> hear;
    private final FactTable<Question> table;
    private final JTextArea said = Prose.area();
    private final JButton one;
    private final JButton other;

    /**
     * Lays out an empty list.
     *
     * @param chosen told when another question is chosen
     * @param hear plays some words
     */
    QuestionList(UiContext parts, OpenVisit visit, Consumer<Question> chosen, Consumer<Utterance> hear) {
        super(new MigLayout("insets 0, gap 0, fill, wrap 1", "[grow,fill]", "[grow,fill][]"));
        this.texts = parts.texts();
        this.visit = visit;
        this.hear = hear;
        table = new FactTable<>(
                texts.get("words.questions"),
                List.of(
                        new FactTable.Column<>(texts.get("words.column.time"), 48, QuestionList::time),
                        new FactTable.Column<>(texts.get("words.column.what"), 110, Question::what),
                        new FactTable.Column<>(texts.get("words.column.zone"), 200, this::place),
                        new FactTable.Column<>(texts.get("words.column.question"), 360, QuestionList::line)),
                Question::key);
        table.setName("words-questions");
        table.getColumnModel().getColumn(0).setMaxWidth(64);
        table.onChosen(() -> {
            render();
            table.chosen().ifPresent(chosen);
        });
        table.onKey("RIGHT", () -> play(0));
        table.onKey("shift RIGHT", () -> play(1));
        table.onKey("ENTER", () -> play(0));
        one = button("words.question.hear", "words-hear-first", 0);
        other = button("words.question.hear-other", "words-hear-second", 1);
        JScrollPane scroll = new JScrollPane(table);
        Look.bare(scroll);
        scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        add(scroll, "wmin 0, hmin 78");
        add(detail(), "wmin 0");
        render();
    }

    private JPanel detail() {
        JPanel detail = new JPanel(new MigLayout("insets 8 16 8 16, gap 8, fillx, wrap 1", "[grow,fill]", "[][]"));
        detail.setBorder(new Hairline(Hairline.Side.TOP));
        said.setName("words-question-said");
        said.setRows(3);
        said.setFocusable(false);
        detail.add(said, "wmin 0");
        JPanel buttons = new JPanel(new MigLayout("insets 0, gap 8", "[][]"));
        buttons.add(one);
        buttons.add(other);
        detail.add(buttons, "wmin 0");
        return detail;
    }

    private JButton button(String key, String name, int which) {
        JButton button = new JButton(texts.get(key));
        button.setName(name);
        button.setFocusable(false);
        button.addActionListener(e -> play(which));
        return button;
    }

    /** Plays the first or the second voice of the question chosen, if it can be heard. */
    void play(int which) {
        table.chosen()
                .filter(question -> question.heard().size() > which)
                .ifPresent(question -> hear.accept(question.heard().get(which)));
    }

    private static String time(Question question) {
        return question.first()
                .map(words -> SpokenQuote.clock(words.atSeconds()))
                .orElse("");
    }

    private String place(Question question) {
        if (question.zones().size() > MOST_NAMED && !question.about().isEmpty()) {
            return texts.get(
                    "words.question.zones", question.about(), question.zones().size());
        }
        String named = question.zones().stream().map(visit::label).collect(Collectors.joining("; "));
        return named.isEmpty() ? question.about() : named;
    }

    private static String line(Question question) {
        return question.voices().isEmpty()
                ? question.text()
                : question.text() + " " + String.join(" / ", question.voices());
    }

    FactTable<Question> table() {
        return table;
    }

    /** When it comes into view, the first question is taken in hand. */
    void again(boolean shown) {
        if (shown && table.chosen().isEmpty() && table.getRowCount() > 0) {
            table.setRowSelectionInterval(0, 0);
        }
        if (shown) {
            table.requestFocusInWindow();
        }
    }

    void show(List<Question> fresh) {
        table.show(fresh);
        render();
    }

    private void render() {
        Optional<Question> question = table.chosen();
        said.setText(question.map(this::whole)
                .orElse(texts.get(table.getRowCount() == 0 ? "words.question.none" : "words.question.choose")));
        one.setEnabled(question.filter(q -> !q.heard().isEmpty()).isPresent());
        other.setEnabled(question.filter(q -> q.heard().size() > 1).isPresent());
    }

    private String whole(Question question) {
        if (!question.voices().isEmpty()) {
            return question.text() + "\n" + String.join("\n", question.voices());
        }
        return question.text().isEmpty()
                ? texts.get(
                        "words.question.never.text",
                        question.zones().stream().map(visit::label).collect(Collectors.joining("; ")))
                : question.text();
    }
}
