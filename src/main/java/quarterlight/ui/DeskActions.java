package quarterlight.ui;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import quarterlight.language.Language;
import quarterlight.ui.dialog.AboutWindow;
import quarterlight.ui.dialog.HelpWindow;
import quarterlight.ui.dialog.ManualWindow;
import quarterlight.ui.dialog.VisitForm;
import quarterlight.ui.kit.Command;
import quarterlight.ui.kit.Settings;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.look.Sight;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.ui.kit.visit.Station;
import quarterlight.ui.library.LibraryDoor;
import quarterlight.ui.pages.TakeAlong;
import quarterlight.ui.start.OpenSamples;
import quarterlight.ui.start.SampleVisits;
import quarterlight.ui.start.StartPage;
import quarterlight.units.ThicknessUnit;

/** The commands of the window, each made once and shared by menus, buttons and keys. Event thread only. */
final class DeskActions {
    private final UiContext parts;
    private final MainWindow window;
    private final Texts texts;
    private final Command newVisit;
    private final Command openVisit;
    private final Command closeVisit;
    private final Command twoCars;
    private final Command library;
    private final Command quit;
    private final Command facts;
    private final Command drawing;
    private final Command takeIn;
    private final Command takeWords;
    private final Command addTable;
    private final Command sheet;
    private final Command undo;
    private final Command redo;
    private final Command unit;
    private final Command brightness;
    private final Command larger;
    private final Command smaller;
    private final Command help;
    private final Command manual;
    private final Command about;
    private final Command hideDiagram;
    private final Command photoBeside;
    private final Command nextDoubt;
    private final Command grounds;
    private final Command leaveDoubt;
    private final Command keys;
    private final Command photos;
    private final Command samples;
    private final DeskTaking taking;
    private final Map<Station, Command> stations = new EnumMap<>(Station.class);

    DeskActions(UiContext parts, MainWindow window, SampleVisits sampleVisits) {
        this.parts = parts;
        this.window = window;
        this.texts = parts.texts();
        taking = new DeskTaking(parts, window);
        photos = always("do.take-in", taking::choosePhotos);
        samples = new OpenSamples(parts, sampleVisits, window::open).command();
        newVisit = always("do.new", this::makeVisit).menuKey("N");
        openVisit = always("do.open", taking::chooseVisit).menuKey("O");
        closeVisit = always("do.close", window::closeVisit).menuKey("W");
        twoCars = always("do.two-cars", () -> new CompareDialog(parts, window.frame())
                        .ask(visit().map(OpenVisit::folder)))
                .menuKey("shift C");
        library = always("do.library", new LibraryDoor(parts, window::openInFront)::open)
                .menuKey("shift L");
        quit = always("do.quit", window::quit).menuKey("Q");
        facts = always("do.facts", this::editFacts).menuKey("I");
        drawing = always("do.drawing", () -> taking.chooseDrawing(Optional.empty()));
        takeIn = always("do.take-in", taking::choosePhotos).menuKey("T");
        takeWords = always("do.take-words", taking::chooseWords);
        addTable = always("do.add-table", taking::chooseTable).menuKey("shift T");
        sheet = always("do.sheet", () -> visit().ifPresent(visit -> new TakeAlong(parts, visit).make()))
                .menuKey("shift S");
        undo = always("do.undo", () -> visit().ifPresent(OpenVisit::undo)).menuKey("Z");
        redo = always("do.redo", () -> visit().ifPresent(OpenVisit::redo)).menuKey("shift Z");
        unit = always("do.unit", this::otherUnit).menuKey("U");
        brightness = always("do.brightness", this::otherBrightness).menuKey("shift D");
        larger = always("do.text.larger", () -> text(1)).menuKey("EQUALS");
        smaller = always("do.text.smaller", () -> text(-1)).menuKey("MINUS");
        help = always("do.help", this::openHelp).key("F1");
        manual = always("do.manual", this::openManual);
        about = always("do.about", () -> new AboutWindow(parts, window.frame()).show());
        hideDiagram = always("do.diagram", () -> say(VisitPanel::nextExtent)).key("F11");
        photoBeside =
                always("do.photo-beside", () -> say(VisitPanel::togglePhoto)).key("F12");
        nextDoubt = always("do.next-doubt", () -> say(VisitPanel::nextDoubt)).key("F6");
        leaveDoubt = always("do.leave-doubt", () -> say(VisitPanel::leaveDoubt)).key("shift F6");
        grounds = always("do.grounds", () -> say(VisitPanel::askGrounds)).key("F3");
        keys = always("do.keys", () -> new ShortcutsDialog(parts, window).show())
                .menuKey("K");
        for (Station station : Station.values()) {
            stations.put(
                    station,
                    always(station.textKey(), () -> window.bench().ifPresent(bench -> bench.show(station)))
                            .menuKey(Integer.toString(station.digit())));
        }
        Command.bindEverywhere(window.frame().getRootPane(), all());
    }

    private Command always(String key, Runnable work) {
        return Command.of(texts, key, work);
    }

    /** Every command, in the order of the menus. */
    List<Command> all() {
        List<Command> all = new ArrayList<>(List.of(
                newVisit,
                openVisit,
                samples,
                facts,
                drawing,
                takeIn,
                addTable,
                sheet,
                twoCars,
                library,
                closeVisit,
                quit,
                undo,
                redo));
        all.addAll(stations.values());
        all.addAll(List.of(
                nextDoubt,
                leaveDoubt,
                grounds,
                hideDiagram,
                photoBeside,
                unit,
                brightness,
                larger,
                smaller,
                help,
                manual,
                keys,
                about));
        return all;
    }

    /** What can be done and how it is called after the visit changed. */
    void visitChanged() {
        Optional<OpenVisit> visit = visit();
        boolean editable = visit.map(OpenVisit::isEditable).orElse(false);
        Set.of(facts, drawing, takeIn, takeWords, addTable).forEach(command -> command.setEnabled(editable));
        closeVisit.setEnabled(visit.isPresent());
        sheet.setEnabled(visit.isPresent());
        hideDiagram.setEnabled(visit.isPresent());
        photoBeside.setEnabled(visit.isPresent());
        nextDoubt.setEnabled(visit.isPresent());
        grounds.setEnabled(visit.isPresent());
        leaveDoubt.setEnabled(visit.isPresent());
        stations.values().forEach(command -> command.setEnabled(visit.isPresent()));
        int percent = settings().sight().textPercent();
        larger.setEnabled(percent < Sight.MOST_PERCENT);
        smaller.setEnabled(percent > Sight.USUAL_PERCENT);
        name(undo, "do.undo", visit.flatMap(OpenVisit::undoLabel));
        name(redo, "do.redo", visit.flatMap(OpenVisit::redoLabel));
        unit.rename(texts.get(parts.settings().settings().unit() == ThicknessUnit.MIL ? "do.unit.um" : "do.unit.mil"));
        brightness.rename(texts.get(parts.settings().settings().dark() ? "do.light" : "do.dark"));
    }

    private void name(Command command, String key, Optional<String> label) {
        command.setEnabled(label.isPresent());
        command.rename(label.map(text -> texts.get(key + ".named", text)).orElse(texts.get(key)));
    }

    private Optional<OpenVisit> visit() {
        return window.bench().map(VisitPanel::visit);
    }

    private void openManual() {
        new ManualWindow(parts, window.frame()).show();
    }

    /** Help of the station in front. */
    private void openHelp() {
        String heading =
                texts.get(window.bench().map(bench -> bench.station().textKey()).orElse("help.first"));
        new HelpWindow(parts, window.frame(), this::openManual).show(heading);
    }

    /** Does something with the visit and says at the foot what came of it. */
    private void say(Function<VisitPanel, String> work) {
        window.bench().ifPresent(bench -> window.say(work.apply(bench)));
    }

    private void makeVisit() {
        new VisitForm(parts, window.frame()).make().ifPresent(made -> window.create(made.folder(), made.facts()));
    }

    private void editFacts() {
        visit().ifPresent(visit -> new VisitForm(parts, window.frame()).change(visit));
    }

    /** Takes what was chosen or dropped. */
    void take(List<Path> paths) {
        taking.take(paths);
    }

    /** A visit is open: what waited for one is taken in. */
    void takeWaiting() {
        taking.takeWaiting();
    }

    private void otherUnit() {
        parts.settings().change(s -> s.withUnit(s.unit() == ThicknessUnit.MIL ? ThicknessUnit.UM : ThicknessUnit.MIL));
        visitChanged();
        window.bench().ifPresent(VisitPanel::unitChanged);
    }

    /** Changes how the window is seen, at once and from now on. */
    void see(UnaryOperator<Settings> change) {
        parts.settings().change(change);
        Look.install(parts.settings().settings().sight());
        visitChanged();
    }

    /** Another language of the window from the next start on. */
    void speak(Optional<Language> language) {
        parts.settings().change(s -> s.withLanguage(language));
        window.say(Texts.load(settings().language(Locale.getDefault())).get("menu.language.next"));
    }

    private void text(int steps) {
        see(s -> s.withTextPercent(s.sight().textPercent() + steps * Sight.STEP_PERCENT));
    }

    Settings settings() {
        return parts.settings().settings();
    }

    private void otherBrightness() {
        see(s -> s.with("dark", !s.dark()));
    }

    List<Path> recent() {
        return parts.settings().settings().recent();
    }

    /** What the first page begins with. */
    StartPage.Beginnings beginnings() {
        return new StartPage.Beginnings(newVisit, photos, samples, openVisit, library, help);
    }

    Command newVisit() {
        return newVisit;
    }

    Command openVisit() {
        return openVisit;
    }

    Command samples() {
        return samples;
    }

    Command closeVisit() {
        return closeVisit;
    }

    Command twoCars() {
        return twoCars;
    }

    Command library() {
        return library;
    }

    Command quit() {
        return quit;
    }

    Command facts() {
        return facts;
    }

    Command drawing() {
        return drawing;
    }

    Command takeIn() {
        return takeIn;
    }

    Command takeWords() {
        return takeWords;
    }

    Command addTable() {
        return addTable;
    }

    Command sheet() {
        return sheet;
    }

    Command undo() {
        return undo;
    }

    Command redo() {
        return redo;
    }

    Command help() {
        return help;
    }

    Command about() {
        return about;
    }

    Command hideDiagram() {
        return hideDiagram;
    }

    Command leaveDoubt() {
        return leaveDoubt;
    }

    Command grounds() {
        return grounds;
    }

    Command photoBeside() {
        return photoBeside;
    }

    Command nextDoubt() {
        return nextDoubt;
    }

    Command unit() {
        return unit;
    }

    Command brightness() {
        return brightness;
    }

    Command larger() {
        return larger;
    }

    Command smaller() {
        return smaller;
    }

    Command manual() {
        return manual;
    }

    Command keys() {
        return keys;
    }

    Command station(Station station) {
        return stations.get(station);
    }
}
