package quarterlight.compare.said;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import quarterlight.compare.ComparedTrial;
import quarterlight.compare.ComparedZone;
import quarterlight.compare.Comparison;
import quarterlight.compare.Contrast;
import quarterlight.compare.Letters;
import quarterlight.compare.hour.OneHour;
import quarterlight.compare.matter.CarEvidence;
import quarterlight.compare.matter.Care;
import quarterlight.compare.matter.MatterRow;
import quarterlight.compare.matter.MatterTable;
import quarterlight.compare.place.Counterpart;
import quarterlight.compare.place.Place;
import quarterlight.compare.place.Places;
import quarterlight.coverage.CoverageRules;
import quarterlight.finish.FinishCautions;
import quarterlight.marks.MarksReport;
import quarterlight.units.Days;
import quarterlight.units.Numerals;
import quarterlight.units.ThicknessText;
import quarterlight.visit.VisitFacts;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.Pin;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.trial.Trial;
import quarterlight.visit.trial.TrialNames;

/** Makes the words of a comparison. */
public final class SheetMaking {
    /** What a photo shows that shows a car, the best first. */
    private static final List<String> OVERVIEWS =
            List.of("overview", "whole car", "three-quarter", "side", "front", "rear");

    private final List<CarEvidence> cars;
    private final Asked asked;
    private final MatterTable table;

    /**
     * What is asked of a comparison.
     *
     * @param first which car is the first of the two in detail
     * @param second which is the other
     */
    public record Asked(
            Care care, ThicknessText unit, int first, int second, CoverageRules rules, List<Counterpart> counterparts) {
        public Asked {
            counterparts = List.copyOf(counterparts);
        }
    }

    private SheetMaking(List<CarEvidence> cars, Asked asked) {
        this.cars = cars;
        this.asked = asked;
        Places places = Places.of(
                cars.stream()
                        .map(car -> car.findings().visit().facts().car().body())
                        .toList(),
                cars.get(0).findings().catalog(),
                asked.counterparts());
        this.table = MatterTable.of(cars, places, asked.care(), asked.unit());
    }

    /** @param cars two to six, with nothing in them that a buyer may not see where the sheet is for a buyer */
    public static ComparisonSheet of(List<CarEvidence> cars, Asked asked) {
        return new SheetMaking(cars, asked).sheet();
    }

    private ComparisonSheet sheet() {
        return new ComparisonSheet(
                table,
                asked.unit(),
                IntStream.range(0, cars.size()).mapToObj(this::head).toList(),
                care(asked.care()),
                table.heavy().stream().map(RowText::of).toList(),
                table.light().stream().map(RowText::of).toList(),
                pair(),
                IntStream.range(0, cars.size())
                        .mapToObj(car -> OneHour.of(table, car))
                        .toList(),
                cautions());
    }

    /** How the rows are ordered, in a sentence. */
    static String care(Care care) {
        return care.words().isEmpty()
                ? say("compare.sheet-making.most-severe-first-nothing-was")
                : say("compare.sheet-making.most-severe-first-of-one", care.words());
    }

    private CarHead head(int index) {
        CarEvidence car = cars.get(index);
        return new CarHead(
                MatterRow.letter(index),
                car.findings().visit().facts().car().name(),
                facts(car.findings().visit().facts()),
                car.brief().paragraph(),
                car.brief().safety(),
                car.brief().cautions(),
                car.brief().unseen(),
                car.brief().checked(),
                picture(car));
    }

    private static String facts(VisitFacts facts) {
        List<String> parts = new ArrayList<>();
        parts.add(facts.car().body().style().said());
        parts.add(facts.car().body().construction().said());
        facts.car().built().ifPresent(date -> parts.add(say("compare.sheet-making.claimed-build-date", date.said())));
        parts.add(facts.date()
                .map(date -> say("compare.sheet-making.visit", Days.day(date)))
                .orElse(say("compare.sheet-making.date-of-the-visit-not")));
        facts.inspector().ifPresent(name -> parts.add(say("compare.sheet-making.inspector", name)));
        return String.join(" \u00b7 ", parts);
    }

    /** A photo that shows the whole car, from the side rather than from the front or rear; else none: a detail is no picture of a car. */
    private static Optional<PhotoId> picture(CarEvidence car) {
        List<Pin> whole = car.findings().visit().pins().stream()
                .map(Recorded::value)
                .filter(pin -> pin.zone().value().equals("whole-car"))
                .filter(pin -> car.photos(pin.zone()).contains(pin.photo()))
                .toList();
        return OVERVIEWS.stream()
                .flatMap(word -> whole.stream()
                        .filter(pin -> pin.shows()
                                .or(pin::caption)
                                .map(shows -> shows.toLowerCase(Locale.ROOT).contains(word))
                                .orElse(false))
                        .map(Pin::photo))
                .findFirst();
    }

    private PairSheet pair() {
        CarEvidence a = cars.get(asked.first());
        CarEvidence b = cars.get(asked.second());
        Letters letters = new Letters(MatterRow.letter(asked.first()), MatterRow.letter(asked.second()));
        Comparison comparison = Comparison.of(
                a.findings(),
                b.findings(),
                new Comparison.Terms(asked.rules(), asked.counterparts(), letters, asked.unit()));
        List<PlaceText> all = comparison.zones().stream()
                .map(zone -> place(a, b, zone))
                .sorted(Comparator.comparingInt(place -> rank(place.zone())))
                .toList();
        List<CountText> counts = new ArrayList<>();
        comparison
                .refinished()
                .ifPresent(one -> counts.add(CountText.of(say("compare.sheet-making.refinished"), one, letters)));
        comparison
                .repaired()
                .ifPresent(one ->
                        counts.add(CountText.of(say("compare.sheet-making.repaired-over-filler"), one, letters)));
        return new PairSheet(
                comparison,
                letters,
                a.findings().visit().facts().car().name(),
                b.findings().visit().facts().car().name(),
                all.stream().filter(place -> place.zone().isShared()).toList(),
                all.stream().filter(place -> !place.zone().isShared()).toList(),
                List.of(level(a, letters.a()), level(b, letters.b())),
                counts,
                compared(comparison),
                comparison.trials().stream().map(SheetMaking::trial).toList());
    }

    /** Where a place stands: by the first grave or major row about it, else after all of them. */
    private int rank(ComparedZone zone) {
        List<MatterRow> rows = table.heavy();
        for (int i = 0; i < rows.size(); i++) {
            boolean here = rows.get(i).subject().places().stream()
                    .flatMap((Place place) -> place.zones().stream())
                    .flatMap(List::stream)
                    .anyMatch(one -> Optional.of(one).equals(zone.zoneA())
                            || Optional.of(one).equals(zone.zoneB()));
            if (here) {
                return i;
            }
        }
        return rows.size();
    }

    private PlaceText place(CarEvidence a, CarEvidence b, ComparedZone zone) {
        return new PlaceText(
                zone,
                zone.label(),
                zone.place().counterpart().map(Counterpart::said),
                zone.zoneA()
                        .map(one -> FactsText.of(a, one, zone.a().orElseThrow(), asked.unit()))
                        .orElseGet(() -> FactsText.none(zone.label())),
                zone.zoneB()
                        .map(one -> FactsText.of(b, one, zone.b().orElseThrow(), asked.unit()))
                        .orElseGet(() -> FactsText.none(zone.label())),
                zone.contrasts().stream()
                        .map(Contrast::text)
                        .map(SheetMaking::capital)
                        .toList());
    }

    private String level(CarEvidence car, String letter) {
        boolean measured = car.findings().evidence().zones().stream()
                .anyMatch(zone -> zone.readable() && !zone.spotsUm().isEmpty());
        return measured
                ? say(
                        "compare.sheet-making.its-own-level-is",
                        letter,
                        asked.unit().of(car.findings().history().carLevel().um()))
                : say("compare.sheet-making.was-not-measured", letter);
    }

    private static String compared(Comparison comparison) {
        int counted = comparison.counted().size();
        String rest = say("compare.sheet-making.panels-are-not-comparable-not", comparison.notComparable());
        return comparison.refinished().isEmpty()
                ? String.join(" ", comparison.remarks()) + " " + rest
                : say("compare.sheet-making.over-panels-that-were-measured", counted, rest);
    }

    private static PairSheet.TrialText trial(ComparedTrial trial) {
        return new PairSheet.TrialText(TrialNames.said(trial.item()), tried(trial.a()), tried(trial.b()));
    }

    private static String tried(Optional<Trial> trial) {
        return trial.map(one -> one.result().said()
                        + one.value()
                                .map(value -> ", " + Numerals.trueMinus(Numerals.typed(value))
                                        + one.unit()
                                                .map(unit -> "\u202f" + unit)
                                                .orElse(""))
                                .orElse(""))
                .orElse(say("compare.sheet-making.not-tried"));
    }

    private List<String> cautions() {
        Set<String> all = new LinkedHashSet<>(FinishCautions.texts());
        all.add(MarksReport.caution());
        return List.copyOf(all);
    }

    private static String capital(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
