package quarterlight.findings;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import quarterlight.car.ZoneId;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Facets;
import quarterlight.visit.statement.Origin;
import quarterlight.visit.statement.SaidBy;
import quarterlight.visit.statement.Statement;

/**
 * Two standing statements of the same part of a zone that cannot both hold: original against replaced or not belonging, no rust against
 * rust, sound against damage, missing against anything that only a part that is there can be. Statements on different parts do not meet,
 * nor does one on a part meet one on the whole zone: a sound floor may have a hole in one corner. Judgment, common practice.
 */
public record StatementConflict(ZoneId zone, Statement first, Statement second) {
    private static final Set<Condition> RUST =
            EnumSet.of(Condition.SURFACE_RUST, Condition.SCALE, Condition.PITTED, Condition.RUSTED_THROUGH);
    private static final Set<Condition> NOT_SOUND = EnumSet.of(
            Condition.DAMAGED, Condition.LEAKING, Condition.BLOCKED, Condition.RUSTED_THROUGH, Condition.MISSING);
    /** What even a part that is not there may be called. */
    private static final Set<Condition> WITHOUT_PART = EnumSet.of(Condition.MISSING, Condition.NOT_LOOKED_AT);

    public StatementConflict {
        Objects.requireNonNull(zone, "zone");
        Objects.requireNonNull(first, "first");
        Objects.requireNonNull(second, "second");
    }

    /** Every pair of a zone, in the order in which they were said; withdrawn statements take no part. */
    public static List<StatementConflict> of(List<Statement> standing, ZoneId zone) {
        List<Statement> here =
                standing.stream().filter(one -> one.zone().equals(zone)).toList();
        List<StatementConflict> found = new ArrayList<>();
        for (int i = 0; i < here.size(); i++) {
            for (int j = i + 1; j < here.size(); j++) {
                if (part(here.get(i)).equals(part(here.get(j)))
                        && exclude(here.get(i).what(), here.get(j).what())) {
                    found.add(new StatementConflict(zone, here.get(i), here.get(j)));
                }
            }
        }
        return List.copyOf(found);
    }

    private static String part(Statement statement) {
        return statement
                .details()
                .part()
                .map(part -> part.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT))
                .orElse("");
    }

    /** Whether what is said of one part cannot both hold. */
    public static boolean exclude(Facets a, Facets b) {
        boolean origins =
                a.origin().isPresent() && b.origin().isPresent() && a.is(Origin.ORIGINAL) != b.is(Origin.ORIGINAL);
        return origins || oneWay(a, b) || oneWay(b, a);
    }

    private static boolean oneWay(Facets a, Facets b) {
        Optional<Condition> other = b.condition();
        return a.is(Condition.NO_RUST) && other.filter(RUST::contains).isPresent()
                || a.is(Condition.SOUND) && other.filter(NOT_SOUND::contains).isPresent()
                || a.is(Condition.MISSING)
                        && other.filter(one -> !WITHOUT_PART.contains(one)).isPresent();
    }

    /** Both in one sentence, with who says each if it is not the inspector. */
    public String sentence() {
        String part = first.details()
                .part()
                .map(name -> say("matters.statement-conflict.of", name))
                .orElse("");
        return say("matters.statement-conflict.contradiction-against", part, said(first), said(second));
    }

    private static String said(Statement statement) {
        SaidBy by = statement.details().saidBy();
        return "\u201c" + statement.text() + "\u201d (" + statement.what().words()
                + (by == SaidBy.INSPECTOR ? "" : say("matters.statement-conflict.said-by", by.said())) + ")";
    }
}
