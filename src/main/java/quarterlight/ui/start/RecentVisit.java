package quarterlight.ui.start;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.UnaryOperator;
import quarterlight.car.ZoneCatalog;
import quarterlight.page.brief.Portrait;
import quarterlight.ui.kit.Settings;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.Sha256;

/**
 * What the first page remembers of a visit that was opened. The picture stays in the visit; only its hash is remembered. Immutable.
 *
 * @param car its name, or that of the folder where no car is known
 * @param picture the photo that shows the car
 */
public record RecentVisit(Path folder, String car, Optional<Sha256> picture) {
    private static final String CAR = "car.";
    private static final String PICTURE = "picture.";

    public RecentVisit {
        Objects.requireNonNull(folder, "folder");
        Objects.requireNonNull(car, "car");
        Objects.requireNonNull(picture, "picture");
    }

    /** What is remembered of the visit in a folder. */
    public static RecentVisit of(Settings settings, Path folder) {
        String place = place(folder);
        return new RecentVisit(
                folder,
                settings.text(CAR + place).orElse(String.valueOf(folder.getFileName())),
                settings.text(PICTURE + place).filter(Sha256::isDigest).map(Sha256::new));
    }

    /** Those of some folders that hold a visit still; looks at the disk, so not on the event thread. */
    public static List<Path> there(List<Path> folders) {
        return folders.stream().filter(RecentVisit::isThere).toList();
    }

    static boolean isThere(Path folder) {
        return Files.isRegularFile(folder.resolve("visit.db"));
    }

    private static String place(Path folder) {
        return folder.toAbsolutePath().normalize().toString();
    }

    /** The settings with the car of a visit and its picture. */
    public static Settings remember(Settings settings, Path folder, VisitRecord visit, ZoneCatalog catalog) {
        return remembering(folder, visit, catalog).apply(settings);
    }

    /** What puts the car of a visit and its picture into the settings; looks at every photo, so rather not on the event thread. */
    public static UnaryOperator<Settings> remembering(Path folder, VisitRecord visit, ZoneCatalog catalog) {
        String place = place(folder);
        String picture = Portrait.of(visit, catalog)
                .or(() -> Portrait.first(visit))
                .flatMap(visit::photo)
                .map(Photo::file)
                .map(file -> file.sha256().hex())
                .orElse("");
        String car = visit.facts().car().name();
        return settings -> settings.with(CAR + place, car).with(PICTURE + place, picture);
    }
}
