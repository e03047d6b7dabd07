package quarterlight.matters.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.car.ZoneId;
import quarterlight.matters.rule.Safety;
import quarterlight.rust.need.Load;
import quarterlight.table.list.TrialTable;
import quarterlight.units.Worded;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Facets;
import quarterlight.visit.statement.Severity;
import quarterlight.visit.statement.Statement;
import quarterlight.visit.statement.StatementDetails;
import quarterlight.visit.trial.Trial;
import quarterlight.visit.trial.TrialResult;

/** What can hurt someone is recognized in what an inspector types in German, and what only sounds like it is not. */
class GermanSafetyTest {
    @ParameterizedTest
    @CsvSource(
            nullValues = "none",
            value = {
                "trunk-floor, leaking, Benzin läuft in den Kofferraum, FUEL",
                "trunk-floor, smell, riecht stark nach Kraftstoff, FUEL",
                "trunk-floor, leaking, Der Tank ist undicht, FUEL",
                "trunk-floor, leaking, Tankstutzen tropft, FUEL",
                "floor-front-left, leaking, Kraftstoffleitung leckt, FUEL",
                "whole-car, smell, Gasgeruch im Innenraum, FUEL",
                "fuel-brake-lines, leaking, leckt an der Verschraubung, FUEL",
                "fuel-brake-lines, leaking, Bremsleitung undicht, BRAKES",
                "rear-axle, leaking, Radbremszylinder undicht, BRAKES",
                "rear-axle, leaking, Radzylinder leckt, BRAKES",
                "rear-axle, leaking, wheel cylinder weeps, BRAKES",
                "pedals, damaged, Bremspedal gebrochen, BRAKES",
                "radiator, leaking, Kühlwasser tritt aus, none",
                "radiator, leaking, Wischwassertank leckt, none",
                "quarter-left, damaged, Lack der Tankklappe gerissen, none",
                "quarter-left, damaged, Tankdeckel-Lack abgeplatzt, none",
                "quarter-left, leaking, Tankklappe undicht, none",
                "exhaust-front, smell, Abgasgeruch, none",
                "exhaust-front, leaking, Abgasanlage undicht, none",
                "tail-lamp-left, damaged, Bremsleuchte gesprungen, none",
                "tail-lamp-left, leaking, Wasser im Bremslicht, none",
                "radiator, damaged, Radnabe der Anhängerkupplung ungebremst, none",
            })
    void statementsAreRecognized(String zone, String condition, String text, Safety safety) {
        Statement statement = new Statement(
                new ZoneId(zone),
                new Facets(Optional.empty(), Worded.find(Condition.class, condition)),
                text,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                StatementDetails.NONE);

        assertThat(StatementSafety.of(statement, Load.FITTING, Severity.MAJOR)).isEqualTo(Optional.ofNullable(safety));
    }

    @ParameterizedTest
    @CsvSource({
        "Bremse zieht einseitig, BRAKES",
        "Handbremse hält, BRAKES",
        "Bremsleitungen dicht, BRAKES",
        "Bremslicht, LAMPS",
        "Rückfahrlicht, LAMPS",
        "Warnblinkanlage, LAMPS",
        "Lichtmaschine lädt, OTHER",
        "Pflichtteile an Bord, OTHER",
        "Lenkung schwergängig, STEERING",
        "Lenkgetriebe, STEERING",
        "Zieht stark nach links, STEERING",
        "Läuft geradeaus, STEERING",
        "Gelenkwelle, OTHER",
        "Anlasssperre, INTERLOCK",
        "Kupplungsschalter, INTERLOCK",
        "Winterreifen, TIRES",
        "Profiltiefe Ersatzrad, TIRES",
        "Zierstreifen, OTHER",
        "Türprofil, OTHER",
        "Gurtschloss rastet ein, BELTS",
        "Tankgurt, OTHER",
        "Benzingeruch, FUEL",
        "Riecht nach Benzin, FUEL",
        "Riecht stark nach Gas, FUEL",
        "Benzinpumpe undicht, FUEL",
        "Tank leckt, FUEL",
        "Abgasgeruch, OTHER",
        "Tankanzeige, OTHER",
        "Benzinpumpe fördert, OTHER",
        "Zigarettenanzünder, OTHER",
    })
    void trialsAreRecognized(String item, TrialSubject subject) {
        Trial trial = new Trial(
                item, TrialResult.DOES_NOT, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

        assertThat(TrialSubject.of(trial, TrialTable.load())).isEqualTo(subject);
    }
}
