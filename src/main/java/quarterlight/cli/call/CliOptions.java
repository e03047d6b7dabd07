package quarterlight.cli.call;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.TypeConversionException;
import quarterlight.store.folder.VisitFile;

/** The words that several verbs share: the visit, {@code --json}, paths, choices. */
public final class CliOptions {
    private static final String JSON = "--json";
    private static final String HELP = "--help";
    private static final String QUIET = "--quiet";
    /** What the virtual machine puts for bytes it cannot read. */
    private static final char UNREADABLE = '\uFFFD';

    private static final ITypeConverter<Path> PATHS = text -> {
        try {
            if (text.isBlank()) {
                throw new TypeConversionException("a name is empty");
            }
            if (text.indexOf(UNREADABLE) >= 0) {
                throw new TypeConversionException("'" + text
                        + "' has letters that this shell's language setting cannot pass on; run with LC_ALL=C.UTF-8");
            }
            return Path.of(text);
        } catch (InvalidPathException e) {
            throw new TypeConversionException("'" + text + "' is not a file name");
        }
    };

    private static final ITypeConverter<Path> VISITS = text -> VisitFile.folderOf(PATHS.convert(text));

    private CliOptions() {}

    /** A verb with what it is for; {@code --help} comes with it. */
    public static CommandSpec verb(String name, String... description) {
        CommandSpec spec = CommandSpec.create().name(name);
        spec.addOption(OptionSpec.builder("-h", HELP)
                .usageHelp(true)
                .description("show this help")
                .build());
        spec.addOption(OptionSpec.builder("-q", QUIET)
                .type(boolean.class)
                .description("say only what is wrong; the exit status tells the rest")
                .build());
        spec.usageMessage().description(description).abbreviateSynopsis(false).sortOptions(false);
        return spec;
    }

    public static OptionSpec json() {
        return OptionSpec.builder(JSON)
                .type(boolean.class)
                .description("print one JSON document and nothing else")
                .build();
    }

    /** Whether a call that may not even be understood wants its answer as JSON. */
    public static boolean asksForJson(String... call) {
        return Arrays.asList(call).contains(JSON);
    }

    /** Whether a call wants no report: it says so and asks for no document. */
    public static boolean isQuiet(String... call) {
        List<String> words = Arrays.asList(call);
        return (words.contains(QUIET) || words.contains("-q")) && !asksForJson(call) && !words.contains(HELP);
    }

    /**
     * A call as the verbs understand it: {@code help} and {@code help VERB} become the option that says the same, the file of a visit alone, as a file
     * manager hands it over, is opened in the desktop; any other call stays as it is.
     */
    public static String[] spelledOut(Collection<String> verbs, String... call) {
        if (call.length == 1 && VisitFile.isOne(call[0])) {
            return new String[] {"desk", call[0]};
        }
        if (call.length == 0 || !call[0].equals("help")) {
            return call;
        }
        if (call.length == 1) {
            return new String[] {HELP};
        }
        return verbs.contains(call[1]) ? new String[] {call[1], HELP} : new String[] {call[1]};
    }

    public static boolean isJson(ParseResult call) {
        return call.hasMatchedOption(JSON);
    }

    public static PositionalParamSpec path(int index, String label, String description) {
        return PositionalParamSpec.builder()
                .index(Integer.toString(index))
                .paramLabel(label)
                .type(Path.class)
                .converters(PATHS)
                .arity("1")
                .required(true)
                .description(description)
                .build();
    }

    public static PositionalParamSpec optionalPath(int index, String label, String description) {
        return path(index, label, description).toBuilder()
                .arity("0..1")
                .required(false)
                .build();
    }

    public static PositionalParamSpec paths(int index, String label, String description) {
        return PositionalParamSpec.builder()
                .index(index + "..*")
                .paramLabel(label)
                .type(List.class)
                .auxiliaryTypes(Path.class)
                .converters(PATHS)
                .arity("1..*")
                .required(true)
                .description(description)
                .build();
    }

    public static PositionalParamSpec visit() {
        return visit(0);
    }

    /** A visit that is there already, named by its folder or by its file in it. */
    public static PositionalParamSpec visit(int index) {
        return path(index, "VISIT", "folder of the visit").toBuilder()
                .converters(VISITS)
                .build();
    }

    public static PositionalParamSpec optionalVisit(int index, String description) {
        return optionalPath(index, "VISIT", description).toBuilder()
                .converters(VISITS)
                .build();
    }

    public static OptionSpec text(String name, String label, String description) {
        return OptionSpec.builder(name)
                .type(String.class)
                .paramLabel(label)
                .arity("1")
                .description(description)
                .build();
    }

    public static OptionSpec pathOption(String name, String label, String description) {
        return OptionSpec.builder(name)
                .type(Path.class)
                .converters(PATHS)
                .paramLabel(label)
                .arity("1")
                .description(description)
                .build();
    }

    public static Path pathAt(ParseResult call, int index) {
        return call.matchedPositionalValue(index, Path.of(""));
    }
}
