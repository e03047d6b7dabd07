package quarterlight.edit.compare;

import java.util.LinkedHashMap;
import java.util.Map;
import quarterlight.diagram.BodyDiagram;
import quarterlight.page.PinKey;
import quarterlight.visit.photo.PhotoId;

/** Where the photos of a car stand in its own report. */
final class PhotoReferences {
    private PhotoReferences() {}

    static Map<PhotoId, String> of(Candidate car, BodyDiagram diagram) {
        Map<PhotoId, String> references = new LinkedHashMap<>();
        PinKey.of(car.findings(), diagram)
                .entries()
                .forEach(entry -> references.putIfAbsent(entry.photo(), "photo " + entry.number()));
        return references;
    }
}
