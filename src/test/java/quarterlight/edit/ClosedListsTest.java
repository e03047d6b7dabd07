package quarterlight.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import quarterlight.car.FinishProfile;
import quarterlight.car.Substrate;
import quarterlight.car.body.BodyStyle;
import quarterlight.car.body.Construction;
import quarterlight.car.body.DriveSide;
import quarterlight.car.body.EnginePlace;
import quarterlight.coverage.EvidenceKind;
import quarterlight.coverage.TrialGroup;
import quarterlight.coverage.TrialNature;
import quarterlight.table.list.UserList;
import quarterlight.units.ThicknessUnit;
import quarterlight.units.Worded;
import quarterlight.visit.ReportLength;
import quarterlight.visit.annotation.NoteShape;
import quarterlight.visit.annotation.TraceKind;
import quarterlight.visit.mark.DistanceUnit;
import quarterlight.visit.mark.MarkKind;
import quarterlight.visit.mark.MarkStage;
import quarterlight.visit.mark.OdometerSource;
import quarterlight.visit.photo.CaptureSource;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.reading.GaugeMode;
import quarterlight.visit.reading.GaugeMoment;
import quarterlight.visit.reading.GaugeSurface;
import quarterlight.visit.statement.Basis;
import quarterlight.visit.statement.Certainty;
import quarterlight.visit.statement.Claimant;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Judgment;
import quarterlight.visit.statement.Origin;
import quarterlight.visit.statement.SaidBy;
import quarterlight.visit.statement.Severity;
import quarterlight.visit.trial.SignKind;
import quarterlight.visit.trial.TrialResult;

/** The closed lists of words stand in the document of formats in full, in the order of the program. */
class ClosedListsTest {
    private static final Path DOCUMENT =
            Path.of(System.getProperty("quarterlight.basedir", ".")).resolve("docs/formats.md");
    private static final Pattern ROW = Pattern.compile("\\| (\\w[\\w-]*: \\w+) \\| (`.*`) \\|");

    private static final Pattern LIST = Pattern.compile("### Lists: (\\w+)");
    private static final Pattern LIST_COLUMN = Pattern.compile("\\| `(\\w+)` \\| [^|]+ \\|");

    private static Map<String, List<String>> lists() {
        Map<String, List<String>> lists = new LinkedHashMap<>();
        lists.put("statements: origin", Worded.list(Origin.class));
        lists.put("statements: condition", Worded.list(Condition.class));
        lists.put("statements: severity", Worded.list(Severity.class));
        lists.put("statements: certainty", Worded.list(Certainty.class));
        lists.put("statements: said_by", Worded.list(SaidBy.class));
        lists.put("statements: basis", Worded.list(Basis.class));
        lists.put("claims: by", Worded.list(Claimant.class));
        lists.put("claims: judged", Worded.list(Judgment.class));
        lists.put("odometer: unit", Worded.list(DistanceUnit.class));
        lists.put("odometer: source", Worded.list(OdometerSource.class));
        lists.put("photos: kind", Worded.list(MediaKind.class));
        lists.put("photos: captured_source", Worded.list(CaptureSource.class));
        lists.put("trials: result", Worded.list(TrialResult.class));
        lists.put("signs: sign", Worded.list(SignKind.class));
        lists.put("traces: kind", Worded.list(TraceKind.class));
        lists.put("marks: kind", Worded.list(MarkKind.class));
        lists.put("marks: origin", Worded.list(Origin.class));
        lists.put("marks: stage", Worded.list(MarkStage.class));
        lists.put("readings: mode", Worded.list(GaugeMode.class));
        lists.put("readings: unit", Worded.list(ThicknessUnit.class));
        lists.put("gauge: when", Worded.list(GaugeMoment.class));
        lists.put("gauge: on", Worded.list(GaugeSurface.class));
        lists.put("notes: shape", Worded.list(NoteShape.class));
        lists.put("coverage: evidence", Worded.list(EvidenceKind.class));
        lists.put("lists-trials: group", Worded.list(TrialGroup.class));
        lists.put("lists-trials: answer", Worded.list(TrialNature.class));
        lists.put("lists-coverage: wants", Worded.list(EvidenceKind.class));
        lists.put("facts: style", Worded.list(BodyStyle.class));
        lists.put("facts: construction", Worded.list(Construction.class));
        lists.put("facts: engine", Worded.list(EnginePlace.class));
        lists.put("facts: drive", Worded.list(DriveSide.class));
        lists.put("facts: finish", Worded.list(FinishProfile.class));
        lists.put("facts: substrate", Worded.list(Substrate.class));
        lists.put("facts: report", Worded.list(ReportLength.class));
        return lists;
    }

    @Test
    void everyClosedListIsDocumentedInFull() throws Exception {
        Map<String, List<String>> documented = new LinkedHashMap<>();
        for (String line : Files.readAllLines(DOCUMENT)) {
            Matcher row = ROW.matcher(line);
            if (row.matches()) {
                documented.put(
                        row.group(1),
                        Arrays.stream(row.group(2).split(", "))
                                .map(word -> word.replace("`", ""))
                                .toList());
            }
        }
        assertThat(documented).isEqualTo(lists());
    }

    /** So do the columns of the lists that the user may keep. */
    @Test
    void everyColumnOfAListOfOnesOwnIsDocumented() throws Exception {
        Map<String, List<String>> documented = new LinkedHashMap<>();
        List<String> columns = new ArrayList<>();
        for (String line : Files.readAllLines(DOCUMENT)) {
            Matcher heading = LIST.matcher(line);
            Matcher column = LIST_COLUMN.matcher(line);
            if (heading.matches()) {
                columns = new ArrayList<>();
                documented.put(heading.group(1), columns);
            } else if (line.startsWith("## ")) {
                columns = new ArrayList<>();
            } else if (column.matches()) {
                columns.add(column.group(1));
            }
        }
        Map<String, List<String>> kept = new LinkedHashMap<>();
        for (UserList list : UserList.values()) {
            kept.put(list.word(), list.columns());
        }
        assertThat(documented).isEqualTo(kept);
    }
}
