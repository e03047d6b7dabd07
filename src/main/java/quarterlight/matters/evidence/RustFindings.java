package quarterlight.matters.evidence;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import quarterlight.findings.Findings;
import quarterlight.matters.rule.EvidenceRow;
import quarterlight.matters.rule.Finding;
import quarterlight.matters.rule.MatterRule;
import quarterlight.rust.RustByEye;
import quarterlight.rust.ZoneRust;
import quarterlight.rust.need.Load;
import quarterlight.rust.need.RepairAdvice;
import quarterlight.rust.need.RepairNeed;
import quarterlight.visit.annotation.Trace;
import quarterlight.visit.photo.PhotoId;

/** What zones need by their outlines, and by what statements tell of rust without one. */
final class RustFindings {
    private static final String TABLE = "rust";

    private final Findings car;
    private final ZoneLookup places;

    RustFindings(Findings car) {
        this.car = car;
        this.places = new ZoneLookup(car);
    }

    List<Finding> all() {
        List<Finding> found = new ArrayList<>();
        for (ZoneRust zone : car.rust().zones()) {
            measured(zone, found);
            for (RustByEye seen : zone.byEye()) {
                seen.advice().need().ifPresent(need -> byEye(zone, seen, need, found));
            }
        }
        return found;
    }

    private void measured(ZoneRust zone, List<Finding> found) {
        zone.need().ifPresent(need -> {
            String reasons = reasons(zone.advice());
            String what = need == RepairNeed.STRUCTURAL
                    ? say("matters.rust.structure")
                    : say("matters.rust.need", need.said());
            String sentence = reasons.isEmpty() ? what + "." : say("matters.rust.reasons", what, reasons);
            add(zone, need, sentence, say("matters.rust.measured", sentence), outlined(zone), found);
        });
    }

    private void byEye(ZoneRust zone, RustByEye seen, RepairNeed need, List<Finding> found) {
        String words = StatementWords.of(seen.statement());
        String sentence = need == RepairNeed.STRUCTURAL
                ? say("matters.rust.structure-by-eye", words)
                : say("matters.rust.need-by-eye", need.said(), words);
        List<PhotoId> photos = places.shown(seen.statement().photos().stream());
        add(zone, need, sentence, sentence, photos, found);
    }

    private void add(
            ZoneRust zone, RepairNeed need, String sentence, String text, List<PhotoId> photos, List<Finding> found) {
        rule(need, places.load(zone.zone().id()))
                .ifPresent(rule -> found.add(new Finding(
                        "metal:" + zone.zone().id().value(),
                        rule,
                        List.of(zone.zone().id()),
                        zone.zone().label(),
                        rule.severity().orElseThrow(),
                        rule.safety(),
                        sentence,
                        false,
                        List.of(new EvidenceRow(TABLE, Optional.empty(), text, photos)))));
    }

    private static Optional<MatterRule> rule(RepairNeed need, Load load) {
        boolean fluid = load == Load.FLUID;
        return switch (need) {
            case STRUCTURAL -> Optional.of(MatterRule.STRUCTURE_IN_QUESTION);
            case REPLACE -> Optional.of(fluid ? MatterRule.FLUID_PART_TO_EXCHANGE : MatterRule.METAL_TO_LET_IN);
            case PATCH -> Optional.of(fluid ? MatterRule.FLUID_PART_RUSTS : MatterRule.METAL_TO_LET_IN);
            case REFINISH -> Optional.of(fluid ? MatterRule.FLUID_PART_RUSTS : MatterRule.RUST_TO_CLEAN);
            case NONE -> Optional.empty();
        };
    }

    private static String reasons(RepairAdvice advice) {
        return String.join("; ", advice.reasons())
                .replace(" mm2", "\u2009mm\u00b2")
                .replace(" %", "\u2009%");
    }

    /** Photos with an outline of the zone, the one with the largest outline first. */
    private List<PhotoId> outlined(ZoneRust zone) {
        Stream<Trace> traces = car.visit().traces().stream()
                .map(row -> row.value())
                .filter(trace -> trace.zone().equals(zone.zone().id()))
                .sorted(java.util.Comparator.comparing(Trace::kind).reversed());
        return places.shown(traces.map(Trace::photo));
    }
}
