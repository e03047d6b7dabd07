package quarterlight.ui.words;

import java.awt.Rectangle;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import javax.swing.text.BadLocationException;
import javax.swing.text.DefaultHighlighter;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.look.Palette;
import quarterlight.ui.kit.look.Prose;
import quarterlight.ui.kit.play.Player;
import quarterlight.ui.kit.play.StripWord;
import quarterlight.words.Cue;

/** All that was said, running along with the recording; a click on a word plays from it. Event thread only. */
final class RunningWords extends JScrollPane {
    private static final double PARAGRAPH_S = 1.5;
    private static final int BORDER = 8;

    /** A word and where it stands in the text. */
    private record Placed(StripWord word, int from, int until) {}

    private final transient Player player;
    private final JTextArea text = Prose.area();
    private transient List<Placed> words = List.of();
    private transient double spanFrom = -1;
    private transient double spanUntil = -1;
    private transient Optional<Placed> now = Optional.empty();

    RunningWords(Player player, String name) {
        this.player = player;
        setViewportView(text);
        Look.bare(this);
        setHorizontalScrollBarPolicy(HORIZONTAL_SCROLLBAR_NEVER);
        getVerticalScrollBar().setUnitIncrement(16);
        text.setOpaque(true);
        text.setBackground(Look.palette().sheet());
        text.setBorder(javax.swing.BorderFactory.createEmptyBorder(BORDER, BORDER, BORDER, BORDER));
        text.setFocusable(false);
        text.setName("words-running");
        Look.named(text, name);
        text.addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent e) {
                int at = text.viewToModel2D(e.getPoint());
                words.stream()
                        .filter(word -> word.from() <= at && at <= word.until())
                        .findFirst()
                        .ifPresent(word -> hear(word.word().from()));
            }
        });
        player.onChange(this::played);
    }

    /** The colors of another look take the place of the old ones. */
    @Override
    public void updateUI() {
        super.updateUI();
        if (text != null) {
            SwingUtilities.invokeLater(this::mark);
        }
    }

    private void hear(double seconds) {
        player.go(seconds);
        if (!player.isPlaying()) {
            player.play();
        }
    }

    /** Shows the words of one recording, or none. */
    List<StripWord> show(List<Cue> cues) {
        StringBuilder all = new StringBuilder();
        List<Placed> placed = new ArrayList<>();
        double last = 0;
        for (Cue cue : cues) {
            if (!all.isEmpty()) {
                all.append(cue.fromSeconds() - last > PARAGRAPH_S ? "\n" : " ");
            }
            last = cue.untilSeconds();
            boolean first = true;
            for (StripWord word : StripWord.of(cue.fromSeconds(), cue.untilSeconds(), cue.text())) {
                all.append(first ? "" : " ");
                first = false;
                placed.add(new Placed(
                        word, all.length(), all.length() + word.text().length()));
                all.append(word.text());
            }
        }
        words = List.copyOf(placed);
        now = Optional.empty();
        text.setText(all.toString());
        mark();
        return placed.stream().map(Placed::word).toList();
    }

    /** Marks what a draft follows from, and brings it into sight. */
    void span(double from, double until) {
        spanFrom = from;
        spanUntil = until;
        mark();
        words.stream()
                .filter(this::isOfSpan)
                .findFirst()
                .ifPresent(first -> SwingUtilities.invokeLater(() -> reveal(first)));
    }

    private boolean isOfSpan(Placed word) {
        return word.word().from() >= spanFrom - 0.01 && word.word().from() < spanUntil;
    }

    private void played() {
        double at = player.position();
        Optional<Placed> found = player.isPlaying()
                ? words.stream()
                        .filter(word ->
                                word.word().from() <= at && at < word.word().until())
                        .findFirst()
                : Optional.empty();
        if (!found.equals(now)) {
            now = found;
            mark();
            now.ifPresent(this::reveal);
        }
    }

    private void mark() {
        text.getHighlighter().removeAllHighlights();
        Palette palette = Look.palette();
        text.setBackground(palette.sheet());
        now.ifPresent(word -> mark(word.from(), word.until(), 0.45, palette));
        List<Placed> span = words.stream().filter(this::isOfSpan).toList();
        if (!span.isEmpty()) {
            mark(span.get(0).from(), span.get(span.size() - 1).until(), 0.18, palette);
        }
    }

    private void mark(int from, int until, double share, Palette palette) {
        try {
            text.getHighlighter()
                    .addHighlight(
                            from,
                            until,
                            new DefaultHighlighter.DefaultHighlightPainter(
                                    Palette.mix(palette.sheet(), palette.accent(), share)));
        } catch (BadLocationException e) {
            throw new IllegalStateException("a word stands at " + from, e);
        }
    }

    /** Once the pane has its width: before, the lines break elsewhere. */
    private void reveal(Placed word) {
        if (!words.contains(word)) {
            return;
        }
        try {
            Rectangle2D at = text.modelToView2D(word.from());
            if (at != null) {
                Rectangle room = at.getBounds();
                room.grow(0, getViewport().getHeight() / 3);
                text.scrollRectToVisible(room);
            }
        } catch (BadLocationException e) {
            throw new IllegalStateException("a word stands at " + word.from(), e);
        }
    }
}
