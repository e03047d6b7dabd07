package quarterlight.cli.shell;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;
import quarterlight.cli.call.CallRefused;
import quarterlight.cli.call.CliContext;
import quarterlight.cli.call.CliOptions;
import quarterlight.cli.call.Exit;
import quarterlight.cli.call.Verb;
import quarterlight.cli.text.CliText;
import quarterlight.cli.text.TextTable;
import quarterlight.edit.EditRefused;
import quarterlight.edit.export.Targets;
import quarterlight.file.StagingFolder;
import quarterlight.table.json.JsonObject;
import quarterlight.table.json.JsonSchemas;
import quarterlight.table.text.Nearest;

/** {@code schemas}: the JSON Schemas of every document that the program writes. */
public final class SchemasVerb implements Verb {
    private static final String OUT = "--out";

    private final CliContext around;

    public SchemasVerb(CliContext around) {
        this.around = Objects.requireNonNull(around, "around");
    }

    @Override
    public CommandSpec spec() {
        return CliOptions.verb(
                        "schemas",
                        "list the JSON Schemas (2020-12) of every document that is written, print one, or write all of"
                                + " them")
                .addPositional(PositionalParamSpec.builder()
                        .index("0")
                        .paramLabel("NAME")
                        .type(String.class)
                        .arity("0..1")
                        .required(false)
                        .description("the one to print: a verb or a form of export")
                        .completionCandidates(JsonSchemas.names())
                        .build())
                .addOption(CliOptions.pathOption(OUT, "FOLDER", "write all of them there; must not exist yet"))
                .addOption(CliOptions.json());
    }

    @Override
    public int run(ParseResult call) throws CallRefused, EditRefused, IOException {
        Optional<String> name = Optional.ofNullable(call.matchedPositionalValue(0, null));
        Optional<Path> out = Optional.ofNullable(call.matchedOptionValue(OUT, null));
        if (name.isPresent()) {
            if (out.isPresent()) {
                throw new CallRefused("schemas: " + OUT + " writes all of them; leave out the name, or " + OUT);
            }
            around.console().print(JsonSchemas.text(known(name.get())));
            return Exit.DONE;
        }
        if (out.isPresent()) {
            write(out.get());
        }
        around.console()
                .print(
                        CliOptions.isJson(call)
                                ? document(out).text()
                                : out.map(SchemasVerb::made).orElseGet(SchemasVerb::list));
        return Exit.DONE;
    }

    private static String known(String name) throws CallRefused {
        List<String> names = JsonSchemas.names();
        if (!names.contains(name)) {
            throw new CallRefused("schemas: there is no schema \"" + name + "\"" + Nearest.hint(name, names)
                    + "; they are " + String.join(", ", names));
        }
        return name;
    }

    private static void write(Path target) throws EditRefused, IOException {
        try (StagingFolder unfinished = Targets.beside(target)) {
            Path made = Files.createDirectory(unfinished.folder().resolve("schemas"));
            for (String name : JsonSchemas.names()) {
                Files.writeString(made.resolve(name + JsonSchemas.ENDING), JsonSchemas.text(name));
            }
            Targets.deliver(unfinished, made, target);
        }
    }

    private static JsonObject document(Optional<Path> out) {
        return new JsonObject()
                .put(
                        "schemas",
                        JsonSchemas.names().stream()
                                .map(name -> new JsonObject()
                                        .put("name", name)
                                        .put("title", JsonSchemas.title(name))
                                        .put("file", out.map(folder -> folder.resolve(name + JsonSchemas.ENDING))))
                                .toList());
    }

    private static String made(Path folder) {
        return "Made " + folder + " with " + CliText.count(JsonSchemas.names().size(), "schema", "schemas") + ".\n";
    }

    private static String list() {
        TextTable table = new TextTable().left("name", "of what");
        JsonSchemas.names().forEach(name -> table.row(name, JsonSchemas.title(name)));
        return table.text();
    }
}
