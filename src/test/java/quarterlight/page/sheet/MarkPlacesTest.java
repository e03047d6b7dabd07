package quarterlight.page.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import quarterlight.car.Car;
import quarterlight.car.FinishProfile;
import quarterlight.car.Substrate;
import quarterlight.car.ZoneId;
import quarterlight.car.body.Body;
import quarterlight.car.body.BodyStyle;
import quarterlight.car.body.Dimensions;
import quarterlight.car.body.DriveSide;
import quarterlight.visit.VisitParts;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.mark.Mark;
import quarterlight.visit.mark.MarkKind;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.pin.Recorded;

/** The marks to read: what the visit expects first, and no number of the car asked for twice. */
class MarkPlacesTest {
    private static final Map<ZoneId, String> LABELS =
            List.of("dash", "firewall", "engine").stream().collect(Collectors.toMap(ZoneId::new, name -> name));

    private static List<String> parts(Mark... marks) {
        List<Recorded<Mark>> rows = new ArrayList<>();
        for (Mark mark : marks) {
            rows.add(new Recorded<>(new RecordId(rows.size() + 1), mark));
        }
        Car car = new Car(
                "Tamarisk",
                Body.usual(BodyStyle.COUPE),
                DriveSide.LEFT,
                FinishProfile.LACQUER,
                OptionalInt.empty(),
                Optional.empty(),
                Substrate.STEEL,
                Map.of(),
                Dimensions.NOT_GIVEN);
        VisitRecord visit = new VisitParts(VisitParts.facts(car, java.time.ZoneId.of("UTC")))
                .marks(rows)
                .record();
        return MarkPlaces.of(visit, LABELS).stream().map(MarkPlaces.Line::part).toList();
    }

    private static Mark mark(String part, MarkKind kind, String expected) {
        return new Mark(
                part,
                kind,
                "?",
                Optional.empty(),
                Optional.empty(),
                Optional.of(expected),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    @Test
    void theUsualPlacesOfTheCarsNumberComeFirst() {
        assertThat(parts()).startsWith("Vehicle number", "Vehicle number, second place", "Body tag");
    }

    @Test
    void aNumberThatTheVisitNamesTakesThePlaceOfAUsualLine() {
        Mark plate = mark("Identity plate", MarkKind.VIN, "H71");
        Mark stamp = mark("Body stamp", MarkKind.STAMP, "H71");
        Mark again = mark("body stamp", MarkKind.STAMP, "H71");
        assertThat(parts(plate)).startsWith("Identity plate", "Vehicle number, second place", "Body tag");
        assertThat(parts(plate, stamp, again)).startsWith("Identity plate", "Body stamp", "Body tag");
    }

    @Test
    void anotherNumberTakesNone() {
        assertThat(parts(mark("Block", MarkKind.CASTING, "4402"))).startsWith("Block", "Vehicle number");
        assertThat(parts(mark("Identity plate", MarkKind.VIN, "H71"), mark("Title", MarkKind.PAPER, "H71")))
                .startsWith("Identity plate", "Title", "Vehicle number, second place");
    }
}
