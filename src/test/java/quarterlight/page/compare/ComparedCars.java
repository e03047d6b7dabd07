package quarterlight.page.compare;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import quarterlight.car.Zone;
import quarterlight.car.body.BodyStyle;
import quarterlight.compare.TestCar;
import quarterlight.compare.matter.CarEvidence;
import quarterlight.compare.matter.Care;
import quarterlight.compare.said.ComparisonSheet;
import quarterlight.diagram.file.DiagramFile;
import quarterlight.diagram.file.DiagramRefused;
import quarterlight.page.print.Paper;
import quarterlight.photo.pixels.JpegWriter;
import quarterlight.rust.TestVisits;
import quarterlight.units.ThicknessUnit;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Severity;

/** Invented cars with photos of many places, and the pages of their comparison. */
final class ComparedCars {
    private static final String ENDLESS = "It goes on along the seam, with a word for every inch of it, ".repeat(9);

    private ComparedCars() {}

    /** A car of which much is known: measured, photographed, with matters of every severity. */
    static TestCar known(BodyStyle style, String name, int level, int every) {
        TestCar car = TestCar.of(style).named(name).checked(100, 101);
        List<String> zones = zones(style);
        for (int photo = 1; photo <= TestCar.PHOTOS; photo++) {
            String zone = zones.get((photo - 1) * every % zones.size());
            car.pinned(photo, zone, "What is there, place " + photo);
            if (photo % 4 == 0) {
                car.stated(zone, Condition.DAMAGED, "Dented at " + zone + ".", Severity.MAJOR);
            } else if (photo % 7 == 0) {
                car.stated(zone, Condition.RUSTED_THROUGH, "Holes at " + zone + ". " + ENDLESS + ".", Severity.GRAVE);
            } else if (photo % 5 == 0) {
                car.stated(zone, Condition.WORN, "Worn at " + zone + ".", Severity.MINOR);
            }
        }
        for (String zone : List.of("hood", "roof", "door-front-left", "door-front-right")) {
            car.measured(zone, level, level + 4, level + 9);
        }
        return car;
    }

    private static List<String> zones(BodyStyle style) {
        return TestCar.CATALOG.zonesOf(TestVisits.facts(style).car().body()).stream()
                .map(Zone::id)
                .map(Object::toString)
                .toList();
    }

    static TestCar[] two() {
        return new TestCar[] {
            known(BodyStyle.COUPE, "Tamarisk Larch coupe 1971", 110, 1),
            known(BodyStyle.PICKUP, "Chicory Stockman 1968", 320, 1)
        };
    }

    /** Six, of long names. */
    static TestCar[] six() {
        List<TestCar> cars = new ArrayList<>();
        for (BodyStyle style : BodyStyle.values()) {
            cars.add(known(style, "Tamarisk Larch Special Town and Country " + style.word(), 110, 2));
        }
        cars.add(TestCar.of(BodyStyle.COUPE).named("Chicory Stockman of which nothing is known"));
        return cars.toArray(TestCar[]::new);
    }

    static List<Path> pages(Path folder, Paper paper, TestCar... cars) throws IOException {
        return pages(folder, paper, ThicknessUnit.MIL, cars);
    }

    static List<Path> pages(Path folder, Paper paper, ThicknessUnit unit, TestCar... cars) throws IOException {
        ComparisonSheet sheet = TestCar.sheet(Care.NONE, unit, cars);
        List<CarPage> pages = new ArrayList<>();
        for (CarEvidence car : sheet.table().cars()) {
            Map<PhotoId, CarPage.Reference> references = new LinkedHashMap<>();
            car.findings()
                    .visit()
                    .photos()
                    .forEach(photo -> references.put(
                            photo.id(),
                            new CarPage.Reference(
                                    "photo " + photo.id().value() + ", page\u00a0"
                                            + (10 + photo.id().value()),
                                    Optional.of(
                                            "report.html#photo-" + photo.id().value()))));
            try {
                pages.add(new CarPage(
                        car.findings(),
                        DiagramFile.shipped(car.findings().visit().facts().car().body()),
                        (photo, px) -> Optional.of(JpegWriter.jpeg(color(photo, px), 70)),
                        references));
            } catch (DiagramRefused e) {
                throw new AssertionError(e);
            }
        }
        return new ComparisonPages(sheet, pages, 0, 1).write(folder, paper);
    }

    private static BufferedImage color(PhotoId photo, int longSide) {
        boolean upright = photo.value() % 3 == 0;
        int width = upright ? longSide * 3 / 4 : longSide;
        int height = upright ? longSide : longSide * 3 / 4;
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(new Color(40, 90, (int) (60 * photo.value() % 256)));
        g.fillRect(0, 0, width, height);
        g.dispose();
        return image;
    }
}
