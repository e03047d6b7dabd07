package quarterlight.ui.words;

import java.awt.CardLayout;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import quarterlight.car.ZoneId;
import quarterlight.edit.spoken.VisitWalk;
import quarterlight.ui.kit.Command;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.look.Hairline;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.place.ChangedRows;
import quarterlight.ui.kit.play.FilmFace;
import quarterlight.ui.kit.play.Player;
import quarterlight.ui.kit.play.PlayerBar;
import quarterlight.ui.kit.play.PlayerStrip;
import quarterlight.ui.kit.play.RecordingSource;
import quarterlight.ui.kit.play.SoundDevice;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.ui.kit.visit.Station;
import quarterlight.ui.kit.visit.StationScreen;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.pin.ViewPoint;
import quarterlight.words.Utterance;

/**
 * The Words station: the film and its sound above, what was said running along, the drafts of evidence worked out of it below, each kept, changed or dropped by a
 * key. Event thread only.
 */
public final class WordsScreen implements StationScreen {
    private static final double LEAD_S = 0.3;
    private static final double TAIL_S = 0.4;

    private final OpenVisit visit;
    private final Texts texts;
    private final WordsModel model;
    private final WalkReading reading;
    private final Player player;
    private final DraftTable table;
    private final DraftPane pane;
    private final WordsFromSound fromSound;
    private final WordsActions actions;
    private final RunningWords running;
    private final PlayerStrip strip;
    private final FilmFace face;
    private final CardLayout cards = new CardLayout();
    private final JPanel side = new JPanel(cards);
    private final JPanel film =
            new JPanel(new MigLayout("insets 0, gap 0, fill, hidemode 3", "[grow,fill]", "[grow,fill]"));
    private final NoWords none;
    private final JLabel count = new JLabel(" ");
    private final JLabel recording = new JLabel(" ");
    private final JCheckBox hearEach;
    private final Questions questions;
    private Optional<String> source = Optional.empty();
    private Optional<String> heard = Optional.empty();
    private boolean front;

    /** @param takeIn takes words and recordings into the visit */
    public WordsScreen(UiContext parts, OpenVisit visit, Command takeIn) {
        this(parts, visit, takeIn, SoundDevice.ofPlatform(), Optional.empty());
    }

    /** @param ask asks for the model of a recognizer, in place of a file dialog */
    WordsScreen(
            UiContext parts,
            OpenVisit visit,
            Command takeIn,
            SoundDevice device,
            Optional<UnaryOperator<Optional<Path>>> ask) {
        this.visit = visit;
        this.texts = parts.texts();
        this.model = new WordsModel(parts.catalog());
        this.player = new Player(device);
        this.table = new DraftTable(parts, visit, model, () -> front);
        this.pane = new DraftPane(parts, visit, model, table.table());
        this.fromSound = new WordsFromSound(parts, visit, ask.orElseGet(() -> WordsFromSound.asking(texts, side)));
        this.actions =
                new WordsActions(parts, visit, model, table, player, this::hear, this::turnList, fromSound.command());
        this.running = new RunningWords(player, texts.get("words.running"));
        this.strip = new PlayerStrip(player, texts.get("words.strip"));
        this.face = new FilmFace(player, texts.get("words.film"));
        this.hearEach = new JCheckBox(texts.get("words.hear-each"), true);
        this.questions = new Questions(parts, visit, this::ask, this::hear, this::render);
        this.reading = new WalkReading(parts, visit.folder(), (walk, of) -> arrived(walk), parts.problems()::failed);
        this.none = new NoWords(texts, takeIn, fromSound.button("words-recognize"));
        side.add(laidOut(), "walk");
        side.add(none, "empty");
        table.keys(
                actions::keep, actions::drop, pane::change, this::hear, player::toggle, typed -> typed((char) typed));
        model.onChange(this::render);
        visit.onVisit(this::follow);
        visit.afterValues(this::follow);
        render();
    }

    /** 1 is the other side, 2 the other end, a letter begins the name of a zone. */
    private void typed(char key) {
        if (Character.isLetter(key)) {
            pane.typeZone(key);
            return;
        }
        model.inHand()
                .filter(DraftRow::isOpen)
                .filter(row -> key == '1' || key == '2')
                .ifPresent(row -> model.write(
                        key == '1'
                                ? DraftChoices.otherSide(row.written(), visit.zones())
                                : DraftChoices.otherEnd(row.written(), visit.zones())));
    }

    private JComponent laidOut() {
        JPanel all = new JPanel(new MigLayout(
                "insets 0, gap 0, fill, wrap 1, hidemode 3", "[grow,fill]", "[26%:26%:40%,fill][][][][grow,fill][]"));
        film.add(face, "dock west, width 44%!, hmin 0");
        film.add(running, "wmin 0, hmin 0");
        all.add(film, "wmin 0, hmin 0");
        all.add(strip, "wmin 0");
        all.add(new PlayerBar(texts, player), "wmin 0");
        recording.setName("words-recording");
        all.add(fromSound.beside(Look.secondary(recording)), "wmin 0");
        all.add(lower(), "wmin 0, hmin 0, grow");
        return all;
    }

    private JComponent lower() {
        JPanel lower = new JPanel(new MigLayout("insets 0, gap 0, fill, wrap 1", "[grow,fill]", "[][grow,fill]"));
        JPanel tools = new JPanel(new MigLayout("insets 8 16 8 16, gap 8, fillx", "[][][][][]push"));
        tools.setBorder(new Hairline(Hairline.Side.TOP));
        tools.add(button(actions.keepIt(), "words-keep"));
        tools.add(button(actions.dropIt(), "words-drop"));
        tools.add(button(actions.sureOnes(), "words-sure"));
        hearEach.setName("words-hear-each");
        hearEach.setFocusable(false);
        tools.add(hearEach);
        tools.add(questions.toggle(), "wrap");
        count.setName("words-count");
        tools.add(Look.secondary(count), "span, growx, wmin 0");
        lower.add(tools, "wmin 0");
        JPanel drafts = new JPanel(new MigLayout("insets 0, gap 0, fill, wrap 1", "[grow,fill]", "[grow,fill][]"));
        drafts.add(table.component(), "wmin 0, hmin 78");
        drafts.add(pane, "wmin 0");
        lower.add(questions.over(drafts), "wmin 0, hmin 0, grow");
        return lower;
    }

    /** Turns from the drafts to what the walk leaves open, and back. */
    private void turnList() {
        questions.turn();
        first().requestFocusInWindow();
    }

    /** Shows where a question is, and lets it be heard. */
    private void ask(Question question) {
        if (front && questions.isShown()) {
            visit.selection().zones(new LinkedHashSet<>(question.zones()));
            question.first().filter(words -> hearEach.isSelected()).ifPresent(this::hear);
        }
    }

    static JButton button(Command command, String name) {
        JButton button = new JButton(command);
        button.setName(name);
        button.setFocusable(false);
        return button;
    }

    /** The words are read; the list takes the keyboard, which it could not while it was not there. */
    private void arrived(WalkReading.Walk walk) {
        boolean first = model.walk().isEmpty();
        model.read(walk, visit.visit());
        questions.follow(visit.visit(), walk.walk());
        if (first && front) {
            table.table().requestFocusInWindow();
        }
    }

    private void follow() {
        fromSound.follow(visit.visit());
        if (!reading.request(visit.visit())) {
            model.follow(visit.visit());
            model.walk().ifPresent(walk -> questions.follow(visit.visit(), walk.walk()));
        }
    }

    private boolean has() {
        return model.walk().filter(walk -> !walk.walk().parts().isEmpty()).isPresent();
    }

    private void render() {
        none.render(visit, model.walk().map(WalkReading.Walk::walk));
        cards.show(side, has() ? "walk" : "empty");
        table.render();
        int several = table.allChosen().size();
        pane.render(visit.isEditable(), several);
        count.setText(texts.get(
                "words.count",
                model.count(DraftRow.State.OPEN) - model.unlikely(),
                model.count(DraftRow.State.KEPT),
                model.count(DraftRow.State.DROPPED),
                model.unlikely()));
        count.setToolTipText(count.getText());
        actions.enable(!questions.isShown());
        turn(several);
    }

    /** Shows where and when the draft in hand is, and lets it be heard. */
    private void turn(int several) {
        if (questions.isShown()) {
            ticks();
            return;
        }
        Optional<DraftRow> row = model.inHand();
        Optional<String> from = row.map(one -> one.read().source()).or(() -> model.walk()
                .flatMap(walk -> walk.words().keySet().stream().findFirst()));
        if (!from.equals(source)) {
            source = from;
            load();
        }
        ticks();
        if (row.isEmpty()) {
            return;
        }
        Set<ZoneId> zones = new LinkedHashSet<>(row.get().written().zones());
        if (front && several <= 1) {
            visit.selection().zones(zones);
        }
        if (!heard.equals(row.map(DraftRow::id))) {
            heard = row.map(DraftRow::id);
            double at = row.get().read().atSeconds();
            double until = row.get().read().untilSeconds();
            strip.span(at, until);
            running.span(at, until);
            if (front && hearEach.isSelected() && several <= 1) {
                hear();
            } else {
                player.pause();
                player.go(at);
            }
        }
    }

    /** Plays the words from which the draft in hand follows. */
    private void hear() {
        if (questions.isShown()) {
            questions.play(0);
            return;
        }
        model.inHand().ifPresent(row -> {
            if (player.isLoaded()) {
                player.play(
                        Math.max(0, row.read().atSeconds() - LEAD_S), row.read().untilSeconds() + TAIL_S);
            }
        });
    }

    /** Plays some words, of whatever recording of the walk. */
    private void hear(Utterance words) {
        if (!source.equals(Optional.of(words.source()))) {
            source = Optional.of(words.source());
            load();
        }
        heard = Optional.empty();
        strip.span(words.atSeconds(), words.untilSeconds());
        running.span(words.atSeconds(), words.untilSeconds());
        if (player.isLoaded()) {
            player.play(Math.max(0, words.atSeconds() - LEAD_S), words.untilSeconds() + TAIL_S);
        }
    }

    /** Takes the recording of the words in hand, if the visit has it. */
    private void load() {
        Optional<VisitWalk.Part> part = source.flatMap(
                name -> model.walk().map(walk -> walk.walk().parts().get(name)));
        Optional<Photo> about = part.flatMap(VisitWalk.Part::about);
        player.load(
                about.map(photo -> RecordingSource.of(visit.images().originals(), photo.file())),
                about.map(photo -> photo.file().seconds()).orElse(java.util.OptionalDouble.empty()));
        strip.words(running.show(
                source.flatMap(name -> model.walk().map(walk -> walk.words().get(name)))
                        .map(words -> words.cues())
                        .orElse(List.of())));
        face.setVisible(player.hasPictures());
        film.revalidate();
        strip.setVisible(player.isLoaded());
        recording.setVisible(part.isPresent() && about.isEmpty());
        recording.setText(part.map(one ->
                        texts.get("words.no-recording", one.words().file().name()))
                .orElse(" "));
        player.go(0);
    }

    private void ticks() {
        List<PlayerStrip.Tick> ticks = new ArrayList<>();
        for (DraftRow row : model.shown()) {
            if (Optional.of(row.read().source()).equals(source)) {
                ticks.add(new PlayerStrip.Tick(row.read().atSeconds(), row.isOpen()));
            }
        }
        strip.ticks(ticks);
    }

    WordsModel model() {
        return model;
    }

    @Override
    public Station station() {
        return Station.WORDS;
    }

    @Override
    public JComponent side() {
        return side;
    }

    @Override
    public JComponent first() {
        JComponent list = questions.isShown() ? questions.table() : table.table();
        return has() ? list : none.button().<JComponent>map(button -> button).orElse(list);
    }

    @Override
    public List<Command> commands() {
        return actions.commands();
    }

    @Override
    public void zoneChosen(ZoneId zone, ViewPoint point) {
        model.inHand()
                .filter(DraftRow::isOpen)
                .filter(row -> visit.isEditable() && !questions.isShown())
                .ifPresent(row -> {
                    model.write(DraftChoices.at(
                            row.written(), List.copyOf(visit.selection().zones())));
                    table.table().requestFocusInWindow();
                });
    }

    @Override
    public void reveal(ChangedRows changed) {
        table.table().requestFocusInWindow();
    }

    @Override
    public void shown() {
        front = true;
        follow();
        render();
    }

    @Override
    public void hidden() {
        front = false;
        player.pause();
    }

    @Override
    public void closed() {
        player.close();
        reading.stop();
        questions.stop();
    }

    @Override
    public Optional<String> hint() {
        String keys = questions.isShown() ? "words.questions.hint" : "words.hint";
        return has() ? Optional.of(texts.get(keys)) : Optional.empty();
    }
}
