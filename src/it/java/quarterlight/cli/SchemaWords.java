package quarterlight.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import quarterlight.archive.signature.SignatureCheck;
import quarterlight.archive.signature.SignatureVerdict;
import quarterlight.capture.OffsetSource;
import quarterlight.car.FinishProfile;
import quarterlight.car.Substrate;
import quarterlight.car.View;
import quarterlight.car.ZoneGroup;
import quarterlight.car.body.BodyStyle;
import quarterlight.car.body.Construction;
import quarterlight.car.body.DriveSide;
import quarterlight.car.body.EnginePlace;
import quarterlight.compare.Aspect;
import quarterlight.compare.matter.CellClass;
import quarterlight.compare.matter.Concern;
import quarterlight.coverage.EvidenceKind;
import quarterlight.coverage.TrialGroup;
import quarterlight.coverage.ZoneCoverage;
import quarterlight.diagram.file.DiagramFinding;
import quarterlight.edit.export.ExportForm;
import quarterlight.finish.NextMeasurement;
import quarterlight.finish.history.FinishReason;
import quarterlight.finish.number.JudgedNumber;
import quarterlight.finish.number.LifeStory;
import quarterlight.marks.Contradiction;
import quarterlight.marks.judge.FeatureVerdict;
import quarterlight.marks.judge.NumberMatch;
import quarterlight.marks.judge.Verdict;
import quarterlight.matters.rule.FindingKind;
import quarterlight.matters.rule.MatterRule;
import quarterlight.matters.rule.Safety;
import quarterlight.page.print.Paper;
import quarterlight.rust.need.RepairNeed;
import quarterlight.table.list.UserList;
import quarterlight.thickness.statistics.Outlier;
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
import quarterlight.words.DraftKind;
import quarterlight.words.clash.About;
import quarterlight.words.unsaid.Unsaid;

/** The closed lists of the program by the names that the schemas give them. */
final class SchemaWords {
    private final Map<String, List<String>> lists = new LinkedHashMap<>();

    private SchemaWords() {
        worded(FinishProfile.class, Substrate.class, View.class, ZoneGroup.class, BodyStyle.class, Construction.class);
        worded(DriveSide.class, EnginePlace.class, Aspect.class, CellClass.class, Concern.class, EvidenceKind.class);
        worded(TrialGroup.class, ExportForm.class, JudgedNumber.class, LifeStory.class, Verdict.class);
        worded(FeatureVerdict.class, FindingKind.class, MatterRule.class, Safety.class, Paper.class);
        worded(RepairNeed.class, UserList.class, ThicknessUnit.class, ReportLength.class, NoteShape.class);
        worded(TraceKind.class, DistanceUnit.class, MarkKind.class, MarkStage.class, OdometerSource.class);
        worded(CaptureSource.class, MediaKind.class, GaugeMode.class, GaugeMoment.class, GaugeSurface.class);
        worded(Basis.class, Certainty.class, Claimant.class, Condition.class, Judgment.class, Origin.class);
        worded(SaidBy.class, Severity.class, SignKind.class, TrialResult.class, DraftKind.class, OffsetSource.class);
        put("CoverageState", ZoneCoverage.State.values(), Worded::word);
        put("DiagramFindingKind", DiagramFinding.Kind.values(), Worded::word);
        put("MeasureWhy", NextMeasurement.Why.values(), Worded::word);
        put("ReasonSource", FinishReason.Source.values(), Worded::word);
        put("ContradictionKind", Contradiction.Kind.values(), Worded::word);
        put("MatchState", NumberMatch.State.values(), Worded::word);
        put("OutlierRule", Outlier.Rule.values(), Worded::word);
        put("SignatureState", SignatureCheck.State.values(), SignatureCheck.State::word);
        put("UnsaidKind", Unsaid.Kind.values(), Worded::word);
        put("ClashAbout", About.values(), Worded::word);
        put("Whose", SignatureVerdict.Whose.values(), SignatureVerdict.Whose::word);
    }

    static Map<String, List<String>> all() {
        return new SchemaWords().lists;
    }

    @SafeVarargs
    private void worded(Class<? extends Worded>... types) {
        for (Class<? extends Worded> type : types) {
            put(type.getSimpleName(), type.getEnumConstants(), Worded::word);
        }
    }

    private <E> void put(String name, E[] constants, Function<E, String> word) {
        List<String> words = new ArrayList<>();
        for (E constant : constants) {
            words.add(word.apply(constant));
        }
        lists.put(name, words);
    }
}
