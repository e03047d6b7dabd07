package quarterlight.cli;

import java.util.List;
import java.util.stream.Collectors;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** A call that cannot be understood, as one sentence: what is wrong and where to read more. */
final class UsageMessages {
    private UsageMessages() {}

    static String sentence(ParameterException e) {
        String verb = e.getCommandLine().getCommandSpec().name();
        boolean root = e.getCommandLine().getParent() == null;
        if (e instanceof UnmatchedArgumentException unmatched
                && !unmatched.getUnmatched().isEmpty()) {
            return unmatched(unmatched, root, verb);
        }
        String where = root ? "" : verb + ": ";
        return where + what(e) + "; see " + (root ? "--help" : verb + " --help");
    }

    private static String what(ParameterException e) {
        if (e instanceof MissingParameterException missing) {
            if (missing.getMessage().startsWith("Missing required parameter for option")) {
                return "the option " + ((OptionSpec) missing.getMissing().get(0)).longestName() + " needs a value";
            }
            return missing.getMissing().stream()
                            .map(arg -> arg.isOption() ? ((OptionSpec) arg).longestName() : arg.paramLabel())
                            .collect(Collectors.joining(" and "))
                    + " must be given";
        }
        String message = e.getMessage()
                .strip()
                .replaceFirst("^Invalid value for positional parameter at index \\S+ \\((.*?)\\): ", "$1: ")
                .replaceFirst("^Invalid value for option '(\\S+)' \\(.*?\\): ", "$1: ");
        return message.endsWith(".") ? message.substring(0, message.length() - 1) : message;
    }

    private static String unmatched(UnmatchedArgumentException e, boolean root, String verb) {
        String word = e.getUnmatched().get(0);
        if (root && !word.startsWith("-")) {
            List<String> verbs = e.getCommandLine().getSubcommands().keySet().stream()
                    .sorted()
                    .toList();
            return "there is no verb \"" + word + "\"" + OtherVerbs.hint(word, verbs) + "; --help lists all";
        }
        String kind = word.startsWith("-") ? "there is no option " : "unexpected argument ";
        return (root ? "" : verb + ": ") + kind + "\"" + word + "\"; see " + (root ? "--help" : verb + " --help");
    }
}
