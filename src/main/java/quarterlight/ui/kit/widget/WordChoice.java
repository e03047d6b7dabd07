package quarterlight.ui.kit.widget;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import javax.swing.JComboBox;
import quarterlight.ui.kit.look.Look;
import quarterlight.units.Worded;

/** A choice among the words of a closed list, with or without "not said". Event thread only. */
public final class WordChoice<E extends Enum<E> & Worded> extends JComboBox<String> {
    private transient List<E> constants = List.of();
    private final transient Optional<String> lacking;
    private final boolean mayLack;

    /** @param lacking what stands for no choice; empty if one of the words must be chosen */
    public WordChoice(Class<E> type, String name, Optional<String> lacking) {
        this(type, name, lacking, one -> true);
    }

    /** @param wanted which of the words are offered */
    public WordChoice(Class<E> type, String name, Optional<String> lacking, Predicate<E> wanted) {
        this.lacking = lacking;
        mayLack = lacking.isPresent();
        fill(List.of(type.getEnumConstants()).stream().filter(wanted).toList());
        setMaximumRowCount(16);
        Look.named(this, name);
    }

    /** Offers other words; the one chosen stays chosen if it is among them, else the first is. */
    public void offer(List<E> words) {
        if (!words.equals(constants)) {
            Optional<E> before = chosen().filter(words::contains);
            fill(words);
            choose(before);
        }
    }

    private void fill(List<E> words) {
        constants = List.copyOf(words);
        removeAllItems();
        lacking.ifPresent(this::addItem);
        constants.forEach(one -> addItem(one.said()));
    }

    public Optional<E> chosen() {
        int at = getSelectedIndex() - (mayLack ? 1 : 0);
        return at < 0 || at >= constants.size() ? Optional.empty() : Optional.of(constants.get(at));
    }

    public void choose(Optional<E> one) {
        setSelectedIndex(one.map(constants::indexOf).orElse(mayLack ? -1 : 0) + (mayLack ? 1 : 0));
    }
}
