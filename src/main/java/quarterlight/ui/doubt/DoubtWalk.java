package quarterlight.ui.doubt;

import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.visit.Doubt;

/**
 * The way from doubt to doubt in one sitting: which is in hand, which were left as they are, and what the foot of the window says of it.
 * When the one in hand is settled, the next is the one that followed it. Event thread only.
 */
public final class DoubtWalk {
    /**
     * What the foot says in place of what this walk said last.
     *
     * @param before what it says only until now
     */
    public record Correction(String before, String now) {}

    private final Texts texts;
    private final Set<Doubt> leftAsIs = new HashSet<>();
    private List<Doubt> listed = List.of();
    private Optional<Doubt> inHand = Optional.empty();
    private Optional<String> said = Optional.empty();

    public DoubtWalk(Texts texts) {
        this.texts = Objects.requireNonNull(texts, "texts");
    }

    /** The doubt that the walk stands at; empty before the first and when none is left. */
    public Optional<Doubt> inHand() {
        return inHand;
    }

    /** Goes to the next of what is open, from the last to the first. */
    public void next(List<Doubt> open) {
        List<Doubt> left = stillOpen(open);
        inHand = after(left);
        listed = left;
    }

    /** Leaves the one in hand as it is for this sitting, and goes to the next. */
    public void leave(List<Doubt> open) {
        inHand.ifPresent(leftAsIs::add);
        next(open);
    }

    /**
     * What is said now.
     *
     * @param workedOut whether the findings have come
     */
    public String say(boolean workedOut) {
        String sentence = Doubts.said(texts, listed, inHand, workedOut);
        said = Optional.of(sentence);
        return sentence;
    }

    /** What has to be said in place of what was, after the visit or its findings changed; empty if that still holds or nothing was said. */
    public Optional<Correction> follow(List<Doubt> open, boolean workedOut) {
        if (said.isEmpty()) {
            return Optional.empty();
        }
        String before = said.get();
        List<Doubt> left = stillOpen(open);
        Optional<Doubt> still = inHand.flatMap(
                doubt -> left.stream().filter(doubt::isAboutTheSameAs).findFirst());
        String now;
        if (still.isPresent() || inHand.isEmpty()) {
            inHand = still;
            listed = left;
            now = Doubts.said(texts, left, still, workedOut);
        } else {
            now = left.isEmpty()
                    ? Doubts.said(texts, left, Optional.empty(), workedOut)
                    : texts.get("doubt.settled", left.size(), inHand.get().sentence());
        }
        said = Optional.of(now);
        return now.equals(before) ? Optional.empty() : Optional.of(new Correction(before, now));
    }

    private List<Doubt> stillOpen(List<Doubt> open) {
        return open.stream()
                .filter(doubt -> leftAsIs.stream().noneMatch(doubt::isAboutTheSameAs))
                .toList();
    }

    /** The one after that in hand; if that is settled, the first still open of those that followed it when it was listed. */
    private Optional<Doubt> after(List<Doubt> open) {
        if (open.isEmpty() || inHand.isEmpty()) {
            return open.stream().findFirst();
        }
        int now = indexOf(open, inHand.get());
        if (now >= 0) {
            return Optional.of(open.get((now + 1) % open.size()));
        }
        return listed.stream()
                .skip(indexOf(listed, inHand.get()) + 1L)
                .flatMap(old -> open.stream().filter(old::isAboutTheSameAs))
                .findFirst()
                .or(() -> Optional.of(open.get(0)));
    }

    private static int indexOf(List<Doubt> doubts, Doubt wanted) {
        for (int i = 0; i < doubts.size(); i++) {
            if (doubts.get(i).isAboutTheSameAs(wanted)) {
                return i;
            }
        }
        return -1;
    }
}
