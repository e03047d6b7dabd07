package quarterlight.marks.code;

import java.util.List;

/**
 * What a text says if its unread letters are filled in one way. A text without unread letters has one completion, itself.
 *
 * @param text with every letter filled in
 * @param candidates all dates that this text can mean, 1 or more
 */
public record Completion(String text, List<DateCandidate> candidates) {
    public Completion {
        candidates = List.copyOf(candidates);
        if (candidates.isEmpty()) {
            throw new IllegalArgumentException(text + " means no date");
        }
    }
}
