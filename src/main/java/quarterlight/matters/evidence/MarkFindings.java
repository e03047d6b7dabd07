package quarterlight.matters.evidence;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import quarterlight.car.Zone;
import quarterlight.car.ZoneGroup;
import quarterlight.car.ZoneId;
import quarterlight.findings.Findings;
import quarterlight.marks.Contradiction;
import quarterlight.marks.judge.JudgedMark;
import quarterlight.matters.rule.EvidenceRow;
import quarterlight.matters.rule.Finding;
import quarterlight.matters.rule.MatterRule;
import quarterlight.visit.mark.Mark;
import quarterlight.visit.mark.MarkKind;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.Pin;
import quarterlight.visit.pin.RecordId;

/** Numbers, dates and features that do not go together with the car as claimed. */
final class MarkFindings {
    private static final String TABLE = "marks";
    private static final Set<String> DRIVE_TRAIN = Set.of("engine", "transmission", "rear-axle");

    private final Findings car;
    private final ZoneLookup places;

    MarkFindings(Findings car) {
        this.car = car;
        this.places = new ZoneLookup(car);
    }

    List<Finding> all() {
        List<Finding> found = new ArrayList<>();
        for (Contradiction contradiction : car.marks().contradictions()) {
            found.add(finding(contradiction));
        }
        return found;
    }

    private Finding finding(Contradiction contradiction) {
        MatterRule rule = rule(contradiction);
        Optional<ZoneId> zone =
                contradiction.zone().filter(id -> car.catalog().find(id).isPresent());
        return new Finding(
                matter(contradiction, zone),
                rule,
                zone.stream().toList(),
                zone.map(places::label).orElse(contradiction.what()),
                rule.severity().orElseThrow(),
                rule.safety(),
                ZoneLookup.sentence(contradiction.sentence()),
                false,
                evidence(contradiction));
    }

    private MatterRule rule(Contradiction contradiction) {
        return switch (contradiction.kind()) {
            case NUMBER -> isIdentity(contradiction) ? MatterRule.IDENTITY_CONTRADICTS : MatterRule.NUMBER_CONTRADICTS;
            case ORDER -> MatterRule.DATE_ORDER;
            case DATE ->
                isDriveTrain(contradiction) || bears(contradiction, Set.of(MarkKind.VIN, MarkKind.PLATE))
                        ? MatterRule.MAIN_PART_DATE
                        : MatterRule.PART_DATE;
            case FEATURE -> MatterRule.FEATURE;
        };
    }

    /** A vehicle number or plate, or a stamp on the body itself: not on the engine, transmission or axle, nor on a part bolted to the car. */
    private boolean isIdentity(Contradiction contradiction) {
        boolean onBody = contradiction
                .zone()
                .flatMap(car.catalog()::find)
                .map(MarkFindings::isBody)
                .orElse(true);
        return bears(contradiction, Set.of(MarkKind.VIN, MarkKind.PLATE))
                || onBody && !isDriveTrain(contradiction) && bears(contradiction, Set.of(MarkKind.STAMP));
    }

    private static boolean isBody(Zone zone) {
        return zone.structural() || zone.finish() || zone.group() == ZoneGroup.RECORD;
    }

    private boolean bears(Contradiction contradiction, Set<MarkKind> kinds) {
        return marks(contradiction).map(JudgedMark::mark).map(Mark::kind).anyMatch(kinds::contains);
    }

    private static boolean isDriveTrain(Contradiction contradiction) {
        String part = " " + ZoneLookup.slug(contradiction.what()).replace('-', ' ') + " ";
        return contradiction
                        .zone()
                        .filter(zone -> DRIVE_TRAIN.contains(zone.value()))
                        .isPresent()
                || Stream.of(" engine ", " block ", " transmission ", " gearbox ", " axle ")
                        .anyMatch(part::contains);
    }

    /** Dates and features of a zone belong with what is stated of its origin; a number is a matter of its own. */
    private String matter(Contradiction contradiction, Optional<ZoneId> zone) {
        String part = ZoneLookup.slug(contradiction.what());
        if (contradiction.kind() == Contradiction.Kind.NUMBER) {
            return "number:" + part;
        }
        boolean onCar = zone.flatMap(car.catalog()::find)
                .map(Zone::group)
                .filter(group -> group != ZoneGroup.RECORD)
                .isPresent();
        return onCar && contradiction.kind() != Contradiction.Kind.ORDER
                ? "origin:" + zone.orElseThrow().value()
                : "date:" + part;
    }

    private List<EvidenceRow> evidence(Contradiction contradiction) {
        String text = ZoneLookup.sentence(contradiction.sentence());
        List<EvidenceRow> rows = new ArrayList<>();
        for (RecordId id : contradiction.rows()) {
            List<PhotoId> photos = marks(contradiction)
                    .filter(mark -> mark.row().equals(id))
                    .flatMap(mark -> photos(mark.mark()))
                    .toList();
            rows.add(EvidenceRow.of(TABLE, id, text, places.shown(photos.stream())));
        }
        return rows.isEmpty() ? List.of(EvidenceRow.workedOut("features", text)) : rows;
    }

    private Stream<JudgedMark> marks(Contradiction contradiction) {
        return car.marks().marks().stream().filter(mark -> contradiction.rows().contains(mark.row()));
    }

    /** Its own photo, and those pinned as views of its part. */
    private Stream<PhotoId> photos(Mark mark) {
        Stream<PhotoId> views = car.visit().pins().stream()
                .map(row -> row.value())
                .filter(pin -> pin.mark().equals(Optional.of(mark.part())))
                .map(Pin::photo);
        return Stream.concat(mark.photo().stream(), views);
    }
}
