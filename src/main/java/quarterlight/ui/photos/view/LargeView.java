package quarterlight.ui.photos.view;

import java.awt.BorderLayout;
import java.awt.GridLayout;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import quarterlight.ui.kit.Command;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.view.PhotoCanvas;
import quarterlight.ui.photos.film.FilmBar;
import quarterlight.ui.photos.film.FilmDesk;
import quarterlight.ui.photos.list.PhotoItem;
import quarterlight.ui.photos.list.PhotosModel;
import quarterlight.ui.photos.sheet.HintWords;

/** The photo in hand from near, or two selected ones side by side, with what is known of it. Event thread only. */
public final class LargeView extends JPanel {
    private final transient Texts texts;
    private final transient PhotosModel model;
    private final PhotoCanvas first;
    private final PhotoCanvas second;
    private final transient NoteOverlay notes;
    private final transient FilmDesk film;
    private final JPanel frames = new JPanel(new GridLayout(1, 0, 4, 0));
    private final ReleaseBox release;
    private final JLabel name = new JLabel(" ");
    private final JLabel several = new JLabel(" ");
    private final JLabel time = new JLabel(" ");
    private final JLabel file = new JLabel(" ");

    /**
     * @param ask asks the user for one line
     * @param ofMoment what can be done with the moment of a film or the page of a paper
     * @param ofFilm what can be done with the moment of a film alone
     */
    public LargeView(
            Texts texts,
            PhotosModel model,
            Function<String, Optional<String>> ask,
            List<Command> ofMoment,
            List<Command> ofFilm) {
        super(new BorderLayout());
        this.texts = texts;
        this.model = model;
        this.first = new PhotoCanvas(texts, model.visit());
        this.second = new PhotoCanvas(texts, model.visit());
        first.setName("photos-large");
        this.notes = new NoteOverlay(texts, model.visit(), first, ask);
        notes.showOn(second);
        JPanel words = new JPanel(new MigLayout("insets 4 10 6 10, gapy 0, gapx 12, fillx", "[grow,fill][]"));
        name.putClientProperty("FlatLaf.styleClass", "h4");
        words.add(name, "wmin 0");
        this.release = new ReleaseBox(texts, model);
        words.add(release, "split 2, hidemode 3");
        words.add(Look.secondary(several), "wrap");
        words.add(Look.secondary(time), "span, wmin 0, wrap");
        words.add(Look.secondary(file), "span, wmin 0");
        JPanel head = new JPanel(new BorderLayout());
        head.add(words, BorderLayout.CENTER);
        head.add(new NoteBar(texts, notes), BorderLayout.SOUTH);
        add(head, BorderLayout.NORTH);
        frames.add(first);
        add(frames, BorderLayout.CENTER);
        this.film = new FilmDesk(model.visit().selection(), model.visit().images()::frame, first::frame);
        add(new FilmBar(texts, model.visit(), film, ofMoment, ofFilm), BorderLayout.SOUTH);
        model.onList(this::refresh);
        model.onHints(this::refresh);
        model.visit().selection().onSelected(this::refresh);
        refresh();
    }

    /** The frame of the photo in hand. */
    public PhotoCanvas canvas() {
        return first;
    }

    /** Whether what is in hand goes to the buyer. */
    public ReleaseBox release() {
        return release;
    }

    /** What draws on the photo in hand. */
    public NoteOverlay notes() {
        return notes;
    }

    /** The moment of the film in hand. */
    public FilmDesk film() {
        return film;
    }

    private void refresh() {
        List<PhotoItem> selected = model.selected();
        Optional<PhotoItem> hand = selected.stream().findFirst();
        first.show(hand.map(PhotoItem::photo));
        film.show(hand);
        boolean two = selected.size() == 2;
        second.show(two ? Optional.of(selected.get(1).photo()) : Optional.empty());
        if (two != (second.getParent() == frames)) {
            if (two) {
                frames.add(second);
            } else {
                frames.remove(second);
            }
            frames.revalidate();
            frames.repaint();
        }
        name.setText(hand.map(PhotoItem::name).orElse(" "));
        several.setText(selected.size() > 1 ? texts.get("photos.large.several", selected.size()) : place(hand));
        time.setText(
                hand.map(item -> FactsLine.time(texts, item, model.visit())).orElse(" "));
        String facts = hand.map(item -> Stream.concat(
                                Stream.concat(
                                        Stream.of(FactsLine.file(texts, item)),
                                        FactsLine.beside(
                                                texts, item, model.visit().visit())
                                                .stream()),
                                HintWords.hints(texts, model.hints(), item).stream())
                        .collect(Collectors.joining("  \u00b7  ")))
                .orElse(" ");
        file.setText(facts);
        file.setToolTipText(facts);
    }

    private String place(Optional<PhotoItem> hand) {
        return hand.flatMap(item -> model.shown().placeOf(item.id()).isPresent()
                        ? Optional.of(texts.get(
                                "photos.large.place",
                                model.shown().placeOf(item.id()).getAsInt() + 1,
                                model.shown().size()))
                        : Optional.empty())
                .orElse(" ");
    }
}
