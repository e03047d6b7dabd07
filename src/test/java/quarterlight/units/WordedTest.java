package quarterlight.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import quarterlight.car.FinishProfile;
import quarterlight.car.Substrate;
import quarterlight.car.body.BodyStyle;
import quarterlight.car.body.Construction;
import quarterlight.car.body.DriveSide;
import quarterlight.car.body.EnginePlace;
import quarterlight.coverage.EvidenceKind;
import quarterlight.coverage.TrialGroup;
import quarterlight.edit.library.VisitOrder;
import quarterlight.language.Language;
import quarterlight.marks.judge.FeatureVerdict;
import quarterlight.marks.judge.Verdict;
import quarterlight.rust.need.RepairNeed;
import quarterlight.visit.annotation.NoteShape;
import quarterlight.visit.annotation.TraceKind;
import quarterlight.visit.mark.MarkKind;
import quarterlight.visit.mark.MarkStage;
import quarterlight.visit.mark.OdometerSource;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.reading.GaugeMode;
import quarterlight.visit.reading.GaugeMoment;
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

/** Words of closed lists: files have the English one, people are told it in their language. */
class WordedTest {
    private static final List<Class<? extends Worded>> TOLD = List.of(
            SignKind.class,
            Origin.class,
            Condition.class,
            Severity.class,
            SaidBy.class,
            Basis.class,
            Judgment.class,
            Certainty.class,
            Claimant.class,
            TrialResult.class,
            TrialGroup.class,
            EvidenceKind.class,
            MarkKind.class,
            MarkStage.class,
            OdometerSource.class,
            MediaKind.class,
            NoteShape.class,
            TraceKind.class,
            RepairNeed.class,
            Verdict.class,
            FeatureVerdict.class,
            Substrate.class,
            BodyStyle.class,
            DriveSide.class,
            Construction.class,
            EnginePlace.class,
            FinishProfile.class,
            GaugeMode.class,
            GaugeMoment.class,
            DraftKind.class,
            VisitOrder.class);

    @Test
    void englishIsTheWordItself() {
        constants().forEach(one -> assertThat(one.said()).as(one.name()).isEqualTo(one.word()));
    }

    @Test
    void germanHasAWordForEach() throws IOException {
        String german = Files.readString(Path.of(System.getProperty("quarterlight.basedir", "."))
                .resolve("src/main/resources/quarterlight/language/words_de.properties"));
        constants().forEach(one -> {
            String type = ((Enum<?>) one).getDeclaringClass().getSimpleName();
            String key =
                    "words." + type.toLowerCase(Locale.ROOT) + "." + one.word().replace(' ', '-');
            assertThat(german).contains(key + "=");
        });
    }

    @Test
    void theLanguageInHandSaysIt() throws Exception {
        assertThat(Language.GERMAN.during(Condition.RUSTED_THROUGH::said)).isEqualTo("durchgerostet");
        assertThat(Language.GERMAN.during(Condition.RUSTED_THROUGH::word)).isEqualTo("rusted through");
    }

    private static Stream<Worded> constants() {
        return TOLD.stream()
                .flatMap(type -> Stream.of(Objects.requireNonNull(type.getEnumConstants())))
                .map(Worded.class::cast);
    }
}
