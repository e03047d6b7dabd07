package quarterlight.ui.kit.said;

import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.util.Objects;
import javax.swing.JTextField;
import javax.swing.text.BadLocationException;
import javax.swing.text.Document;

/**
 * A slash and a letter within a sentence choose a word of the board and vanish from the sentence. A slash inside a word or a number
 * ({@code and/or}, {@code 1/4 in}) is text. Event thread only.
 */
public final class SlashLetter extends KeyAdapter {
    private final JTextField sentence;
    private final FacetBoard board;

    public SlashLetter(JTextField sentence, FacetBoard board) {
        this.sentence = Objects.requireNonNull(sentence, "sentence");
        this.board = Objects.requireNonNull(board, "board");
    }

    @Override
    public void keyTyped(KeyEvent e) {
        int caret = sentence.getCaretPosition();
        String before = sentence.getText()
                .substring(0, Math.min(caret, sentence.getText().length()));
        boolean slash = before.endsWith("/")
                && (before.length() == 1 || Character.isWhitespace(before.charAt(before.length() - 2)));
        if (slash && sentence.isEditable() && Character.isLetter(e.getKeyChar()) && board.letter(e.getKeyChar())) {
            e.consume();
            cut(before.length() - 1, 1);
        }
    }

    private void cut(int at, int length) {
        Document document = sentence.getDocument();
        try {
            document.remove(at, length);
        } catch (BadLocationException wrong) {
            throw new IllegalStateException("the slash stood at " + at, wrong);
        }
    }
}
