package quarterlight.edit.compare;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import quarterlight.diagram.BodyDiagram;
import quarterlight.page.PinKey;
import quarterlight.page.compare.CarPage;
import quarterlight.page.compare.ReportReferences;
import quarterlight.store.folder.VisitFolder;
import quarterlight.visit.photo.PhotoId;

/** Where the photos of a car stand in its own report: its number, and the page if the report lies with the visit and is of its present state. */
final class PhotoReferences {
    private PhotoReferences() {}

    /** @param out where the comparison is made; addresses lead from there */
    static Map<PhotoId, CarPage.Reference> of(Candidate car, BodyDiagram diagram, Path out) {
        Path folder = new VisitFolder(car.folder()).pages();
        ReportReferences report = ReportReferences.in(folder, car.logHead());
        Map<PhotoId, CarPage.Reference> references = new LinkedHashMap<>();
        PinKey.of(car.findings(), diagram)
                .entries()
                .forEach(entry -> references.putIfAbsent(
                        entry.photo(),
                        new CarPage.Reference(
                                report.words(entry.number()),
                                report.address(entry.number()).flatMap(address -> from(out, folder, address)))));
        return references;
    }

    private static Optional<String> from(Path out, Path folder, String address) {
        try {
            String way = out.toAbsolutePath()
                    .normalize()
                    .relativize(folder.toAbsolutePath().normalize())
                    .toString()
                    .replace(out.getFileSystem().getSeparator(), "/");
            String encoded = new java.net.URI(null, null, way.isEmpty() ? "." : way, null).toASCIIString();
            return Optional.of(encoded + "/" + address);
        } catch (IllegalArgumentException | java.net.URISyntaxException e) {
            return Optional.empty();
        }
    }
}
