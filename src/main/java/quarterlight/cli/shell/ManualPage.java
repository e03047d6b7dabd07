package quarterlight.cli.shell;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/**
 * The manual page of a command line, in the macros that every reader of manual pages knows (man(7): TH, SH, SS, TP, PP, B, I).
 * <p>A hyphen that is typed is written {@code \-}, and a line that would begin with a control character gets {@code \&} in front; what is not
 * ASCII is written by its code.
 */
final class ManualPage {
    private final StringBuilder out = new StringBuilder();

    private ManualPage() {}

    static String of(CommandLine line, String version) {
        ManualPage page = new ManualPage();
        page.write(line, version);
        return page.out.toString();
    }

    private void write(CommandLine line, String version) {
        CommandSpec root = line.getCommandSpec();
        macro(".TH QUARTERLIGHT 1 \"\" \"" + escaped(version) + "\" \"User Commands\"");
        macro(".SH NAME");
        text(root.name() + " - " + description(root));
        macro(".SH SYNOPSIS");
        macro(".B " + escaped(root.name()));
        text("[VERB [argument ...]] [option ...]");
        macro(".SH DESCRIPTION");
        text("A visit is a folder; every verb but desk runs without a display. Without a verb the desktop opens."
                + " Nothing leaves the computer.");
        macro(".PP");
        text("Where a verb reads a table or a diagram, - stands for standard input.");
        macro(".SH OPTIONS");
        root.options().forEach(this::option);
        macro(".SH VERBS");
        line.getSubcommands().values().stream().map(CommandLine::getCommandSpec).forEach(verb -> verb(root, verb));
        macro(".SH EXIT STATUS");
        entry("0", "done");
        entry("1", "done, but something did not hold: a file refused, a hash off");
        entry("2", "the call or its input is unusable; nothing changed");
        entry("3", "the visit cannot be opened");
        macro(".SH FILES");
        entry("~/.quarterlight", "settings, lists of one's own, and the log");
        macro(".SH ENVIRONMENT");
        entry("QUARTERLIGHT_JAVA_OPTIONS", "options for the Java machine, such as -Xmx2g");
    }

    /** Options that every verb has stand once, above. */
    private void verb(CommandSpec root, CommandSpec verb) {
        macro(".SS " + escaped(synopsis(verb)));
        text(description(verb));
        verb.positionalParameters().forEach(this::parameter);
        verb.options().stream()
                .filter(option -> root.findOption(option.longestName()) == null)
                .forEach(this::option);
    }

    private static String synopsis(CommandSpec verb) {
        return Stream.concat(
                        Stream.of(verb.name()),
                        verb.positionalParameters().stream()
                                .map(parameter -> parameter.required()
                                        ? parameter.paramLabel() + more(parameter)
                                        : "[" + parameter.paramLabel() + more(parameter) + "]"))
                .collect(Collectors.joining(" "));
    }

    private static String more(PositionalParamSpec parameter) {
        return parameter.arity().max() > 1 ? "..." : "";
    }

    private static String description(CommandSpec spec) {
        return String.join(" ", spec.usageMessage().description());
    }

    private void parameter(PositionalParamSpec parameter) {
        entry(parameter.paramLabel(), words(parameter));
    }

    private void option(OptionSpec option) {
        String label = option.arity().max() == 0 ? "" : " " + option.paramLabel();
        entry(String.join(", ", List.of(option.names())) + label, words(option));
    }

    private static String words(ArgSpec argument) {
        return String.join(" ", argument.description())
                + (argument.required() && argument.isOption() ? " (required)" : "");
    }

    private void entry(String name, String meaning) {
        macro(".TP");
        macro(".B " + escaped(name));
        text(meaning);
    }

    private void macro(String line) {
        out.append(line).append('\n');
    }

    private void text(String words) {
        String line = escaped(words.replaceAll("\\s+", " ").strip());
        macro((line.startsWith(".") || line.startsWith("'") ? "\\&" : "") + line);
    }

    private static String escaped(String text) {
        String plain = text.replace("\\", "\\e").replace("-", "\\-").replace("\"", "\\(dq");
        StringBuilder ascii = new StringBuilder();
        plain.codePoints().forEach(c -> ascii.append(c < 0x80 ? Character.toString(c) : String.format("\\[u%04X]", c)));
        return ascii.toString();
    }
}
