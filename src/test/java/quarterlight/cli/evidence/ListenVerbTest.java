package quarterlight.cli.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static quarterlight.cli.WalkedVisit.drafts;
import static quarterlight.cli.WalkedVisit.record;
import static quarterlight.cli.WalkedVisit.visit;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterlight.car.ZoneId;
import quarterlight.cli.Bench;
import quarterlight.cli.BuyerFiles;
import quarterlight.cli.call.Exit;
import quarterlight.edit.row.RowEdits;
import quarterlight.edit.spoken.DraftDropping;
import quarterlight.edit.spoken.VisitWalk;
import quarterlight.store.SampleVisit;
import quarterlight.store.VisitStore;
import quarterlight.table.ZoneTable;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.reading.GaugeMoment;
import quarterlight.visit.reading.GaugeSurface;
import quarterlight.visit.reading.GaugeValue;
import quarterlight.visit.row.RecordKind;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Facets;
import quarterlight.visit.statement.Statement;
import quarterlight.words.Draft;

/** Words of a walk go in, are listened to, and only what is kept becomes evidence. */
class ListenVerbTest {
    /** One sentence for every kind of row, and general talk with a word that must stay at home. */
    private static final String WALK = "WEBVTT\n\n" + cue(3, "The left front fender is dented.")
            + cue(9, "Overspray on the trunk floor.")
            + cue(14, "Reading on the hood four to five mils.")
            + cue(20, "The horn works.")
            + cue(26, "Engine stamp on the pad, C seven one two.")
            + cue(33, "The seller says the engine was rebuilt.")
            + cue(40, "Odometer shows sixty one thousand four hundred miles.")
            + cue(48, "I did not look at the spare wheel well.")
            + cue(55, "Gauge check, five mil shim shows five point one.")
            + cue(64, "My neighbor grows quillwort.");

    @TempDir
    private Path folder;

    private static String cue(int at, String text) {
        return "00:%02d.000 --> 00:%02d.000\n%s\n\n"
                .formatted(at, Math.min(59, at + 4), text)
                .replace("00:64.000 --> 00:59.000", "01:04.000 --> 01:08.000");
    }

    private Bench bench() {
        return new Bench(folder);
    }

    private static Map<String, String> likeliest(Bench bench, String visit) {
        Map<String, String> ids = new LinkedHashMap<>();
        Map<String, Double> p = new LinkedHashMap<>();
        for (JsonNode draft : drafts(bench, visit)) {
            String what = draft.get("what").asText();
            if (draft.get("p").asDouble() > p.getOrDefault(what, -1.0)) {
                p.put(what, draft.get("p").asDouble());
                ids.put(what, draft.get("id").asText());
            }
        }
        return ids;
    }

    private static int edits(String visit) throws Exception {
        try (VisitStore store = VisitStore.openForReading(Path.of(visit))) {
            return store.editLog().size();
        }
    }

    @Test
    void listeningChangesNothing() {
        Bench bench = bench();
        String visit = visit(bench);
        assertThat(bench.run("listen", visit).done().out()).contains("No words yet");
        assertThat(drafts(bench, visit)).isEmpty();
        bench.run("words", visit, bench.file("walk.vtt", WALK)).done();
        String before = bench.state(visit);
        assertThat(bench.run("listen", visit).done().out())
                .contains("fender-left", "0:03", "The left front fender is dented", "no evidence until");
        assertThat(drafts(bench, visit)).hasSizeGreaterThan(6);
        assertThat(bench.state(visit)).isEqualTo(before);
    }

    @Test
    void theSameWordsGiveTheSameIdsEvenAfterAnArchive() throws Exception {
        Bench bench = bench();
        String visit = visit(bench);
        bench.run("words", visit, bench.file("walk.vtt", WALK)).done();
        List<JsonNode> first = drafts(bench, visit);
        assertThat(first).extracting(draft -> draft.get("id").asText()).doesNotHaveDuplicates();
        assertThat(first).extracting(draft -> draft.get("source").asText()).containsOnly("walk.vtt");
        bench.run("listen", visit, "--keep", likeliest(bench, visit).get("statement"))
                .done();
        bench.run(
                        "add",
                        "statements",
                        visit,
                        bench.file(
                                "statements.csv",
                                "zone,condition,text,photo,at\nroof,damaged,Typed by hand.,walk.vtt,3.5\n"))
                .done();
        List<JsonNode> kept = drafts(bench, visit);
        assertThat(kept)
                .extracting(draft -> draft.get("id"))
                .isEqualTo(first.stream().map(d -> d.get("id")).toList());
        bench.run("archive", visit, bench.folder("whole.zip")).done();
        bench.run("restore", bench.folder("whole.zip"), bench.folder("back")).done();
        assertThat(drafts(bench, bench.folder("back"))).isEqualTo(kept);
        assertThat(bench.run("audit", visit, "--json").done().json().get("ok").asBoolean())
                .isTrue();
    }

    @Test
    void droppedDraftsAreNotOfferedAgainUntilThatIsUndone() throws Exception {
        Bench bench = bench();
        String visit = visit(bench);
        bench.run("words", visit, bench.file("walk.vtt", WALK)).done();
        Map<String, String> ids = likeliest(bench, visit);
        int before = edits(visit);
        bench.run("listen", visit, "--drop", ids.get("sign") + "," + ids.get("trial"), "--json")
                .done();
        assertThat(edits(visit)).isEqualTo(before + 1);
        assertThat(drafts(bench, visit))
                .filteredOn(draft -> draft.get("dropped").asBoolean())
                .extracting(draft -> draft.get("id").asText())
                .containsExactlyInAnyOrder(ids.get("sign"), ids.get("trial"));
        assertThat(bench.run("listen", visit, "--drop", ids.get("sign"), "--json")
                        .done()
                        .json()
                        .get("dropped")
                        .asInt())
                .isZero();
        try (VisitStore store = VisitStore.openForEditing(Path.of(visit), SampleVisit.CLOCK)) {
            VisitWalk walk = VisitWalk.of(store.read(), Path.of(visit), ZoneTable.load(), Path.of("none"));
            Draft trial = walk.drafts().stream()
                    .filter(draft -> draft.id().equals(ids.get("trial")))
                    .findFirst()
                    .orElseThrow();
            new DraftDropping(store).drop(walk, List.of(ids.get("claim")));
            assertThat(DraftDropping.dropped(store.read(), walk)).hasSize(3).contains(trial.id());
            store.undo();
            assertThat(DraftDropping.dropped(store.read(), walk)).hasSize(2).doesNotContain(ids.get("claim"));
        }
        bench.run("listen", visit, "--drop", "nosuch").complains(Exit.UNUSABLE, "nosuch", "listen lists them");
        bench.run("listen", visit, "--drop", ids.get("mark"), "--keep", ids.get("mark"))
                .complains(Exit.UNUSABLE, "--keep", "--drop");
    }

    @Test
    void keptDraftsBecomeRowsOfTheirKindsAsOneEdit() throws Exception {
        Bench bench = bench();
        String visit = visit(bench);
        bench.run("words", visit, bench.file("walk.vtt", WALK)).done();
        Map<String, String> ids = likeliest(bench, visit);
        List<String> kinds = List.of(
                "statement", "sign", "thickness", "trial", "mark", "claim", "odometer", "not-looked-at", "gauge");
        assertThat(ids.keySet()).containsAll(kinds);
        String keep = String.join(",", kinds.stream().map(ids::get).toList());
        int before = edits(visit);
        JsonNode kept =
                bench.run("listen", visit, "--keep", keep, "--json").done().json();
        assertThat(kept.get("kept")).hasSize(9);
        assertThat(edits(visit)).isEqualTo(before + 1);

        VisitRecord record = record(visit);
        assertThat(record.statements()).hasSize(2).allSatisfy(row -> assertThat(
                        row.value().photo())
                .contains(record.photos().get(0).id()));
        assertThat(record.statements().get(0).value()).satisfies(row -> {
            assertThat(row.zone()).hasToString("fender-left");
            assertThat(row.what().words()).isEqualTo("damaged");
            assertThat(row.atSeconds()).contains(3.0);
            assertThat(row.text()).startsWith("The left front fender is dented");
        });
        assertThat(record.statements().get(1).value().what().words()).isEqualTo("not looked at");
        assertThat(record.readings()).singleElement().satisfies(row -> {
            assertThat(row.value().zone()).hasToString("hood");
            assertThat(row.value().value()).isInstanceOfSatisfying(GaugeValue.Range.class, range -> {
                assertThat(range.typed()).isEqualTo("4-5");
                assertThat(range.unit().word()).isEqualTo("mil");
            });
            assertThat(row.value().note().orElseThrow()).contains("four to five mils", "(0:14)");
        });
        assertThat(record.signs().get(0).value().seen()).isTrue();
        assertThat(record.signs().get(0).value().zone()).hasToString("trunk-floor");
        assertThat(record.trials().get(0).value().item()).isEqualTo("Horn");
        assertThat(record.trials().get(0).value().note().orElseThrow()).contains("(0:20)");
        assertThat(record.marks().get(0).value().text()).isEqualTo("C712");
        assertThat(record.claims().get(0).value().by().word()).isEqualTo("seller");
        assertThat(record.odometer().get(0).value().figure()).isEqualByComparingTo("61400");
        assertThat(record.gaugeChecks()).singleElement().satisfies(row -> {
            assertThat(row.value().when()).isEqualTo(GaugeMoment.AFTER);
            assertThat(row.value().on()).isEqualTo(GaugeSurface.SHIM);
            assertThat(row.value().nominal().typed()).isEqualByComparingTo("5");
            assertThat(row.value().shown().typed()).isEqualByComparingTo("5.1");
            assertThat(row.value().note().orElseThrow()).contains("(0:55)");
        });

        assertThat(drafts(bench, visit))
                .filteredOn(draft -> draft.get("kept").asBoolean())
                .extracting(draft -> draft.get("id").asText())
                .containsExactlyInAnyOrderElementsOf(
                        kinds.stream().map(ids::get).toList());
        String state = bench.state(visit);
        assertThat(bench.run("listen", visit, "--keep", keep).done().out())
                .contains("0 drafts kept", "9 were kept before");
        assertThat(bench.state(visit)).isEqualTo(state);
    }

    @Test
    void aMeasuredFigureIsKeptWithTheUnitThatWasSaid() throws Exception {
        Bench bench = bench();
        String visit = visit(bench);
        bench.run(
                        "words",
                        visit,
                        bench.file(
                                "walk.txt",
                                "[0:03] Battery, twelve point four at rest.\n[0:09] Left front tread is five thirty-seconds.\n"))
                .done();
        String ids = drafts(bench, visit).stream()
                .filter(draft -> draft.get("what").asText().equals("trial"))
                .map(draft -> draft.get("id").asText())
                .collect(Collectors.joining(","));
        bench.run("listen", visit, "--keep", ids).done();
        assertThat(record(visit).trials().stream().map(row -> row.value()))
                .extracting(trial -> trial.item() + ": " + trial.result().word() + " "
                        + trial.value().orElseThrow().toPlainString() + " "
                        + trial.unit().orElseThrow())
                .containsExactly("Battery at rest: measured 12.4 V", "Tread, left front: measured 5 1/32 in");
    }

    @Test
    void aRowThatWasChangedStaysKeptAndOneThatWasUndoneIsOfferedAgain() throws Exception {
        Bench bench = bench();
        String visit = visit(bench);
        bench.run("words", visit, bench.file("walk.vtt", WALK)).done();
        String id = drafts(bench, visit).get(0).get("id").asText();
        bench.run("listen", visit, "--keep", id).done();
        try (VisitStore store = VisitStore.openForEditing(Path.of(visit), Bench.CLOCK)) {
            Recorded<Statement> row = store.read().statements().get(0);
            Statement said = row.value();
            new RowEdits(store)
                    .update(
                            RecordKind.STATEMENTS,
                            row.id(),
                            new Statement(
                                    new ZoneId("fender-right"),
                                    Facets.of(Condition.WORN),
                                    "In other words.",
                                    said.severity(),
                                    said.basis(),
                                    said.photo(),
                                    said.atSeconds()));
        }
        assertThat(drafts(bench, visit).get(0).get("kept").asBoolean()).isTrue();
        try (VisitStore store = VisitStore.openForEditing(Path.of(visit), Bench.CLOCK)) {
            new RowEdits(store)
                    .remove(
                            RecordKind.STATEMENTS,
                            List.of(store.read().statements().get(0).id()));
        }
        assertThat(drafts(bench, visit).get(0).get("kept").asBoolean()).isFalse();
    }

    @Test
    void draftsThatCannotBeKeptAreRefusedAndNothingGoesIn() {
        Bench bench = bench();
        String visit = visit(bench);
        bench.run(
                        "words",
                        visit,
                        bench.file(
                                "walk.txt",
                                """
                                [0:03] The hood is dented.
                                [0:09] No, hang on, scratch that.
                                [0:20] Gauge check, all 3 shims are fine.
                                [0:30] The horn works.
                                """))
                .done();
        Map<String, String> ids = likeliest(bench, visit);
        String withdrawn = drafts(bench, visit).stream()
                .filter(draft -> draft.get("withdrawn").asBoolean())
                .findFirst()
                .orElseThrow()
                .get("id")
                .asText();
        String before = bench.state(visit);
        bench.run("listen", visit, "--keep", ids.get("trial") + ",cafecafe")
                .complains(Exit.UNUSABLE, "no draft cafecafe");
        bench.run("listen", visit, "--keep", ids.get("trial") + "," + withdrawn)
                .complains(Exit.UNUSABLE, withdrawn, "taken back");
        bench.run("listen", visit, "--keep", ids.get("trial") + "," + ids.get("gauge"))
                .complains(Exit.UNUSABLE, ids.get("gauge"), "what the gauge was laid on and what it showed");
        bench.run("listen", visit, "--keep", ",").complains(Exit.UNUSABLE, "names no draft");
        assertThat(bench.state(visit)).isEqualTo(before);
        bench.run("listen", visit, "--keep", ids.get("trial")).done();
        assertThat(bench.state(visit)).isNotEqualTo(before);
    }

    @Test
    void aDraftWithoutAZoneIsRefused() {
        Bench bench = bench();
        String visit = visit(bench);
        bench.run("words", visit, bench.file("walk.txt", "[0:03] That one is dented.\n"))
                .done();
        JsonNode draft = drafts(bench, visit).get(0);
        assertThat(draft.get("zones")).isEmpty();
        String before = bench.state(visit);
        bench.run("listen", visit, "--keep", draft.get("id").asText())
                .complains(Exit.UNUSABLE, draft.get("id").asText(), "no zone is known", "Nothing was kept");
        assertThat(bench.state(visit)).isEqualTo(before);
    }

    @Test
    void onlyWhatIsKeptGoesToTheBuyerUntilTheWordsAreReleased() throws Exception {
        Bench bench = bench();
        String visit = visit(bench);
        bench.run("words", visit, bench.file("quillwort-walk.vtt", WALK)).done();
        Map<String, String> ids = likeliest(bench, visit);
        bench.run("listen", visit, "--keep", ids.get("statement") + "," + ids.get("trial") + "," + ids.get("mark"))
                .done();
        BuyerFiles held = BuyerFiles.made(bench, visit, "held");
        assertThat(held.texts.get("report.pdf text")).contains("The left front fender is dented");
        held.texts.forEach((name, text) -> assertThat(text.toLowerCase(java.util.Locale.ROOT))
                .as(name)
                .doesNotContain("quillwort", "overspray on the trunk"));
        bench.run("add", "released", visit, bench.file("released.csv", "photo\nquillwort-walk.vtt\n"))
                .done();
        BuyerFiles released = BuyerFiles.made(bench, visit, "released");
        assertThat(released.texts.get("bag/data/tables/photos.csv")).contains("quillwort-walk.vtt");
    }
}
