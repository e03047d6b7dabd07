package quarterlight.rust;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.rust.plane.KnownThing;
import quarterlight.units.Area;

class EverydaySizeTest {
    @ParameterizedTest(name = "{0} mm2: {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "0|0 mm2",
                "4|4.0 mm2, less than a tenth of a quarter coin",
                "240|240 mm2, about half a quarter coin",
                "462|462 mm2, about one quarter coin",
                "1400|1,400 mm2, about 3 quarter coins",
                "4621|4,621 mm2, about one bank card",
                "24000|24,000 mm2, about 3 palms",
                "121000|121,000 mm2, about 2 letter sheets",
                "900000|900,000 mm2, more than 10 letter sheets"
            })
    void areasHaveTheirFigureAndAThingOneKnows(double mm2, String words) {
        assertThat(EverydaySize.words(new Area(mm2))).isEqualTo(words);
    }

    @Test
    void thingsOfKnownSizeNameTheirSource() {
        assertThat(KnownThing.all())
                .allSatisfy(thing -> assertThat(thing.source()).isNotBlank());
        assertThat(KnownThing.all())
                .filteredOn(thing -> thing.name().equals("US quarter"))
                .singleElement()
                .satisfies(quarter -> assertThat(quarter.widthMm()).isEqualTo(24.26));
    }
}
