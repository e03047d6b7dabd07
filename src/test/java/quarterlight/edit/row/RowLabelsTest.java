package quarterlight.edit.row;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterlight.edit.gauge.FinishEdits;
import quarterlight.store.SampleVisit;
import quarterlight.store.VisitStore;
import quarterlight.table.CsvFile;
import quarterlight.table.RowKind;
import quarterlight.table.ZoneTable;
import quarterlight.table.cell.RowContext;
import quarterlight.visit.pin.RecordId;
import quarterlight.visit.trial.SignKind;

/** Undo names the row that was typed, by what it says and where, whatever its kind. */
class RowLabelsTest {
    @TempDir
    Path folder;

    private VisitStore store;

    @BeforeEach
    void open() throws Exception {
        store = VisitStore.create(folder.resolve("v"), SampleVisit.bareFacts(), SampleVisit.CLOCK);
    }

    @AfterEach
    void close() {
        store.close();
    }

    @ParameterizedTest(name = "{3}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            textBlock =
                    """
            readings | zone,value,unit | door-front-left,4.20,mil | reading 4.20 mil on front door, left
            readings | zone,value,unit | hood,4-5,mil | reading 4-5 mil on hood
            readings | zone,value,unit | hood,none,mil | reading with no metal on hood
            readings | zone,value,unit | hood,over,mil | reading beyond the gauge's range on hood
            gauge | when,on,nominal,shown,unit | before,shim,5,5.1,mil | gauge check before, shim of 5 mil shown as 5.1 mil
            gauge | when,on,nominal,shown,unit | after,bare,0,0.1,mil | gauge check after, bare metal shown as 0.1 mil
            signs | zone,sign,seen | a-pillar-left,overspray,no | sign overspray, not seen on A-pillar, left
            marks | part,kind,text | Engine block,casting,H147 | mark H147 of Engine block
            trials | item,result | Horn,does not | trial Horn: does not
            trials | item,result,value,unit | Battery at rest,measured,12.3,V | trial Battery at rest: 12.3 V
            statements | zone,text,condition | hood,dented at the front,damaged | statement "dented at the front" on hood
            claims | text,by | one owner from new with every invoice kept in a binder,seller | claim "one owner from new with every invoice ke…"
            odometer | figure,unit,source | 61240,mi,read | odometer figure 61240 mi
            features | feature,from,to | side lamps,1968,1972 | feature side lamps
            coverage | zone,evidence,want | roof,spots,5 | wish for 5 spots on roof
            """)
    void aRowIsNamedByWhatItSays(String kind, String header, String row, String name) throws Exception {
        named(RowKinds.find(kind).orElseThrow(), List.of(header, row), name);
    }

    private <T> void named(RowKind<T> kind, List<String> lines, String name) throws Exception {
        Path table = Files.write(folder.resolve("rows.csv"), lines);
        RowContext context = RowContext.of(store.read(), ZoneTable.load());
        List<T> rows = CsvFile.read(table, kind, context).values();
        RowEdits edits = new RowEdits(store);
        List<RecordId> ids = edits.add(kind.kind(), rows).ids();
        assertThat(store.undoLabel()).contains("add " + name);
        edits.remove(kind.kind(), ids);
        assertThat(store.undoLabel()).contains("remove " + name);
        store.undo();
        assertThat(store.redoLabel()).contains("remove " + name);
    }

    @Test
    void aSignNotedByOneKeyIsNamedByWhatWasSeenWhere() throws Exception {
        FinishEdits edits = new FinishEdits(store);
        FinishEdits.Place place = new FinishEdits.Place(SampleVisit.HOOD, SignKind.OVERSPRAY, Optional.empty());
        edits.note(Set.of(place), Optional.of(true));
        assertThat(store.undoLabel()).contains("note sign overspray, seen on hood");
        edits.note(Set.of(place), Optional.of(false));
        assertThat(store.undoLabel()).contains("note sign overspray, not seen on hood");
        edits.note(Set.of(place), Optional.empty());
        assertThat(store.undoLabel()).contains("take back sign overspray on hood");
    }
}
