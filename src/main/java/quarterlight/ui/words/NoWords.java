package quarterlight.ui.words;

import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import quarterlight.edit.spoken.VisitWalk;
import quarterlight.ui.kit.Command;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.look.Prose;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.visit.photo.MediaKind;

/** What stands in the Words station of a visit without words: what to do, and the buttons that do it. Event thread only. */
final class NoWords extends JPanel {
    private final transient Texts texts;
    private final JButton take;
    private final JTextArea said = Prose.area();

    /**
     * @param takeIn takes words and recordings into the visit
     * @param recognize makes words from recordings; there while it serves
     */
    NoWords(Texts texts, Command takeIn, JButton recognize) {
        super(new MigLayout("wrap 1, insets 24, gapy 8, ay center, hidemode 3", "[grow, fill]"));
        this.texts = texts;
        this.take = new JButton(takeIn);
        said.setName("words-absent");
        said.setFocusable(false);
        take.setName("words-take");
        add(said, "wmin 0, wmax 520lp, gapbottom 8");
        add(take, "growx 0");
        add(recognize, "growx 0");
    }

    /** The button that takes words in; nothing while words are being read and in a visit that is only read. */
    Optional<JButton> button() {
        return Optional.of(take).filter(JButton::isVisible);
    }

    void render(OpenVisit visit, Optional<VisitWalk> walk) {
        boolean has =
                visit.visit().photos().stream().anyMatch(photo -> photo.file().kind() == MediaKind.WORDS);
        take.setVisible(visit.isEditable() && !(has && walk.isEmpty()));
        if (has && walk.isEmpty()) {
            said.setText(texts.get("words.reading"));
        } else {
            List<String> remarks = walk.map(VisitWalk::remarks).orElse(List.of());
            said.setText(
                    remarks.isEmpty()
                            ? texts.get("words.empty")
                            : texts.get("words.empty") + "\n\n" + String.join("\n", remarks));
        }
    }
}
