package quarterlight.compare.matter;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import quarterlight.car.Zone;
import quarterlight.car.ZoneId;
import quarterlight.compare.place.Place;
import quarterlight.compare.place.Places;
import quarterlight.units.ThicknessText;
import quarterlight.visit.statement.Severity;

/**
 * Everything that matters on any of some cars, one row each, most severe first, with what each car shows of it. Of one severity
 * what concerns safety comes first, then what the buyer cares about more, then what was found on one car and not looked at on
 * another, then the order of the zone table. Nothing is summed and no car is ranked. Immutable.
 *
 * @param rows every matter of every car stands in exactly one
 */
public record MatterTable(List<CarEvidence> cars, Places places, Care care, List<MatterRow> rows) {
    public MatterTable {
        Objects.requireNonNull(places, "places");
        Objects.requireNonNull(care, "care");
        cars = List.copyOf(cars);
        rows = List.copyOf(rows);
    }

    /** @param places of the same cars in the same order */
    public static MatterTable of(List<CarEvidence> cars, Places places, Care care, ThicknessText unit) {
        return new MatterTable(cars, places, care, new Making(cars, places, unit).rows(care));
    }

    /** The same with another order of rows. */
    public MatterTable by(Care other) {
        return new MatterTable(cars, places, other, Making.ordered(rows, places, other));
    }

    /** What is grave or major on any car: the first part. */
    public List<MatterRow> heavy() {
        return rows.stream().filter(MatterRow::isHeavy).toList();
    }

    /** What is minor or a note on all of them. */
    public List<MatterRow> light() {
        return rows.stream().filter(row -> !row.isHeavy()).toList();
    }

    /** Puts matters in rows. */
    private static final class Making {
        private final List<CarEvidence> cars;
        private final Places places;
        private final List<CarAnswers> answers;
        private final Map<Subject.Key, List<Own>> bySubject = new LinkedHashMap<>();

        /** A matter of one of the cars. */
        private record Own(int car, Subject subject, FoundMatter matter) {}

        Making(List<CarEvidence> cars, Places places, ThicknessText unit) {
            this.cars = cars;
            this.places = places;
            this.answers = IntStream.range(0, cars.size())
                    .mapToObj(car -> new CarAnswers(cars.get(car), car, unit))
                    .toList();
        }

        List<MatterRow> rows(Care care) {
            for (int car = 0; car < cars.size(); car++) {
                for (FoundMatter matter : cars.get(car).matters()) {
                    Subject subject = subject(car, matter);
                    bySubject
                            .computeIfAbsent(subject.key(), key -> new ArrayList<>())
                            .add(new Own(car, subject, matter));
                }
            }
            return ordered(bySubject.values().stream().map(this::row).toList(), places, care);
        }

        private Subject subject(int car, FoundMatter matter) {
            boolean everywhere =
                    switch (matter.topic()) {
                        case TRIAL, GAUGE, CLAIM, ODOMETER -> true;
                        case FINISH, UNSEEN -> matter.zones().size() > 1;
                        default -> false;
                    };
            List<Place> where = everywhere
                    ? List.of()
                    : matter.zones().stream()
                            .map(zone -> place(car, zone))
                            .distinct()
                            .toList();
            return new Subject(matter.topic(), where, matter.about());
        }

        /** The place of a zone; a zone that no body has stands for itself, on this car. */
        private Place place(int car, ZoneId zone) {
            return places.of(car, zone).orElseGet(() -> {
                Optional<Zone> known = cars.get(car).findings().catalog().find(zone);
                return new Place(
                        cars.get(car).label(zone),
                        IntStream.range(0, cars.size())
                                .mapToObj(i -> i == car ? known.stream().toList() : List.<Zone>of())
                                .toList(),
                        Optional.empty());
            });
        }

        private MatterRow row(List<Own> own) {
            Own heaviest = own.stream()
                    .max(Comparator.comparing((Own one) -> one.matter().severity()))
                    .orElseThrow();
            List<MatterCell> cells = IntStream.range(0, cars.size())
                    .mapToObj(car -> {
                        List<FoundMatter> here = own.stream()
                                .filter(one -> one.car() == car)
                                .map(Own::matter)
                                .toList();
                        return here.isEmpty() ? answers.get(car).of(heaviest.subject()) : cell(here);
                    })
                    .toList();
            return new MatterRow(
                    heaviest.matter().severity(),
                    own.stream().anyMatch(one -> one.matter().safety()),
                    heaviest.matter().concern(),
                    heaviest.subject(),
                    place(heaviest),
                    cells);
        }

        private static String place(Own heaviest) {
            List<Place> where = heaviest.subject().places();
            boolean unlike = where.size() == 1 && where.get(0).counterpart().isPresent();
            return unlike ? where.get(0).label() : heaviest.matter().place();
        }

        private static MatterCell cell(List<FoundMatter> here) {
            boolean looked = here.stream().anyMatch(FoundMatter::looked);
            List<FoundMatter> told =
                    here.stream().filter(one -> one.looked() == looked).toList();
            return new MatterCell(
                    looked ? CellClass.FOUND : CellClass.NOT_LOOKED_AT,
                    told.stream().map(FoundMatter::text).distinct().collect(Collectors.joining(" ")),
                    here.stream().flatMap(one -> one.photo().stream()).findFirst(),
                    here.stream().map(FoundMatter::severity).max(Comparator.naturalOrder()));
        }

        static List<MatterRow> ordered(List<MatterRow> rows, Places places, Care care) {
            return rows.stream()
                    .sorted(Comparator.comparing(MatterRow::severity, Comparator.<Severity>reverseOrder())
                            .thenComparing(row -> !row.safety())
                            .thenComparingInt(row -> -care.of(row.concern()))
                            .thenComparing(row -> !row.isOpen())
                            .thenComparingInt(row -> order(row, places))
                            .thenComparing(MatterRow::place))
                    .toList();
        }

        private static int order(MatterRow row, Places places) {
            return row.subject().places().stream()
                    .mapToInt(place -> places.all().indexOf(place))
                    .filter(at -> at >= 0)
                    .min()
                    .orElse(-1);
        }
    }
}
