package quarterlight.marks.code;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * The date patterns at hand, in the order in which they are listed. Immutable.
 *
 * @param all each name once
 */
public record DatePatterns(List<DatePattern> all) {
    /** More unread letters than these say nothing: nearly every date is among what they can mean. */
    public static final int MAX_UNREAD = 3;

    public DatePatterns {
        all = List.copyOf(all);
        if (all.stream().map(DatePattern::name).distinct().count() != all.size()) {
            throw new IllegalArgumentException("two date patterns bear one name");
        }
    }

    public Optional<DatePattern> named(String name) {
        return all.stream().filter(pattern -> pattern.name().equals(name)).findFirst();
    }

    /** These and more; one of the same name takes the place of ours. */
    public DatePatterns with(List<DatePattern> more) {
        Map<String, DatePattern> joined = new LinkedHashMap<>();
        all.forEach(pattern -> joined.put(pattern.name(), pattern));
        more.forEach(pattern -> joined.put(pattern.name(), pattern));
        return new DatePatterns(new ArrayList<>(joined.values()));
    }

    /**
     * What a text can mean by the patterns that bear a year.
     *
     * @param text as read; case does not matter; {@link UnreadLetter#LETTER} for a letter that could not be read, at most
     *     {@link #MAX_UNREAD}
     * @return one completion for each way to fill in the unread letters that means a date; empty if no pattern suits
     */
    public List<Completion> read(String text) {
        return read(text, DatePattern::bearsYear);
    }

    /** What a text can mean by the patterns of month and day alone: that day in every year. */
    public List<Completion> readWithoutYear(String text) {
        return read(text, pattern -> !pattern.bearsYear());
    }

    private List<Completion> read(String text, Predicate<DatePattern> which) {
        if (UnreadLetter.count(text) > MAX_UNREAD) {
            throw new IllegalArgumentException("more than " + MAX_UNREAD + " letters of " + text + " are unread");
        }
        Map<String, Set<DateCandidate>> found = new LinkedHashMap<>();
        for (DatePattern pattern : all.stream().filter(which).toList()) {
            DateCode.read(pattern, text)
                    .forEach((filled, dates) -> found.computeIfAbsent(filled, key -> new LinkedHashSet<>())
                            .addAll(dates));
        }
        return found.entrySet().stream()
                .map(entry -> new Completion(entry.getKey(), List.copyOf(entry.getValue())))
                .toList();
    }

    /** The date that stands among other words of a text, if the text is none as a whole. */
    public Optional<DateAmidWords> readAmidWords(String text) {
        return DateAmidWords.find(text, this);
    }

    /** True if some pattern reads the text as a date. */
    public boolean suit(String text) {
        return UnreadLetter.count(text) <= MAX_UNREAD && !read(text).isEmpty();
    }
}
