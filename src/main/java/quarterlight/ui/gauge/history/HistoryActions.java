package quarterlight.ui.gauge.history;

import java.time.LocalDateTime;
import java.util.Optional;
import java.util.Set;
import javax.swing.SwingUtilities;
import quarterlight.car.ZoneId;
import quarterlight.edit.EditRefused;
import quarterlight.edit.gauge.FinishEdits;
import quarterlight.edit.gauge.TypedReading;
import quarterlight.finish.FinishEngine;
import quarterlight.finish.FinishEvidence;
import quarterlight.task.LatestWork;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.visit.reading.GaugeMode;
import quarterlight.visit.trial.SignKind;

/** What can be done with the finish history: suppose, keep, drop, go where the next reading tells most. Event thread only. */
final class HistoryActions {

    private final UiContext parts;
    private final OpenVisit visit;
    private final HistoryModel model;
    private final LatestWork<FinishEvidence, HistoryModel.Supposed> supposing;
    private final LatestWork<FinishEvidence, HistoryModel.Next> looking;
    private Optional<FinishEvidence> asked = Optional.empty();
    private Optional<FinishEvidence> lookedFor = Optional.empty();

    HistoryActions(UiContext parts, OpenVisit visit, HistoryModel model) {
        this.parts = parts;
        this.visit = visit;
        this.model = model;
        Engines engines = new Engines();
        supposing = new LatestWork<>(
                "quarterlight-what-if",
                SwingUtilities::invokeLater,
                (evidence, course) ->
                        new HistoryModel.Supposed(evidence, engines.of(evidence).history(evidence)),
                model::answered,
                parts.problems()::failed);
        looking = new LatestWork<>(
                "quarterlight-next",
                SwingUtilities::invokeLater,
                (evidence, course) -> HistoryModel.Next.of(evidence),
                model::next,
                parts.problems()::failed);
    }

    /** The engine of the profile asked for last; used on one thread. */
    private static final class Engines {
        private Optional<FinishEngine> last = Optional.empty();

        FinishEngine of(FinishEvidence evidence) {
            FinishEngine engine = last.filter(one -> one.profile() == evidence.profile())
                    .orElseGet(() -> new FinishEngine(evidence.profile()));
            last = Optional.of(engine);
            return engine;
        }
    }

    /** Supposes a reading as it was typed. */
    void supposeReading(String typed) throws EditRefused {
        if (model.whatIf().isPresent()) {
            model.suppose(model.whatIf()
                    .get()
                    .and(TypedReading.of(
                            typed,
                            parts.settings().settings().unit(),
                            visit.visit().facts().gaugeRange())));
            ask();
        }
    }

    void supposeSign(SignKind kind, boolean seen) {
        model.whatIf().ifPresent(some -> {
            model.suppose(some.and(kind, seen));
            ask();
        });
    }

    void drop() {
        model.whatIf().ifPresent(some -> model.suppose(WhatIf.nothing(some.zone())));
    }

    /** Keeps what was supposed as one step of undo. */
    void keep(Optional<GaugeMode> mode) {
        Optional<WhatIf> some = model.whatIf().filter(supposed -> !supposed.isNothing());
        if (some.isEmpty() || !visit.isEditable()) {
            return;
        }
        LocalDateTime now = LocalDateTime.ofInstant(
                        parts.clock().instant(), visit.visit().facts().timezone())
                .withNano(0);
        drop();
        visit.edit(
                store -> {
                    new FinishEdits(store)
                            .keep(some.get().readings(now, mode), some.get().signRows());
                    return some.get();
                },
                kept -> {},
                failure -> {
                    model.suppose(some.get());
                    parts.problems().failed(failure);
                });
    }

    /** Asks for what the question in hand brings, unless that was asked last. */
    void ask() {
        Optional<FinishEvidence> question = model.question();
        if (!question.equals(asked)) {
            asked = question;
            question.ifPresent(supposing::request);
        }
    }

    /** Asks where to measure next, unless that was asked last for the same evidence. */
    void look() {
        Optional<FinishEvidence> evidence = model.kept().map(found -> found.evidence());
        if (!evidence.equals(lookedFor)) {
            lookedFor = evidence;
            evidence.ifPresent(looking::request);
        }
    }

    void go(ZoneId zone) {
        visit.selection().zones(Set.of(zone));
    }

    void stop() {
        supposing.stop();
        looking.stop();
    }
}
