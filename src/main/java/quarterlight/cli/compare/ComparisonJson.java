package quarterlight.cli.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import quarterlight.compare.ComparedTrial;
import quarterlight.compare.Comparison;
import quarterlight.compare.CountComparison;
import quarterlight.compare.CountSummary;
import quarterlight.compare.Letters;
import quarterlight.compare.hour.HourLook;
import quarterlight.compare.matter.CarEvidence;
import quarterlight.compare.matter.MatterRow;
import quarterlight.compare.said.CarHead;
import quarterlight.compare.said.ComparisonSheet;
import quarterlight.compare.said.RowText;
import quarterlight.findings.ClaimedAndFound;
import quarterlight.table.json.JsonObject;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.statement.Judgment;

/** A comparison as a document of JSON; sentences are those of the pages. Pure functions. */
public final class ComparisonJson {
    private final ComparisonSheet sheet;
    private final String a;
    private final String b;

    private ComparisonJson(ComparisonSheet sheet) {
        this.sheet = sheet;
        Letters letters = sheet.pair().letters();
        this.a = key(letters.a());
        this.b = key(letters.b());
    }

    public static JsonObject of(ComparisonSheet sheet) {
        return new ComparisonJson(sheet).document();
    }

    private JsonObject document() {
        Comparison pair = sheet.pair().comparison();
        List<RowText> rows = new ArrayList<>(sheet.heavy());
        rows.addAll(sheet.light());
        return new JsonObject()
                .put("matters", rows.stream().map(this::matter).toList())
                .put("order", sheet.care())
                .put("cars", sheet.cars().stream().map(CarHead::name).toList())
                .put("heads", byCar(this::head))
                .put("one_hour", byCar(car -> sheet.hours().get(car).stream()
                        .map(ComparisonJson::look)
                        .toList()))
                .put("compared", List.of(a, b))
                .put(
                        "zones",
                        pair.zones().stream()
                                .map(zone -> ZoneJson.of(zone, a, b))
                                .toList())
                .put("counted_zones", pair.counted())
                .put("not_comparable", pair.notComparable())
                .put("compared_panels", sheet.pair().compared())
                .put("refinished", pair.refinished().map(this::counts))
                .put("repaired", pair.repaired().map(this::counts))
                .put("levels", sheet.pair().levels())
                .put("remarks", pair.remarks())
                .put(
                        "summary",
                        new JsonObject().put(a, SummaryJson.of(pair.a())).put(b, SummaryJson.of(pair.b())))
                .put("trials", pair.trials().stream().map(this::trial).toList())
                .put("claims", byCar(car -> claims(sheet.table().cars().get(car))))
                .put("cautions", sheet.cautions());
    }

    private static String key(String letter) {
        return letter.toLowerCase(Locale.ROOT);
    }

    private JsonObject byCar(Function<Integer, Object> what) {
        JsonObject cars = new JsonObject();
        for (int car = 0; car < sheet.cars().size(); car++) {
            cars.put(key(MatterRow.letter(car)), what.apply(car));
        }
        return cars;
    }

    private JsonObject matter(RowText row) {
        return new JsonObject()
                .put("severity", row.severity())
                .put("safety", row.row().safety())
                .put("zone", zone(row.row()))
                .put("place", row.place())
                .put("concern", row.row().concern().word())
                .put("text", row.contrast())
                .put("open", row.row().isOpen())
                .put("laid_together", row.why())
                .put("cars", byCar(car -> cell(row.cells().get(car), car)));
    }

    private static Optional<String> zone(MatterRow row) {
        return row.subject().places().stream()
                .findFirst()
                .map(place -> place.first().id().value());
    }

    private JsonObject cell(RowText.CellText cell, int car) {
        return new JsonObject()
                .put("class", cell.kind().word())
                .put("text", cell.text())
                .put("photo", cell.photo().map(PhotoId::value))
                .put("photo_file", cell.photo().flatMap(photo -> file(car, photo)));
    }

    private Optional<String> file(int car, PhotoId photo) {
        return sheet.table()
                .cars()
                .get(car)
                .findings()
                .visit()
                .photo(photo)
                .map(Photo::file)
                .map(one -> one.name());
    }

    private JsonObject head(int car) {
        CarHead head = sheet.cars().get(car);
        return new JsonObject()
                .put("name", head.name())
                .put("facts", head.facts())
                .put("brief", head.paragraph())
                .put("safety", head.safety())
                .put("safety_cautions", head.cautions())
                .put("not_looked_at", head.unseen())
                .put("checked", head.checked())
                .put("picture", head.picture().map(PhotoId::value));
    }

    private static JsonObject look(HourLook look) {
        return new JsonObject().put("what", look.what()).put("why", look.why()).put("caution", look.caution());
    }

    private JsonObject counts(CountComparison counts) {
        return new JsonObject()
                .put(a, count(counts.a()))
                .put(b, count(counts.b()))
                .put("p_" + a + "_fewer", counts.chanceAFewer())
                .put("p_equal", counts.chanceEqual())
                .put("p_" + b + "_fewer", counts.chanceBFewer());
    }

    private static JsonObject count(CountSummary count) {
        return new JsonObject()
                .put("mean", count.mean())
                .put("low", count.low())
                .put("high", count.high());
    }

    private JsonObject trial(ComparedTrial trial) {
        return new JsonObject()
                .put("item", trial.item())
                .put(a, trial.a().map(one -> one.result().word()))
                .put(b, trial.b().map(one -> one.result().word()));
    }

    private static List<JsonObject> claims(CarEvidence car) {
        return ClaimedAndFound.of(car.findings()).stream()
                .map(row -> new JsonObject()
                        .put("text", row.claim().text())
                        .put("by", row.claim().by().word())
                        .put("zone", row.claim().zone())
                        .put("part", row.claim().part())
                        .put("about", row.claim().about())
                        .put("proposed", row.proposed().word())
                        .put("judged", row.claim().judged().map(Judgment::word))
                        .put("found", row.found()))
                .toList();
    }
}
