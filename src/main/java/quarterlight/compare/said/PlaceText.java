package quarterlight.compare.said;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import quarterlight.compare.ComparedZone;

/**
 * The same place of two cars, in words.
 *
 * @param why why unlike zones stand together; empty if they are the same
 * @param differences what lies apart beyond what the evidence leaves open, or is known of one car alone
 */
public record PlaceText(
        ComparedZone zone, String label, Optional<String> why, FactsText a, FactsText b, List<String> differences) {
    public PlaceText {
        Objects.requireNonNull(zone, "zone");
        Objects.requireNonNull(label, "label");
        Objects.requireNonNull(why, "why");
        Objects.requireNonNull(a, "a");
        Objects.requireNonNull(b, "b");
        differences = List.copyOf(differences);
    }

    /** Whether anything is known of it on either car. */
    public boolean isKnown() {
        return a.known() || b.known();
    }

    /** Whether more than photos is known of it on either car. */
    public boolean isEvident() {
        return a.evident() || b.evident();
    }

    /** Whether it is an outer panel that was measured on one of the cars. */
    public boolean isMeasured() {
        return a.level().isPresent() || b.level().isPresent();
    }

    /** Whether a photo of either car is pinned there. */
    public boolean hasPhotos() {
        return !a.photos().isEmpty() || !b.photos().isEmpty();
    }

    /** Whether so much is known of it that it may not fit on what a page has left. */
    public boolean isLong() {
        return a.isLong() || b.isLong();
    }
}
