package quarterlight.cli.evidence;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;
import quarterlight.cli.call.CallRefused;
import quarterlight.cli.call.CliContext;
import quarterlight.cli.call.CliOptions;
import quarterlight.cli.call.Exit;
import quarterlight.cli.call.OwnLists;
import quarterlight.cli.call.Verb;
import quarterlight.edit.EditRefused;
import quarterlight.edit.list.WalkHabitStore;
import quarterlight.edit.row.RowEdits;
import quarterlight.edit.row.RowKinds;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitProblem;
import quarterlight.table.CsvFile;
import quarterlight.table.RowKind;
import quarterlight.table.TableRead;
import quarterlight.table.TableRead.Refused;
import quarterlight.table.TableSource;
import quarterlight.table.TableUnreadable;
import quarterlight.table.cell.RowContext;
import quarterlight.table.json.JsonObject;
import quarterlight.table.text.Nearest;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.reading.Reading;
import quarterlight.visit.row.RecordKind;

/** {@code add}: takes in the rows of a CSV file, all of them or with {@code --keep-good} the good ones. */
public final class AddVerb implements Verb {
    private static final String SHEET = "--sheet";
    private static final String KEEP_GOOD = "--keep-good";

    private final CliContext around;

    public AddVerb(CliContext around) {
        this.around = around;
    }

    @Override
    public CommandSpec spec() {
        CommandSpec spec = CliOptions.verb(
                        "add",
                        "add rows from a CSV file or a sheet of a workbook (.xlsx); the kinds are "
                                + String.join(", ", RowKinds.words()))
                .addPositional(PositionalParamSpec.builder()
                        .index("0")
                        .paramLabel("KIND")
                        .type(String.class)
                        .arity("1")
                        .required(true)
                        .description("what the rows are")
                        .build())
                .addPositional(CliOptions.visit(1))
                .addPositional(CliOptions.path(2, "FILE", "the table; - for standard input"))
                .addOption(OptionSpec.builder(KEEP_GOOD)
                        .type(boolean.class)
                        .description("add the good rows even if others are refused")
                        .build());
        spec.addOption(CliOptions.text(SHEET, "NAME", "the sheet of a workbook, where several hold something"));
        return AddForeign.options(spec).addOption(CliOptions.json());
    }

    @Override
    public int run(ParseResult call) throws CallRefused, EditRefused, VisitProblem, IOException {
        String word = call.matchedPositionalValue(0, "");
        RowKind<?> kind = RowKinds.find(word)
                .orElseThrow(() -> new CallRefused("there is no kind of table \"" + word + "\""
                        + Nearest.hint(word, RowKinds.words()) + "; all are "
                        + String.join(", ", RowKinds.words())));
        if (AddForeign.isAsked(call)) {
            RowKind<Reading> readings = RowKind.of(RecordKind.READINGS);
            return add(readings, call, visit -> new AddForeign(around).read(call, word, visit));
        }
        return own(kind, call);
    }

    /** Where the rows come from. */
    private interface Rows<T> {
        TableRead<T> of(VisitRecord visit) throws CallRefused, EditRefused, IOException;
    }

    private <T> int own(RowKind<T> kind, ParseResult call) throws CallRefused, EditRefused, VisitProblem, IOException {
        return add(kind, call, visit -> read(call, kind, visit));
    }

    private <T> int add(RowKind<T> kind, ParseResult call, Rows<T> rows)
            throws CallRefused, EditRefused, VisitProblem, IOException {
        boolean json = CliOptions.isJson(call);
        try (VisitStore store = around.visits().forEditing(CliOptions.pathAt(call, 1))) {
            VisitRecord before = store.read();
            TableRead<T> read = rows.of(before);
            boolean keep = read.refused().isEmpty() || call.hasMatchedOption(KEEP_GOOD) && read.usable();
            List<T> values = keep ? read.values() : List.of();
            RowEdits.Added added =
                    values.isEmpty() ? new RowEdits.Added(List.of(), 0) : new RowEdits(store).add(kind.kind(), values);
            boolean pinned = !added.ids().isEmpty() && kind.kind().equals(RecordKind.PINS);
            List<String> remarks = pinned ? new WalkHabitStore(around.settings()).learn(store.read()) : List.of();
            if (json) {
                around.console()
                        .print(document(added, read.refused())
                                .put("remarks", remarks)
                                .text());
            } else if (keep) {
                around.console().print(report(kind, added));
                remarks.forEach(remark -> around.console().print(remark + "\n"));
            }
            if (!read.refused().isEmpty()) {
                around.console().complain(refusal(read, values.size(), keep));
            }
            return read.refused().isEmpty() ? Exit.DONE : keep ? Exit.NOT_ALL : Exit.UNUSABLE;
        }
    }

    private <T> TableRead<T> read(ParseResult call, RowKind<T> kind, VisitRecord visit)
            throws CallRefused, IOException {
        Path file = around.console().in().file(CliOptions.pathAt(call, 2));
        Path folder = CliOptions.pathAt(call, 1);
        try {
            return CsvFile.read(
                    TableSource.of(file, sheet(call)),
                    kind,
                    RowContext.of(visit, around.zones().get(), OwnLists.patterns(around, folder)));
        } catch (TableUnreadable e) {
            throw new CallRefused(e.getMessage());
        }
    }

    /** The sheet of a workbook that the call names. */
    static Optional<String> sheet(ParseResult call) {
        return Optional.ofNullable(call.matchedOptionValue(SHEET, null));
    }

    private static JsonObject document(RowEdits.Added added, List<Refused> refused) {
        return new JsonObject()
                .put("added", added.ids().size())
                .put("equal_to_earlier_rows", added.equalToOlder())
                .put(
                        "refused",
                        refused.stream()
                                .map(row -> new JsonObject()
                                        .put("line", row.line())
                                        .put("column", row.column())
                                        .put("reason", row.reason()))
                                .toList());
    }

    private static <T> String report(RowKind<T> kind, RowEdits.Added added) {
        String remark =
                RowEdits.remark(kind.kind(), added).map(text -> text + "\n").orElse("");
        return "Added " + kind.kind().count(added.ids().size()) + ".\n" + remark;
    }

    private static String refusal(TableRead<?> read, int added, boolean kept) {
        String first = read.refused().get(0).sentence(read.file());
        int count = read.refused().size();
        String rest = count == 1 ? "" : " (the first of " + count + " refused rows; --json shows all)";
        return first + rest + (kept ? "; the other rows were added, " + added + " in all" : "; nothing was added");
    }
}
