package quarterlight.ui.gauge.history;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import quarterlight.car.ZoneId;
import quarterlight.findings.Findings;
import quarterlight.finish.FinishEvidence;
import quarterlight.finish.FinishHistory;
import quarterlight.table.ZoneTable;
import quarterlight.table.list.DatePatternTable;
import quarterlight.thickness.VisitBuilder;
import quarterlight.units.ThicknessUnit;
import quarterlight.visit.reading.GaugeValue;
import quarterlight.visit.trial.SignKind;

class HistoryModelTest {
    private static final ZoneId HOOD = new ZoneId("hood");
    private static final ZoneId ROOF = new ZoneId("roof");

    private final HistoryModel model = new HistoryModel();

    @BeforeEach
    void keep() throws Exception {
        model.kept(findings(new VisitBuilder().reading("hood", "130").reading("roof", "128")));
        model.zone(Optional.of(HOOD));
    }

    private static Findings findings(VisitBuilder visit) throws Exception {
        return Findings.of(visit.build(), ZoneTable.load(), Map.of(), DatePatternTable.load());
    }

    private static WhatIf thick() {
        return WhatIf.nothing(HOOD)
                .and(new GaugeValue.Measured(new BigDecimal("420"), ThicknessUnit.UM))
                .and(SignKind.OVERSPRAY, true);
    }

    @Test
    void nothingIsAskedUntilSomethingIsSupposed() {
        assertThat(model.question()).isEmpty();
        model.suppose(thick());
        FinishEvidence asked = model.question().orElseThrow();
        assertThat(asked.zone(HOOD).orElseThrow().spotsUm()).containsExactly(130.0, 420.0);
        assertThat(asked.zone(ROOF))
                .isEqualTo(model.kept().orElseThrow().evidence().zone(ROOF));
    }

    @Test
    void anAnswerToAnOvertakenQuestionIsNotShown() {
        model.suppose(thick());
        FinishEvidence asked = model.question().orElseThrow();
        model.suppose(thick().and(new GaugeValue.NoMetal()));
        model.answered(new HistoryModel.Supposed(asked, FinishHistory.of(asked)));
        assertThat(model.ifSo()).isEmpty();
        model.suppose(thick());
        assertThat(model.ifSo()).isPresent();
        assertThat(model.ifSo().orElseThrow().notFactory())
                .isGreaterThan(model.asKept().orElseThrow().notFactory());
    }

    @Test
    void anotherZoneDropsWhatWasSupposed() {
        model.suppose(thick());
        model.zone(Optional.of(HOOD));
        assertThat(model.whatIf().orElseThrow()).isEqualTo(thick());
        model.zone(Optional.of(ROOF));
        assertThat(model.whatIf().orElseThrow()).isEqualTo(WhatIf.nothing(ROOF));
    }

    @Test
    void theSameSignSupposedAgainReplacesTheFirst() {
        WhatIf changed = thick().and(SignKind.OVERSPRAY, false);
        assertThat(changed.signs()).containsExactly(Map.entry(SignKind.OVERSPRAY, false));
        assertThat(changed.signRows()).singleElement().matches(sign -> !sign.seen());
    }
}
