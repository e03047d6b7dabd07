package quarterlight.cli.analysis;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import quarterlight.cli.call.CallRefused;
import quarterlight.cli.call.CliContext;
import quarterlight.cli.call.CliOptions;
import quarterlight.cli.call.Exit;
import quarterlight.cli.call.OwnLists;
import quarterlight.cli.call.Verb;
import quarterlight.cli.compare.ComparisonJson;
import quarterlight.cli.compare.ComparisonText;
import quarterlight.cli.delivery.PagesVerb;
import quarterlight.compare.matter.Care;
import quarterlight.compare.said.ComparisonSheet;
import quarterlight.diagram.file.DiagramRefused;
import quarterlight.edit.compare.Candidate;
import quarterlight.edit.compare.ComparisonChoice;
import quarterlight.edit.compare.ComparisonWork;
import quarterlight.language.Language;
import quarterlight.page.print.Paper;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitProblem;
import quarterlight.table.TableUnreadable;
import quarterlight.units.Numerals;
import quarterlight.units.ThicknessUnit;
import quarterlight.units.Worded;

/** {@code compare}: two to six cars side by side. */
public final class CompareVerb implements Verb {
    private static final String OUT = "--out";
    private static final String CARE = "--care";
    private static final String DETAIL = "--detail";
    private static final String UNIT = "--unit";
    private static final String PAPER = "--paper";

    private final CliContext around;

    public CompareVerb(CliContext around) {
        this.around = around;
    }

    @Override
    public CommandSpec spec() {
        return CliOptions.verb("compare", "compare two to six cars side by side")
                .addPositional(CliOptions.paths(0, "VISIT", "folders of two to six visits: A, B and so on"))
                .addOption(CliOptions.pathOption(OUT, "FOLDER", "also write compare.pdf and compare.html there"))
                .addOption(CliOptions.text(
                        CARE,
                        "CONCERN=N,...",
                        "what the buyer cares about, with weights from 0 to " + Care.MAX
                                + ": originality, structure, running and driving, finish, documents; orders"
                                + " matters of one severity"))
                .addOption(CliOptions.text(DETAIL, "A,B", "which two of the cars stand in detail (default: A,B)"))
                .addOption(
                        CliOptions.text(UNIT, "UNIT", "mil or um (default: the one in which most of A was measured)"))
                .addOption(CliOptions.text(
                        PAPER, "PAPER", Worded.words(Paper.class).replace(", ", " or ") + " (default: a4)"))
                .addOption(PagesVerb.language())
                .addOption(CliOptions.json());
    }

    @Override
    public int run(ParseResult call) throws CallRefused, VisitProblem, IOException {
        List<Path> visits = call.matchedPositionalValue(0, List.of());
        if (visits.size() < ComparisonWork.MIN_CARS || visits.size() > ComparisonWork.MAX_CARS) {
            throw new CallRefused("compare: " + Numerals.count(visits.size(), "visit is", "visits are")
                    + " named; name " + ComparisonWork.MIN_CARS + " to " + ComparisonWork.MAX_CARS);
        }
        ComparisonChoice choice = choice(call, visits.size());
        Paper paper = PagesVerb.paper("compare", call.matchedOptionValue(PAPER, Paper.A4.word()));
        Language language = PagesVerb.language("compare", call);
        List<Candidate> cars = candidates(visits);
        ComparisonSheet sheet = sheet(cars, choice);
        List<Path> made = call.hasMatchedOption(OUT)
                ? pages(visits, cars, choice, call.matchedOptionValue(OUT, Path.of("")), paper, language)
                : List.of();
        if (CliOptions.isJson(call)) {
            around.console().print(ComparisonJson.of(sheet).put("made", made).text());
        } else {
            around.console().print(ComparisonText.of(sheet));
            made.forEach(file -> around.console().print("Made " + file + "\n"));
        }
        return Exit.DONE;
    }

    private static ComparisonChoice choice(ParseResult call, int cars) throws CallRefused {
        try {
            Care care = call.hasMatchedOption(CARE) ? Care.parse(call.matchedOptionValue(CARE, "")) : Care.NONE;
            Optional<ThicknessUnit> unit = Optional.empty();
            if (call.hasMatchedOption(UNIT)) {
                String typed = call.matchedOptionValue(UNIT, "");
                unit = Optional.of(ThicknessUnit.said(typed)
                        .orElseThrow(
                                () -> new IllegalArgumentException("\"" + typed + "\" is no unit; take mil or um")));
            }
            int[] detail = detail(call.matchedOptionValue(DETAIL, "A,B"), cars);
            return new ComparisonChoice(care, unit, detail[0], detail[1]);
        } catch (IllegalArgumentException e) {
            throw new CallRefused("compare: " + e.getMessage());
        }
    }

    private static int[] detail(String typed, int cars) {
        String[] letters = typed.strip().toUpperCase(Locale.ROOT).split("\\s*,\\s*");
        char last = (char) ('A' + cars - 1);
        boolean right = letters.length == 2
                && !letters[0].equals(letters[1])
                && List.of(letters).stream()
                        .allMatch(
                                letter -> letter.length() == 1 && letter.charAt(0) >= 'A' && letter.charAt(0) <= last);
        if (!right) {
            throw new IllegalArgumentException(
                    "\"" + typed + "\" names no two of the cars; take two letters from A to " + last + ", as in A,B");
        }
        return new int[] {letters[0].charAt(0) - 'A', letters[1].charAt(0) - 'A'};
    }

    private List<Candidate> candidates(List<Path> visits) throws VisitProblem, CallRefused {
        List<Candidate> cars = new ArrayList<>();
        for (Path visit : visits) {
            try (VisitStore store = around.visits().forReading(visit)) {
                cars.add(new Candidate(
                        visit, OwnLists.findings(around, visit, store.read().forBuyer()), store.logHead()));
            }
        }
        return cars;
    }

    private ComparisonWork work() {
        return new ComparisonWork(OwnLists.work(around));
    }

    private ComparisonSheet sheet(List<Candidate> cars, ComparisonChoice choice) throws CallRefused {
        try {
            return work().sheet(cars, choice);
        } catch (TableUnreadable e) {
            throw new CallRefused(e.getMessage());
        }
    }

    /** Makes the comparison of two visits as pages in a folder. */
    public List<Path> pages(Path visitA, Path visitB, Path out) throws CallRefused, VisitProblem, IOException {
        return pages(candidates(List.of(visitA, visitB)), ComparisonChoice.USUAL, out, Paper.A4);
    }

    /** In a language of their own: what was found is said anew in it. */
    private List<Path> pages(
            List<Path> visits, List<Candidate> cars, ComparisonChoice choice, Path out, Paper paper, Language language)
            throws CallRefused, VisitProblem, IOException {
        if (language == Language.ENGLISH) {
            return pages(cars, choice, out, paper);
        }
        try (Language.Scope spoken = language.inHandUntilClosed()) {
            Objects.requireNonNull(spoken, "spoken");
            return pages(candidates(visits), choice, out, paper);
        }
    }

    private List<Path> pages(List<Candidate> cars, ComparisonChoice choice, Path out, Paper paper)
            throws CallRefused, IOException {
        if (Files.exists(out) && !Files.isDirectory(out)) {
            throw new CallRefused(out + " is a file; name a folder for the pages");
        }
        try {
            return work().pages(cars, choice, out, paper);
        } catch (DiagramRefused | TableUnreadable e) {
            throw new CallRefused(e.getMessage());
        }
    }
}
