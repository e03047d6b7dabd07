package quarterlight.visit.photo;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What only some media have.
 *
 * @param pages of a paper, if they can be counted
 * @param beside the file that it lay beside and is about: of a sidecar its photo, of words their film or sound
 * @param said by a sidecar of its photo
 */
public record MediaFacts(OptionalInt pages, Optional<Sha256> beside, Optional<SidecarWords> said) {
    /** Of a photo, film or sound. */
    public static final MediaFacts NONE = new MediaFacts(OptionalInt.empty(), Optional.empty(), Optional.empty());

    public MediaFacts {
        Objects.requireNonNull(beside, "beside");
        Objects.requireNonNull(said, "said");
        pages.ifPresent(count -> {
            if (count < 1) {
                throw new IllegalArgumentException("a paper has a page or more, not " + count);
            }
        });
    }

    /** Of a paper. */
    public static MediaFacts ofPages(int count) {
        return new MediaFacts(OptionalInt.of(count), Optional.empty(), Optional.empty());
    }

    /** Of a sidecar. */
    public static MediaFacts ofWords(SidecarWords words) {
        return new MediaFacts(OptionalInt.empty(), Optional.empty(), Optional.of(words));
    }

    public MediaFacts beside(Optional<Sha256> file) {
        return new MediaFacts(pages, file, said);
    }
}
