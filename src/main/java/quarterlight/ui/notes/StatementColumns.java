package quarterlight.ui.notes;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.ui.kit.widget.FactTable;
import quarterlight.ui.kit.widget.Weight;
import quarterlight.units.Worded;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.statement.SaidBy;
import quarterlight.visit.statement.SaidSize;
import quarterlight.visit.statement.Severity;
import quarterlight.visit.statement.Statement;
import quarterlight.visit.statement.StatementDetails;

/** The columns in which statements stand. Event thread only. */
final class StatementColumns {
    private static final int LETTER_PX = 8;
    private static final int SIGN_PX = 26;

    private final Texts texts;
    private final OpenVisit visit;

    StatementColumns(Texts texts, OpenVisit visit) {
        this.texts = Objects.requireNonNull(texts, "texts");
        this.visit = Objects.requireNonNull(visit, "visit");
    }

    List<FactTable.Column<Recorded<Statement>>> of(boolean notLookedAt) {
        List<FactTable.Column<Recorded<Statement>>> columns = new ArrayList<>();
        columns.add(column("zone", 150, row -> place(row.value())));
        if (notLookedAt) {
            columns.add(column(
                    "text",
                    260,
                    row -> isWithdrawn(row)
                            ? withdrawn(row.value().text())
                            : row.value().text()));
        } else {
            columns.add(column("what", 118, row -> isWithdrawn(row) ? withdrawn(what(row)) : what(row)));
            columns.add(column("text", 206, row -> row.value().text()));
            columns.add(column(
                            "severity",
                            wide("severity", Stream.of(Severity.values()).map(Worded::said)),
                            row -> row.value().severity().map(Worded::said).orElse(""))
                    .weighed(row ->
                            row.value().severity().map(StatementColumns::weight).orElse(Weight.PLAIN)));
            columns.add(column(
                    "basis", 84, row -> row.value().basis().map(Worded::said).orElse("")));
        }
        columns.add(column(
                "also", wide("also", Stream.of()), row -> also(row.value().details())));
        columns.add(column("photo", 76, this::photos));
        return columns;
    }

    /** As wide as the longest word that may stand there, with its sign: "grave" takes half the room of "schwerwiegend". */
    private int wide(String name, Stream<String> words) {
        int longest = words.mapToInt(word -> LETTER_PX * word.length() + SIGN_PX)
                .max()
                .orElse(0);
        return Math.max(
                longest, LETTER_PX * (1 + texts.get("notes.column." + name).length()));
    }

    /** The gravest first; what is withdrawn or says no severity comes last. */
    Comparator<Recorded<Statement>> graveFirst() {
        return Comparator.comparing(
                row -> isWithdrawn(row)
                        ? -1
                        : row.value().severity().map(Severity::ordinal).orElse(-1),
                Comparator.reverseOrder());
    }

    private static Weight weight(Severity severity) {
        return switch (severity) {
            case GRAVE -> Weight.GRAVE;
            case MAJOR -> Weight.CAUTION;
            case MINOR -> Weight.PLAIN;
            case NOTE -> Weight.QUIET;
        };
    }

    private FactTable.Column<Recorded<Statement>> column(
            String name, int width, Function<Recorded<Statement>, String> words) {
        return new FactTable.Column<>(texts.get("notes.column." + name), width, words);
    }

    /** Whether a later statement takes this one back. */
    boolean isWithdrawn(Recorded<Statement> row) {
        return visit.visit().isWithdrawn(row.id());
    }

    private String withdrawn(String words) {
        return texts.get("notes.withdrawn", words);
    }

    private static String what(Recorded<Statement> row) {
        return row.value().what().words();
    }

    private String place(Statement statement) {
        String zone = visit.label(statement.zone());
        return statement.details().part().map(part -> zone + ", " + part).orElse(zone);
    }

    private String also(StatementDetails details) {
        return Stream.of(
                        details.size().map(SaidSize::said).stream(),
                        details.certainty().map(Worded::said).stream(),
                        Stream.of(details.saidBy())
                                .filter(one -> one != SaidBy.INSPECTOR)
                                .map(one -> texts.get("notes.said.by", one.said())),
                        Stream.of(texts.get("notes.private")).filter(word -> details.confidential()),
                        Stream.of(texts.get("notes.withdraws"))
                                .filter(word -> details.withdraws().isPresent()))
                .flatMap(words -> words)
                .collect(Collectors.joining(", "));
    }

    private String photos(Recorded<Statement> row) {
        return row.value().photos().stream()
                .flatMap(id -> visit.visit().photo(id).stream())
                .map(one -> one.file().name())
                .collect(Collectors.joining(", "));
    }
}
