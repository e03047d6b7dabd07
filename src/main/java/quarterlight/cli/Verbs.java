package quarterlight.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import quarterlight.cli.analysis.CompareVerb;
import quarterlight.cli.analysis.DatesVerb;
import quarterlight.cli.analysis.FindingsVerb;
import quarterlight.cli.analysis.GapsVerb;
import quarterlight.cli.analysis.HistoryVerb;
import quarterlight.cli.analysis.RustVerb;
import quarterlight.cli.analysis.ZonesVerb;
import quarterlight.cli.call.CliContext;
import quarterlight.cli.call.CliOptions;
import quarterlight.cli.call.Verb;
import quarterlight.cli.delivery.ArchiveVerb;
import quarterlight.cli.delivery.AuditVerb;
import quarterlight.cli.delivery.ExportVerb;
import quarterlight.cli.delivery.KeyVerb;
import quarterlight.cli.delivery.PagesVerb;
import quarterlight.cli.delivery.RestoreVerb;
import quarterlight.cli.delivery.SheetVerb;
import quarterlight.cli.demo.DemoVerb;
import quarterlight.cli.evidence.AddVerb;
import quarterlight.cli.evidence.ClockVerb;
import quarterlight.cli.evidence.IntakeVerb;
import quarterlight.cli.evidence.ListenVerb;
import quarterlight.cli.evidence.NewVerb;
import quarterlight.cli.evidence.PhotosVerb;
import quarterlight.cli.evidence.SetVerb;
import quarterlight.cli.evidence.SuggestVerb;
import quarterlight.cli.evidence.WordsVerb;
import quarterlight.cli.library.BackupVerb;
import quarterlight.cli.library.VisitsVerb;
import quarterlight.cli.shell.CompletionVerb;
import quarterlight.cli.shell.ManVerb;
import quarterlight.cli.shell.SchemasVerb;

/** Every verb, in the order of the job. */
final class Verbs {
    /** The verb of a call without one. */
    static final String WITHOUT_A_WORD = "desk";

    static final List<String> NAMES = List.of(
            "desk",
            "demo",
            "new",
            "set",
            "intake",
            "clock",
            "photos",
            "add",
            "audit",
            "zones",
            "history",
            "rust",
            "findings",
            "dates",
            "suggest",
            "gaps",
            "sheet",
            "words",
            "listen",
            "pages",
            "compare",
            "archive",
            "key",
            "restore",
            "export",
            "diagram",
            "lists",
            "visits",
            "backup",
            "schemas",
            "completion",
            "man");

    private Verbs() {}

    /** The verbs that a call needs, by name: the one it begins with, else all. Laying out the others would take longer than many a call. */
    static Map<String, Verb> of(CliContext around, String... call) {
        Map<String, Verb> verbs = new LinkedHashMap<>();
        String first = call.length == 0 ? WITHOUT_A_WORD : call[0];
        List<String> wanted = NAMES.contains(first) ? List.of(first) : NAMES;
        wanted.forEach(name -> verbs.put(name, named(name, around)));
        return verbs;
    }

    private static Map<String, Verb> all(CliContext around) {
        Map<String, Verb> verbs = new LinkedHashMap<>();
        NAMES.forEach(name -> verbs.put(name, named(name, around)));
        return verbs;
    }

    /** The command line of these verbs. */
    static CommandLine line(Map<String, Verb> verbs) {
        CommandSpec root = CliOptions.verb("quarterlight", "The evidence bench of an independent car inspector.");
        root.addOption(OptionSpec.builder("-V", "--version")
                .versionHelp(true)
                .description("print the version and build")
                .build());
        root.usageMessage().footer("", "For more, use VERB --help or help VERB.");
        CommandLine line = new CommandLine(root);
        verbs.forEach((name, verb) -> line.addSubcommand(name, verb.spec()));
        line.setUsageHelpWidth(110);
        line.setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF));
        return line;
    }

    private static Verb named(String name, CliContext around) {
        return switch (name) {
            case "desk" -> new DeskVerb(around);
            case "demo" -> new DemoVerb(around);
            case "new" -> new NewVerb(around);
            case "set" -> new SetVerb(around);
            case "intake" -> new IntakeVerb(around);
            case "clock" -> new ClockVerb(around);
            case "photos" -> new PhotosVerb(around);
            case "add" -> new AddVerb(around);
            case "audit" -> new AuditVerb(around);
            case "zones" -> new ZonesVerb(around);
            case "history" -> new HistoryVerb(around);
            case "rust" -> new RustVerb(around);
            case "findings" -> new FindingsVerb(around);
            case "dates" -> new DatesVerb(around);
            case "suggest" -> new SuggestVerb(around);
            case "gaps" -> new GapsVerb(around);
            case "sheet" -> new SheetVerb(around);
            case "words" -> new WordsVerb(around);
            case "listen" -> new ListenVerb(around);
            case "pages" -> new PagesVerb(around);
            case "compare" -> new CompareVerb(around);
            case "archive" -> new ArchiveVerb(around);
            case "key" -> new KeyVerb(around);
            case "restore" -> new RestoreVerb(around);
            case "export" -> new ExportVerb(around);
            case "diagram" -> new DiagramVerb(around);
            case "lists" -> new ListsVerb(around);
            case "visits" -> new VisitsVerb(around);
            case "backup" -> new BackupVerb(around);
            case "schemas" -> new SchemasVerb(around);
            case "completion" -> new CompletionVerb(around, () -> line(all(around)));
            case "man" -> new ManVerb(around, () -> line(all(around)));
            default -> throw new IllegalArgumentException(name + " is no verb");
        };
    }
}
