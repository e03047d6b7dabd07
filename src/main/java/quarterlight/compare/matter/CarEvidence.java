package quarterlight.compare.matter;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import quarterlight.car.Zone;
import quarterlight.car.ZoneId;
import quarterlight.findings.Findings;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.Pin;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Statement;

/**
 * One car of a comparison: what was worked out of its visit and what of it matters. Only what a buyer may see is to be handed in.
 *
 * @param matters most severe first
 * @param brief what the car's own first page says
 */
public record CarEvidence(Findings findings, List<FoundMatter> matters, CarBrief brief) {
    public CarEvidence {
        Objects.requireNonNull(findings, "findings");
        Objects.requireNonNull(brief, "brief");
        matters = List.copyOf(matters);
    }

    /** The standing statements of a zone. */
    public Stream<Statement> statements(ZoneId zone) {
        return findings.visit().standing().stream()
                .filter(statement -> statement.zone().equals(zone));
    }

    /** The statement that a zone was not looked at, which says why. */
    Optional<String> excuse(ZoneId zone) {
        return statements(zone)
                .filter(one -> one.is(Condition.NOT_LOOKED_AT))
                .map(Statement::text)
                .findFirst();
    }

    /** The statement that the zone as a whole is not there. */
    Optional<String> missing(ZoneId zone) {
        return statements(zone)
                .filter(one -> one.is(Condition.MISSING) && one.details().part().isEmpty())
                .map(Statement::text)
                .findFirst();
    }

    /** The kept photos that are pinned to a zone, in the order of the pins. */
    public List<PhotoId> photos(ZoneId zone) {
        return findings.visit().pins().stream()
                .map(Recorded::value)
                .filter(pin -> pin.zone().equals(zone))
                .map(Pin::photo)
                .distinct()
                .filter(this::isKept)
                .toList();
    }

    private boolean isKept(PhotoId photo) {
        return findings.visit()
                .photo(photo)
                .map(Photo::setAside)
                .filter(Optional::isEmpty)
                .isPresent();
    }

    public String label(ZoneId zone) {
        return findings.catalog().find(zone).map(Zone::label).orElse(zone.value());
    }
}
