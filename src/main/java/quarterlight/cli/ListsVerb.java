package quarterlight.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
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
import quarterlight.cli.call.Verb;
import quarterlight.cli.text.StandardInput;
import quarterlight.cli.text.TextTable;
import quarterlight.edit.EditRefused;
import quarterlight.edit.export.Targets;
import quarterlight.edit.list.ListBundle;
import quarterlight.edit.list.UserLists;
import quarterlight.file.DurableFiles;
import quarterlight.table.TableUnreadable;
import quarterlight.table.json.JsonObject;
import quarterlight.table.list.UserList;
import quarterlight.units.Worded;

/** {@code lists}: what visits must bring, functions to try and date patterns, the program's or one's own. */
final class ListsVerb implements Verb {
    private static final String TAKE = "--take";
    private static final String SHIPPED = "--shipped";
    private static final String EXPORT = "--export";
    private static final String IMPORT = "--import";

    private final CliContext around;

    ListsVerb(CliContext around) {
        this.around = around;
    }

    @Override
    public CommandSpec spec() {
        return CliOptions.verb(
                        "lists",
                        "lists you can replace: " + Worded.words(UserList.class)
                                + "; with a list's name, its rows as CSV")
                .addPositional(PositionalParamSpec.builder()
                        .index("0")
                        .paramLabel("NAME")
                        .type(String.class)
                        .arity("0..1")
                        .required(false)
                        .description("which list")
                        .build())
                .addOption(CliOptions.pathOption(TAKE, "FILE.csv", "use this file as your list; - for standard input"))
                .addOption(CliOptions.pathOption(
                        EXPORT, "FILE", "write all lists of your own into one file, for another computer; - prints it"))
                .addOption(CliOptions.pathOption(
                        IMPORT,
                        "FILE",
                        "use the lists of such a file; yours are kept next to them, sentences are joined"))
                .addOption(OptionSpec.builder(SHIPPED)
                        .type(boolean.class)
                        .description("go back to the built-in list; your file is kept next to it")
                        .build())
                .addOption(CliOptions.json());
    }

    @Override
    public int run(ParseResult call) throws CallRefused, EditRefused, IOException {
        if (call.hasMatchedOption(EXPORT) || call.hasMatchedOption(IMPORT)) {
            return bundle(call);
        }
        UserLists lists = new UserLists(around.settings());
        Optional<String> name = Optional.ofNullable(call.matchedPositionalValue(0, null));
        boolean take = call.hasMatchedOption(TAKE);
        boolean shipped = call.hasMatchedOption(SHIPPED);
        if (take && shipped || (take || shipped) && name.isEmpty()) {
            throw new CallRefused("name one list and either " + TAKE + " or " + SHIPPED + "; the lists are "
                    + Worded.words(UserList.class));
        }
        if (name.isEmpty()) {
            show(call, lists, Arrays.asList(UserList.values()));
            return Exit.DONE;
        }
        UserList list = Worded.find(UserList.class, name.get())
                .orElseThrow(() -> new CallRefused(
                        "there is no list \"" + name.get() + "\"; they are " + Worded.words(UserList.class)));
        try {
            if (take) {
                lists.take(list, around.console().in().file(call.matchedOptionValue(TAKE, Path.of(""))));
                show(call, lists, List.of(list));
            } else if (shipped) {
                lists.giveUp(list);
                show(call, lists, List.of(list));
            } else {
                rows(call, list, lists);
            }
        } catch (TableUnreadable e) {
            throw new CallRefused(e.getMessage());
        }
        return Exit.DONE;
    }

    private int bundle(ParseResult call) throws CallRefused, EditRefused, IOException {
        if (call.hasMatchedOption(EXPORT) == call.hasMatchedOption(IMPORT)
                || call.hasMatchedOption(TAKE)
                || call.hasMatchedOption(SHIPPED)
                || call.hasMatchedPositional(0)) {
            throw new CallRefused("lists: " + EXPORT + " and " + IMPORT + " stand alone, for all lists of your own");
        }
        ListBundle bundle = new ListBundle(around.settings());
        List<String> names;
        if (call.hasMatchedOption(IMPORT)) {
            names = bundle.take(around.console().in().file(call.matchedOptionValue(IMPORT, Path.of(""))));
        } else {
            Path target = call.matchedOptionValue(EXPORT, Path.of(""));
            if (StandardInput.isMeant(target)) {
                around.console().print(bundle.text());
                return Exit.DONE;
            }
            Targets.requireFree(target);
            DurableFiles.text(target, bundle.text());
            names = bundle.names();
        }
        if (CliOptions.isJson(call)) {
            around.console().print(new JsonObject().put("files", names).text());
        } else {
            String what = call.hasMatchedOption(IMPORT) ? "Taken: " : "Written: ";
            around.console()
                    .print(
                            names.isEmpty()
                                    ? "There are no lists of your own.\n"
                                    : what + String.join(", ", names) + ".\n");
        }
        return Exit.DONE;
    }

    private void show(ParseResult call, UserLists lists, List<UserList> shown) {
        if (CliOptions.isJson(call)) {
            around.console()
                    .print(new JsonObject()
                            .put(
                                    "lists",
                                    shown.stream()
                                            .map(list -> document(list, lists))
                                            .toList())
                            .text());
            return;
        }
        TextTable table = new TextTable().left("list", "in use", "file of one's own");
        shown.forEach(list -> table.row(
                list.word(),
                lists.isOwn(list) ? "one's own" : "the program's",
                lists.file(list).toString()));
        around.console().print(table.text());
    }

    private static JsonObject document(UserList list, UserLists lists) {
        return new JsonObject()
                .put("list", list.word())
                .put("own", lists.isOwn(list))
                .put("file", lists.file(list).toString());
    }

    private void rows(ParseResult call, UserList list, UserLists lists) throws TableUnreadable {
        List<List<String>> cells = lists.cells(list);
        if (!CliOptions.isJson(call)) {
            around.console().print(list.text(cells));
            return;
        }
        around.console()
                .print(document(list, lists)
                        .put("rows", cells.stream().map(row -> row(list, row)).toList())
                        .text());
    }

    private static JsonObject row(UserList list, List<String> cells) {
        JsonObject row = new JsonObject();
        for (int i = 0; i < cells.size(); i++) {
            row.put(list.columns().get(i), Optional.of(cells.get(i)).filter(cell -> !cell.isEmpty()));
        }
        return row;
    }
}
