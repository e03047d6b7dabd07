package quarterlight.page.compare;

import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import quarterlight.diagram.BodyDiagram;
import quarterlight.findings.Findings;
import quarterlight.visit.photo.PhotoId;

/**
 * One car as the pages of a comparison show it.
 *
 * @param picture photos as the buyer may see them
 * @param references where photos stand in the car's own report, by photo
 */
public record CarPage(Findings findings, BodyDiagram diagram, Picture picture, Map<PhotoId, Reference> references) {
    /**
     * Where a photo stands.
     *
     * @param words such as {@code photo 12, page 31}
     * @param address of the place on the screen, from where the comparison lies; empty if there is none
     */
    public record Reference(String words, Optional<String> address) {
        public Reference {
            Objects.requireNonNull(words, "words");
            Objects.requireNonNull(address, "address");
        }
    }

    public CarPage {
        Objects.requireNonNull(findings, "findings");
        Objects.requireNonNull(diagram, "diagram");
        Objects.requireNonNull(picture, "picture");
        references = Map.copyOf(references);
    }

    /** Makes a photo for print. */
    @FunctionalInterface
    public interface Picture {
        /** A JPEG file; empty for a photo that cannot be shown. */
        Optional<byte[]> of(PhotoId photo, int longSidePx);
    }
}
