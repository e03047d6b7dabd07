package quarterlight.ui.photos.film;

import java.awt.Graphics;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSlider;
import net.miginfocom.swing.MigLayout;
import quarterlight.photo.film.FilmFrame;
import quarterlight.ui.kit.Command;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.ui.photos.list.PhotoItem;
import quarterlight.visit.photo.PhotoId;

/** Steps through the film in hand, with the moments that are pinned or spoken of marked on its length. Event thread only. */
public final class FilmBar extends JPanel {
    private static final int STEPS = 1000;

    private final transient Texts texts;
    private final transient OpenVisit visit;
    private final transient FilmDesk desk;
    private final JSlider slider = new Marked();
    private final JLabel time = new JLabel(" ");
    private final transient List<JButton> ofFilms = new ArrayList<>();
    private transient List<Double> moments = List.of();
    private boolean filling;

    /** A slider with a tick for each moment that carries something. */
    private final class Marked extends JSlider {
        Marked() {
            super(0, STEPS, 0);
        }

        @Override
        protected void paintComponent(Graphics g) {
            super.paintComponent(g);
            g.setColor(Look.palette().accent());
            double length = desk.length().orElse(0);
            int room = getWidth() - 16;
            for (double moment : length > 0 ? moments : List.<Double>of()) {
                int x = 8 + (int) Math.round(room * Math.min(1, moment / length));
                g.fillRect(x - 1, 0, 2, 7);
            }
        }
    }

    /**
     * @param actions what can be done with the moment or page, as buttons at the end
     * @param onlyOfFilms what can be done with a moment of a film alone
     */
    public FilmBar(Texts texts, OpenVisit visit, FilmDesk desk, List<Command> actions, List<Command> onlyOfFilms) {
        super(new MigLayout("insets 2 8 2 8, gap 2, hidemode 3, fillx", "[][][][][][grow,fill][]", "[26!][26!]"));
        this.texts = texts;
        this.visit = visit;
        this.desk = desk;
        ofFilms.add(button("film.second-back", "\u2212" + "1\u2009s", () -> desk.skip(-1)));
        button("film.frame-back", "\u25c2", () -> desk.step(-1));
        button("film.frame-on", "\u25b8", () -> desk.step(1));
        ofFilms.add(button("film.second-on", "+1\u2009s", () -> desk.skip(1)));
        button("film.whole", texts.get("film.whole.short"), desk::whole);
        slider.setName("film-slider");
        slider.setOpaque(false);
        add(Look.named(slider, texts.get("film.slider")), "wmin 60, span 2, growx, wrap");
        time.setName("film-time");
        add(Look.secondary(time), "span 6, split 4, growx, wmin 0");
        actions.forEach(this::button);
        onlyOfFilms.forEach(action -> ofFilms.add(button(action)));
        slider.addChangeListener(e -> {
            if (!filling && desk.length().isPresent()) {
                desk.go(Math.max(first(), desk.length().getAsDouble() * slider.getValue() / STEPS));
            }
        });
        desk.onChanged(this::refresh);
        visit.onVisit(this::refresh);
        refresh();
    }

    private JButton button(Command action) {
        JButton button = new JButton(action);
        button.putClientProperty("JButton.buttonType", "toolBarButton");
        add(button, "growx 0");
        return button;
    }

    private JButton button(String key, String face, Runnable work) {
        JButton button = new JButton(face);
        button.setName(key);
        button.putClientProperty("JButton.buttonType", "toolBarButton");
        button.setToolTipText(texts.get(key));
        button.addActionListener(e -> work.run());
        add(Look.named(button, texts.get(key)), "wmin pref");
        return button;
    }

    private void refresh() {
        Optional<PhotoItem> film = desk.film();
        setVisible(film.isPresent());
        if (film.isEmpty()) {
            return;
        }
        ofFilms.forEach(button -> button.setVisible(film.get().isFilm()));
        moments = moments(film.get().id());
        filling = true;
        double length = desk.length().orElse(0);
        slider.setEnabled(length > 0);
        if (length > 0 && !slider.getValueIsAdjusting()) {
            slider.setValue((int)
                    Math.round(STEPS * desk.frame().map(FilmFrame::seconds).orElse(0.0) / length));
        }
        filling = false;
        time.setText(words(film.get()));
        time.setToolTipText(desk.problem().isPresent() ? time.getText() : texts.get("film.tip"));
        repaint();
    }

    /** Moments begin at 0, pages at 1. */
    private double first() {
        return desk.film().filter(PhotoItem::isPaper).isPresent() ? 1 : 0;
    }

    private List<Double> moments(PhotoId film) {
        return java.util.stream.Stream.concat(
                        visit.visit().pins().stream()
                                .filter(row -> row.value().photo().equals(film))
                                .filter(row -> row.value().at().isPresent())
                                .map(row -> row.value().at().getAsDouble()),
                        visit.visit().statements().stream()
                                .filter(row -> row.value().photo().equals(Optional.of(film)))
                                .flatMap(row -> row.value().atSeconds().stream()))
                .toList();
    }

    private String words(PhotoItem film) {
        if (desk.problem().isPresent()) {
            return texts.get("film.problem", desk.problem().get());
        }
        String length = desk.length().isPresent() ? clock(desk.length().getAsDouble()) : texts.get("film.no-length");
        if (film.isPaper()) {
            int pages = (int) desk.length().orElse(0);
            return desk.frame().isEmpty()
                    ? texts.get("paper.all", pages)
                    : texts.get("paper.page", (int) desk.frame().get().seconds(), pages);
        }
        if (desk.frame().isEmpty()) {
            return texts.get("film.all", length);
        }
        double seconds = desk.frame().get().seconds();
        Optional<LocalDateTime> taken = film.local().map(begins -> begins.plusNanos(Math.round(seconds * 1e9)));
        return taken.map(when -> texts.get("film.moment.taken", clock(seconds), length, wall(when)))
                .orElse(texts.get("film.moment", clock(seconds), length));
    }

    private static String wall(LocalDateTime when) {
        return String.format(
                Locale.ROOT,
                "%02d:%02d:%02d.%d",
                when.getHour(),
                when.getMinute(),
                when.getSecond(),
                when.getNano() / 100_000_000);
    }

    /** Such as 1:02.480. */
    static String clock(double seconds) {
        long ms = Math.round(seconds * 1000);
        return String.format(Locale.ROOT, "%d:%02d.%03d", ms / 60_000, ms / 1000 % 60, ms % 1000);
    }
}
