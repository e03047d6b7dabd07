package quarterlight.car;

import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import quarterlight.car.body.Body;
import quarterlight.car.body.BodyStyle;
import quarterlight.car.body.Construction;
import quarterlight.car.body.DriveSide;
import quarterlight.car.body.EnginePlace;
import quarterlight.language.Sentences;

/**
 * A named place on the car, one row of the zone table.
 *
 * @param label name for readers, in American spelling; asked for, it is the one of the language in hand
 * @param side {@code LEFT} or {@code RIGHT} for a zone of one side, else empty
 * @param finish true for an outer panel that takes part in the finish history
 * @param structural true for a zone that carries load
 * @param mirror the same place on the other side, if there is one
 */
public record Zone(
        ZoneId id,
        String label,
        ZoneGroup group,
        Optional<DriveSide> side,
        boolean finish,
        boolean structural,
        Optional<ZoneId> mirror,
        Set<BodyStyle> styles,
        Set<Construction> constructions,
        Set<EnginePlace> engines) {
    public Zone {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(label, "label");
        Objects.requireNonNull(group, "group");
        Objects.requireNonNull(side, "side");
        Objects.requireNonNull(mirror, "mirror");
        styles = Set.copyOf(styles);
        constructions = Set.copyOf(constructions);
        engines = Set.copyOf(engines);
    }

    @Override
    public String label() {
        return Sentences.sayOr("zones." + id.value(), label);
    }

    public boolean belongsTo(Body body) {
        return styles.contains(body.style())
                && constructions.contains(body.construction())
                && engines.contains(body.engine());
    }
}
