package quarterlight.diagram.file;

import java.nio.file.Files;
import java.nio.file.Path;
import quarterlight.car.Car;
import quarterlight.diagram.BodyDiagram;
import quarterlight.visit.VisitFacts;

/**
 * The body diagram of a visit: the one of its own that lies in its folder where one was chosen, else the program's. Everything that draws a
 * car or takes areas and neighbors from a drawing asks here.
 */
public final class VisitDiagram {
    /** Folder in the folder of the visit that keeps every diagram that was ever chosen for it. */
    public static final String FOLDER = "diagrams";

    private VisitDiagram() {}

    /** Where the diagram of a name lies; within the folder of the visit whatever the name is. */
    public static Path file(Path folder, String name) {
        return folder.resolve(FOLDER).resolve(name.replace('/', '_').replace('\\', '_') + ".svg");
    }

    /**
     * The diagram of the car of a visit with its driver on the right side. One's own was checked when it was chosen; here it must only be
     * readable and of the car's style.
     *
     * @param folder of the visit
     * @throws DiagramRefused if the chosen file is gone, cannot be read or is for another style
     */
    public static BodyDiagram of(Path folder, VisitFacts facts) throws DiagramRefused {
        Car car = facts.car();
        if (facts.choices().diagram().isEmpty()) {
            return DiagramFile.shipped(car.body().style()).of(car.body(), car.drive());
        }
        String name = facts.choices().diagram().get();
        Path file = file(folder, name);
        if (!Files.isRegularFile(file)) {
            throw new DiagramRefused(
                    FOLDER + "/" + name + ".svg",
                    0,
                    "the diagram \"" + name + "\" was chosen, but the folder of the visit lacks it",
                    "choose it again, or set diagram=shipped");
        }
        return DiagramFile.read(file).ofStyle(car.body()).of(car.body(), car.drive());
    }
}
