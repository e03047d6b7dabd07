package quarterlight.ui.kit.widget;

import java.util.Optional;
import java.util.function.Predicate;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import quarterlight.ui.kit.Texts;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Facets;
import quarterlight.visit.statement.Origin;

/** What a part is and how it is, each chosen or left unsaid; nothing is chosen until the user chooses. Event thread only. */
public final class FacetChoice extends JPanel {
    private final transient WordChoice<Origin> origin;
    private final transient WordChoice<Condition> condition;

    /** @param wanted which conditions are offered */
    public FacetChoice(Texts texts, Predicate<Condition> wanted) {
        super(new MigLayout("insets 0, gap 8, fillx", "[grow,fill][grow,fill]"));
        origin = new WordChoice<>(
                Origin.class, texts.get("notes.origin"), Optional.of(texts.get("notes.origin.unsaid")));
        condition = new WordChoice<>(
                Condition.class,
                texts.get("notes.condition"),
                Optional.of(texts.get("notes.condition.unsaid")),
                wanted);
        origin.setName("origin");
        condition.setName("condition");
        setOpaque(false);
        add(origin, "wmin 60");
        add(condition, "wmin 60");
    }

    /** Empty while neither is chosen. */
    public Optional<Facets> chosen() {
        return origin.chosen().isEmpty() && condition.chosen().isEmpty()
                ? Optional.empty()
                : Optional.of(new Facets(origin.chosen(), condition.chosen()));
    }

    public void choose(Optional<Facets> facets) {
        origin.choose(facets.flatMap(Facets::origin));
        condition.choose(facets.flatMap(Facets::condition));
    }

    /** What takes the keyboard when something must be chosen. */
    public void ask() {
        condition.requestFocusInWindow();
    }
}
