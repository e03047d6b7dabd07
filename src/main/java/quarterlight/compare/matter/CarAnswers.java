package quarterlight.compare.matter;

import static quarterlight.language.Sentences.say;
import static quarterlight.language.Sentences.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import quarterlight.car.Zone;
import quarterlight.car.ZoneId;
import quarterlight.compare.place.Place;
import quarterlight.units.ThicknessText;

/** What one car shows of a subject that matters on another. It rests on evidence of this car alone. */
final class CarAnswers {
    private static final int NAMED = 4;

    private final CarEvidence car;
    private final int index;
    private final ZoneAnswers zones;
    private final RecordAnswers records;

    /** @param index which of the cars of the places it is */
    CarAnswers(CarEvidence car, int index, ThicknessText unit) {
        this.car = car;
        this.index = index;
        this.zones = new ZoneAnswers(car, unit);
        this.records = new RecordAnswers(car);
    }

    MatterCell of(Subject subject) {
        return switch (subject.topic()) {
            case TRIAL -> records.trial(subject.about());
            case GAUGE -> records.gauge();
            case CLAIM -> records.claim(subject.about());
            case ODOMETER -> records.odometer();
            case NUMBER ->
                records.number(
                        subject.about(), here(subject).stream().map(Zone::id).toList());
            case UNSEEN -> unseen(subject);
            default -> subject.places().isEmpty() ? wholeCar(subject) : there(subject);
        };
    }

    /** Nobody looked there on another car: what this one shows, of rust or of whatever else. */
    private MatterCell unseen(Subject subject) {
        if (subject.places().isEmpty()) {
            return MatterCell.of(CellClass.CLEAN, say("compare.car-answers.every-one-of-its-zones"));
        }
        List<Zone> here = here(subject);
        if (here.isEmpty()) {
            return there(subject);
        }
        List<Part> parts = new ArrayList<>(parts(here, Topic.RUST, Optional.empty()));
        List<Part> looked = parts(here, Topic.CONDITION, Optional.empty()).stream()
                .filter(part -> !part.cell().is(CellClass.NOT_LOOKED_AT))
                .toList();
        if (!looked.isEmpty() && parts.stream().allMatch(part -> part.cell().is(CellClass.NOT_LOOKED_AT))) {
            parts.clear();
        }
        parts.addAll(looked);
        return together(parts);
    }

    private List<Zone> here(Subject subject) {
        return subject.places().stream()
                .flatMap(place -> place.on(index).stream())
                .toList();
    }

    /** Outer panels together, or the car as a whole. */
    private MatterCell wholeCar(Subject subject) {
        if (subject.topic() == Topic.FINISH) {
            return panels();
        }
        return zones.of(subject.topic(), new ZoneId("whole-car"), subject.about());
    }

    private MatterCell panels() {
        List<Zone> panels = car
                .findings()
                .catalog()
                .zonesOf(car.findings().visit().facts().car().body())
                .stream()
                .filter(Zone::finish)
                .toList();
        List<Part> parts = parts(panels, Topic.FINISH, Optional.empty());
        long looked = parts.stream()
                .filter(part -> !part.cell().is(CellClass.NOT_LOOKED_AT))
                .count();
        if (looked == 0) {
            return MatterCell.of(CellClass.NOT_LOOKED_AT, say("compare.car-answers.not-measured-none", panels.size()));
        }
        List<Part> found =
                parts.stream().filter(part -> part.cell().is(CellClass.FOUND)).toList();
        if (found.isEmpty()) {
            return MatterCell.of(
                    CellClass.CLEAN, say("compare.car-answers.as-first-finished-all-that", looked, panels.size()));
        }
        return new MatterCell(
                CellClass.FOUND,
                say("compare.car-answers.of-measured", found.size(), looked, panels.size(), names(found)),
                found.get(0).cell().photo(),
                Optional.empty());
    }

    private MatterCell there(Subject subject) {
        List<Zone> here = here(subject);
        if (here.isEmpty()) {
            return MatterCell.of(
                    CellClass.NOT_ON_THIS_CAR, say("compare.car-answers.this-car-has-no", nouns(subject.places())));
        }
        return together(parts(here, subject.topic(), subject.about()));
    }

    private record Part(Zone zone, MatterCell cell) {
        String said(boolean alone) {
            return alone ? cell.text() : zone.label() + ": " + cell.text();
        }
    }

    private List<Part> parts(List<Zone> here, Topic topic, Optional<String> about) {
        return here.stream()
                .map(zone -> new Part(zone, zones.of(topic, zone.id(), about)))
                .toList();
    }

    /** What was found in any of the zones; else what of them was not looked at; clean only if all are. */
    private static MatterCell together(List<Part> parts) {
        for (CellClass kind :
                List.of(CellClass.FOUND, CellClass.NOT_LOOKED_AT, CellClass.CLEAN, CellClass.NOT_ON_THIS_CAR)) {
            List<Part> these =
                    parts.stream().filter(part -> part.cell().is(kind)).toList();
            if (!these.isEmpty()) {
                return joined(kind, parts, these);
            }
        }
        throw new IllegalStateException("a subject has zones");
    }

    private static MatterCell joined(CellClass kind, List<Part> all, List<Part> these) {
        List<String> texts = new ArrayList<>();
        boolean same = these.stream().map(part -> part.cell().text()).distinct().count() == 1;
        if (same && these.size() == all.size()) {
            texts.add(these.get(0).cell().text());
        } else if (these.size() <= NAMED) {
            these.forEach(part -> texts.add(part.said(all.size() == 1)));
        } else {
            texts.add(say("compare.car-answers.of", these.size(), all.size(), names(these)));
        }
        return new MatterCell(
                kind,
                String.join(" ", texts),
                these.stream().flatMap(part -> part.cell().photo().stream()).findFirst(),
                Optional.empty());
    }

    private static String names(List<Part> parts) {
        String names =
                parts.stream().limit(NAMED).map(part -> part.zone().label()).collect(Collectors.joining("; "));
        return parts.size() > NAMED ? say("compare.car-answers.and-more", names, parts.size() - NAMED) : names;
    }

    private static String nouns(List<Place> places) {
        return places.stream()
                .limit(NAMED)
                .map(place -> within(place.label()))
                .collect(Collectors.joining(" " + say("common.or") + " "));
    }
}
