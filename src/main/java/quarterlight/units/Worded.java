package quarterlight.units;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import quarterlight.language.Sentences;

/**
 * A closed alternative (an enum) that has a word of its own in files, commands and the database.
 * The word is the constant's name in lower case with hyphens, unless the enum says otherwise.
 */
public interface Worded {
    String name();

    default String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The word as people read it in the language in hand; files, commands and the database have {@link #word}. */
    default String said() {
        String type = ((Enum<?>) this).getDeclaringClass().getSimpleName().toLowerCase(Locale.ROOT);
        return Sentences.sayOr("words." + type + "." + word().replace(' ', '-'), word());
    }

    /** The constant whose word is {@code word} (case and outer blanks ignored), or empty. */
    static <E extends Enum<E> & Worded> Optional<E> find(Class<E> type, String word) {
        String wanted = word.strip().toLowerCase(Locale.ROOT);
        for (E constant : type.getEnumConstants()) {
            if (constant.word().equals(wanted)) {
                return Optional.of(constant);
            }
        }
        return Optional.empty();
    }

    /** The words of a type in their order, for messages: {@code coupe, sedan, …}. */
    static <E extends Enum<E> & Worded> String words(Class<E> type) {
        return list(type).stream().collect(Collectors.joining(", "));
    }

    static <E extends Enum<E> & Worded> List<String> list(Class<E> type) {
        return Arrays.stream(type.getEnumConstants()).map(Worded::word).toList();
    }
}
