package quarterlight.ui.words;

import java.awt.CardLayout;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import javax.swing.SwingUtilities;
import quarterlight.edit.spoken.VisitWalk;
import quarterlight.edit.spoken.WalkContradictions;
import quarterlight.task.LatestWork;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.ui.kit.widget.FactTable;
import quarterlight.visit.VisitRecord;
import quarterlight.words.Utterance;

/**
 * What the walk leaves open, in the place of the drafts when it is asked for; worked out in the background after each change of the visit. Event thread only,
 * save where said.
 */
final class Questions {
    private record Asked(VisitRecord visit, VisitWalk walk) {}

    private final Texts texts;
    private final QuestionList list;
    private final JToggleButton toggle;
    private final CardLayout cards = new CardLayout();
    private final JPanel panel = new JPanel(cards);
    private final Runnable turned;
    private final LatestWork<Asked, List<Question>> work;

    /**
     * Lays it out, not shown.
     *
     * @param chosen told when another question is chosen
     * @param hear plays some words
     * @param turned told when the list is shown or put away
     */
    Questions(UiContext parts, OpenVisit visit, Consumer<Question> chosen, Consumer<Utterance> hear, Runnable turned) {
        this.texts = parts.texts();
        this.turned = turned;
        list = new QuestionList(parts, visit, chosen, hear);
        toggle = Look.toggle(new JToggleButton(texts.get("words.questions.count", 0)));
        toggle.setName("words-asking");
        toggle.setToolTipText(texts.get("words.questions.tip"));
        toggle.setFocusable(false);
        toggle.addActionListener(e -> show());
        work = new LatestWork<>(
                "quarterlight-questions",
                SwingUtilities::invokeLater,
                (asked, course) -> answer(asked),
                this::arrived,
                parts.problems()::failed);
    }

    /** On the thread of the work alone. */
    private List<Question> answer(Asked asked) {
        return Question.of(
                WalkContradictions.of(asked.visit(), asked.walk()), asked.walk().unsaid(), texts);
    }

    private void arrived(List<Question> open) {
        list.show(open);
        toggle.setText(texts.get("words.questions.count", open.size()));
    }

    JToggleButton toggle() {
        return toggle;
    }

    /** The place that both share. */
    JComponent over(JComponent drafts) {
        panel.add(drafts, "drafts");
        panel.add(list, "questions");
        return panel;
    }

    boolean isShown() {
        return toggle.isSelected();
    }

    void turn() {
        toggle.setSelected(!toggle.isSelected());
        show();
    }

    private void show() {
        cards.show(panel, isShown() ? "questions" : "drafts");
        turned.run();
        list.again(isShown());
    }

    FactTable<Question> table() {
        return list.table();
    }

    void play(int which) {
        list.play(which);
    }

    void follow(VisitRecord visit, VisitWalk walk) {
        work.request(new Asked(visit, walk));
    }

    void stop() {
        work.stop();
    }
}
