package quarterlight.ui.marks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JLabel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import quarterlight.marks.MarksReport;
import quarterlight.marks.code.DateCandidate;
import quarterlight.marks.judge.DateText;
import quarterlight.marks.judge.JudgedMark;
import quarterlight.marks.judge.NumberMatch;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.look.TallPanel;

/** What a mark means as it stands: verdict and reason, every date it can mean, numbers held against each other. Event thread only. */
final class ReadingPane extends TallPanel {
    private static final int SHOWN = 12;
    private static final int MATCHES = 3;

    private final transient Texts texts;
    private final JLabel verdict = Look.heading(" ");
    private final JTextArea why = words();
    private final JTextArea dates = words();
    private final JTextArea caution = words();
    private final transient List<LetterMatch> letters = new ArrayList<>();

    ReadingPane(Texts texts) {
        super(new MigLayout("insets 12 12 12 16, gapy 6, wrap 1, fillx, hidemode 3", "[grow,fill]"));
        this.texts = texts;
        verdict.setName("mark-verdict");
        why.setName("mark-why");
        dates.setName("mark-dates");
        Look.named(why, texts.get("marks.why"));
        Look.named(dates, texts.get("marks.dates"));
        Look.named(caution, texts.get("marks.caution"));
        add(verdict, "wmin 0");
        add(why, "wmin 0");
        for (int i = 0; i < MATCHES; i++) {
            LetterMatch match = new LetterMatch();
            letters.add(match);
            add(match, "wmin 0, growx");
        }
        add(dates, "wmin 0");
        Look.secondary(caution);
        add(caution, "wmin 0, gaptop 8");
        caution.setText(MarksReport.caution());
    }

    private static JTextArea words() {
        JTextArea area = new JTextArea();
        area.setEditable(false);
        area.setOpaque(false);
        area.setLineWrap(true);
        area.setWrapStyleWord(true);
        Look.bare(area);
        area.setFocusTraversalKeys(java.awt.KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
        area.setFocusTraversalKeys(java.awt.KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
        return area;
    }

    void show(MarksModel.State state) {
        Optional<JudgedMark> reading = state.reading();
        verdict.setVisible(reading.isPresent());
        verdict.setText(reading.map(read -> capital(read.verdict().said())).orElse(""));
        why.setText(reading.map(JudgedMark::why).orElseGet(() -> notYet(state)));
        dates.setText(reading.map(this::datesOf).orElse(""));
        List<NumberMatch> matches = reading.map(JudgedMark::matches).orElse(List.of());
        for (int i = 0; i < MATCHES; i++) {
            letters.get(i).setVisible(i < matches.size());
            if (i < matches.size()) {
                letters.get(i).show(reading.orElseThrow().text(), matches.get(i));
            }
        }
    }

    /** What to do while there is nothing to be judged. */
    private String notYet(MarksModel.State state) {
        String first = state.draft().problem().map(texts::get).orElse(texts.get("marks.reading"));
        return state.row().isEmpty() ? first + " " + texts.get("marks.unread.tip") : first;
    }

    private String datesOf(JudgedMark read) {
        List<String> lines = new ArrayList<>();
        if (!read.candidates().isEmpty()) {
            lines.add(texts.get("marks.dates.head", read.candidates().size()));
        }
        read.candidates().stream().limit(SHOWN).map(ReadingPane::line).forEach(lines::add);
        if (read.candidates().size() > SHOWN) {
            lines.add(texts.get("marks.dates.more", read.candidates().size() - SHOWN));
        }
        read.decoded().forEach(sentence -> lines.add(sentence + "."));
        if (read.witnesses() > 1) {
            lines.add(texts.get("marks.views", read.witnesses()));
        }
        return String.join("\n", lines);
    }

    private static String line(DateCandidate date) {
        return "\u2022 " + DateText.of(date) + "  (" + date.pattern() + ")";
    }

    static String capital(String word) {
        return word.substring(0, 1).toUpperCase(java.util.Locale.US) + word.substring(1);
    }
}
