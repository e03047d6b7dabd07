package quarterlight.ui.lens;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import quarterlight.car.ZoneId;
import quarterlight.findings.Findings;
import quarterlight.matters.Matter;
import quarterlight.matters.Matters;
import quarterlight.matters.rule.EvidenceRow;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.place.ChangedRows;
import quarterlight.ui.kit.place.Subject;
import quarterlight.units.ThicknessUnit;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.row.RecordKind;

/**
 * What everything that is said of a zone, a row or a matter rests on: readings, photos, outlines, rules and their sources, the weightiest first.
 * Pure functions over one state of the visit.
 */
public final class Grounds {
    private final Texts texts;
    private final ThicknessUnit unit;
    private final VisitRecord visit;
    private final Findings findings;
    private final Matters matters;
    private final Function<ZoneId, String> label;

    /**
     * @param findings of the visit
     * @param matters of the same findings
     * @param label the name of a zone for readers
     */
    public Grounds(
            Texts texts, ThicknessUnit unit, Findings findings, Matters matters, Function<ZoneId, String> label) {
        this.texts = Objects.requireNonNull(texts, "texts");
        this.unit = Objects.requireNonNull(unit, "unit");
        this.findings = Objects.requireNonNull(findings, "findings");
        this.visit = findings.visit();
        this.matters = Objects.requireNonNull(matters, "matters");
        this.label = Objects.requireNonNull(label, "label");
    }

    Texts texts() {
        return texts;
    }

    ThicknessUnit unit() {
        return unit;
    }

    VisitRecord visit() {
        return visit;
    }

    Findings findings() {
        return findings;
    }

    String label(ZoneId zone) {
        return label.apply(zone);
    }

    /** What is asked about, as a heading. */
    String title(Subject subject) {
        if (subject instanceof Subject.OfZone zone) {
            return label(zone.zone());
        } else if (subject instanceof Subject.OfMatter matter) {
            return matters.find(matter.id()).map(Matter::place).orElse("");
        }
        return RowGrounds.title(this, (Subject.OfRow) subject);
    }

    /** Never empty: what rests on nothing says so. */
    List<Ground> of(Subject subject) {
        List<Ground> grounds = found(subject);
        if (grounds.isEmpty()) {
            grounds.add(new Ground(
                    texts.get("lens.nothing.head"),
                    texts.get("lens.nothing"),
                    "",
                    new ChangedRows(Optional.empty(), List.of(), Set.of(), List.of()),
                    Optional.empty()));
        }
        return grounds;
    }

    /** Empty for what rests on nothing. */
    List<Ground> found(Subject subject) {
        List<Ground> grounds = new ArrayList<>();
        if (subject instanceof Subject.OfZone zone) {
            grounds.addAll(ZoneGrounds.of(this, zone.zone()));
            matters.about(zone.zone()).forEach(matter -> grounds.add(head(matter)));
            ZoneGrounds.photos(this, zone.zone()).ifPresent(grounds::add);
        } else if (subject instanceof Subject.OfMatter matter) {
            matters.find(matter.id()).ifPresent(one -> add(one, grounds));
        } else if (subject instanceof Subject.OfRow row) {
            grounds.addAll(RowGrounds.of(this, row));
            matters.all().stream()
                    .filter(matter -> matter.evidence().stream().anyMatch(evidence -> isOf(evidence, row)))
                    .forEach(matter -> grounds.add(head(matter)));
        }
        return grounds;
    }

    private static boolean isOf(EvidenceRow evidence, Subject.OfRow row) {
        return evidence.table().equals(row.kind().word()) && evidence.row().equals(Optional.of(row.row()));
    }

    private Ground head(Matter matter) {
        String letter = matter.letter().map(name -> name + ": ").orElse("");
        return new Ground(
                texts.get("lens.matter"),
                letter + matter.sentence(),
                matter.why(),
                new ChangedRows(Optional.empty(), List.of(), Set.copyOf(matter.zones()), matter.photos()),
                Optional.empty());
    }

    private void add(Matter matter, List<Ground> grounds) {
        grounds.add(head(matter));
        for (EvidenceRow row : matter.evidence()) {
            Optional<RecordKind<?>> kind = RecordKind.find(row.table());
            grounds.add(new Ground(
                    texts.get("lens.evidence"),
                    row.text(),
                    "",
                    new ChangedRows(
                            kind, row.row().map(List::of).orElse(List.of()), Set.copyOf(matter.zones()), row.photos()),
                    Optional.empty()));
        }
        matter.zones().forEach(zone -> grounds.addAll(ZoneGrounds.of(this, zone)));
    }
}
