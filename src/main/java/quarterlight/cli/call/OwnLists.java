package quarterlight.cli.call;

import java.nio.file.Path;
import quarterlight.coverage.CoverageRules;
import quarterlight.coverage.TrialList;
import quarterlight.edit.list.VisitLists;
import quarterlight.edit.pages.VisitWork;
import quarterlight.findings.Findings;
import quarterlight.marks.code.DatePatterns;
import quarterlight.table.TableUnreadable;
import quarterlight.table.list.CoverageTable;
import quarterlight.table.list.DatePatternTable;
import quarterlight.table.list.TrialTable;
import quarterlight.visit.VisitRecord;

/** What the user's own lists, which lie beside the log in the folder of settings, add to what the program carries. */
public final class OwnLists {
    private OwnLists() {}

    static Path folder(CliContext around) {
        return around.log().toAbsolutePath().getParent();
    }

    public static DatePatterns patterns(CliContext around, Path visit) throws CallRefused {
        try {
            return DatePatternTable.load(VisitLists.folder(visit, folder(around)));
        } catch (TableUnreadable e) {
            throw new CallRefused(e.getMessage());
        }
    }

    public static TrialList trials(CliContext around, Path visit) throws CallRefused {
        try {
            return TrialTable.load(VisitLists.folder(visit, folder(around)));
        } catch (TableUnreadable e) {
            throw new CallRefused(e.getMessage());
        }
    }

    public static CoverageRules coverage(CliContext around, Path visit) throws CallRefused {
        try {
            return CoverageTable.load(VisitLists.folder(visit, folder(around)));
        } catch (TableUnreadable e) {
            throw new CallRefused(e.getMessage());
        }
    }

    /** What a person must know of the lists by which a visit is judged; empty if they are those of this computer. */
    public static String remark(Path visit) {
        return VisitLists.cameWith(visit)
                ? "By the lists that came with the visit (" + visit.resolve(VisitLists.FOLDER)
                        + "), not by those of this computer.\n"
                : "";
    }

    public static VisitWork work(CliContext around) {
        return new VisitWork(around.zones().get(), around.areas()::of, folder(around));
    }

    /** All that can be worked out of a visit that lies in a folder. */
    public static Findings findings(CliContext around, Path folder, VisitRecord visit) throws CallRefused {
        try {
            return work(around).findings(folder, visit);
        } catch (TableUnreadable e) {
            throw new CallRefused(e.getMessage());
        }
    }
}
