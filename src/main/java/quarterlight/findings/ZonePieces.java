package quarterlight.findings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import quarterlight.car.Zone;
import quarterlight.finish.history.EvidenceStrength;
import quarterlight.finish.history.ZoneHistory;
import quarterlight.marks.Contradiction;
import quarterlight.rust.RustByEye;
import quarterlight.rust.ZoneRust;
import quarterlight.rust.need.RepairNeed;
import quarterlight.units.Worded;
import quarterlight.visit.statement.Basis;
import quarterlight.visit.statement.Certainty;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Origin;
import quarterlight.visit.statement.SaidBy;
import quarterlight.visit.statement.Severity;
import quarterlight.visit.statement.Statement;

/**
 * The pieces of evidence that speak for something the matter with one zone, heaviest first.
 *
 * @param pieces none if nothing is the matter
 * @param refinished true if the panel was likely refinished by evidence of its own
 */
record ZonePieces(Zone zone, List<Piece> pieces, boolean refinished, boolean structural) {
    /** Statements that say that all is well, or nothing. */
    private static final Set<Condition> NOT_THE_MATTER =
            Set.of(Condition.SOUND, Condition.PRESENT, Condition.NO_RUST, Condition.NOT_LOOKED_AT);

    /**
     * One piece.
     *
     * @param headline the sentence that can head the matter
     * @param typed true for a sentence of the inspector
     * @param coatOnly true if it says that the panel was refinished, and no more
     */
    record Piece(int weight, String headline, String evidence, boolean typed, boolean coatOnly) {
        static Piece found(int weight, String headline, String evidence) {
            return new Piece(weight, headline, evidence, false, false);
        }
    }

    static ZonePieces of(Findings car, Zone zone, MatterWeights weights) {
        List<Piece> pieces = new ArrayList<>();
        for (Statement statement : car.visit().standing()) {
            if (statement.zone().equals(zone.id()) && isTheMatter(statement)) {
                pieces.add(ofStatement(statement, weights));
            }
        }
        boolean structural = car.rust()
                .zone(zone.id())
                .filter(rust -> rust.need().equals(Optional.of(RepairNeed.STRUCTURAL))
                        || rust.needByEye().equals(Optional.of(RepairNeed.STRUCTURAL)))
                .isPresent();
        car.rust().zone(zone.id()).ifPresent(rust -> addNeed(rust, weights, pieces));
        boolean refinished = false;
        if (car.history().zone(zone.id()).isPresent()) {
            ZoneHistory history = car.history().zone(zone.id()).get();
            refinished = isRefinished(history, weights);
            addLikelihood(history, refinished, weights, pieces);
        }
        car.marks().contradictions().stream()
                .filter(c -> c.zone().filter(zone.id()::equals).isPresent())
                .forEach(c -> pieces.add(ofContradiction(c, weights)));
        StatementConflict.of(car.visit().standing(), zone.id()).stream()
                .map(StatementConflict::sentence)
                .forEach(sentence -> pieces.add(Piece.found(weights.conflict(), sentence, sentence)));
        pieces.removeIf(piece -> piece.weight() <= 0);
        pieces.sort(Comparator.comparingInt(Piece::weight).reversed());
        return new ZonePieces(zone, List.copyOf(pieces), refinished, structural);
    }

    private static boolean isTheMatter(Statement statement) {
        boolean foreign = statement.is(Origin.REPLACED) || statement.is(Origin.DOES_NOT_BELONG);
        return foreign
                || statement
                        .what()
                        .condition()
                        .filter(condition -> !NOT_THE_MATTER.contains(condition))
                        .isPresent();
    }

    static Piece ofContradiction(Contradiction contradiction, MatterWeights weights) {
        String sentence = contradiction.sentence();
        return Piece.found(weights.contradictions().getOrDefault(contradiction.kind(), 0), sentence, sentence);
    }

    /** What is only told or guessed, or not established, weighs half. */
    private static Piece ofStatement(Statement statement, MatterWeights weights) {
        int weight = statement.severity().map(s -> weights.severities().get(s)).orElse(0);
        boolean weak = statement
                        .basis()
                        .filter(b -> b == Basis.TOLD || b == Basis.NOT_ESTABLISHED)
                        .isPresent()
                || statement.details().saidBy() != SaidBy.INSPECTOR
                || statement.details().certainty().equals(Optional.of(Certainty.GUESS));
        String basis = statement.basis().map(Worded::word).orElse("basis not stated");
        String severity = statement.severity().map(Severity::word).orElse("");
        return new Piece(
                weak ? weight / 2 : weight,
                statement.text(),
                capital(basis) + (severity.isEmpty() ? "" : ", " + severity) + ": " + statement.text(),
                true,
                false);
    }

    private static void addNeed(ZoneRust rust, MatterWeights weights, List<Piece> pieces) {
        rust.need().ifPresent(need -> {
            String reasons = String.join("; ", rust.advice().reasons()).replace(" mm2", "\u2009mm\u00b2");
            String sentence = "Repair need " + need.word() + (reasons.isEmpty() ? "" : ": " + reasons) + ".";
            pieces.add(Piece.found(weights.needs().get(need), sentence, sentence));
        });
        for (RustByEye seen : rust.byEye()) {
            seen.advice().need().ifPresent(need -> {
                String sentence = "Repair need by eye, not measured, " + need.word() + ": "
                        + seen.statement().text();
                pieces.add(Piece.found(weights.needs().get(need), sentence, sentence));
            });
        }
    }

    private static boolean isRefinished(ZoneHistory history, MatterWeights weights) {
        EvidenceStrength strength = history.strength();
        return history.refinishScore() >= weights.likelyScore()
                && strength.forRefinishing()
                && strength.band().compareTo(EvidenceStrength.Band.MODERATE) >= 0;
    }

    private static void addLikelihood(
            ZoneHistory history, boolean refinished, MatterWeights weights, List<Piece> pieces) {
        String figures = "refinish likelihood " + ZoneHistory.shown(history.refinishScore()) + " (band "
                + history.shownBand() + "), repair likelihood " + ZoneHistory.shown(history.repairScore()) + ", of 100";
        if (history.repairScore() >= weights.likelyScore()) {
            pieces.add(Piece.found(
                    weights.filler(), "Likely repaired with body filler.", "Likely repaired: " + figures + "."));
        } else if (refinished) {
            pieces.add(new Piece(
                    weights.refinished(), "Likely refinished.", "Likely refinished: " + figures + ".", false, true));
        }
    }

    /** The inspector's own heaviest sentence, if it weighs at least as a major one told; else the heaviest piece. */
    String headline(MatterWeights weights) {
        int least = weights.severities().get(Severity.MAJOR) / 2;
        return pieces.stream()
                .filter(piece -> piece.typed() && piece.weight() >= least)
                .findFirst()
                .orElse(pieces.get(0))
                .headline();
    }

    /** Weight of all that is not refinishing alone. */
    int weightBesideRefinish(MatterWeights weights) {
        return pieces.stream()
                .filter(piece -> !piece.coatOnly())
                .mapToInt(Piece::weight)
                .max()
                .orElse(0);
    }

    private static String capital(String word) {
        return word.substring(0, 1).toUpperCase(Locale.US) + word.substring(1);
    }
}
