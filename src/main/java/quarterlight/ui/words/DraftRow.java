package quarterlight.ui.words;

import java.util.Optional;
import quarterlight.edit.spoken.DraftLine;
import quarterlight.words.Draft;

/**
 * One draft in the list.
 *
 * @param read as it was worked out from the words
 * @param written as it would be kept: the same, or changed by the inspector
 * @param lacks what keeps it from being kept, in words
 */
record DraftRow(Draft read, Draft written, State state, Optional<String> lacks) {
    /** From here on drafts can be kept together after a look; of those in the narrations of docs/performance.md 87 of 100 were right. */
    static final double SURE = 0.7;

    /** What is more likely wrong than right stays out of the way until all drafts are asked for. */
    static final double MIN_SHOWN_P = 0.5;

    /** What became of it. */
    enum State {
        OPEN,
        KEPT,
        DROPPED,
        WITHDRAWN
    }

    String id() {
        return read.id();
    }

    boolean isOpen() {
        return state == State.OPEN;
    }

    boolean isChanged() {
        return !DraftLine.of(read).equals(DraftLine.of(written));
    }

    boolean isSure() {
        return isOpen() && lacks.isEmpty() && (read.p() >= SURE || isChanged());
    }
}
