package quarterlight.visit.photo;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What only some media have.
 *
 * @param pages of a paper, if they can be counted
 * @param beside the file that it lay beside and is about: of a sidecar its photo, of words their film or sound
 * @param said by a sidecar of its photo
 * @param focal35Mm focal length of the lens that would show the same field on film of 36 x 24 mm, by the diagonal
 */
public record MediaFacts(
        OptionalInt pages, Optional<Sha256> beside, Optional<SidecarWords> said, OptionalDouble focal35Mm) {
    /** No lens shows less. */
    public static final double MAX_FOCAL_MM = 10_000;

    /** Of a photo, film or sound of which no more is known. */
    public static final MediaFacts NONE =
            new MediaFacts(OptionalInt.empty(), Optional.empty(), Optional.empty(), OptionalDouble.empty());

    public MediaFacts {
        Objects.requireNonNull(beside, "beside");
        Objects.requireNonNull(said, "said");
        focal35Mm.ifPresent(mm -> {
            if (!(mm > 0 && mm <= MAX_FOCAL_MM)) {
                throw new IllegalArgumentException(
                        "a focal length is above 0 and up to " + MAX_FOCAL_MM + " mm, not " + mm);
            }
        });
        pages.ifPresent(count -> {
            if (count < 1) {
                throw new IllegalArgumentException("a paper has a page or more, not " + count);
            }
        });
    }

    /** Of a paper. */
    public static MediaFacts ofPages(int count) {
        return new MediaFacts(OptionalInt.of(count), Optional.empty(), Optional.empty(), OptionalDouble.empty());
    }

    /** Of a sidecar. */
    public static MediaFacts ofWords(SidecarWords words) {
        return new MediaFacts(OptionalInt.empty(), Optional.empty(), Optional.of(words), OptionalDouble.empty());
    }

    public MediaFacts beside(Optional<Sha256> file) {
        return new MediaFacts(pages, file, said, focal35Mm);
    }

    /** Of a photo whose lens is known. */
    public static MediaFacts ofLens(OptionalDouble focal35Mm) {
        return new MediaFacts(OptionalInt.empty(), Optional.empty(), Optional.empty(), focal35Mm);
    }
}
